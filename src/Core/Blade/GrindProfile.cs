using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Thickness of the ground steel as a function of the distance d to the sharpened part. mm.</summary>
/// <remarks>
/// Flat bevel: t = min(T, te + (T − te) d / h), the plain similar triangles of a wedge; once sharpened also t ≤ 2 d tan φ, φ per side, the apex staying where it is.
/// A bevel on one face only has the same thickness and mass; its centre plane differs. Hollow and convex faces are not built yet: they are given the flat law.
/// </remarks>
/// <param name="StockMm">Thickness T of the stock, mm.</param>
/// <param name="EdgeMm">Thickness te at the edge before sharpening, mm.</param>
/// <param name="HeightMm">Height h of the bevel, mm; null for a full height, which is another from place to place.</param>
/// <param name="SharpenTangent">tan φ of the sharpening angle per side; 0 when not sharpened.</param>
[Formula("Thickness of a flat bevel at a distance from the edge, mm", "similar-triangles", "Flat grinds; hollow and convex ones are given the flat law, and a finding says so")]
public sealed record GrindProfile(double StockMm, double EdgeMm, double? HeightMm, double SharpenTangent = 0)
{
    /// <summary>Most kinks the law can have.</summary>
    public const int MostKinks = 3;

    /// <summary>The law of a bevel before hardening: edge left thick, not sharpened.</summary>
    /// <param name="bevel">The bevel.</param>
    /// <param name="stock">Thickness of the stock.</param>
    public static GrindProfile BeforeHardening(Bevel bevel, Length stock)
        => new(stock.Mm, Math.Min(stock.Mm, (bevel.EdgeBeforeHardening ?? bevel.EdgeFinished).Mm), bevel.Height?.Mm);

    /// <summary>The law of the finished bevel: ground to its final edge and sharpened when the plan says at what angle.</summary>
    /// <param name="bevel">The bevel.</param>
    /// <param name="stock">Thickness of the stock.</param>
    public static GrindProfile Finished(Bevel bevel, Length stock)
        => new(stock.Mm, Math.Min(stock.Mm, bevel.EdgeFinished.Mm), bevel.Height?.Mm, bevel.SharpenPerSide is { } a ? Math.Tan(a.Radians) : 0);

    /// <summary>Thickness at a distance from the edge, mm.</summary>
    /// <param name="d">Distance, mm.</param>
    /// <param name="h">Height of the bevel there, mm.</param>
    public double At(double d, double h)
    {
        var t = Math.Min(StockMm, EdgeMm + ((StockMm - EdgeMm) * d / h));
        return SharpenTangent > 0 ? Math.Min(t, 2 * d * SharpenTangent) : t;
    }

    /// <summary>Distances at which the law has a kink, ascending; from the last on the thickness is that of the stock. mm.</summary>
    /// <param name="h">Height of the bevel there, mm.</param>
    /// <param name="kinks">Room for <see cref="MostKinks"/>.</param>
    /// <returns>How many.</returns>
    public int Kinks(double h, Span<double> kinks)
    {
        if (SharpenTangent > 0)
        {
            // the sharpened facet meets the bevel, or when it is flatter than the bevel the face itself
            var rise = (2 * SharpenTangent) - ((StockMm - EdgeMm) / h);
            var meet = rise > 0 ? EdgeMm / rise : double.PositiveInfinity;
            if (meet < h)
            {
                (kinks[0], kinks[1]) = (meet, h);
                return 2;
            }

            kinks[0] = StockMm / (2 * SharpenTangent);
            return 1;
        }

        kinks[0] = h;
        return 1;
    }

    /// <summary>Distance from which on the thickness is that of the stock, mm.</summary>
    /// <param name="h">Height of the bevel there, mm.</param>
    public double Reach(double h)
    {
        Span<double> kinks = stackalloc double[MostKinks];
        return kinks[Kinks(h, kinks) - 1];
    }
}
