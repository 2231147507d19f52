using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.UseCases;

/// <summary>One way of making pinned parts, in words.</summary>
/// <param name="Says">The way.</param>
/// <param name="IsSaid">Whether the plan says it.</param>
/// <param name="IsEnough">Whether it reaches the chance asked.</param>
/// <param name="Chance">In how many of 100 pieces the pins go through.</param>
/// <param name="MayBe">Where that may lie.</param>
/// <param name="Zone">How well it places holes.</param>
/// <param name="Tang">The tang's holes for the chance asked.</param>
/// <param name="All">All holes for it.</param>
/// <param name="Standard">Holes by the drawing standard.</param>
public sealed record PlacingShown(string Says, bool IsSaid, bool IsEnough, string Chance, string MayBe, string Zone, string Tang, string All, string Standard);

/// <summary>A row placed one way, in words.</summary>
/// <param name="Row">The row.</param>
/// <param name="Way">The way.</param>
/// <param name="Worst">Its worst hole.</param>
/// <param name="Looks">How it looks.</param>
public sealed record RowShown(string Row, string Way, string Worst, string Looks);

/// <summary>What the page "Will it go together" shows.</summary>
/// <param name="Asked">What the plan asks, in a sentence; what is missing when it asks nothing.</param>
/// <param name="Ways">Every way.</param>
/// <param name="Rows">Every row by every way.</param>
public sealed record AssemblyOnDesk(string Asked, ImmutableArray<PlacingShown> Ways, ImmutableArray<RowShown> Rows)
{
    private const int Trials = 2_000;

    /// <summary>Runs the trials on a plan.</summary>
    /// <param name="results">The plan worked up.</param>
    /// <param name="tang">Diameter the tang's pin holes are tried at; null: as planned.</param>
    /// <param name="scales">Diameter the scales' holes are tried at; null: as planned.</param>
    public static AssemblyOnDesk Of(Results results, Length? tang, Length? scales)
    {
        var r = Tried(results, tang, scales);
        var rows = RowStraightness.Of(results).Select(x => new RowShown(x.Row, x.Making.Says, $"{Shown.Both(x.WorstUsual)}; in 95 of 100 rows under {Shown.Both(x.WorstSeldom)}", AssemblyText.Looks(x)));
        if (GoTogether.Of(r, GoTogether.UsualSeed, Trials) is not { } all)
        {
            return new(r.Plan.Scales is null ? "The plan puts on no scales: write [scales] into it." : "No hole names its rod: write pin = \"4.97 mm\" under the pin holes.", [], [.. rows]);
        }

        return new(AssemblyText.Asked(all), [.. all.Ways.Select(w => Of(r.Shop, all, w))], [.. rows]);
    }

    /// <summary>A diameter as typed; nothing typed: as planned.</summary>
    public static Checked<Tuple<Length?>> Read(string typed, LengthUnit units)
    {
        if (typed.Trim().Length == 0) return Checked<Tuple<Length?>>.Good(new(null));
        var read = LengthText.Read(typed, units == LengthUnit.Inch ? Length.MmPerInch : 1, drills: true);
        return read is { IsGood: true, Value.Length: { Mm: > 0 and < 100 } d }
            ? Checked<Tuple<Length?>>.Good(new(d))
            : Checked<Tuple<Length?>>.Bad(Fault.OfFile("Hole tried", $"\"{typed}\" is no diameter", "write it as 5.4 mm, 0.213 in or #3"));
    }

    private static Results Tried(Results r, Length? tang, Length? scales) => r with
    {
        Plan = scales is null || r.Plan.Scales is null ? r.Plan : r.Plan with { Scales = r.Plan.Scales with { HoleDiameter = scales } },
        Holes = tang is { } d ? [.. r.Holes.Select(h => h.Pin is null ? h : h with { Diameter = d })] : r.Holes,
    };

    private static PlacingShown Of(Shop shop, GoTogether all, WayChance way) => new(
        AssemblyText.Says(all, way),
        way.Making.Way == all.Said,
        way.Chance.Share >= all.WantedShare,
        AssemblyText.InHundred(way.Chance.Share),
        way.Capability.MeasuredSigma is null ? $"may be {AssemblyText.MayBe(way)}" : AssemblyText.MayBe(way),
        $"99 of 100 centres in {Shown.Both(way.Zone)}",
        way.TangAlone is { } a ? AssemblyText.Hole(shop, all.Rod + a) : "however large, the scales' own holes do not allow it",
        way.AllAlike is { } b ? AssemblyText.Hole(shop, all.Rod + b) : "none is large enough",
        $"{Shown.Both(way.Floating)} with play in every part, {Shown.Both(way.Fixed)} in the tang when the scales hold the rod");
}
