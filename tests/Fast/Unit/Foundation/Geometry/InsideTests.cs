using Tangwright.Foundation;
using Path = Tangwright.Foundation.Path;

namespace Tangwright.Tests;

public class InsideTests
{
    private static readonly Path Bows = new(
        [
            new Bezier(new(0, 0), new(10, -8), new(20, 8), new(30, 0)),
            Arc.Through(new(30, 0), new(30, 10), 5, large: false, counterClockwise: true),
            Arc.Through(new(30, 10), new(10, 10), new Point(10, 0), new Point(0, 4), large: false, counterClockwise: false),
            new Line(new(10, 10), new(0, 10)),
            new Line(new(0, 10), new(0, 0)),
        ],
        closed: true);

    [Fact]
    public void The_curve_itself_decides_not_its_chord()
    {
        var circle = Path.Circle(new(0, 0), 10);
        for (var i = 0; i < 360; i++)
        {
            var u = Point.Direction(i * Math.PI / 180);
            Assert.True(Inside.Of(circle, u * (10 - 1e-9)));
            Assert.False(Inside.Of(circle, u * (10 + 1e-9)));
        }
    }

    [Fact]
    public void Both_sides_of_every_spot_of_the_boundary_are_told_apart()
    {
        foreach (var s in Bows.Segments)
        {
            for (var i = 1; i < 50; i++)
            {
                var p = s.At(i / 50.0);
                var left = s.Tangent(i / 50.0).Left * 1e-7;
                Assert.True(Inside.Of(Bows, p + left));
                Assert.False(Inside.Of(Bows, p - left));
            }
        }
    }

    [Fact]
    public void Heights_of_corners_and_of_turning_points_are_counted_once()
    {
        var diamond = Path.Polygon(new(0, -1), new(1, 0), new(0, 1), new(-1, 0));
        Assert.True(Inside.Of(diamond, new(0, 0)));
        Assert.False(Inside.Of(diamond, new(-2, 0)));
        Assert.False(Inside.Of(diamond, new(-2, 1)));
        Assert.False(Inside.Of(diamond, new(-2, -1)));
        Assert.False(Inside.Of(Path.Circle(new(0, 0), 1), new(-2, 1)));
        Assert.False(Inside.Of(Bows, new(-3, 10)));
        Assert.False(Inside.Of(Bows, new(-3, 0)));
    }

    [Fact]
    public void A_hole_is_not_steel()
    {
        var plate = new Region(Path.Polygon(new(0, 0), new(20, 0), new(20, 20), new(0, 20)), [Path.Circle(new(10, 10), 3)]);
        Assert.False(Inside.Of(plate, new(11, 11)));
        Assert.True(Inside.Of(plate, new(14, 10)));
        Assert.False(Inside.Of(plate, new(24, 10)));
    }

    [Fact]
    public void Going_round_the_other_way_counts_negative()
        => Assert.Equal(-1, Inside.Winding(Bows.Reversed(), new(5, 5)));
}
