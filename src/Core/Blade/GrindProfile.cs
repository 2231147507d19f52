using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Thickness of the ground steel over the plane of the piece. mm.</summary>
/// <remarks>
/// At a distance d from the sharpened part, along the shortest way to it, the steel is as thick as the thinnest of these: the flat faces T there; once sharpened 2 d tan φ, d tan φ when one face is ground, φ per side, the apex staying where it is;
/// and up to the height h of the bevel its face. A flat face is the chord from te at d = 0 to T_top, the thickness of the faces at d = h (similar triangles). A hollow one lies on the circle of the wheel through both ends of that chord,
/// a convex one on the circle of the bulge, which without a radius runs tangent into the flat: R = (h² + z²) / (2 z), z the rise of one face. A constant angle α has no height: te + 2 d tan α, te + d tan α when one face is ground, as far as the flat faces.
/// A hollow without a wheel is given the flat law; a circle too small to reach from end to end is taken as the smallest that does.
/// </remarks>
/// <param name="StockMm">Thickness T of the stock, mm.</param>
/// <param name="EdgeMm">Thickness te at the edge before sharpening, mm.</param>
/// <param name="HeightMm">Height h of the bevel, mm; null for a full height, which is another from place to place, and for a constant angle.</param>
/// <param name="SharpenTangent">tan φ of the sharpening angle per side; 0 when not sharpened.</param>
[Formula("Thickness of a bevel at a distance from the edge, mm", "similar-triangles", "Flat at a height or at an angle, hollow off a wheel, convex; one face or both; tapered faces. Circles through the ends of the chord (Euclid III)")]
public sealed record GrindProfile(double StockMm, double EdgeMm, double? HeightMm, double SharpenTangent = 0)
{
    /// <summary>Thickness of the flat faces along the piece.</summary>
    public FaceThickness Faces { get; init; } = FaceThickness.Even(StockMm);

    /// <summary>Shape of the face.</summary>
    public Grind Grind { get; init; }

    /// <summary>Radius of the wheel of a hollow or of the bulge of a convex face, mm; null when not said.</summary>
    public double? RadiusMm { get; init; }

    /// <summary>tan α of a flat bevel of constant angle; null when there is a height.</summary>
    public double? FlatTangent { get; init; }

    /// <summary>Whether only one face is ground.</summary>
    public bool OneSided { get; init; }

    /// <summary>Whether it runs to the spine.</summary>
    public bool IsFull => HeightMm is null && FlatTangent is null;

    /// <summary>How many faces are ground.</summary>
    internal double Sides => OneSided ? 1 : 2;

    /// <summary>The law of a bevel before hardening: edge left thick, not sharpened.</summary>
    /// <param name="plan">A plan with a bevel.</param>
    public static GrindProfile BeforeHardening(Plan plan)
        => Of(plan, plan.Bevel!.EdgeBeforeHardening ?? plan.Bevel.EdgeFinished, 0, Stage.BeforeHardening);

    /// <summary>The law of the finished bevel: ground to its final edge and sharpened when the plan says at what angle.</summary>
    /// <param name="plan">A plan with a bevel.</param>
    public static GrindProfile Finished(Plan plan)
        => Of(plan, plan.Bevel!.EdgeFinished, plan.Bevel.SharpenPerSide is { } a ? Math.Tan(a.Radians) : 0, Stage.Finished);

    /// <summary>Thickness at a distance from the edge where the flat faces are even, mm.</summary>
    /// <param name="d">Distance, mm.</param>
    /// <param name="h">Height of the bevel there, mm.</param>
    public double At(double d, double h) => new FaceAlong(this, 0, 0, h).At(d);

    /// <summary>Distance beyond which nothing is taken anywhere, mm.</summary>
    /// <param name="h">Height of the bevel, mm; endless for a constant angle.</param>
    internal double Reach(double h)
    {
        var facet = SharpenTangent > 0 ? StockMm / (Sides * SharpenTangent) : 0;
        if (FlatTangent is { } tan) return Math.Max(facet, (StockMm - EdgeMm) / (Sides * tan));
        return facet <= h ? h : facet;
    }

    private static GrindProfile Of(Plan plan, Length edge, double sharpen, Stage stage)
    {
        var (bevel, stock) = (plan.Bevel!, plan.Stock.Thickness);
        return new(stock.Mm, Math.Min(stock.Mm, edge.Mm), bevel.Height?.Mm, sharpen)
        {
            Faces = FaceThickness.Of(plan, stage),
            Grind = bevel.Grind,
            RadiusMm = bevel.Grind switch { Grind.Hollow => 0.5 * bevel.Wheel?.Mm, Grind.Convex => bevel.Radius?.Mm, _ => null },
            FlatTangent = bevel.AnglePerSide is { } a ? Math.Tan(a.Radians) : null,
            OneSided = bevel.OneSided,
        };
    }
}
