using Tangwright.Core;
using Tangwright.Foundation;
using Path = Tangwright.Foundation.Path;

namespace Tangwright.Tests;

// Hollow, convex, constant-angle and tapered bars by elementary geometry; each derivation stands beside its check.
public class GrindsExact
{
    private const double T = 4, Te = 0.5, H = 20;

    private static readonly Region Bar = new(Path.Polygon(new(0, 0), new(200, 0), new(200, 40), new(0, 40)), []);

    private static Moments Removed(GrindProfile law) => BevelSolid.Removed(Bar, EdgeSpan.Of(Bar.Outer, new(0, 0), new(200, 0)), null, law)[0];

    private static void Close(double expected, double actual, double relative = 1e-9)
        => Assert.True(Math.Abs(actual - expected) <= relative * Math.Abs(expected), $"expected {expected:R}, was {actual:R}, off by {(actual / expected) - 1:E2}");

    // table of a bench book, worked apart: thickness at 0, 2, 5, 10, 20 mm from the edge of a 20 mm hollow in 4 mm stock, 0.5 mm edge, off wheels of radius 127 and 177.8 mm
    [Theory]
    [InlineData(127, 0, 0.5)]
    [InlineData(127, 2, 0.5641)]
    [InlineData(127, 5, 0.7786)]
    [InlineData(127, 10, 1.4523)]
    [InlineData(127, 20, 4.0)]
    [InlineData(177.8, 2, 0.6457)]
    [InlineData(177.8, 5, 0.949)]
    [InlineData(177.8, 10, 1.6806)]
    public void Thickness_of_a_hollow(double radius, double d, double thickness)
        => Assert.Equal(thickness, new GrindProfile(T, Te, H) { Grind = Grind.Hollow, RadiusMm = radius }.At(d, H), 4);

    // sagitta of 12.02 mm in a 254 mm wheel 0.142 mm, told to three figures: 0.90 flat less two of them, 0.616
    [Fact]
    public void Gauge_of_the_paring_knife() => Assert.Equal(0.616, new GrindProfile(1.6, 0.2, 12) { Grind = Grind.Hollow, RadiusMm = 127 }.At(6, 12), 0.0015);

    // a segment of a circle between chord and arc, R² (δ − sin δ cos δ), sin δ = c/2R, on each ground face
    [Theory]
    [InlineData(Grind.Hollow, 127, false)]
    [InlineData(Grind.Hollow, 60, false)]
    [InlineData(Grind.Hollow, 127, true)]
    [InlineData(Grind.Convex, 200, false)]
    [InlineData(Grind.Convex, 200, true)]
    public void A_round_face_takes_a_segment_more_or_less_than_the_chord(Grind grind, double r, bool oneSided)
    {
        var sides = oneSided ? 1 : 2;
        var delta = Math.Asin(Math.Sqrt((H * H) + ((T - Te) * (T - Te) / (sides * sides))) / (2 * r));
        var segment = r * r * (delta - (Math.Sin(delta) * Math.Cos(delta)));
        Close(200 * (((T - Te) * H / 2) + ((grind == Grind.Hollow ? 1 : -1) * sides * segment)), Removed(new GrindProfile(T, Te, H) { Grind = grind, RadiusMm = r, OneSided = oneSided }).AreaMm2, 1e-8);
    }

    // tangent into the flat: R = (h² + z²)/2z with z = (T − te)/2; T 6, edge 0, 20° per side: R = (T/2)/(1 − cos φ) = 49.745 and h = R sin φ = 17.014
    [Fact]
    public void A_convex_face_runs_tangent_into_the_flat()
    {
        var r = 3 / (1 - Math.Cos(20 * Math.PI / 180));
        var h = r * Math.Sin(20 * Math.PI / 180);
        Assert.Equal((49.745, 17.014), (Math.Round(r, 3), Math.Round(h, 3)));
        var law = new GrindProfile(6, 0, h) { Grind = Grind.Convex };
        Close(6 - (2 * 1e-4 * 1e-4 / (2 * r)), law.At(h - 1e-4, h), 1e-12);
        Close(2 * Math.Tan(20 * Math.PI / 180), law.At(1e-6, h) / 1e-6, 1e-5);
    }

