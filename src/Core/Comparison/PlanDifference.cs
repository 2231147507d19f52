using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>A hole that is not the same in two plans, by its name.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Was">The hole before; null when it was added.</param>
/// <param name="Now">The hole now; null when it is gone.</param>
public sealed record HoleDifference(string Name, PlacedHole? Was, PlacedHole? Now)
{
    /// <summary>How far it moved, mm; null when it was added or is gone.</summary>
    public Point? Moved => Was is not null && Now is not null ? Now.At - Was.At : null;
}

/// <summary>How two outlines differ.</summary>
/// <param name="PointsWas">How many points the outline had.</param>
/// <param name="PointsNow">How many it has.</param>
/// <param name="Moved">Points that moved, by number from 1; empty when their number changed.</param>
/// <param name="Apart">Greatest distance between the two outlines.</param>
/// <param name="ApartAt">Where that is, plan's axes, mm.</param>
public sealed record OutlineDifference(int PointsWas, int PointsNow, ImmutableArray<PointDifference> Moved, Length Apart, Point ApartAt);

/// <summary>A point of the outline that moved.</summary>
/// <param name="Number">Its number, from 1, in the order the outline is written.</param>
/// <param name="Was">Where it was, mm.</param>
/// <param name="Now">Where it is, mm.</param>
public sealed record PointDifference(int Number, Point Was, Point Now);

/// <summary>Another value of the plan that is not the same.</summary>
/// <param name="Name">What it is, in the maker's words: "bevel height".</param>
/// <param name="Was">As it was, in words; empty when it was absent.</param>
/// <param name="Now">As it is, in words; empty when it is absent.</param>
public sealed record ValueDifference(string Name, string Was, string Now);

/// <summary>What is not the same in two plans: what moved, and what the numbers and findings did.</summary>
/// <param name="Outline">How the outlines differ; null when they are the same.</param>
/// <param name="Holes">Holes that differ, those of now first.</param>
/// <param name="Values">Other values that differ.</param>
/// <param name="Figures">Numbers that differ.</param>
/// <param name="Findings">Findings that differ.</param>
public sealed record PlanDifference(
    OutlineDifference? Outline,
    ImmutableArray<HoleDifference> Holes,
    ImmutableArray<ValueDifference> Values,
    ImmutableArray<FigureDifference> Figures,
    FindingsDifference Findings)
{
    /// <summary>Less than this is the same place or size, mm.</summary>
    public const double SameMm = 1e-6;

    /// <summary>Whether nothing of the plan differs.</summary>
    public bool IsNone => Outline is null && Holes.IsEmpty && Values.IsEmpty;

    /// <summary>From one plan to another, both worked up.</summary>
    /// <param name="was">The one before.</param>
    /// <param name="now">The one now; values are told in its unit.</param>
    public static PlanDifference Of(Results was, Results now)
        => new(OutlineOf(was.Plan.Outline, now.Plan.Outline), HolesOf(was.Holes, now.Holes), PlanValues.Differences(was.Plan, now.Plan), FigureDifference.Of(was, now), FindingsDifference.Of(was.Findings, now.Findings));

    private static OutlineDifference? OutlineOf(Path was, Path now)
    {
        var (before, after) = (was.Segments, now.Segments);
        var (apart, at) = FarthestApart.Of(was, now);
        var points = before.Length == after.Length
            ? after.Select((s, i) => new PointDifference(i + 1, before[i].Start, s.Start)).Where(p => p.Was.To(p.Now) > SameMm).ToImmutableArray()
            : [];
        return before.Length == after.Length && points.IsEmpty && apart <= SameMm ? null : new OutlineDifference(before.Length, after.Length, points, Length.OfMm(apart), at);
    }

    private static ImmutableArray<HoleDifference> HolesOf(ImmutableArray<PlacedHole> was, ImmutableArray<PlacedHole> now)
    {
        var before = was.ToDictionary(h => h.Name, StringComparer.OrdinalIgnoreCase);
        var after = now.Select(h => h.Name).ToHashSet(StringComparer.OrdinalIgnoreCase);
        return
        [
            .. now.Select(h => new HoleDifference(h.Name, before.GetValueOrDefault(h.Name), h)).Where(d => d.Was is null || !IsSame(d.Was, d.Now!)),
            .. was.Where(h => !after.Contains(h.Name)).Select(h => new HoleDifference(h.Name, h, null)),
        ];
    }

    private static bool IsSame(PlacedHole a, PlacedHole b)
        => a.At.To(b.At) <= SameMm && Math.Abs((a.Diameter - b.Diameter).Mm) <= SameMm && a.Use == b.Use && a.Make == b.Make;
}
