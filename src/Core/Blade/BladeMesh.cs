using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>What a triangle of the solid belongs to.</summary>
public enum BladeFace
{
    /// <summary>Steel as thick as the stock.</summary>
    Flat,

    /// <summary>The ground bevel.</summary>
    Bevel,

    /// <summary>The sharpened facet.</summary>
    Facet,

    /// <summary>Outline, holes and the step at the plunge line.</summary>
    Wall,
}

/// <summary>The piece at one stage as a solid of triangles, lower left at the origin, lower face on z = 0. mm.</summary>
/// <param name="Stage">The stage.</param>
/// <param name="Solid">The solid.</param>
/// <param name="Faces">What each triangle belongs to.</param>
/// <param name="Lines">Lines to draw, pairs of points: outline, rims, end of the bevel, facet, plunge line.</param>
/// <param name="Figure">Volume by the figures of the stage, broken edges not taken off: the solid has none.</param>
/// <param name="BrokenEdges">Volume the broken edges take off at this stage.</param>
/// <param name="ThicknessOffMm">Largest difference between the solid's thickness and the law of the bevel, mm.</param>
/// <param name="OutlineOffMm">Largest distance of a side from the outline or a rim, mm.</param>
public sealed record BladeMesh(Stage Stage, TriangleMesh Solid, ImmutableArray<BladeFace> Faces, ImmutableArray<int> Lines, Volume Figure, Volume BrokenEdges, double ThicknessOffMm, double OutlineOffMm)
{
    /// <summary>Volume of the solid over that of the figures, less one.</summary>
    public double VolumeOffShare => (Solid.VolumeMm3 / Figure.Mm3) - 1;

    /// <summary>The solid; a fault when the outline or the holes run into one another, so that there is none.</summary>
    /// <param name="results">The plan, worked up.</param>
    /// <param name="stage">The stage.</param>
    public static Checked<BladeMesh> Of(Results results, Stage stage)
    {
        var plan = results.Plan;
        var piece = stage switch
        {
            Stage.Blank => new Region(Rectangle(results.Bench.StockBox), []),
            Stage.Profiled => new Region(results.Piece.Outer, []),
            _ => results.Piece,
        };
        if (Unsound(results, piece) is { } fault) return Checked<BladeMesh>.Bad(fault);
        var profile = Profile(plan, stage);
        var edge = profile is null ? null : EdgeSpan.Of(plan, piece);
        var ground = edge is null ? null : new SteelThickness(piece, edge, plan.Bevel!.Plunge, profile!);
        if (BladePlan.Of(piece, edge, ground, FaceThickness.Of(plan, stage)) is not { } flat) return Checked<BladeMesh>.Bad(Touching);
        var lifted = new BladeLift(flat, plan.Stock.Thickness.Mm, oneSided: plan.Bevel is { OneSided: true });
        var solid = lifted.Solid(piece.Outer.Bounds);
        if (solid.OpenSides > 0 || solid.Collapsed > 0) return Checked<BladeMesh>.Bad(Touching);
        var broken = stage is Stage.BeforeHardening or Stage.Finished ? BrokenEdgeSteel.Of(plan, results.Holes, results.Piece).AreaMm2 : 0;
        var figure = results.At(stage)!.Volume.Mm3 + broken;
        return Checked<BladeMesh>.Good(new BladeMesh(stage, solid, lifted.Faces, lifted.Lines, Volume.OfMm3(figure), Volume.OfMm3(broken), flat.WorstMm(lifted.FaceOf), BladePlan.ChordMm));
    }

    private static Fault Touching => Fault.OfFile("solid", "parts of the outline or of its holes come too close to one another to make a solid", "look at the findings and leave steel between them");

    private static Path Rectangle(Box b) => Path.Polygon(new(b.MinX, b.MinY), new(b.MaxX, b.MinY), new(b.MaxX, b.MaxY), new(b.MinX, b.MaxY));

    private static GrindProfile? Profile(Plan plan, Stage stage) => (stage, plan.Bevel) switch
    {
        (Stage.Finished, not null) => GrindProfile.Finished(plan),
        (Stage.BeforeHardening, { Ground: GroundWhen.BeforeHardening }) => GrindProfile.BeforeHardening(plan),
        _ => null,
    };

    private static Fault? Unsound(Results r, Region piece)
    {
        if (Crossings.Of(piece.Outer, atMost: 1).Length > 0) return Fault.OfFile("solid", "the outline meets itself", "draw it so that it bounds one piece");
        if (piece.Holes.IsEmpty) return null;
        for (var i = 0; i < r.Holes.Length; i++)
        {
            var (hole, radius) = (r.Holes[i], r.Holes[i].Diameter.Mm / 2);
            if (!Inside.Of(piece.Outer, hole.At) || Nearest.Distance(piece.Outer, hole.At) < radius + LeastWebMm)
                return Fault.OfFile("solid", $"hole {hole.Name} runs out of the outline", "move it or make it smaller");
            foreach (var other in r.Holes.Skip(i + 1))
            {
                if (hole.At.To(other.At) < radius + (other.Diameter.Mm / 2) + LeastWebMm) return Fault.OfFile("solid", $"holes {hole.Name} and {other.Name} run into one another", "move one of them or make it smaller");
            }
        }

        return null;
    }

    private static double LeastWebMm => 5 * BladePlan.ChordMm;
}
