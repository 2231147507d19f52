using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Steel a face loses in the hardening oven: the layer that has lost a tenth of its carbon or more, and the steel under the scale. mm.</summary>
/// <remarks>Carbon: diffusion in austenite from a face kept without carbon, D = 2.3e-5 exp(−148 000 / R T) m²/s, nine tenths left at 2.326 √(D t). Scale on iron: X² = kp t, kp = 6.1 exp(−169 452 / R T) cm²/s, of which X / 1.78 was steel. Both are upper bounds for carbon steel in open air; stainless scales far less.</remarks>
[Formula("steel lost on a face in the oven: 2.326 √(D t) without carbon, √(kp t) / 1.78 to scale", SourceTag.FromMemory, "Carbon steel in open air, 790 to 1100 °C, minutes to an hour; foil, coating or a low-oxygen box a quarter (common practice)")]
public static class SurfaceLoss
{
    private const double GasJPerMolK = 8.314;

    /// <summary>Share left when the face is protected.</summary>
    public const double ProtectedShare = 0.25;

    /// <summary>Depth with under nine tenths of the carbon, mm.</summary>
    public static double CarbonMm(Temperature at, double minutes) => 2.326 * Math.Sqrt(2.3e-5 * Math.Exp(-148_000 / (GasJPerMolK * (at.Celsius + 273.15))) * minutes * 60) * 1000;

    /// <summary>Steel turned to scale, mm.</summary>
    public static double ScaleMm(Temperature at, double minutes) => Math.Sqrt(6.1 * Math.Exp(-169_452 / (GasJPerMolK * (at.Celsius + 273.15))) * minutes * 60) * 10 / 1.78;

    /// <summary>Both, one face, mm.</summary>
    public static double FaceMm(Temperature at, double minutes, bool isProtected) => (CarbonMm(at, minutes) + ScaleMm(at, minutes)) * (isProtected ? ProtectedShare : 1);
}
