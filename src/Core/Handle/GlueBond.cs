using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>What a glued face holds in shear: F = A τ.</summary>
[Formula("load a glued face holds in shear, N", "common practice", "two-part epoxy of a workshop on abraded, wiped steel, 4 to 6 MPa; against peel and a blow it holds next to nothing, and heat or wet wood takes it away: pins stay the path of the load")]
public static class GlueBond
{
    /// <summary>Least shear strength counted with, MPa.</summary>
    public const double LeastMPa = 4;

    /// <summary>Greatest shear strength counted with, MPa.</summary>
    public const double GreatestMPa = 6;

    /// <summary>The load of a bond made in a workshop.</summary>
    /// <param name="bonded">Glued area, pins and holes left out.</param>
    public static Estimate<Force> Of(Area bonded) => Of(bonded, LeastMPa, GreatestMPa);

    /// <summary>The load of a bond whose strength is known.</summary>
    /// <param name="bonded">Glued area, pins and holes left out.</param>
    /// <param name="leastMPa">Least shear strength, MPa.</param>
    /// <param name="greatestMPa">Greatest shear strength, MPa.</param>
    public static Estimate<Force> Of(Area bonded, double leastMPa, double greatestMPa)
        => new(Force.OfNewtons(0.5 * (leastMPa + greatestMPa) * bonded.Mm2), Force.OfNewtons(leastMPa * bonded.Mm2), Force.OfNewtons(greatestMPa * bonded.Mm2), SourceTag.CommonPractice);
}
