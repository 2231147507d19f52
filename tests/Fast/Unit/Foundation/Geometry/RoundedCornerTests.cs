using Tangwright.Foundation;

namespace Tangwright.Tests;

/// <summary>Corners rounded with a true arc.</summary>
public class RoundedCornerTests
{
    /// <summary>Between two lines at an angle θ the legs are r / tan(θ/2) and the corner loses r² (1 / tan(θ/2) − (π − θ)/2), for a right angle r² (1 − π/4): the kite of the tangents less the sector.</summary>
    [Theory]
    [InlineData(90, 8)]
    [InlineData(60, 3)]
    [InlineData(150, 20)]
    [InlineData(20, 1)]
    public void Between_lines_the_legs_and_what_is_cut_off_are_those_of_the_triangle(double degrees, double radius)
    {
        var angle = degrees * Math.PI / 180;
        var corner = new Point(7, -3);
        Line before = new(corner + (Point.Direction(0) * 100), corner), after = new(corner, corner + (Point.Direction(angle) * 100));
        foreach (var (a, b) in new[] { ((Segment)before, (Segment)after), (after.Reversed(), before.Reversed()) })
        {
            var round = RoundedCorner.Of(a, b, radius)!;
            Assert.Equal(radius / Math.Tan(angle / 2), round.Arc.Start.To(corner), 1e-9);
            Assert.Equal(radius / Math.Tan(angle / 2), round.Arc.End.To(corner), 1e-9);
            var cut = new Tangwright.Foundation.Path([new Line(round.Arc.End, corner), new Line(corner, round.Arc.Start), round.Arc], closed: true);
            Assert.Equal(radius * radius * ((1 / Math.Tan(angle / 2)) - ((Math.PI - angle) / 2)), Math.Abs(Moments.Of(cut).AreaMm2), 1e-7);
        }
    }

    /// <summary>A wheel of radius r in the corner of a floor and a round wall of radius R standing on it: (R − r)² = r² + x² inside, (R + r)² = r² + x² outside, x along the floor.</summary>
    [Fact]
    public void Between_a_line_and_a_circle_the_centre_is_where_Pythagoras_puts_it()
    {
        var floor = new Line(new(0, 0), new(20, 0));
        var inside = RoundedCorner.Of(floor, Arc.OfCircle(default, 20, 0, Math.PI / 2), 4)!;
        Assert.Equal(Math.Sqrt((16 * 16) - (4 * 4)), inside.Arc.Centre.X, 1e-7);
        Assert.Equal(4, inside.Arc.Centre.Y, 1e-9);
        var outside = RoundedCorner.Of(new Line(new(60, 0), new(20, 0)), Arc.OfCircle(default, 20, 0, Math.PI / 2), 4)!;
        Assert.Equal(Math.Sqrt((24 * 24) - (4 * 4)), outside.Arc.Centre.X, 1e-7);
        Assert.Equal(4, outside.Arc.Radius, 1e-12);
    }

    [Fact]
    public void The_largest_that_fits_is_told()
    {
        Line before = new(new(0, 0), new(10, 0)), after = new(new(10, 0), new(10, 40));
        Assert.Equal(9.99, RoundedCorner.GreatestRadius(before, after), 0.0101);
        Assert.NotNull(RoundedCorner.Of(before, after, 9.99));
        Assert.Null(RoundedCorner.Of(before, after, 10.01));
        Assert.Null(RoundedCorner.Of(before, new Line(new(10, 0), new(20, 0)), 1));
    }
}
