using Tangwright.Foundation;
using Path = Tangwright.Foundation.Path;

namespace Tangwright.Tests;

public class NearestTests
{
    [Fact]
    public void A_line_is_nearest_at_the_foot_or_at_an_end()
    {
        var line = new Line(new(0, 0), new(10, 0));
        Assert.Equal(3, Nearest.Distance(line, new(4, 3)), 12);
        Assert.Equal(5, Nearest.Distance(line, new(13, 4)), 12);
        Assert.Equal(0.4, Nearest.On(line, new(4, 3)).T, 12);
    }

    [Fact]
    public void A_half_circle_is_nearest_along_the_radius_or_at_an_end()
    {
        var arc = Arc.OfCircle(new(1, 2), 5, 0, Math.PI);
        Assert.Equal(2, Nearest.Distance(arc, new(1, 9)), 12);
        Assert.Equal(3, Nearest.Distance(arc, new(1, 4)), 12);
        Assert.Equal(Math.Sqrt(25 + 9), Nearest.Distance(arc, new(1, -1)), 12);
        Assert.Equal(2, Nearest.Distance(arc.Reversed(), new(1, 9)), 12);
    }

    // The dense sampler is an independent, slow way: 4000 points and a parabola through the best three.
    [Theory]
    [MemberData(nameof(Curves))]
    public void Every_curve_agrees_with_dense_sampling(string name, Segment s)
    {
        var random = new Random(name.Length);
        for (var i = 0; i < 40; i++)
        {
            var p = new Point((random.NextDouble() * 60) - 30, (random.NextDouble() * 60) - 30);
            var found = Nearest.On(s, p);
            Assert.Equal(Sampled(s, p), found.Distance, 7);
            Assert.Equal(found.Distance, found.At.To(p), 12);
            Assert.True(s.At(found.T).To(found.At) < 1e-12);
        }
    }

    public static TheoryData<string, Segment> Curves() => new()
    {
        { "ellipse", Arc.OfEllipse(new(1, 2), new(20, 3), new(-1, 7), 0.3, 5.1) },
        { "whole ellipse, backwards", Arc.OfEllipse(new(1, 2), new(20, 0), new(0, 4), 0.3, -2 * Math.PI) },
        { "arc", Arc.OfCircle(new(3, 2), 11, 2, -4.4) },
        { "bow", new Bezier(new(-20, 0), new(-10, 15), new(10, 15), new(20, 0)) },
        { "loop", new Bezier(new(-10, 0), new(40, 25), new(-40, 25), new(10, 0)) },
        { "s", new Bezier(new(-20, -5), new(20, -30), new(-20, 30), new(20, 5)) },
        { "straight Bézier", new Bezier(new(-20, -5), new(-10, 0), new(0, 5), new(10, 10)) },
    };

    private static double Sampled(Segment s, Point p)
    {
        const int n = 4000;
        var best = Enumerable.Range(0, n + 1).MinBy(i => s.At((double)i / n).To(p));
        var (lo, hi) = (Math.Max(0, best - 1.0) / n, Math.Min(n, best + 1.0) / n);
        for (var k = 0; k < 100; k++)
        {
            var (a, b) = (lo + ((hi - lo) / 3), hi - ((hi - lo) / 3));
            if (s.At(a).To(p) < s.At(b).To(p)) hi = b;
            else lo = a;
        }

        return s.At(0.5 * (lo + hi)).To(p);
    }

    [Fact]
    public void The_nearest_spot_of_a_path_names_its_segment()
    {
        var square = Path.Polygon(new(0, 0), new(10, 0), new(10, 10), new(0, 10));
        var (spot, at, distance) = Nearest.On(square, new(9, 4));
        Assert.Equal(1, spot.Segment);
        Assert.Equal(0.4, spot.T, 12);
        Assert.Equal(new Point(10, 4), at);
        Assert.Equal(1, distance, 12);
    }

    [Fact]
    public void Holes_count_when_the_distance_to_a_piece_is_asked()
        => Assert.Equal(1, Nearest.Distance(new Region(Path.Polygon(new(0, 0), new(20, 0), new(20, 20), new(0, 20)), [Path.Circle(new(10, 10), 3)]), new(14, 10)), 12);
}
