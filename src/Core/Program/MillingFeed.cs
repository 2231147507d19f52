using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Speed and feed of an end mill in annealed high-carbon steel.</summary>
[Formula("spindle speed, rpm, and feed, mm/min, of an end mill", SourceTag.CommonPractice, "n = v / (pi d), v 80 m/min for carbide and 25 m/min for high-speed steel, F = n z fz; fz 0.004 to 0.0055 of the diameter for 3 to 12 mm, or as the shop file says")]
public static class MillingFeed
{
    private const double CarbideMetresPerMin = 80;
    private const double HighSpeedSteelMetresPerMin = 25;

    /// <summary>Middles of the usual chip loads of carbide, mm a tooth, by diameter, mm.</summary>
    private static readonly (double DiameterMm, double ToothMm)[] Loads = [(3, 0.0125), (6, 0.03), (8, 0.04), (12, 0.065)];

    /// <summary>Spindle speed on a machine, rpm.</summary>
    public static double TurnsPerMin(EndMill mill, Machine machine)
    {
        var wanted = 1000 * (mill.IsCarbide ? CarbideMetresPerMin : HighSpeedSteelMetresPerMin) / (Math.PI * mill.Diameter.Mm);
        if (machine.SpeedsRpm.IsDefaultOrEmpty) return Math.Round(wanted);
        if (machine.SpeedIsStepless) return Math.Round(Math.Clamp(wanted, machine.SpeedsRpm[0], machine.SpeedsRpm[^1]));
        return machine.SpeedsRpm.LastOrDefault(s => s <= wanted, machine.SpeedsRpm[0]);
    }

    /// <summary>Feed of one tooth, mm.</summary>
    public static double ToothMm(EndMill mill)
    {
        if (mill.FeedPerTooth is { } said) return said.Mm;
        var d = mill.Diameter.Mm;
        if (d <= Loads[0].DiameterMm) return Loads[0].ToothMm * d / Loads[0].DiameterMm;
        for (var i = 1; i < Loads.Length; i++)
        {
            var (from, to) = (Loads[i - 1], Loads[i]);
            if (d <= to.DiameterMm) return from.ToothMm + ((to.ToothMm - from.ToothMm) * (d - from.DiameterMm) / (to.DiameterMm - from.DiameterMm));
        }

        return Loads[^1].ToothMm;
    }

    /// <summary>Feed on a straight cut, mm/min.</summary>
    public static double StraightMmPerMin(EndMill mill, Machine machine) => TurnsPerMin(mill, machine) * mill.Flutes * ToothMm(mill);
}
