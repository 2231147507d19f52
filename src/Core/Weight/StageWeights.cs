using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Volume, mass and balance of the steel at every stage. Tapers are ground with the bevel: they count before hardening when the bevel is ground before, or when there is none; else from the finished piece on. The drilled piece is flat.</summary>
public static class StageWeights
{
    /// <summary>The stages in order: as sawn, profiled, drilled, before hardening, finished, and assembled when the plan puts anything on the steel and its density is known. Exact for the plan as written; the mass is left out without the steel's density.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="holes">Its holes.</param>
    /// <param name="piece">Outline less holes.</param>
    /// <param name="bench">Gives the sawn rectangle.</param>
    /// <param name="steel">The steel; null when not known.</param>
    /// <param name="handle">Parts of the handle, weighed.</param>
    public static ImmutableArray<StageFigures> Of(Plan plan, ImmutableArray<PlacedHole> holes, Region piece, BenchDatum bench, Steel? steel, ImmutableArray<PlacedMass> handle = default)
    {
        var t = plan.Stock.Thickness.Mm;
        var box = bench.StockBox;
        var blank = Moments.Of(Path.Polygon(new(box.MinX, box.MinY), new(box.MaxX, box.MinY), new(box.MaxX, box.MaxY), new(box.MinX, box.MaxY))) * t;
        var profiled = Moments.Of(piece.Outer) * t;
        var drilled = Moments.Of(piece) * t;
        var (soft, hard) = Bevelled(plan, piece, drilled);
        var broken = BrokenEdgeSteel.Of(plan, holes, piece);
        ImmutableArray<StageFigures> steelStages =
        [
            Figures(Stage.Blank, blank),
            Figures(Stage.Profiled, profiled),
            Figures(Stage.Drilled, drilled),
            Figures(Stage.BeforeHardening, soft - broken),
            Figures(Stage.Finished, hard - broken),
        ];
        return (plan.AddedMasses.IsEmpty && handle.IsDefaultOrEmpty) || steel?.Density is not { } density ? steelStages : steelStages.Add(Assembled(plan, steelStages[^1], density.Value, handle));

        StageFigures Figures(Stage stage, Moments solid)
        {
            var volume = Volume.OfMm3(solid.AreaMm2);
            var (along, across) = FromDatum.Of(plan, solid.Centroid);
            return new StageFigures(stage, volume, steel?.Density is { } d ? volume * d.Value : null, solid.Centroid, along, across, solid);
        }
    }

    /// <summary>The finished steel with what the plan puts on it.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="finished">The finished steel.</param>
    /// <param name="density">Its density.</param>
    /// <param name="handle">Parts of the handle, weighed.</param>
    public static StageFigures Assembled(Plan plan, StageFigures finished, Density density, ImmutableArray<PlacedMass> handle = default)
    {
        var solid = PlacedMass.Of(plan).Concat(handle.IsDefault ? [] : handle).Aggregate(finished.Solid, (sum, m) => sum + (m.Water * (1 / density.GramsPerCm3)));
        var (along, across) = FromDatum.Of(plan, solid.Centroid);
        return new StageFigures(Stage.Assembled, finished.Volume, Volume.OfMm3(solid.AreaMm2) * density, solid.Centroid, along, across, solid);
    }

    // the steel before hardening and when finished, sharp edges not broken yet
    private static (Moments Soft, Moments Hard) Bevelled(Plan plan, Region piece, Moments drilled)
    {
        var hard = plan.DistalTaper is null && plan.TangTaper is null ? drilled : TaperedPlate.Of(piece, FaceThickness.Of(plan));
        var soft = FaceThickness.IsTapered(plan, Stage.BeforeHardening) ? hard : drilled;
        if (plan.Bevel is not { } bevel || EdgeSpan.Of(plan, piece) is not { } edge) return (soft, hard);
        if (bevel.Ground == GroundWhen.AfterHardening) return (soft, hard - BevelSolid.Removed(piece, edge, bevel.Plunge, GrindProfile.Finished(plan))[0]);
        var both = BevelSolid.Removed(piece, edge, bevel.Plunge, GrindProfile.BeforeHardening(plan), GrindProfile.Finished(plan));
        return (soft - both[0], hard - both[1]);
    }
}
