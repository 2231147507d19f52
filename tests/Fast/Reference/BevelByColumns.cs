using Tangwright.Core;
using Tangwright.Foundation;
using Path = Tangwright.Foundation.Path;

namespace Tangwright.Tests;

// An integrator that shares nothing with the one under test but the definition: upright columns over the piece, cut where finely chopped curves cross them, thickness by the true nearest distance,
// columns crowded towards corners and turning points, midpoint rule both ways with Richardson's step between two widths. Good to about 1e-6 of the part on these shapes.
public class BevelByColumns
{
    private const double T = 5, Te = 0.4;

    private static double Columns(Region piece, Path edge, double h, PlungeLine? plunge, bool groundAbove, double step)
    {
        const int chops = 600;
        var runs = piece.Loops.SelectMany(l => l.Segments).Select(s => (Segment: s, X: Enumerable.Range(0, chops + 1).Select(k => s.At((double)k / chops).X).ToArray())).ToArray();

        // columns are crowded towards these
        var stations = new SortedSet<double>();
        foreach (var (s, x) in runs)
        {
            stations.Add(s.Start.X);
            for (var k = 1; k < chops; k++)
            {
                if ((x[k] - x[k - 1]) * (x[k + 1] - x[k]) < 0) stations.Add(s.Bounds.MinX > x[k] - 1e-2 ? s.Bounds.MinX : s.Bounds.MaxX < x[k] + 1e-2 ? s.Bounds.MaxX : x[k]);
            }
        }

        if (plunge is not null && plunge.A.X == plunge.B.X) stations.Add(plunge.A.X);
        var ends = stations.ToArray();
        var sum = 0.0;
        for (var g = 1; g < ends.Length; g++)
        {
            var width = ends[g] - ends[g - 1];
            if (width < 1e-9) continue;
            var nx = Math.Max(8, 2 * (int)Math.Ceiling(0.75 * width / step));
            for (var i = 0; i < nx; i++)
            {
                var v = (i + 0.5) / nx;
                sum += Column(ends[g - 1] + (width * v * v * (3 - (2 * v)))) * width * 6 * v * (1 - v) / nx;
            }
        }

        return sum;

        double Column(double x)
        {
            var cuts = new List<double>();
            foreach (var (s, xs) in runs)
            {
                for (var k = 1; k <= chops; k++)
                {
                    if (xs[k - 1] < x == xs[k] < x) continue;
                    var (lo, hi) = ((k - 1.0) / chops, (double)k / chops);
                    for (var b = 0; b < 45; b++)
                    {
                        var mid = 0.5 * (lo + hi);
                        if (s.At(mid).X < x == xs[k - 1] < x) lo = mid;
                        else hi = mid;
                    }

                    cuts.Add(s.At(0.5 * (lo + hi)).Y);
                }
            }

            cuts.Sort();
            var (bottom, top) = (double.NegativeInfinity, double.PositiveInfinity);
            if (plunge is not null)
            {
                var d = plunge.B - plunge.A;
                if (d.X == 0)
                {
                    if (x < plunge.A.X == groundAbove) return 0;
                }
                else
                {
                    var y = plunge.A.Y + ((x - plunge.A.X) * d.Y / d.X);
                    if (groundAbove) bottom = y;
                    else top = y;
                }
            }

            var column = 0.0;
            for (var k = 0; k + 1 < cuts.Count; k += 2)
            {
                var (y0, y1) = (Math.Max(bottom, cuts[k]), Math.Min(top, cuts[k + 1]));
                if (y1 <= y0) continue;
                var n = Math.Max(6, (int)Math.Ceiling((y1 - y0) / step));
                for (var j = 0; j < n; j++)
                {
                    var d = Nearest.Distance(edge, new(x, y0 + ((y1 - y0) * (j + 0.5) / n)));
                    column += Math.Max(0, (T - Te) * (1 - (d / h))) * (y1 - y0) / n;
                }
            }

            return column;
        }
    }

    private static void Agrees(Path outline, Point from, Point to, double h, PlungeLine? plunge, Path[] holes, double step, double tolerance)
    {
        var piece = new Region(outline, [.. holes]);
        var edge = EdgeSpan.Of(piece.Outer, from, to);
        var found = BevelSolid.Removed(piece, edge, plunge, [new GrindProfile(T, Te, h)], out var rays)[0];
        // above the plunge line, or right of it when it stands upright
        var above = plunge is not null && (plunge.B.X == plunge.A.X ? edge.Middle.X > plunge.A.X : edge.Middle.Y > plunge.A.Y + ((edge.Middle.X - plunge.A.X) * (plunge.B.Y - plunge.A.Y) / (plunge.B.X - plunge.A.X)));
        var coarse = Columns(piece, edge.Path, h, plunge, above, step);
        var fine = Columns(piece, edge.Path, h, plunge, above, step / 2);
        var best = ((4 * fine) - coarse) / 3;
        var part = T * Moments.Of(piece).AreaMm2;
        TestContext.Current.TestOutputHelper?.WriteLine($"solid {found.AreaMm2:R} columns {best:R} coarse-fine {(coarse - fine) / part:E1} off {(found.AreaMm2 - best) / part:E2} of the part, {rays} rays");
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
