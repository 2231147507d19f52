using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>How a hole for a rod, or a reamed hole, comes out, and what room a rod has in it.</summary>
/// <param name="Hole">The hole.</param>
/// <param name="Drill">Last drill.</param>
/// <param name="DrillIsOwned">Whether the shop has it.</param>
/// <param name="ReamerIsOwned">Whether the shop has the reamer; null when the hole is not reamed.</param>
/// <param name="Made">Sizes it comes out at, or the measured one; null when they cannot be told.</param>
/// <param name="MadeBy">What makes them so: "reamed, H8".</param>
/// <param name="Rod">The rod; null when the hole takes none.</param>
/// <param name="RodIsSaid">Whether the plan says the rod; else the thickest commonly sold that goes in, by its usual limits.</param>
/// <param name="Fit">What rod and hole make together; null without a rod or when the sizes cannot be told.</param>
public sealed record PinFit(
    PlacedHole Hole,
    DrillSize Drill,
    bool DrillIsOwned,
    bool? ReamerIsOwned,
    (Length Least, Length Most)? Made,
    string MadeBy,
    Length? Rod,
    bool RodIsSaid,
    FitResult? Fit);

/// <summary>The fits of a plan's pins.</summary>
public static class PinFits
{
    /// <summary>Class a reamer leaves; H7 with care (published charts of grades by process).</summary>
    public const string ReamedClass = "H8";

    /// <summary>Class a bore has that an end mill ran round; common practice.</summary>
    public const string BoredClass = "JS10";

    /// <summary>Coarsest class rod is commonly sold in; common practice.</summary>
    public const string RodClass = "h11";

    /// <summary>Every hole that takes a rod or is reamed, in the plan's order.</summary>
    public static ImmutableArray<PinFit> Of(Results r)
        => [.. r.Holes.Where(h => h.Pin is not null || h.Use == HoleUse.Pin || h.Make == HoleMake.Ream).Select(h => Of(r.Shop, h))];

    private static PinFit Of(Shop shop, PlacedHole hole)
    {
        var reams = hole.Make == HoleMake.Ream;
        var drill = reams ? HoleTools.BeforeReaming(shop, hole.Diameter).Size : HoleTools.Drill(shop, hole.Diameter);
        var (made, by) = Made(hole, drill);
        var rod = hole.Pin ?? (hole.Use == HoleUse.Pin ? DrillSeries.SmallerOrEqual(PinStock.Sizes, hole.Diameter)?.Diameter : null);
        var fit = made is { } m && RodLimits(hole, rod) is { } limits ? FitResult.Of(m, limits) : null;
        return new(hole, drill, SizeFit.IsOwned(shop.Drills, drill.Diameter), reams ? SizeFit.IsOwned(shop.Reamers, hole.Diameter) : null, made, by, rod, hole.Pin is not null, fit);
    }

    private static ((Length Least, Length Most)? Made, string By) Made(PlacedHole hole, DrillSize drill) => hole switch
    {
        { AsBuilt.Diameter: { } measured } => ((measured, measured), "as measured"),
        { Make: HoleMake.Ream } => (Limits(hole.Diameter, ToleranceClass.Hole(ReamedClass)), "reamed, " + ReamedClass),
        { Make: HoleMake.Bore } => (Limits(hole.Diameter, ToleranceClass.Hole(BoredClass)), "bored, " + BoredClass),
        _ => (DrilledSize.Of(drill.Diameter), "drilled " + drill.Name),
    };

    /// <summary>A rod the plan says was measured; any other is as sold.</summary>
    private static (Length Least, Length Most)? RodLimits(PlacedHole hole, Length? rod)
        => hole.Pin is { } said ? (said, said) : rod is { } sold ? Limits(sold, ToleranceClass.Pin(RodClass)) : null;

    private static (Length Least, Length Most)? Limits(Length size, Checked<ToleranceClass> wanted)
        => wanted.Then(c => FitLimits.Of(size, c)) is { IsGood: true, Value: var l } ? (l.Least, l.Most) : null;
}
