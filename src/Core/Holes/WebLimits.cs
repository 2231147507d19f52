using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>How much steel must stay between holes and round them. Common practice: as much as the stock is thick; under half of that, or under 1.5 mm, it tears, warps and overheats.</summary>
[Formula("Least web between holes and round them, mm", SourceTag.CommonPractice, "Flat stock with drilled holes")]
public static class WebLimits
{
    /// <summary>Under this a web is an error whatever the stock, mm; common practice.</summary>
    public const double LeastMm = 1.5;

    /// <summary>Under this a web is a warning, mm: the stock thickness; common practice.</summary>
    public static double WarnMm(Length thickness) => Math.Max(thickness.Mm, LeastMm);

    /// <summary>Under this a web is an error, mm: half the stock thickness, at least <see cref="LeastMm"/>; common practice.</summary>
    public static double ErrorMm(Length thickness) => Math.Max(0.5 * thickness.Mm, LeastMm);

    /// <summary>A web as it is judged, mm: what differs from touching by less than 1e-9 mm, rounding of the coordinates, is touching, 0.</summary>
    public static double Settled(double webMm) => Math.Abs(webMm) < 1e-9 ? 0 : webMm;

    /// <summary>How grave a web is; null when it passes. A millionth of a millimetre short still passes.</summary>
    public static Severity? Judge(double webMm, Length thickness)
        => webMm >= WarnMm(thickness) - 1e-6 ? null : webMm >= ErrorMm(thickness) - 1e-6 ? Severity.Warning : Severity.Error;
}
