using System.Collections.Immutable;
using Tangwright.Foundation;
using Path = Tangwright.Foundation.Path;

namespace Tangwright.Tests;

public class CrossingsTests
{
    private static Point P(double x, double y) => new(x, y);

    [Fact]
    public void A_square_does_not_meet_itself() => Assert.Empty(Crossings.Of(Path.Polygon(P(0, 0), P(10, 0), P(10, 10), P(0, 10))));

    [Fact]
    public void A_bow_tie_crosses_once_in_the_middle()
    {
        var m = Assert.Single(Crossings.Of(Path.Polygon(P(0, 0), P(10, 10), P(10, 0), P(0, 10))));
        Assert.Equal(MeetingKind.Crossing, m.Kind);
        Assert.True(m.At.To(P(5, 5)) < 1e-12);
        Assert.Equal((0, 2), (m.First.Segment, m.Second.Segment));
    }

    [Fact]
    public void A_corner_on_a_side_is_a_touch()
    {
        var m = Assert.Single(Crossings.Of(Path.Polygon(P(0, 0), P(10, 0), P(10, 10), P(5, 0), P(0, 10))));
        Assert.Equal(MeetingKind.Touch, m.Kind);
        Assert.True(m.At.To(P(5, 0)) < 1e-12);
    }

    [Fact]
    public void A_corner_through_a_side_at_a_vertex_is_one_crossing()
    {
        // the strand passes through (5, 0) with a vertex of its own there
        var m = Assert.Single(Crossings.Of(Path.Polygon(P(0, 0), P(10, 0), P(10, 10), P(5, 0), P(6, -5), P(-5, -5))));
        Assert.Equal(MeetingKind.Crossing, m.Kind);
    }

    [Fact]
    public void A_doubled_line_is_an_overlap_with_its_ends()
    {
        var m = Crossings.Of(Path.Polygon(P(0, 0), P(10, 0), P(10, 5), P(8, 0), P(3, 0), P(0, 5)));
        var o = Assert.Single(m, x => x.Kind == MeetingKind.Overlap);
        Assert.True(Math.Min(o.At.X, o.Until.X) == 3 && Math.Max(o.At.X, o.Until.X) == 8);
        Assert.Single(m);
    }

    [Fact]
    public void Circle_and_line_meet_where_the_closed_form_says()
    {
        var line = new Path([new Line(P(-20, 3), P(20, 3))], closed: false);
        var m = Crossings.Between(line, Path.Circle(P(0, 0), 5));
        Assert.Equal(2, m.Length);
        Assert.True(m[0].At.To(P(-4, 3)) < 1e-12 && m[1].At.To(P(4, 3)) < 1e-12);
        Assert.All(m, x => Assert.Equal(MeetingKind.Crossing, x.Kind));
    }

    [Fact]
    public void A_tangent_line_touches_a_circle_once()
    {
        var line = new Path([new Line(P(-20, 5), P(21, 5))], closed: false);
        var m = Assert.Single(Crossings.Between(line, Path.Circle(P(0.3, 0), 5)));
        Assert.Equal(MeetingKind.Touch, m.Kind);
        Assert.True(m.At.To(P(0.3, 5)) < 1e-6);
    }

    [Theory]
    [InlineData(1e-8, 0)]
    [InlineData(1e-5, 0)]
    [InlineData(-1e-5, 2)]
    [InlineData(-1e-7, 2)]
    public void Near_tangency_is_decided_by_the_sign_of_the_gap(double gap, int expected)
    {
        var line = new Path([new Line(P(-20, 5 + gap), P(21, 5 + gap))], closed: false);
        Assert.Equal(expected, Crossings.Between(line, Path.Circle(P(0.3, 0), 5)).Length);
    }

    [Fact]
    public void Two_circles_meet_where_the_closed_form_says()
    {
        var m = Crossings.Between(Path.Circle(P(0, 0), 5), Path.Circle(P(6, 0), 5));
        Assert.Equal(2, m.Length);
        Assert.All(m, x => Assert.True(x.At.To(P(3, Math.Sign(x.At.Y) * 4)) < 1e-12));
    }

    [Fact]
    public void Two_ellipses_square_to_each_other_meet_four_times()
    {
        static Path Ellipse(double a, double b)
        {
            var half = Arc.OfEllipse(P(0, 0), P(a, 0), P(0, b), 0.3, Math.PI);
            var rest = Arc.Between(half.End, half.Start, P(0, 0), P(a, 0), P(0, b), 0.3 + Math.PI, Math.PI);
            return new Path([half, rest], closed: true);
        }

        var m = Crossings.Between(Ellipse(3, 2), Ellipse(2, 3));
        var c = 6 / Math.Sqrt(13); // x = y on both: x²/9 + x²/4 = 1
        Assert.Equal(4, m.Length);
        Assert.All(m, x => Assert.True(Math.Abs(Math.Abs(x.At.X) - c) < 1e-12 && Math.Abs(Math.Abs(x.At.Y) - c) < 1e-12));
    }

