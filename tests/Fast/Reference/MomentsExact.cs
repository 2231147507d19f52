using Tangwright.Foundation;
using Path = Tangwright.Foundation.Path;

namespace Tangwright.Tests;

// Closed forms of plane figures: any table of area properties, for instance Young and Budynas, Roark's Formulas for Stress and Strain, appendix A. All to 1e-9 or better.
public class MomentsExact
{
    private const double Close = 1e-12;

    private static void Same(double expected, double actual) => Assert.True(Math.Abs(actual - expected) <= Close * Math.Max(1, Math.Abs(expected)), $"expected {expected:R}, was {actual:R}");

    [Fact]
    public void Rectangle_away_from_the_origin()
    {
        var m = Moments.Of(Path.Polygon(new(10, 20), new(40, 20), new(40, 32), new(10, 32)));
        Same(360, m.AreaMm2);
        Same(360 * 25, m.SxMm3);
        Same(360 * 26, m.SyMm3);
        Same((12 * 30 * 30 * 30 / 12.0) + (360 * 625), m.XxMm4);
        Same((30 * 12 * 12 * 12 / 12.0) + (360 * 676), m.YyMm4);
        Same(360 * 25 * 26, m.XyMm4);
    }

    [Fact]
    public void Right_triangle_with_its_product_of_inertia()
    {
        var m = Moments.Of(Path.Polygon(new(0, 0), new(9, 0), new(0, 6)));
        Same(27, m.AreaMm2);
        Same(3, m.Centroid.X);
        Same(2, m.Centroid.Y);
        Same(9 * 9 * 9 * 6 / 12.0, m.XxMm4);
        Same(9 * 6 * 6 * 6 / 12.0, m.YyMm4);
        Same(9 * 9 * 6 * 6 / 24.0, m.XyMm4);
    }

    [Theory]
    [InlineData(0, 0, 1)]
    [InlineData(250, -30, 8)]
    public void Disc(double x, double y, double r)
    {
        var m = Moments.Of(Path.Circle(new(x, y), r));
        var a = Math.PI * r * r;
        Same(a, m.AreaMm2);
        Same(a * x, m.SxMm3);
        Same((a * r * r / 4) + (a * x * x), m.XxMm4);
        Same((a * r * r / 4) + (a * y * y), m.YyMm4);
    }

    [Fact]
    public void Ring()
    {
        var m = Moments.Of(new Region(Path.Circle(new(5, 5), 10), [Path.Circle(new(5, 5), 7)]));
        Same(Math.PI * 51, m.AreaMm2);
        Same(5, m.Centroid.X);
        Same(Math.PI * (10_000 - 2401) / 4, m.Shifted(new(-5, -5)).XxMm4);
    }

    [Theory]
    [InlineData(20, 0.3)]
    [InlineData(120, 0.6)]
    [InlineData(3, 2.9)]
    public void Circular_segment(double r, double halfAngle)
    {
        var arc = Arc.OfCircle(new(0, 0), r, -halfAngle, 2 * halfAngle);
        var m = Moments.Of(new Path([arc, new Line(arc.End, arc.Start)], closed: true));
        var area = r * r * (halfAngle - (Math.Sin(halfAngle) * Math.Cos(halfAngle)));
        Same(area, m.AreaMm2);
        Same(2 * Math.Pow(r * Math.Sin(halfAngle), 3) / 3, m.SxMm3);
        Assert.Equal(0, m.SyMm3, 1e-12 * r * r * r);
    }

    [Fact]
    public void Ellipse_turned()
    {
        var (a, b, turn) = (30.0, 8.0, 0.4);
        var (u, v) = (Point.Direction(turn) * a, Point.Direction(turn + (Math.PI / 2)) * b);
        var m = Moments.Of(new Path([Arc.OfEllipse(new(4, -7), u, v, 0.2, Math.PI), Arc.OfEllipse(new(4, -7), u, v, 0.2 + Math.PI, Math.PI)], closed: true));
        Same(Math.PI * a * b, m.AreaMm2);
        Same(4, m.Centroid.X);
        Same(-7, m.Centroid.Y);
        var (c, s) = (Math.Cos(turn), Math.Sin(turn));
        var (uu, vv) = (Math.PI * a * a * a * b / 4, Math.PI * a * b * b * b / 4);
        var own = m.Shifted(new(-4, 7));
        Same((uu * c * c) + (vv * s * s), own.XxMm4);
        Same((uu - vv) * c * s, own.XyMm4);
    }

    [Fact]
    public void Region_under_a_parabola_drawn_as_a_cubic()
    {
        // y = x²/10 from 0 to 10, exactly a Bézier; area under it 1000/30
        var curve = Bezier.OfQuadratic(new(0, 0), new(5, 0), new(10, 10));
        var m = Moments.Of(new Path([new Line(new(0, 0), new(10, 0)), new Line(new(10, 0), new(10, 10)), curve.Reversed()], closed: true));
        Same(1000 / 30.0, m.AreaMm2);
        Same(10_000 / 40.0, m.SxMm3);
        Same(100_000 / 1000.0, m.SyMm3);
        Same(100_000 / 50.0, m.XxMm4);
        Same(10_000_000 / 21_000.0, m.YyMm4);
    }

    [Fact]
    public void Region_under_a_cubic()
    {
        // x = 3t, y = 3t²(1−t)·4 + t³·0 → control points (0,0) (1,0) (2,4) (3,0); ∫ y dx = 9 ∫ 4 t²(1−t) dt = 9·4·(1/3 − 1/4)
        var curve = new Bezier(new(0, 0), new(1, 0), new(2, 4), new(3, 0));
        var m = Moments.Of(new Path([new Line(new(0, 0), new(3, 0)), curve.Reversed()], closed: true));
        Same(3, m.AreaMm2);
        // ∫ x y dx = ∫ 3t · 12 t²(1−t) · 3 dt = 108 (1/4 − 1/5)
        Same(5.4, m.SxMm3);
        // ∫ y²/2 dx = ∫ 72 t⁴(1−t)² · 3 dt = 216 (1/5 − 2/6 + 1/7)
        Same(216 * ((1 / 5.0) - (2 / 6.0) + (1 / 7.0)), m.SyMm3);
    }
}
