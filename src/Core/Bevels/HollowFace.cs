using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>A hollow bevel off a wheel: both faces pass through edge and shoulder on circles of the wheel. mm.</summary>
/// <remarks>With z = (T − te) / 2, one face's rise, c² = h² + z², a = atan(z / h), δ = asin(c / 2R): slope a − δ at the edge and a + δ at the shoulder; below 0 at the edge the steel is thinner behind the edge than at it.</remarks>
/// <param name="StockMm">Thickness T at the shoulder.</param>
/// <param name="EdgeMm">Thickness te at the edge.</param>
/// <param name="HeightMm">Height h.</param>
/// <param name="RadiusMm">Radius R of the wheel.</param>
[Formula("hollow bevel: slopes, depth and thickness from wheel, height, edge and stock", "circle-equation", "Wheel square to the edge, at least half the chord in radius; edge straight along the width of the wheel")]
public sealed record HollowFace(double StockMm, double EdgeMm, double HeightMm, double RadiusMm)
{
    private double Rise => 0.5 * (StockMm - EdgeMm);

    private double Chord => Math.Sqrt((HeightMm * HeightMm) + (Rise * Rise));

    private double Lean => Math.Atan2(Rise, HeightMm);

    private double Half => Math.Asin(Math.Min(1, Chord / (2 * RadiusMm)));

    /// <summary>Whether the wheel reaches from edge to shoulder at all.</summary>
    public bool IsPossible => RadiusMm >= 0.5 * Chord;

    /// <summary>Slope of one face at the edge; below 0 it runs inwards.</summary>
    public Angle EdgeSlope => Angle.OfRadians(Lean - Half);

    /// <summary>Slope of one face at the shoulder.</summary>
    public Angle TopSlope => Angle.OfRadians(Lean + Half);

    /// <summary>Depth of the hollow under the straight line from edge to shoulder, mm.</summary>
    public double DepthMm => RadiusMm - Math.Sqrt((RadiusMm * RadiusMm) - (0.25 * Chord * Chord));

    /// <summary>Thickness at a height above the edge, mm; below 0 where the wheels meet.</summary>
    public double ThicknessMm(double upMm)
    {
        var (y, z) = Centre;
        return 2 * (z - Math.Sqrt(Math.Max(0, (RadiusMm * RadiusMm) - ((upMm - y) * (upMm - y)))));
    }

    /// <summary>The thinnest place: how high above the edge and how thick, mm. At the edge itself when nothing behind it is thinner.</summary>
    public (double UpMm, double ThicknessMm) Thinnest
    {
        get
        {
            var (y, z) = Centre;
            return y <= 0 ? (0, EdgeMm) : (y, 2 * (z - RadiusMm));
        }
    }

    /// <summary>Least radius of a wheel with which nothing behind the edge is thinner than the edge: (h² + z²) / (T − te), near h² / (T − te). mm.</summary>
    public static double LeastRadiusMm(double stockMm, double edgeMm, double heightMm)
    {
        var z = 0.5 * (stockMm - edgeMm);
        return ((heightMm * heightMm) + (z * z)) / (2 * z);
    }

    /// <summary>Greatest height for a wheel, mm.</summary>
    public static double MostHeightMm(double stockMm, double edgeMm, double radiusMm)
    {
        var z = 0.5 * (stockMm - edgeMm);
        return Math.Sqrt(Math.Max(0, (2 * z * radiusMm) - (z * z)));
    }

    /// <summary>Least thickness of the stock for a wheel and a height, mm; null when the wheel is smaller than the height.</summary>
    public static double? LeastStockMm(double edgeMm, double heightMm, double radiusMm)
        => radiusMm >= heightMm ? edgeMm + (2 * (radiusMm - Math.Sqrt((radiusMm * radiusMm) - (heightMm * heightMm)))) : null;

    private (double Y, double Z) Centre => (-RadiusMm * Math.Sin(Lean - Half), (0.5 * EdgeMm) + (RadiusMm * Math.Cos(Lean - Half)));
}
