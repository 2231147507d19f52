using Tangwright.Core;
using Tangwright.Foundation;
using Path = Tangwright.Foundation.Path;

namespace Tangwright.Tests;

public class TightHollowTests
{
    private static Path Loop(string d) => PathData.Read(d, 1).Paths[0];

    [Fact]
    public void A_groove_is_found_with_its_radius_and_turn()
    {
        var h = Assert.Single(TightHollow.Curves(Loop("M 0 0 L 90 0 A 4 4 0 0 0 98 0 L 200 0 L 200 40 L 0 40 Z"), 9.5));
        Assert.Equal(4, h.RadiusMm, 9);
        Assert.Equal(Math.PI, h.TurnRadians, 9);
        Assert.True(h.Place.To(new Point(94, 4)) < 1e-9);
    }

    [Fact]
    public void A_wheel_fits_its_own_radius_and_a_bulge_is_no_hollow()
    {
        Assert.Empty(TightHollow.Curves(Loop("M 0 0 L 90 0 A 9.5 9.5 0 0 0 109 0 L 200 0 L 200 40 L 0 40 Z"), 9.5));
        Assert.Empty(TightHollow.Curves(Loop("M 0 0 L 90 0 A 4 4 0 0 1 98 0 L 200 0 L 200 40 L 0 40 Z"), 9.5));
    }

    [Fact]
    public void A_bezier_close_to_a_quarter_circle_has_nearly_its_radius()
    {
        // inside corner at (100, 10) rounded with r = 5 by the usual cubic, true to 3e-4 of r; its curvature is true to about 3 %
        var k = 5 * 0.5522847498;
        var d = $"M 0 0 L 95 0 C {95 + k} 0 100 {5 - k} 100 5 L 100 10 L 200 10 L 200 40 L 0 40 Z";
        Assert.Empty(TightHollow.Curves(Loop(d), 9.5)); // this one bulges
        var inward = $"M 0 0 L 100 0 L 100 5 C 100 {5 + k} {105 - k} 10 105 10 L 200 10 L 200 40 L 0 40 Z";
        var h = Assert.Single(TightHollow.Curves(Loop(inward), 9.5));
        Assert.Equal(5, h.RadiusMm, 0.2);
        Assert.Equal(Math.PI / 2, h.TurnRadians, 0.01);
    }

    [Fact]
    public void Corners_are_those_that_turn_inwards()
    {
        var h = Assert.Single(TightHollow.Corners(Loop("M 0 0 L 100 0 L 100 10 L 200 10 L 200 40 L 0 40 Z")));
        Assert.Equal(Math.PI / 2, h.TurnRadians, 9);
        Assert.Equal(new Point(100, 10), h.Place);
    }

    [Theory]
    [InlineData(10, 4, 90)]
    [InlineData(9.5, 0, 60)]
    [InlineData(20, 5, 120)]
    public void Steel_left_by_a_wheel_agrees_with_a_direct_construction(double wheel, double radius, double turnDegrees)
    {
        // both circles touch both flanks; the gap is measured on the bisector, flanks at ±half the opening angle
        var opening = Math.PI - (turnDegrees * Math.PI / 180);
        double Bottom(double r) => (r / Math.Sin(opening / 2)) - r;
        var h = new TightHollow(default, radius, turnDegrees * Math.PI / 180);
        Assert.Equal(Bottom(wheel) - Bottom(radius), h.LeftBy(wheel), 9);
    }
}
