using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Whether tang and scales will go together on their pins, by every way of making them.</summary>
/// <param name="Pins">The pin holes of the tang that have a rod.</param>
/// <param name="ScaleHoles">Diameter of the scales' hole for each.</param>
/// <param name="WantedShare">The chance asked.</param>
/// <param name="Said">The way the plan says; null when it says none.</param>
/// <param name="Ways">All ways: the one the plan says first, those the shop has not last, else coarse to fine.</param>
/// <param name="Seed">Seed of the trials.</param>
public sealed record GoTogether(ImmutableArray<PlacedHole> Pins, ImmutableArray<Length> ScaleHoles, double WantedShare, PlacingWay? Said, ImmutableArray<WayChance> Ways, ulong Seed)
{
    /// <summary>The seed when none is given.</summary>
    public const ulong UsualSeed = 1;

    private const int MostTrialsForSizes = 4_000;

    /// <summary>The thickest rod.</summary>
    public Length Rod => Pins.Max(h => h.Pin!.Value);

    /// <summary>Pin holes with a rod.</summary>
    public static ImmutableArray<PlacedHole> PinsOf(Results r) => [.. r.Holes.Where(h => h.Pin is not null)];

    /// <summary>Diameters of the scales' holes: as the plan says, else the smallest reamer or drill owned that the rod enters, else the rod's own.</summary>
    public static ImmutableArray<Length> ScaleHolesOf(Results r, ImmutableArray<PlacedHole> pins)
        => [.. pins.Select(h => r.Plan.Scales?.HoleDiameter ?? Tool(r.Shop, h.Pin!.Value)?.Diameter ?? h.Pin!.Value)];

    /// <summary>The smallest reamer or drill owned that is not under a size; null when none is.</summary>
    public static DrillSize? Tool(Shop shop, Length least) => DrillSeries.LargerOrEqual(shop.Reamers.Concat(shop.Drills), least);

    /// <summary>Every way; null when the plan puts on no scales or names no rods.</summary>
    /// <param name="r">The plan worked up.</param>
    /// <param name="seed">Seed of the trials.</param>
    /// <param name="trials">How many trials for each way.</param>
    public static GoTogether? Of(Results r, ulong seed = UsualSeed, int trials = PinChance.UsualTrials)
    {
        var pins = PinsOf(r);
        if (r.Plan.Scales is not { } scales || pins.IsEmpty) return null;
        var holes = ScaleHolesOf(r, pins);
        return new(pins, holes, scales.WantedChanceShare, scales.HolesBy, Ways(), seed);

        ImmutableArray<WayChance> Ways()
            => [.. WayOfMaking.All.Select(w => Way(r, w, pins, holes, scales.WantedChanceShare, seed, trials)).OfType<WayChance>().OrderByDescending(w => w.Making.Way == scales.HolesBy).ThenByDescending(w => w.IsInShop)];
    }

    private static WayChance? Way(Results r, WayOfMaking way, ImmutableArray<PlacedHole> pins, ImmutableArray<Length> holes, double wanted, ulong seed, int trials)
    {
        if (Capability(r, way, pins) is not { } capability) return null;
        var sigma = PlacingScatter.Of(capability);
        var parts = way.Parts(pins, holes, sigma);
        var chance = PinChance.Of(parts, seed, trials);
        var (small, large) = capability.MeasuredSigma is null ? PlacingScatter.Band(way.Way) : (1, 1);
        var fewer = Math.Min(trials, MostTrialsForSizes);
        var zone = PlacingScatter.Zone(sigma);
        var rod = pins.Max(h => h.Pin!.Value);
        return new(
            way,
            capability,
            way.IsIn(r.Shop),
            chance,
            large > 1 ? At(large) : chance.Share,
            small < 1 ? At(small) : chance.Share,
            SmallestClearance.Of(parts, 1, wanted, seed, fewer),
            SmallestClearance.Of(parts, null, wanted, seed, fewer),
            FastenerClearance.Floating(rod, zone),
            FastenerClearance.Fixed(rod, zone, way.IsThroughTang ? Length.Zero : zone));

        double At(double share) => PinChance.Of(way.Parts(pins, holes, share * sigma), seed, fewer).Share;
    }

    /// <summary>How well the shop does a way, on the machine that makes the first pin hole.</summary>
    internal static PlacingCapability? Capability(Results r, WayOfMaking way, ImmutableArray<PlacedHole> pins)
        => way.In(r.Shop, r.Drilling.Holes.FirstOrDefault(h => h.Hole.Name == pins[0].Name)?.Machine?.Name);
}