    // te + 2 d tan α reaches T at h = (T − te)/(2 tan α)
    [Fact]
    public void A_constant_angle_is_as_high_as_the_steel_is_thick()
    {
        var tan = Math.Tan(6 * Math.PI / 180);
        Close(200 * (T - Te) * (T - Te) / (4 * tan), Removed(new GrindProfile(T, Te, null) { FlatTangent = tan }).AreaMm2);
        Close(200 * (T - Te) * (T - Te) / (2 * tan), Removed(new GrindProfile(T, Te, null) { FlatTangent = tan, OneSided = true }).AreaMm2);
    }

    // faces T(x) = 4 − x/100 over the bar: chord from te up to T(x) over h takes h (T − te)/2; at a constant angle (T − te)²/(4 tan α); to the spine 40 (T − te)/2
    [Fact]
    public void A_tapered_bar()
    {
        var plan = Worked.Plan("bar", T, Bar.Outer) with { TangTaper = new Taper(Length.OfMm(0), Length.OfMm(200), Length.OfMm(2)) };
        var faces = FaceThickness.Of(plan);
        var plate = TaperedPlate.Of(Bar, faces);
        Close(200 * 40 * 3, plate.AreaMm2);
        Close(40 * ((4 * 200 * 200 / 2.0) - (200.0 * 200 * 200 / 300)), plate.SxMm3);
        Close(20, plate.Centroid.Y);
        var tan = Math.Tan(6 * Math.PI / 180);
        Close(200 * (3 - Te) * H / 2, Removed(new GrindProfile(T, Te, H) { Faces = faces }).AreaMm2);
        Close(200 * (3 - Te) * 40 / 2, Removed(new GrindProfile(T, Te, null) { Faces = faces }).AreaMm2);
        Close((Math.Pow(4 - Te, 3) - Math.Pow(2 - Te, 3)) * 100 / 3 / (4 * tan), Removed(new GrindProfile(T, Te, null) { Faces = faces, FlatTangent = tan }).AreaMm2);
    }

    // over a disc a straight thickness is its middle times the area; ∫ x T dA = slope · π r⁴/4 about the middle
    [Fact]
    public void A_tapered_disc()
    {
        var disc = new Region(Path.Circle(new(100, 0), 30), []);
        var faces = FaceThickness.Of(Worked.Plan("disc", 5, disc.Outer) with { TangTaper = new Taper(Length.OfMm(50), Length.OfMm(150), Length.OfMm(3)) });
        var m = TaperedPlate.Of(disc, faces);
        Close(Math.PI * 900 * 4, m.AreaMm2, 1e-12);
        Close((100 * Math.PI * 900 * 4) - (0.02 * Math.PI * Math.Pow(30, 4) / 4), m.SxMm3, 1e-12);

        // one kink through the middle: 5 to the left of it, 5 − 0.02 (x − 100) to the right; ∫ x dA over a half disc is 2 r³/3
        var half = TaperedPlate.Of(disc, FaceThickness.Of(Worked.Plan("disc", 5, disc.Outer) with { TangTaper = new Taper(Length.OfMm(100), Length.OfMm(200), Length.OfMm(3)) }));
        Close((Math.PI * 900 * 5) - (0.02 * 2 * 27000 / 3), half.AreaMm2, 1e-12);
    }

    // sharpened on one face the facet rises d tan φ, on both 2 d tan φ
    [Fact]
    public void Sharpening_of_one_face()
    {
        var tan = Math.Tan(20 * Math.PI / 180);
        Close(0.1 * tan, new GrindProfile(T, Te, H, tan) { OneSided = true }.At(0.1, H));
        Close(0.2 * tan, new GrindProfile(T, Te, H, tan).At(0.1, H));
    }
}