    [Fact]
    public void Beziers_meet_nine_times()
    {
        // two cubics made from y = x³ − x turned by a quarter: the classic nine points (Bézout's bound)
        static Bezier Cubic(double r)
        {
            Point On(double x) => P(x, 4 * ((x * x * x) - x));
            Point Slope(double x) => P(1, 4 * ((3 * x * x) - 1));
            var (p, q) = (On(-r), On(r));
            var h = 2 * r / 3;
            return new Bezier(p, p + (Slope(-r) * h), q - (Slope(r) * h), q);
        }

        var a = new Path([Cubic(1.3)], closed: false);
        var m = Crossings.Between(a, a.Transformed(Transform.QuarterTurn));
        Assert.Equal(9, m.Length);
        Assert.All(m, x => Assert.Equal(MeetingKind.Crossing, x.Kind));
        Assert.All(m, x => Assert.True(Math.Abs(x.At.Y - (4 * ((x.At.X * x.At.X * x.At.X) - x.At.X))) < 1e-9));
    }

    [Fact]
    public void A_looped_bezier_crosses_itself_at_its_double_point()
    {
        var b = new Bezier(P(0, 0), P(10, 10), P(-4, 10), P(6, 0));
        var m = Assert.Single(Crossings.Of(new Path([b], closed: false)));
        Assert.Equal(MeetingKind.Crossing, m.Kind);
        Assert.True(b.At(m.First.T).To(b.At(m.Second.T)) < 1e-12);
        Assert.Equal(3, m.At.X, 12); // by symmetry
    }

    [Fact]
    public void A_cusped_bezier_does_not_meet_itself()
        => Assert.Empty(Crossings.Of(new Path([new Bezier(P(0, 0), P(10, 10), P(0, 10), P(10, 0))], closed: false)));

    [Fact]
    public void A_bezier_closed_on_itself_does_not_meet_itself()
        => Assert.Empty(Crossings.Of(new Path([new Bezier(P(0, 0), P(10, 10), P(-10, 10), P(0, 0))], closed: true)));

    [Fact]
    public void Smooth_joins_and_cusps_are_no_meetings()
    {
        var smooth = new Path([new Line(P(0, 0), P(100, 0)), Arc.Through(P(100, 0), P(100, 20), 10, large: false, counterClockwise: true), new Line(P(100, 20), P(0, 20)), Arc.Through(P(0, 20), P(0, 0), 10, large: false, counterClockwise: true)], closed: true);
        Assert.Empty(Crossings.Of(smooth));

        // two Béziers leave a cusp in the same direction with different curvature
        var cusp = new Path([new Bezier(P(10, 6), P(7, 2), P(4, 0), P(0, 0)), new Bezier(P(0, 0), P(4, 0), P(8, -1), P(10, -6))], closed: false);
        Assert.Empty(Crossings.Of(cusp));
        var tighter = new Path([new Bezier(P(10, 6), P(7, 2), P(4, 0), P(0, 0)), new Bezier(P(0, 0), P(4, 0), P(8, 1), P(12, 6))], closed: false);
        Assert.Empty(Crossings.Of(tighter));
    }

    [Fact]
    public void A_retraced_curve_is_an_overlap()
    {
        var b = new Bezier(P(0, 0), P(3, 9), P(8, -4), P(12, 2));
        var m = Assert.Single(Crossings.Of(new Path([b, b.Reversed()], closed: false)));
        Assert.Equal(MeetingKind.Overlap, m.Kind);
        var arc = Arc.OfCircle(P(0, 0), 10, 0, 2);
        var part = Arc.OfCircle(P(0, 0), 10, 1.5, 2);
        var o = Assert.Single(Crossings.Between(new Path([arc], false), new Path([part], false)));
        Assert.Equal(MeetingKind.Overlap, o.Kind);
        Assert.Equal(1.5, Math.Min(arc.AngleAt(o.First.T), Math.Atan2(o.Until.Y, o.Until.X)), 7);
    }

    [Fact]
    public void Joined_circles_and_the_hatchet_outline_are_clean()
    {
        Assert.Empty(Crossings.Of(Path.Circle(P(3, 4), 7)));
        ImmutableArray<Segment> rounded =
        [
            new Line(P(2, 68.78), P(0, 6)), new Line(P(0, 6), P(6, 0)), new Line(P(6, 0), P(88, 0)), new Line(P(88, 0), P(88, 33)),
            Arc.Through(P(88, 33), P(76, 45), 12, large: false, counterClockwise: false), new Line(P(76, 45), P(72, 68.78)),
            Arc.Through(P(72, 68.78), P(2, 68.78), 120, large: false, counterClockwise: true),
        ];
        Assert.Empty(Crossings.Of(new Path(rounded, closed: true)));
    }
}
