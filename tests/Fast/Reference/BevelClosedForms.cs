using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;
using Path = Tangwright.Foundation.Path;

namespace Tangwright.Tests;

// Volumes of wedges, cones and hip roofs by elementary integration of (T − te)(1 − d/h); each derivation stands beside its check.
public class BevelClosedForms
{
    private const double T = 6, Te = 0.5;

    private static Moments Removed(Path outline, Point from, Point to, double h, double sharpen = 0, PlungeLine? plunge = null, params ImmutableArray<Path> holes)
    {
        var piece = new Region(outline, holes);
        return BevelSolid.Removed(piece, EdgeSpan.Of(piece.Outer, from, to), plunge, new GrindProfile(T, Te, h, sharpen))[0];
    }

    private static void Close(double expected, double actual, double relative = 1e-9)
        => Assert.True(Math.Abs(actual - expected) <= relative * Math.Abs(expected), $"expected {expected:R}, was {actual:R}, off by {(actual / expected) - 1:E2}");

    private static Path Rectangle(double l, double w) => Path.Polygon(new(0, 0), new(l, 0), new(l, w), new(0, w));

    [Fact]
    public void Straight_wedge()
    {
        var m = Removed(Rectangle(200, 40), new(0, 0), new(200, 0), 18);
        Close((T - Te) * 200 * 18 / 2, m.AreaMm2);
        Close(100, m.Centroid.X);
        Close(6, m.Centroid.Y);
        Close((T - Te) * 200 * Math.Pow(18, 3) / 12, m.YyMm4); // ∫ y² (1 − y/h) dy = h³/12
    }

    [Fact]
    public void Wedge_higher_than_the_piece()
        => Close((T - Te) * 200 * (15 - (15.0 * 15 / 40)), Removed(Rectangle(200, 15), new(0, 0), new(200, 0), 20).AreaMm2); // ∫0..w (1 − y/h) dy = w − w²/2h

    [Fact]
    public void Wedge_with_round_fans_beyond_both_ends()
    {
        // a quarter cone each: ∫ (1 − r/h) r dr · π/2 = π h²/12
        var m = Removed(Rectangle(200, 40), new(60, 0), new(150, 0), 18);
        Close((T - Te) * ((90 * 18 / 2.0) + (2 * Math.PI * 18 * 18 / 12)), m.AreaMm2);
        Close(105, m.Centroid.X);
    }

    [Fact]
    public void Plunge_line_square_to_the_edge_cuts_the_fan_off()
    {
        var m = Removed(Rectangle(200, 40), new(60, 0), new(150, 0), 18, 0, new PlungeLine(new(60, 0), new(60, 10)));
        Close((T - Te) * ((90 * 18 / 2.0) + (Math.PI * 18 * 18 / 12)), m.AreaMm2);
    }

    [Fact]
    public void Oblique_plunge_line_through_the_end_of_the_edge()
    {
        // 45° over the edge from (60, 0): the missing corner is x from 0 to h under y > x: ∫0..h ∫x..h (1 − y/h) dy dx = h²/6; no fan there, a quarter cone at the other end
        var m = Removed(Rectangle(200, 40), new(60, 0), new(150, 0), 18, 0, new PlungeLine(new(60, 0), new(70, 10)));
        Close((T - Te) * ((90 * 18 / 2.0) - (18 * 18 / 6.0) + (Math.PI * 18 * 18 / 12)), m.AreaMm2);
    }

    [Theory]
    [InlineData(30, 12)]
    [InlineData(30, 30)]
    [InlineData(30, 50)]
    public void Round_blade_sharp_all_round(double r, double h)
    {
        // ∫0..min(h,R) (1 − n/h)(R − n) dn · 2π
        var n = Math.Min(h, r);
        var expected = 2 * Math.PI * ((r * n) - (n * n / 2) - (((r * n * n / 2) - (n * n * n / 3)) / h));
        var m = Removed(Path.Circle(new(7, -3), r), new(7 + r, -3), new(7 + r, -3), h);
        Close((T - Te) * expected, m.AreaMm2);
        Close(7, m.Centroid.X, 1e-8);
        Close(-3, m.Centroid.Y, 1e-8);
    }

