using CsCheck;
using Tangwright.Foundation;
using Path = Tangwright.Foundation.Path;

namespace Tangwright.Tests;

/// <summary>What must hold for the moments of any figure.</summary>
public class MomentsLaws
{
    private static readonly Gen<double> Number = Gen.Double[-50, 50];
    private static readonly Gen<Point> Spot = Gen.Select(Number, Number, (x, y) => new Point(x, y));

    // a wheel of corners about the origin joined by lines, arcs and Béziers: never crosses itself badly, moments are defined even where it does
    private static readonly Gen<Path> Figure = Gen.Select(Gen.Double[5, 40].Array[3, 9], Gen.Int[0, 2].Array[9], Gen.Double[-3, 3].Array[9]).Select((radii, kinds, bends) =>
    {
        var n = radii.Length;
        var corners = radii.Select((r, i) => Point.Direction(2 * Math.PI * i / n) * r).ToArray();
        return new Path([.. corners.Select((p, i) => Piece(p, corners[(i + 1) % n], kinds[i], bends[i]))], closed: true);

        static Segment Piece(Point a, Point b, int kind, double bend) => kind switch
        {
            0 => new Line(a, b),
            1 => Arc.Through(a, b, a.To(b), large: false, counterClockwise: bend > 0),
            _ => new Bezier(a, a.Toward(b, 0.3) + ((b - a).Left.Unit * bend), a.Toward(b, 0.8) - ((b - a).Left.Unit * bend), b),
        };
    });

    [Fact]
    public void Shift_by_the_parallel_axis_rule()
        => Gen.Select(Figure, Spot).Sample((f, by) => Close(Moments.Of(f).Shifted(by), Moments.Of(f.Transformed(Transform.Shift(by)))));

    [Fact]
    public void Change_sign_when_run_the_other_way()
        => Figure.Sample(f => Close(Moments.Of(f), Moments.Of(f.Reversed()) * -1));

    [Fact]
    public void Mirror_in_the_upright_axis()
        => Figure.Sample(f =>
        {
            var (m, r) = (Moments.Of(f), Moments.Of(f.Transformed(Transform.Scale(-1, 1))));
            Close(m with { SxMm3 = -m.SxMm3, XyMm4 = -m.XyMm4 }, r * -1);
        });

    [Fact]
    public void Keep_area_and_polar_moment_when_turned()
        => Gen.Select(Figure, Gen.Double[-4, 4]).Sample((f, angle) =>
        {
            var (m, r) = (Moments.Of(f), Moments.Of(f.Transformed(Transform.Turn(angle))));
            Near(m.AreaMm2, r.AreaMm2);
            Near(m.XxMm4 + m.YyMm4, r.XxMm4 + r.YyMm4);
            var turned = Transform.Turn(angle).MapStep(new(m.SxMm3, m.SyMm3));
            Near(turned.X, r.SxMm3);
            Near(turned.Y, r.SyMm3);
        });

    [Fact]
    public void Grow_with_the_square_cube_and_fourth_power()
        => Gen.Select(Figure, Gen.Double[0.1, 5]).Sample((f, k) =>
        {
            var (m, r) = (Moments.Of(f), Moments.Of(f.Transformed(Transform.Scale(k, k))));
            Close(new Moments(m.AreaMm2 * k * k, m.SxMm3 * k * k * k, m.SyMm3 * k * k * k, m.XxMm4 * k * k * k * k, m.XyMm4 * k * k * k * k, m.YyMm4 * k * k * k * k), r);
        });

    [Fact]
    public void Add_up_when_a_figure_is_cut()
        => Gen.Select(Figure, Gen.Double[0.1, 0.9]).Sample((f, at) =>
        {
            var (from, to) = (new PathSpot(0, 0), new PathSpot(f.Segments.Length / 2, at));
            var (a, b) = (f.Between(from, to), f.Between(to, from));
            var parts = Moments.Of(new Path([.. a.Segments, new Line(a.End, a.Start)], closed: true)) + Moments.Of(new Path([.. b.Segments, new Line(b.End, b.Start)], closed: true));
            Close(Moments.Of(f), parts);
        });

    private static void Close(Moments a, Moments b)
    {
        Near(a.AreaMm2, b.AreaMm2);
        Near(a.SxMm3, b.SxMm3);
        Near(a.SyMm3, b.SyMm3);
        Near(a.XxMm4, b.XxMm4);
        Near(a.XyMm4, b.XyMm4);
        Near(a.YyMm4, b.YyMm4);
    }

    private static void Near(double a, double b) => Assert.True(Math.Abs(a - b) <= 1e-9 * (1000 + Math.Abs(a)), $"{a:R} is not {b:R}");
}
