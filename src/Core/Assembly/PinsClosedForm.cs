using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Where the chance that a pin goes through two parts can be written down.</summary>
/// <remarks>
/// Held to their places, a hole's two centres are off one another by N(0, σ1² + σ2²) along each axis, so the distance is Rayleigh's; the rod goes in while it is at most half of both clearances together.
/// Laid as they like on two pins, shift and turn take up all but the difference of the two spacings, N(0, 2 (σ1² + σ2²)); it may be what both pins leave, twice that.
/// What is across the line of the pins is taken up by the turn; it changes the spacing by its square over twice the spacing only.
/// </remarks>
[Formula("Chance that pins go through two parts: 1 - exp(-R²/2σ²) for each held hole, erf(R/σ) for two pins in parts laid as they like, 1 for one; R half of both clearances together, σ² = σ1² + σ2²", "rayleigh-circle", "Two parts; all holes of a part alike. Exact but for the small turn")]
public static class PinsClosedForm
{
    /// <summary>Each hole of two parts held in their places.</summary>
    public static double HeldShare(int pins, double roomMm, double sigmaMm) => roomMm < 0 ? 0 : Math.Pow(1 - Math.Exp(-roomMm * roomMm / (2 * sigmaMm * sigmaMm)), pins);

    /// <summary>Two pins through two parts that are laid as they like.</summary>
    public static double TwoPinsShare(double roomMm, double sigmaMm) => roomMm < 0 ? 0 : ChiSquared.ShareBelow(2 * roomMm * roomMm / (sigmaMm * sigmaMm), 1);
}
