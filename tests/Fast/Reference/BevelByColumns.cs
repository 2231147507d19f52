using Tangwright.Core;
using Tangwright.Foundation;
using Path = Tangwright.Foundation.Path;

namespace Tangwright.Tests;

// What the flat law takes, summed up over fine columns with the true nearest distance. Good to about 1e-6 of the part on these shapes.
public class BevelByColumns
{
    private const double T = 5, Te = 0.4;

    private static void Agrees(Path outline, Point from, Point to, double h, PlungeLine? plunge, Path[] holes, double step, double tolerance)
    {
        var piece = new Region(outline, [.. holes]);
        var edge = EdgeSpan.Of(piece.Outer, from, to);
        var found = BevelSolid.Removed(piece, edge, plunge, [new GrindProfile(T, Te, h)], out var rays)[0];
        // above the plunge line, or right of it when it stands upright
        var above = plunge is not null && (plunge.B.X == plunge.A.X ? edge.Middle.X > plunge.A.X : edge.Middle.Y > plunge.A.Y + ((edge.Middle.X - plunge.A.X) * (plunge.B.Y - plunge.A.Y) / (plunge.B.X - plunge.A.X)));
        double Off(Point q) => Math.Max(0, (T - Te) * (1 - (Nearest.Distance(edge.Path, q) / h)));
        var coarse = FineColumns.Sum(piece, Off, plunge, above, step).AreaMm2;
        var best = FineColumns.Sum(piece, Off, plunge, above, step / 2).AreaMm2;
        var part = T * Moments.Of(piece).AreaMm2;
        TestContext.Current.TestOutputHelper?.WriteLine($"solid {found.AreaMm2:R} columns {best:R} coarse-fine {(coarse - best) / part:E1} off {(found.AreaMm2 - best) / part:E2} of the part, {rays} rays");
        Assert.True(Math.Abs(found.AreaMm2 - best) < tolerance * part, $"solid {found.AreaMm2:R}, columns {best:R}, {(found.AreaMm2 - best) / part:E2} of the part, {rays} rays");
    }

    [Fact]
    public void Belly_to_a_pointed_tip() => Agrees(OddBlades.Belly, new(0, 20), new(200, 0), 18, null, [], 0.5, 2e-6);

    [Fact]
    public void Belly_with_an_upright_plunge_line() => Agrees(OddBlades.Belly, new(0, 20), new(200, 0), 18, new(new(150, 0), new(150, 9)), [], 0.5, 2e-6);

    [Fact]
    public void Belly_with_an_oblique_plunge_line_that_starts_on_the_edge() => Agrees(OddBlades.Belly, new(0, 20), new(200, 0), 18, new(new(170, 0), new(188, 30)), [], 0.5, 2e-6);

    [Fact]
    public void Holes_in_the_bevel() => Agrees(OddBlades.Belly, new(0, 20), new(200, 0), 18, null, [Path.Circle(new(120, 10), 4), Path.Circle(new(60, 18), 5), Path.Circle(new(180, 17), 3)], 0.5, 4e-6);

    [Fact]
    public void Bevel_as_wide_as_the_blade() => Agrees(OddBlades.Belly, new(0, 20), new(200, 0), 60, null, [], 0.5, 2e-6);

    [Fact]
    public void Recurved_edge() => Agrees(OddBlades.Recurved, new(0, 10), new(180, 0), 30, null, [], 0.5, 4e-6);

    [Fact]
    public void Deep_inside_radius_smaller_than_the_bevel() => Agrees(OddBlades.Notched, new(0, 0), new(100, 0), 25, null, [], 0.4, 4e-6);

    [Fact]
    public void Outward_round_smaller_than_the_bevel() => Agrees(
        new Path(
            [
                new Line(new(0, 0), new(60, 0)),
                Arc.Through(new(60, 0), new(60, 24), 12, large: false, counterClockwise: true),
                new Line(new(60, 24), new(0, 24)),
                new Line(new(0, 24), new(0, 0)),
            ],
            closed: true), new(0, 0), new(0, 24), 20, null, [], 0.25, 4e-6);

    [Fact]
    public void Polygonal_belly() => Agrees(
        Path.Polygon(new(0, 18), new(10, 13.2), new(25, 8.5), new(45, 4.8), new(70, 2.2), new(100, .8), new(140, .1), new(170, 0), new(200, 0), new(202, 20), new(330, 22), new(330, 40), new(240, 46), new(100, 44.5), new(60, 40), new(30, 33), new(10, 24.5)),
        new(0, 18), new(200, 0), 22, new(new(198, 0), new(198, 9)), [], 0.5, 4e-6);

    [Fact]
    public void Saw_toothed_edge() => Agrees(OddBlades.SawToothed, new(0, 0), new(120, 0), 15, null, [], 0.25, 4e-6);

    [Fact]
    public void Double_edge_wrapped_round_an_ellipse() => Agrees(
        new Path([Arc.OfEllipse(new(0, 0), new(80, 0), new(0, 15), -1.2, 2.4), new Line(Arc.OfEllipse(new(0, 0), new(80, 0), new(0, 15), -1.2, 2.4).End, new(-60, 10)), new Line(new(-60, 10), new(-60, -10)), new Line(new(-60, -10), Arc.OfEllipse(new(0, 0), new(80, 0), new(0, 15), -1.2, 2.4).Start)], closed: true),
        Arc.OfEllipse(new(0, 0), new(80, 0), new(0, 15), -1.2, 2.4).Start, Arc.OfEllipse(new(0, 0), new(80, 0), new(0, 15), -1.2, 2.4).End, 18, null, [], 0.25, 4e-6);
}
