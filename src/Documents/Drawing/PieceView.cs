using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>The piece seen from one face at a stated scale: where its points come to lie on the sheet.</summary>
internal sealed class PieceView
{
    /// <summary>Scales, drawing over real size, largest first; those of ISO 5455 and, as it allows, some between.</summary>
    private static readonly ImmutableArray<(double Factor, string Name)> Scales =
    [
        (10, "10:1"), (5, "5:1"), (2, "2:1"), (1, "1:1"), (1 / 1.5, "1:1.5"), (0.5, "1:2"), (0.4, "1:2.5"), (1 / 3.0, "1:3"), (0.25, "1:4"), (0.2, "1:5"),
        (0.1, "1:10"), (0.05, "1:20"), (0.02, "1:50"), (0.01, "1:100"), (0.005, "1:200"), (0.002, "1:500"), (0.001, "1:1000"),
    ];

    private readonly Transform _map;

    private PieceView(Results results, Transform map, double factor, string scaleName)
    {
        Results = results;
        _map = map;
        Factor = factor;
        ScaleName = scaleName;
        Outline = results.Plan.Outline.Transformed(map);
    }

    /// <summary>What is drawn.</summary>
    public Results Results { get; }

    /// <summary>Drawing over real size.</summary>
    public double Factor { get; }

    /// <summary>The scale as written: "1:2".</summary>
    public string ScaleName { get; }

    /// <summary>The outline on the sheet.</summary>
    public Path Outline { get; }

    /// <summary>A view of a stretch of the plan, as large as fits into a box of the sheet and centred in it.</summary>
    /// <param name="results">What is drawn.</param>
    /// <param name="real">Stretch of the plan, mm.</param>
    /// <param name="room">Room on the sheet, mm.</param>
    /// <param name="upsideDown">Seen from the back, turned over about its length.</param>
    public static PieceView Fit(Results results, Box real, Box room, bool upsideDown = false)
    {
        var (factor, name) = (0.0, "");
        foreach (var (f, n) in Scales)
        {
            (factor, name) = (f, n);
            if (real.Width * f <= room.Width && real.Height * f <= room.Height) break;
        }

        if (real.Width * factor > room.Width || real.Height * factor > room.Height)
        {
            factor = Math.Min(room.Width / real.Width, room.Height / real.Height);
            name = "not to scale";
        }

        var map = Transform.Shift(-real.Centre).Then(Transform.Scale(factor, upsideDown ? -factor : factor)).Then(Transform.Shift(room.Centre));
        return new PieceView(results, map, factor, name);
    }

    /// <summary>A view that fills the room, at no named scale.</summary>
    public static PieceView Filling(Results results, Box real, Box room)
    {
        var factor = Math.Min(room.Width / real.Width, room.Height / real.Height);
        return new PieceView(results, Transform.Shift(-real.Centre).Then(Transform.Scale(factor, factor)).Then(Transform.Shift(room.Centre)), factor, "not to scale");
    }

    /// <summary>Where a point of the plan lies on the sheet.</summary>
    public Point On(Point plan) => _map.Map(plan);

    /// <summary>Where a box of the plan lies on the sheet.</summary>
    public Box On(Box plan) => Box.Around(On(new Point(plan.MinX, plan.MinY)), On(new Point(plan.MaxX, plan.MaxY)));

    /// <summary>A path of the plan on the sheet.</summary>
    public Path On(Path plan) => plan.Transformed(_map);

    /// <summary>Draws outline and holes with their centre crosses.</summary>
    /// <param name="canvas">Where.</param>
    /// <param name="pen">Pen of the outline.</param>
    public void DrawPiece(Canvas canvas, Pen pen)
    {
        canvas.Stroke(Outline, pen);
        foreach (var hole in Results.Holes)
        {
            var centre = On(hole.MadeAt);
            var radius = hole.MadeDiameter.Mm / 2 * Factor;
            canvas.Stroke(Path.Circle(centre, radius), new Pen(0.35));
            if (radius > 0.6) canvas.CentreCross(centre, radius);
        }
    }
}
