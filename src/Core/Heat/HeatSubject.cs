using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>A thickness of the piece as it goes into the quench.</summary>
/// <param name="Where">Where, in trade words: "edge", "spine".</param>
/// <param name="ThicknessMm">Thickness, mm.</param>
/// <param name="UpMm">Height above the edge, mm; 0 when there is no bevel yet.</param>
public readonly record struct QuenchStation(string Where, double ThicknessMm, double UpMm);

/// <summary>What is to be hardened: a plan's piece, or a bare thickness of a steel.</summary>
/// <param name="Steel">The steel.</param>
/// <param name="Shop">The shop.</param>
/// <param name="Wish">What the plan asks for.</param>
/// <param name="Stock">Full thickness.</param>
/// <param name="Stations">Thicknesses in the quench, edge first.</param>
/// <param name="Condition">Condition of the bar; empty when not said.</param>
/// <param name="Weight">Weight of a piece in the quench; null when not known.</param>
/// <param name="Size">Length and height of a piece; null when not known.</param>
/// <param name="Pieces">How many pieces.</param>
public sealed record HeatSubject(
    Steel Steel,
    Shop Shop,
    HeatWish Wish,
    Length Stock,
    ImmutableArray<QuenchStation> Stations,
    string Condition,
    Mass? Weight,
    (Length Length, Length Height)? Size,
    int Pieces)
{
    private static readonly (double Share, string Where)[] Places = [(0, "edge"), (0.25, "a quarter up the bevel"), (0.5, "half up the bevel"), (0.75, "three quarters up the bevel")];

    /// <summary>The piece of a plan; null when the steel has no file.</summary>
    /// <param name="r">The plan worked up.</param>
    /// <param name="pieces">How many pieces.</param>
    public static HeatSubject? Of(Results r, int pieces = 1)
        => r.Steel is null ? null : new(
            r.Steel,
            r.Shop,
            r.Plan.Heat ?? new HeatWish(),
            r.Plan.Stock.Thickness,
            StationsOf(r),
            r.Plan.Stock.Condition,
            r.At(Stage.BeforeHardening)?.Mass,
            (r.Outline.Length, r.Outline.Height),
            pieces);

    /// <summary>A bare thickness.</summary>
    /// <param name="steel">The steel.</param>
    /// <param name="shop">The shop.</param>
    /// <param name="wish">What is asked for.</param>
    /// <param name="thickness">Its thickness.</param>
    /// <param name="pieces">How many pieces.</param>
    public static HeatSubject Of(Steel steel, Shop shop, HeatWish wish, Length thickness, int pieces = 1) => new(steel, shop, wish, thickness, [new("full thickness", thickness.Mm, 0)], "", null, null, pieces);

    private static ImmutableArray<QuenchStation> StationsOf(Results r)
    {
        var stock = r.Plan.Stock.Thickness.Mm;
        if (r.Plan.Bevel is not { } bevel || r.Plan.Edge is not { } edge || bevel.Ground == GroundWhen.AfterHardening) return [new("full thickness", stock, 0)];
        var law = GrindProfile.BeforeHardening(r.Plan);
        var middle = 0.5 * (edge.From.X + edge.To.X);
        var height = bevel.Height?.Mm ?? HeightAt(r, middle, law);
        var face = new FaceAlong(law, middle, 0, height);
        var top = law.Faces.At(middle);
        return [.. Places.Select(p => new QuenchStation(p.Where, face.At(p.Share * height), p.Share * height)), new QuenchStation("spine", top, Math.Max(height, r.Outline.Height.Mm))];
    }

    private static double HeightAt(Results r, double x, GrindProfile law)
    {
        if (law.FlatTangent is { } tan) return (law.StockMm - law.EdgeMm) / ((law.OneSided ? 1 : 2) * tan);
        return BevelStations.AtX(r, x)?.Stations is [var s, ..] ? s.Height.Mm : 0.6 * Math.Min(r.Outline.Height.Mm, r.Outline.Length.Mm);
    }
}
