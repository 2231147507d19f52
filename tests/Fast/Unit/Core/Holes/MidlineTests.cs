using Tangwright.Core;
using Tangwright.Foundation;
using Path = Tangwright.Foundation.Path;

namespace Tangwright.Tests;

public class MidlineTests
{
    [Fact]
    public void Parallel_sides_have_their_middle()
    {
        var m = Midline.Of(Path.Polygon(new(0, 0), new(120, 0), new(120, 30), new(0, 30)), new Grip(new(20, 10), new(100, 10)))!;
        Assert.Equal(80, m.Length, 12);
        for (var s = 0.0; s <= 80; s += 8) Assert.True(m.At(s).To(new(20 + s, 15)) < 1e-9);
    }

    [Fact]
    public void A_straight_taper_has_its_bisector()
    {
        // sides through (0, 0) and (0, 30) at slopes 0 and −0.1
        var m = Midline.Of(Path.Polygon(new(0, 0), new(120, 0), new(120, 18), new(0, 30)), new Grip(new(30, 14), new(100, 11)))!;
        var apex = new Point(300, 0);
        var bisector = (Point.Direction(Math.PI) + new Point(-300, 30).Unit).Unit;
        for (var s = 0.0; s <= m.Length; s += 7) Assert.True(Math.Abs(bisector.Cross(m.At(s) - apex)) < 1e-9);
    }

    [Fact]
    public void A_bow_has_the_arc_of_mean_radius()
    {
        Point On(double r, double t) => Point.Direction(t) * r;
        var bow = new Path([new Line(On(90, 0.6), On(120, 0.6)), Arc.OfCircle(default, 120, 0.6, 1.6), new Line(On(120, 2.2), On(90, 2.2)), Arc.OfCircle(default, 90, 2.2, -1.6)], closed: true);
        var m = Midline.Of(bow, new Grip(On(105, 2.0), On(104, 0.9)))!;
        for (var i = 1; i < 10; i++) Assert.Equal(105, m.At(m.Length * i / 10).Length, 8);
    }

    [Fact]
    public void An_uneven_handle_has_equal_distances()
    {
        var handle = new Path(
            [
                new Bezier(new(0, 2), new(40, -6), new(80, 10), new(130, -3)),
                new Line(new(130, -3), new(134, 30)),
                new Bezier(new(134, 30), new(100, 36), new(50, 20), new(0, 28)),
                new Line(new(0, 28), new(0, 2)),
            ],
            closed: true);
        var m = Midline.Of(handle, new Grip(new(15, 14), new(115, 15)))!;
        for (var s = 0.0; s <= m.Length; s += 5)
        {
            var (left, right) = m.ToSides(m.At(s));
            Assert.Equal(left, right, 8);
            Assert.InRange(left, 5, 20);
        }
    }

    [Fact]
    public void The_nearest_station_is_square_to_the_curve()
    {
        var m = Midline.Of(Path.Polygon(new(0, 0), new(120, 0), new(120, 30), new(0, 30)), new Grip(new(20, 10), new(100, 10)))!;
        Assert.Equal(33, m.StationNear(new(53, 4)), 6);
        Assert.Equal(0, m.StationNear(new(3, 4)), 6);
        Assert.Equal(80, m.StationNear(new(300, 4)), 6);
    }

    [Fact]
    public void No_midline_outside_the_steel()
        => Assert.Null(Midline.Of(Path.Polygon(new(0, 0), new(120, 0), new(120, 30), new(0, 30)), new Grip(new(-20, 10), new(100, 10))));
}
