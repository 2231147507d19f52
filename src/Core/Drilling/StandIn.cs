using Tangwright.Foundation;

namespace Tangwright.Core;

internal static class CuttingSpeeds
{
    public static Estimate<CuttingSpeed> For(Steel? steel, string condition, double? hb, DrillMetal metal)
    {
        var k = metal == DrillMetal.Carbide ? 2.5 : 1;
        var (l, h) = condition == "hardened" ? (12.0, 20.0) : steel?.Name.StartsWith('X') == true ? (50.0 * 0.3048 * k, 75 * 0.3048 * k) : (50 * 0.3048 * k, 60 * 0.3048 * k);
        return new(CuttingSpeed.OfMetresPerMin((l + h) / 2), CuttingSpeed.OfMetresPerMin(l), CuttingSpeed.OfMetresPerMin(h), SourceTag.CommonPractice);
    }
}

internal static class DrillFeed
{
    public static Estimate<double> For(Length d)
    {
        var (l, h) = d.Mm < 3.2 ? (0.025, 0.05) : d.Mm < 6.35 ? (0.05, 0.1) : d.Mm < 12.7 ? (0.1, 0.18) : (0.18, 0.38);
        return new((l + h) / 2, l, h, SourceTag.CommonPractice);
    }
}

internal static class PilotSize
{
    public static Estimate<Length> For(Length d, bool split) => new(d / 3, d * (split ? 0.1 : 0.2), d / 2, SourceTag.CommonPractice);
}

internal static class PointLength
{
    public static Length Of(Length d, Angle point) => d / (2 * Math.Tan(point.Degrees * Math.PI / 360));
}

internal static class SpotDepth
{
    public static Length Of(Length d, Angle point) => PointLength.Of(d, point);
}

internal static class ThroughDepth
{
    public static Length Of(Length t, Length d, Angle point) => t + PointLength.Of(d, point) + Length.OfMm(1.25);
}

internal static class PeckRule
{
    public static Length? For(Length t, Length d) => t.Mm <= 3 * d.Mm ? null : Length.OfMm(Math.Min(d.Mm, t.Mm / 3));
}

internal static class ReamingSpeeds
{
    public const double FeedFactor = 2.5;

    public static Estimate<CuttingSpeed> For(Estimate<CuttingSpeed> v)
    {
        CuttingSpeed K(CuttingSpeed x, double k) => CuttingSpeed.OfMetresPerMin(k * x.MetresPerMin);
        return new(K(v.Value, 0.6), K(v.Low, 0.5), K(v.High, 0.67), SourceTag.CommonPractice);
    }
}
