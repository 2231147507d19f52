using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>The speed to set on a machine for one tool.</summary>
[Formula("spindle speed to set, rpm, from a band of cutting speed", SourceTag.CommonPractice, "n = v / (pi d); a speed of the machine at or under the middle of the band, else the nearest within it, else the fastest under it; none when the slowest is above the band")]
public static class SpindleSpeed
{
    /// <summary>Rounding left over from turning one unit into another.</summary>
    private const double Slack = 1 + 1e-9;

    /// <summary>The band in rpm and the speed to set; null when the machine's slowest speed is above the band.</summary>
    /// <param name="machine">The machine.</param>
    /// <param name="speed">Band of cutting speed.</param>
    /// <param name="diameter">Diameter of the tool where it cuts.</param>
    public static SpeedChoice? Of(Machine machine, Estimate<CuttingSpeed> speed, Length diameter)
    {
        var (low, target, high) = (speed.Low.TurnsPerMin(diameter), speed.Value.TurnsPerMin(diameter), speed.High.TurnsPerMin(diameter));
        return Set(machine, low, target, high) is { } set ? new SpeedChoice(low, target, high, set, speed.SourceKey) : null;
    }

    /// <summary>Largest diameter whose band the slowest speed of a machine still lies in.</summary>
    public static Length Largest(Machine machine, Estimate<CuttingSpeed> speed)
        => Length.OfMm(1000 * speed.High.MetresPerMin / (Math.PI * machine.SpeedsRpm[0]));

    private static double? Set(Machine machine, double low, double target, double high)
    {
        var speeds = machine.SpeedsRpm;
        if (speeds[0] > high * Slack) return null;
        if (machine.SpeedIsStepless) return Math.Clamp(target, speeds[0], speeds[^1]);
        var (under, over) = (double.NaN, double.NaN);
        foreach (var s in speeds)
        {
            if (s <= target * Slack) under = s;
            else if (double.IsNaN(over) && s <= high * Slack) over = s;
        }

        return under * Slack >= low || double.IsNaN(over) ? under : over;
    }
}
