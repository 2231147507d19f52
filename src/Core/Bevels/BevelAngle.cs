using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Angle, height, edge and stock of a flat bevel, any one from the others. mm; angles per side.</summary>
[Formula("flat bevel: tan α = (T − te) / (2 h), (T − te) / h when one face is ground", "similar-triangles", "Plane faces; α per side, both together 2α, or α when one face is ground")]
public static class BevelAngle
{
    /// <summary>Angle per side.</summary>
    public static Angle Of(double stockMm, double edgeMm, double heightMm, bool oneSided = false) => Angle.OfRadians(Math.Atan((stockMm - edgeMm) / (Sides(oneSided) * heightMm)));

    /// <summary>Height, mm.</summary>
    public static double HeightMm(double stockMm, double edgeMm, Angle perSide, bool oneSided = false) => (stockMm - edgeMm) / (Sides(oneSided) * Math.Tan(perSide.Radians));

    /// <summary>Thickness at the edge, mm; below 0 when the faces meet before it.</summary>
    public static double EdgeMm(double stockMm, double heightMm, Angle perSide, bool oneSided = false) => stockMm - (Sides(oneSided) * heightMm * Math.Tan(perSide.Radians));

    /// <summary>Thickness of the stock, mm.</summary>
    public static double StockMm(double edgeMm, double heightMm, Angle perSide, bool oneSided = false) => edgeMm + (Sides(oneSided) * heightMm * Math.Tan(perSide.Radians));

    /// <summary>How far a point at a distance from the line a piece is tilted about is lifted: z = L sin α. mm.</summary>
    public static double LiftMm(double distanceMm, Angle tilt) => distanceMm * Math.Sin(tilt.Radians);

    private static double Sides(bool oneSided) => oneSided ? 1 : 2;
}
