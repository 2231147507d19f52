using CsCheck;
using Tangwright.Core;
using Tangwright.Foundation;
using static Tangwright.Tests.Worked;
using Path = Tangwright.Foundation.Path;

namespace Tangwright.Tests;

/// <summary>What must hold for tapers and grinds of any size.</summary>
public class TaperLaws
{
    private static Plan Tapered(double from, double length, double butt) => Kitchen with { TangTaper = new Taper(Mm(from), Mm(from + length), Mm(butt)) };

    [Fact]
    public void A_taper_takes_as_much_as_its_slope_lets_it()
        => Gen.Select(Gen.Double[100, 250], Gen.Double[20, 120], Gen.Double[0.5, 2.5], Gen.Double[0.5, 2.5]).Sample((from, length, a, b) =>
        {
            // what is taken is linear in the thickness at the butt
            var piece = Piece(Kitchen, HolePlacement.Of(Kitchen));
            var flat = Moments.Of(piece) * 2.5;
            var (one, two) = (flat - TaperedPlate.Of(piece, FaceThickness.Of(Tapered(from, length, a))), flat - TaperedPlate.Of(piece, FaceThickness.Of(Tapered(from, length, b))));
            return Math.Abs((one.AreaMm2 * (2.5 - b)) - (two.AreaMm2 * (2.5 - a))) < 1e-6 && Math.Abs((one.XxMm4 * (2.5 - b)) - (two.XxMm4 * (2.5 - a))) < 1e-1;
        });

    [Fact]
    public void A_taper_of_the_bars_own_thickness_changes_nothing()
        => Gen.Select(Gen.Double[100, 250], Gen.Double[20, 120]).Sample((from, length) =>
        {
            var piece = Piece(Kitchen, HolePlacement.Of(Kitchen));
            return Math.Abs((TaperedPlate.Of(piece, FaceThickness.Of(Tapered(from, length, 2.5))).AreaMm2 / (Moments.Of(piece).AreaMm2 * 2.5)) - 1) < 1e-12;
        });

    // a whole circle has a closed form of its own; three arcs of it are summed at Gauss points
    [Fact]
    public void A_hole_weighs_as_much_told_as_a_circle_and_as_three_arcs()
        => Gen.Select(Gen.Double[100, 250], Gen.Double[20, 120], Gen.Double[0.5, 2.5], Gen.Double[80, 300], Gen.Double[1, 20]).Sample((from, length, butt, x, r) =>
        {
            var plate = Path.Polygon(new(50, -30), new(350, -30), new(350, 40), new(50, 40));
            var thirds = new Path([.. Enumerable.Range(0, 3).Select(i => Arc.OfCircle(new(x, 5), r, 2 * Math.PI * i / 3, 2 * Math.PI / 3))], closed: true);
            var faces = FaceThickness.Of(Tapered(from, length, butt));
            var (a, b) = (TaperedPlate.Of(new Region(plate, [Path.Circle(new(x, 5), r)]), faces), TaperedPlate.Of(new Region(plate, [thirds]), faces));
            return Near(a.AreaMm2, b.AreaMm2) && Near(a.SxMm3, b.SxMm3) && Near(a.SyMm3, b.SyMm3) && Near(a.XxMm4, b.XxMm4) && Near(a.XyMm4, b.XyMm4) && Near(a.YyMm4, b.YyMm4);

            static bool Near(double a, double b) => Math.Abs(a - b) <= 1e-11 * Math.Abs(b);
        });

    [Fact]
    public void A_hollow_is_lighter_than_a_flat_and_a_bulge_heavier()
        => Gen.Select(Gen.Double[1.2, 6], Gen.Double[0.05, 0.9], Gen.Double[5, 40], Gen.Double[0.55, 10], Gen.Double[0, 1]).Sample((stock, share, height, radius, at) =>
        {
            var flat = new GrindProfile(stock, stock * share, height);
            var d = at * height;
            var (hollow, tangent, bulge) = (flat with { Grind = Grind.Hollow, RadiusMm = radius * height }, flat with { Grind = Grind.Convex }, flat with { Grind = Grind.Convex, RadiusMm = radius * height });
            return hollow.At(d, height) <= flat.At(d, height) + 1e-9 && tangent.At(d, height) >= flat.At(d, height) - 1e-9 && bulge.At(d, height) >= flat.At(d, height) - 1e-9 && bulge.At(d, height) <= stock + 1e-9;
        });

    [Fact]
    public void A_greater_wheel_leaves_more_steel()
        => Gen.Select(Gen.Double[40, 200], Gen.Double[1, 200], Gen.Double[0, 1]).Sample((r, more, at) =>
        {
            var small = new GrindProfile(4, 0.5, 20) { Grind = Grind.Hollow, RadiusMm = r };
            return small.At(20 * at, 20) <= (small with { RadiusMm = r + more }).At(20 * at, 20) + 1e-12;
        });

    [Fact]
    public void Faces_are_between_bar_and_butt()
        => Gen.Select(Gen.Double[100, 250], Gen.Double[20, 120], Gen.Double[0.5, 2.5], Gen.Double[-50, 400]).Sample((from, length, butt, x) =>
        {
            var faces = FaceThickness.Of(Tapered(from, length, butt));
            return faces.At(x) >= Math.Min(butt, 2.5) - 1e-12 && faces.At(x) <= 2.5 && (x > from || faces.At(x) == 2.5) && (x < from + length || Math.Abs(faces.At(x) - butt) < 1e-12);
        });
}
