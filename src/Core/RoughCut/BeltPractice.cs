using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>What a belt takes off over its life, a planning value with its band.</summary>
/// <param name="Belt">The belt.</param>
/// <param name="GramsPerMinute">Average over its life, g/min.</param>
/// <param name="LowGramsPerMinute">Lower end of the band, g/min.</param>
/// <param name="HighGramsPerMinute">Upper end, g/min.</param>
/// <param name="GramsPerBelt">Steel before it is worn out, g.</param>
/// <param name="Says">Where it comes from.</param>
public sealed record BeltRate(Belt Belt, double GramsPerMinute, double LowGramsPerMinute, double HighGramsPerMinute, double GramsPerBelt, string Says);

/// <summary>What belts take off: by the shop's log, else by its file, else by common practice for a 50 × 2000 mm belt at 1.1 to 1.5 kW and hand pressure.</summary>
public static class BeltPractice
{
    /// <summary>Band around a shop's own number: it moves with pressure and wear.</summary>
    private const double OwnBand = 0.25;

    // grit up to, g/min over the belt's life, low, high, g in its life
    private static readonly (double Grit, double Rate, double Low, double High, double Life)[] Usual =
    [
        (50, 17, 12, 24, 1200),
        (100, 11, 8, 17, 1000),
        (180, 5, 3.5, 8, 400),
        (320, 2, 1.2, 3, 120),
        (5000, 0.7, 0.4, 1, 40),
    ];

    /// <summary>The belts of the shop, coarsest first; a ceramic P36 belt when it names none.</summary>
    public static ImmutableArray<Belt> Owned(Shop shop) => shop.Belts.IsDefaultOrEmpty ? [new Belt("ceramic P36", 36, null, null)] : shop.Belts;

    /// <summary>The coarsest belt of the shop.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="densityGPerCm3">Density of the steel, g/cm³.</param>
    public static BeltRate Coarsest(Shop shop, double densityGPerCm3) => Of(shop, Owned(shop)[0], densityGPerCm3);

    /// <summary>One belt.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="belt">The belt.</param>
    /// <param name="densityGPerCm3">Density of the steel, g/cm³.</param>
    public static BeltRate Of(Shop shop, Belt belt, double densityGPerCm3)
    {
        var usual = Usual.First(u => belt.Grit <= u.Grit);
        var life = GrindingLog.GramsPerBelt(shop.GrindingLog, belt.Name) ?? belt.GramsPerBelt ?? usual.Life;
        if (GrindingLog.Range(GrindingLog.GramsPerMinute(shop.GrindingLog, belt.Name), usual.Low / usual.Rate, usual.High / usual.Rate) is { } log)
        {
            var batches = $"your log, {log.Batches} {(log.Batches == 1 ? "batch" : "batches")}";
            return new BeltRate(belt, log.Mean, log.Low, log.High, life, log.IsOwn ? $"{batches}: the next one with 80 in 100" : $"{batches}; its range is still that of common practice");
        }

        if (belt.GramsPerMinute is { } own) return new BeltRate(belt, own, own * (1 - OwnBand), own * (1 + OwnBand), life, "your own number");
        var most = shop.GrinderPowerW is { } power ? GrindingRate.GramsPerMinute(power, GrindingRate.UsualShare, GrindingRate.SharpJPerMm3, densityGPerCm3) : double.PositiveInfinity;
        return most < usual.Rate
            ? new BeltRate(belt, most, most * (usual.Low / usual.Rate), most * (usual.High / usual.Rate), life, "common practice, held down by the motor's power")
            : new BeltRate(belt, usual.Rate, usual.Low, Math.Max(usual.Rate, Math.Min(most, usual.High)), life, "common practice");
    }
}
