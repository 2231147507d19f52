using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Volume, mass and balance of the steel at every stage.</summary>
public static class StageWeights
{
    /// <summary>The five stages in order: as sawn, profiled, drilled, before hardening, finished. Exact for the plan as written; the mass is left out without the steel's density.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="holes">Its holes.</param>
    /// <param name="piece">Outline less holes.</param>
    /// <param name="bench">Gives the sawn rectangle.</param>
    /// <param name="steel">The steel; null when not known.</param>
    public static ImmutableArray<StageFigures> Of(Plan plan, ImmutableArray<PlacedHole> holes, Region piece, BenchDatum bench, Steel? steel)
    {
        var t = plan.Stock.Thickness.Mm;
        var box = bench.StockBox;
        var blank = Moments.Of(Path.Polygon(new(box.MinX, box.MinY), new(box.MaxX, box.MinY), new(box.MaxX, box.MaxY), new(box.MinX, box.MaxY))) * t;
        var profiled = Moments.Of(piece.Outer) * t;
        var drilled = Moments.Of(piece) * t;
        var (soft, hard) = Bevelled(plan, piece);
        var broken = BrokenEdgeSteel.Of(plan, holes, piece);
        return
        [
            Figures(Stage.Blank, blank),
            Figures(Stage.Profiled, profiled),
            Figures(Stage.Drilled, drilled),
            Figures(Stage.BeforeHardening, drilled - soft - broken),
            Figures(Stage.Finished, drilled - hard - broken),
        ];

        StageFigures Figures(Stage stage, Moments solid)
        {
            var volume = Volume.OfMm3(solid.AreaMm2);
            var (along, across) = FromDatum.Of(plan, solid.Centroid);
            return new StageFigures(stage, volume, steel?.Density is { } d ? volume * d.Value : null, solid.Centroid, along, across, solid);
        }
    }

    // what the bevel has taken before hardening and when finished
    private static (Moments Soft, Moments Hard) Bevelled(Plan plan, Region piece)
    {
        if (plan.Bevel is not { } bevel || EdgeSpan.Of(plan, piece) is not { } edge) return default;
        var finished = GrindProfile.Finished(bevel, plan.Stock.Thickness);
        if (bevel.Ground == GroundWhen.AfterHardening) return (default, BevelSolid.Removed(piece, edge, bevel.Plunge, finished)[0]);
        var both = BevelSolid.Removed(piece, edge, bevel.Plunge, GrindProfile.BeforeHardening(bevel, plan.Stock.Thickness), finished);
        return (both[0], both[1]);
    }
}