    [Fact]
    public void Ring_sector_sharp_on_its_outer_or_its_inner_arc()
    {
        var (a, b, angle, h) = (40.0, 70.0, 1.2, 18.0);
        Point On(double r, double t) => Point.Direction(t) * r;
        var sector = new Path([new Line(On(a, 0), On(b, 0)), Arc.OfCircle(default, b, 0, angle), new Line(On(b, angle), On(a, angle)), Arc.OfCircle(default, a, angle, -angle)], closed: true);
        Close((T - Te) * angle * ((b * h / 2) - (h * h / 6)), Removed(sector, On(b, 0), On(b, angle), h).AreaMm2, 1e-8);
        Close((T - Te) * angle * ((a * h / 2) + (h * h / 6)), Removed(sector, On(a, angle), On(a, 0), h).AreaMm2, 1e-8);
    }

    [Fact]
    public void Double_edged_bar_with_a_square_end_is_a_hip_roof()
    {
        // distance to three sides of a rectangle L × W: ∫ d dA = L W²/4 − W³/24
        var (l, w, h) = (120.0, 30.0, 22.0);
        var m = Removed(Rectangle(l, w), new(0, 0), new(0, w), h);
        Close((T - Te) * ((l * w) - (((l * w * w / 4) - (w * w * w / 24)) / h)), m.AreaMm2, 1e-8);
        Close(w / 2, m.Centroid.Y, 1e-8);
    }

    [Fact]
    public void Inside_corner_of_the_edge_is_filled_by_a_fan()
    {
        // an L of two bars 60 × 20 sharp along the inside of the L: two wedges and a quarter cone
        var ell = Path.Polygon(new(0, 0), new(80, 0), new(80, 20), new(20, 20), new(20, 80), new(0, 80));
        var h = 15.0;
        Close((T - Te) * ((2 * 60 * h / 2) + (Math.PI * h * h / 12)), Removed(ell, new(80, 20), new(20, 80), h).AreaMm2, 1e-8);
    }

    [Fact]
    public void Sharpening_takes_a_little_more()
    {
        // the facet 2 d tan φ meets te + (T − te) d/h at d = te/(2 tan φ − (T − te)/h); the extra is a triangle of base te
        var (h, tan) = (18.0, Math.Tan(16 * Math.PI / 180));
        var meet = Te / ((2 * tan) - ((T - Te) / h));
        Close(200 * (((T - Te) * h / 2) + (Te * meet / 2)), Removed(Rectangle(200, 40), new(0, 0), new(200, 0), h, tan).AreaMm2);
    }

    [Fact]
    public void A_hole_in_a_straight_wedge_takes_its_share()
    {
        // 1 − y/h is linear, so over a disc it is its value at the centre times the area
        var (h, c, r) = (18.0, new Point(90, 8), 5.0);
        var expected = (T - Te) * ((200 * h / 2) - (Math.PI * r * r * (1 - (c.Y / h))));
        Close(expected, Removed(Rectangle(200, 40), new(0, 0), new(200, 0), h, 0, null, Path.Circle(c, r)).AreaMm2, 1e-8);
    }

    [Fact]
    public void Full_height_to_a_parallel_spine_is_one_wedge()
    {
        var piece = new Region(Rectangle(200, 40), []);
        var m = BevelSolid.Removed(piece, EdgeSpan.Of(piece.Outer, new(0, 0), new(200, 0)), null, new GrindProfile(T, Te, null))[0];
        Close((T - Te) * 200 * 40 / 2, m.AreaMm2);
    }

    [Fact]
    public void Full_height_to_a_leaning_spine()
    {
        // each ray square to the edge takes (T − te) n/2, so the whole is half the area whatever the spine
        var piece = new Region(Path.Polygon(new(0, 0), new(200, 0), new(200, 50), new(0, 20)), []);
        var m = BevelSolid.Removed(piece, EdgeSpan.Of(piece.Outer, new(0, 0), new(200, 0)), null, new GrindProfile(T, Te, null))[0];
        Close((T - Te) * 7000 / 2, m.AreaMm2, 1e-8);
    }
}
