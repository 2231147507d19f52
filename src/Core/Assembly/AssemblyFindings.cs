using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Pins that will likely not go through, made as the plan says.</summary>
public static class AssemblyFindings
{
    private const int Trials = 2_000;

    /// <summary>The chance is surely under the one asked.</summary>
    public static IEnumerable<Finding> Chance(Results r)
    {
        var pins = GoTogether.PinsOf(r);
        if (r.Plan.Scales is not { HolesBy: { } by } scales || pins.IsEmpty) yield break;
        var way = WayOfMaking.All.Single(w => w.Way == by);
        if (GoTogether.Capability(r, way, pins) is not { } capability) yield break;
        var parts = way.Parts(pins, GoTogether.ScaleHolesOf(r, pins), PlacingScatter.Of(capability));
        var chance = PinChance.Of(parts, GoTogether.UsualSeed, Trials);
        if (chance.Interval.HighShare >= scales.WantedChanceShare) yield break;
        var wanted = scales.WantedChanceShare;
        var alone = SmallestClearance.Of(parts, 1, wanted, GoTogether.UsualSeed, Trials);
        var alike = SmallestClearance.Of(parts, null, wanted, GoTogether.UsualSeed, Trials);
        var better = WayOfMaking.All.Where(w => w.Way != by && w.IsIn(r.Shop) && Reaches(r, w, pins, wanted)).ToImmutableArray();
        yield return ShopFinding.Of(r.Shop, new Finding(
            FindingCodes.AssemblyChance,
            Severity.Warning,
            "pins and scales",
            pins[0].At,
            $"The pins will likely not all go through, {way.Says}.",
            $"in {AssemblyText.InHundred(chance.Share)} of 100",
            $"in {AssemblyText.InHundred(wanted)} of 100, as the plan asks",
            $"seeded trials; scatter of the holes {(capability.MeasuredSigma is null ? capability.IsOwn ? "as the shop file says" : "by common practice" : "as measured")}",
            Remedy(r, pins, alone, alike, better))
        {
            Ways = [.. alone is null ? AllLarger(r, pins, alike) : Larger(r, pins, alone), .. better.Reverse().Take(2).Select(w => new RemedyWay(w.Says, [new WordSet("scales", "holes", w.Word)]))],
        });
    }

    private static bool Reaches(Results r, WayOfMaking way, ImmutableArray<PlacedHole> pins, double wanted)
        => GoTogether.Capability(r, way, pins) is { } c && PinChance.Of(way.Parts(pins, GoTogether.ScaleHolesOf(r, pins), PlacingScatter.Of(c)), GoTogether.UsualSeed, Trials).Share >= wanted;

    private static string Remedy(Results r, ImmutableArray<PlacedHole> pins, Length? alone, Length? alike, ImmutableArray<WayOfMaking> better)
    {
        var rod = pins.Max(h => h.Pin!.Value);
        var says = new List<string>();
        if (alone is { } a) says.Add($"open the holes of the tang to {AssemblyText.Hole(r.Shop, rod + a)}");
        else if (alike is { } b) says.Add($"open the holes of tang and scales to {AssemblyText.Hole(r.Shop, rod + b)}");
        if (!better.IsEmpty) says.Add("make it another way: " + string.Join("; ", better.Reverse().Select(w => w.Says)));
        return says.Count == 0 ? "place the holes better, or ask for less" : string.Join(", or ", says);
    }

    // the tang's holes in the next size owned for how they are made
    private static ImmutableArray<RemedyWay> Larger(Results r, ImmutableArray<PlacedHole> pins, Length? clearance)
        => clearance is { } c ? HoleWays.Resized(r.Plan, pins.Select(h => (h, Sized(r.Shop, h, c)))) : [];

    // tang and scales alike; only where one size serves all pins and the plan writes the scales' own
    private static ImmutableArray<RemedyWay> AllLarger(Results r, ImmutableArray<PlacedHole> pins, Length? clearance)
        => clearance is { } c && pins.Select(h => Sized(r.Shop, h, c)).Distinct().ToArray() is [{ } size] && r.Plan.Scales?.HoleDiameter is not null
            ? [.. HoleWays.Resized(r.Plan, pins.Select(h => (h, (DrillSize?)size))).Select(w => new RemedyWay($"{w.Says}, and the scales' holes alike", w.Changes.Add(new LengthSet("scales", "hole", size.Diameter))))]
            : [];

    private static DrillSize? Sized(Shop shop, PlacedHole hole, Length clearance)
        => DrillSeries.LargerOrEqual(hole.Make == HoleMake.Ream ? shop.Reamers : shop.Drills, hole.Pin!.Value + clearance);
}
