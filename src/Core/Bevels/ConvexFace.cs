using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>A convex bevel that runs tangent into flat faces. mm.</summary>
[Formula("convex bevel tangent to the flats: R = z / (1 − cos φ), h = R sin φ, or R = (h² + z²) / (2 z)", "circle-equation", "z the rise of one face, (T − te) / 2; φ its slope per side at the edge, up to 90°")]
public static class ConvexFace
{
    /// <summary>Radius for a slope at the edge, mm.</summary>
    public static double RadiusMm(double riseMm, Angle edgeSlope) => riseMm / (1 - Math.Cos(edgeSlope.Radians));

    /// <summary>Radius for a height, mm.</summary>
    public static double RadiusMm(double riseMm, double heightMm) => ((heightMm * heightMm) + (riseMm * riseMm)) / (2 * riseMm);

    /// <summary>Height for a radius and a slope at the edge, mm.</summary>
    public static double HeightMm(double radiusMm, Angle edgeSlope) => radiusMm * Math.Sin(edgeSlope.Radians);

    /// <summary>Slope per side at the edge of a bulge of a radius, through edge and shoulder: the lean of the straight line between them and asin(c / 2R).</summary>
    public static Angle EdgeSlope(double riseMm, double heightMm, double radiusMm)
        => Angle.OfRadians(Math.Atan2(riseMm, heightMm) + Math.Asin(Math.Min(1, Math.Sqrt((heightMm * heightMm) + (riseMm * riseMm)) / (2 * radiusMm))));

    /// <summary>Slope per side at the edge.</summary>
    public static Angle EdgeSlope(double riseMm, double heightMm) => Angle.OfRadians(2 * Math.Atan2(riseMm, heightMm));
}
