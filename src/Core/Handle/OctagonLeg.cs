using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Legs of the cuts that make a rectangle eight-sided and the eight sides sixteen.</summary>
/// <remarks>
/// A square of side a becomes a regular octagon when each corner is cut off by legs a (1 − 1/√2). A regular octagon of side b becomes sixteen-sided when legs b / (2 + 2 cos 22.5°) are cut off each
/// corner: what is left of a side, b − 2ℓ, is then as long as the cut, 2ℓ cos 22.5°. Plane geometry (Abramowitz and Stegun, circular functions).
/// </remarks>
[Formula("Legs of the cuts from a square to a regular octagon and on to sixteen sides, mm", "abramowitz-stegun", "Exact for a square; of a rectangle the lesser side is taken, so that the longer keeps a wider flat")]
public static class OctagonLeg
{
    /// <summary>Leg along both sides of each corner, mm.</summary>
    /// <param name="lesserSideMm">The lesser side of the rectangle, mm.</param>
    public static double FromSquareMm(double lesserSideMm) => lesserSideMm * (1 - Math.Sqrt(0.5));

    /// <summary>Leg along both sides of each of the eight corners, mm.</summary>
    /// <param name="facetMm">Width of a facet of the octagon, mm.</param>
    public static double FromOctagonMm(double facetMm) => facetMm / (2 + (2 * Math.Cos(Math.PI / 8)));
}
