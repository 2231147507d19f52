using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Push and torque of a drill as a band: the lower and the higher of two published models, their middle between.</summary>
/// <param name="Thrust">Push.</param>
/// <param name="Torque">Torque at the spindle.</param>
public sealed record DrillLoad(Estimate<Force> Thrust, Estimate<Torque> Torque)
{
    /// <summary>Power at the spindle at so many turns a minute.</summary>
    public Estimate<Power> PowerAt(double turnsPerMin)
        => new(Power.Of(Torque.Value, turnsPerMin), Power.Of(Torque.Low, turnsPerMin), Power.Of(Torque.High, turnsPerMin), Torque.SourceKey, Torque.OutsideRange);

    /// <summary>The band for one drill.</summary>
    internal static DrillLoad Of(Steel? steel, double? hb, Length drill, Length? pilot, double feedMmPerTurn, bool isSplitPoint)
    {
        _ = steel;
        var kd = (hb ?? 200) > 300 ? 34000 : 24000.0;
        var (ff, d) = (Math.Pow(feedMmPerTurn, 0.8), drill.Mm);
        var p = pilot?.Mm / d ?? 0;
        var t = (0.05 * kd * ff * 1.35 * Math.Pow(d, 0.8) + 0.007 * kd * d * d * 0.03) * (p > 0 ? 0.5 * (1 - p) : 1) * (isSplitPoint ? 0.7 : 1);
        var m = kd * ff * Math.Pow(d, 1.8) * 1.08 / 40000 * (1 - (p * p));
        var t2 = 570 * 2.22 * d * Math.Pow(feedMmPerTurn, 0.85) * (p > 0 ? 0.5 * (1 - p) : 1);
        var m2 = 2.22 * d * d * (0.63 + (16.84 * feedMmPerTurn)) / 100 * (1 - (p * p));
        return new(
            new(Force.OfNewtons((t + t2) / 2), Force.OfNewtons(Math.Min(t, t2)), Force.OfNewtons(Math.Max(t, t2)), SourceTag.CommonPractice),
            new(Foundation.Torque.OfNewtonMetres((m + m2) / 2), Foundation.Torque.OfNewtonMetres(Math.Min(m, m2)), Foundation.Torque.OfNewtonMetres(Math.Max(m, m2)), SourceTag.CommonPractice));
    }
}
