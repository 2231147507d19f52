using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.UseCases;

namespace Tangwright.Tests.Bevelling;

/// <summary>Bevels against figures worked by hand from the plane geometry of wedge and circle.</summary>
public class BevelNumbersTests
{
    private static Results Of(string example) => OpenWork.Of(Repository.Path("examples", example + ".plan.toml"), null).Value.WorkUp();

    private static Angle Degrees(double d) => Angle.OfDegrees(d);

    [Theory]
    [InlineData(4, 0.5, 25, 4.0042)]
    [InlineData(3.175, 0.4, 20, 3.9685)]
    [InlineData(6.35, 0.6, 30, 5.4741)]
    [InlineData(6.35, 1.0, 25, 6.1074)]
    [InlineData(6.35, 1.0, 26, 5.87)]
    [InlineData(6.35, 0.5, 26, 6.42)]
    [InlineData(4.7625, 0.5, 26, 4.69)]
    [InlineData(4.7625, 1.0, 26, 4.14)]
    public void Angle_of_a_flat_bevel(double stock, double edge, double height, double degrees)
    {
        var a = BevelAngle.Of(stock, edge, height);
        Assert.Equal(degrees, a.Degrees, degrees == Math.Round(degrees, 2) ? 0.005 : 0.00005);
        Assert.Equal(height, BevelAngle.HeightMm(stock, edge, a), 1e-9);
        Assert.Equal(edge, BevelAngle.EdgeMm(stock, height, a), 1e-9);
        Assert.Equal(stock, BevelAngle.StockMm(edge, height, a), 1e-9);
    }

    /// <summary>A heel 46 mm high at 14° lies 11.1 mm up at the spine.</summary>
    [Fact]
    public void Block_height() => Assert.Equal(11.1, BevelAngle.LiftMm(46, Degrees(14)), 0.05);

    /// <summary>T 4, te 0.5, h 20: 254 mm wheel a 5.0006°, δ 4.5334°, depth 0.3973; 355.6 mm wheel 1.764° at the edge, depth 0.2836.</summary>
    [Fact]
    public void Hollow_faces()
    {
        var ten = new HollowFace(4, 0.5, 20, 127);
        Assert.Equal(0.467, ten.EdgeSlope.Degrees, 0.0005);
        Assert.Equal(9.534, ten.TopSlope.Degrees, 0.0005);
        Assert.Equal(0.3973, ten.DepthMm, 0.00005);
        foreach (var (y, t) in new[] { (0, 0.5), (2, 0.5641), (5, 0.7786), (10, 1.4523), (20, 4.0) }) Assert.Equal(t, ten.ThicknessMm(y), 0.00005);
        var fourteen = new HollowFace(4, 0.5, 20, 177.8);
        Assert.Equal(1.764, fourteen.EdgeSlope.Degrees, 0.0005);
        Assert.Equal(0.2836, fourteen.DepthMm, 0.00005);
        foreach (var (y, t) in new[] { (0, 0.5), (2, 0.6457), (5, 0.949), (10, 1.6806), (20, 4.0) }) Assert.Equal(t, fourteen.ThicknessMm(y), 0.00005);

        // 21.1 by h² = R (T − te), which leaves the rise of the face out
        Assert.Equal(21.1, HollowFace.MostHeightMm(4, 0.5, 127), 0.1);
    }

    /// <summary>T 6 and 20°: R 49.745, h 17.014; T 4 and 15°: 58.695, 15.192.</summary>
    [Theory]
    [InlineData(6, 20, 49.745, 17.014)]
    [InlineData(4, 15, 58.695, 15.192)]
    public void Convex_faces(double stock, double degrees, double radius, double height)
    {
        Assert.Equal(radius, ConvexFace.RadiusMm(0.5 * stock, Degrees(degrees)), 0.0005);
        Assert.Equal(height, ConvexFace.HeightMm(radius, Degrees(degrees)), 0.001);
        Assert.Equal(radius, ConvexFace.RadiusMm(0.5 * stock, height), 0.01);
        Assert.Equal(degrees, ConvexFace.EdgeSlope(0.5 * stock, height).Degrees, 0.01);
    }

    [Theory]
    [InlineData(0.5, 20, 4, 0.8502, 0.9048, 0.6189)]
    [InlineData(0.3, 15, 3, 0.6959, 0.7205, 0.3729)]
    public void Edge_facets(double edge, double sharpen, double bevel, double height, double face, double shoulder)
    {
        var f = EdgeBevel.Of(edge, Degrees(sharpen), Degrees(bevel))!.Value;
        Assert.Equal(height, f.HeightMm, 0.00005);
        Assert.Equal(face, f.FaceMm, 0.0001);
        Assert.Equal(shoulder, f.ShoulderMm, 0.00005);
        Assert.Null(EdgeBevel.Of(edge, Degrees(bevel), Degrees(bevel)));
        Assert.Equal(edge + (2 * Math.Tan(bevel * Math.PI / 180)), EdgeBevel.AfterMm(edge, 1, Degrees(bevel)), 1e-9);
    }

    /// <summary>One face: a wheel sees half of a bevel twice as thick, and the facet is half of one on an edge twice as thick. Stock 0.8, edge 0.1, 12 mm: the wheels of 1.6 and 0.2 on both faces.</summary>
    [Fact]
    public void One_face_is_half_of_two()
    {
        var (one, two) = (WheelVerdict.Of("", Length.OfMm(102), Length.OfMm(0.8), Length.OfMm(0.1), Length.OfMm(12), oneSided: true), WheelVerdict.Of("", Length.OfMm(102), Length.OfMm(1.6), Length.OfMm(0.2), Length.OfMm(12)));
        Assert.Equal((two.Answer, two.MostHeight, two.ThinnestUp), (one.Answer, one.MostHeight, one.ThinnestUp));
        Assert.Equal(0.5 * two.Thinnest!.Value.Mm, one.Thinnest!.Value.Mm, 1e-12);
        Assert.Equal(WheelVerdict.LeastDiameter(Length.OfMm(1.6), Length.OfMm(0.2), Length.OfMm(12)), WheelVerdict.LeastDiameter(Length.OfMm(0.8), Length.OfMm(0.1), Length.OfMm(12), oneSided: true));
        var (f, g) = (EdgeBevel.Of(0.25, Degrees(20), Degrees(4), oneSided: true)!.Value, EdgeBevel.Of(0.5, Degrees(20), Degrees(4))!.Value);
        Assert.Equal((g.HeightMm, g.FaceMm, 0.5 * g.ShoulderMm), (f.HeightMm, f.FaceMm, f.ShoulderMm));
    }

    /// <summary>A bulge leans twice as much at the edge as its straight line; its facet is that much higher.</summary>
    [Fact]
    public void The_facet_of_a_convex_bevel_goes_by_the_slope_at_the_edge()
    {
        var r = Of("skeleton-hatchet");
        var convex = BevelNumbers.Of(r with { Plan = r.Plan with { Bevel = r.Plan.Bevel! with { Grind = Grind.Convex } } }, new BevelsWanted((Length?)null)).Value;
        var slope = 2 * Math.Atan2(0.5 * (6.35 - 0.5), 26);
        Assert.Equal(0.25 / (Math.Tan(16 * Math.PI / 180) - Math.Tan(slope)), convex.Facet!.Value.HeightMm, 1e-9);
        Assert.Equal(slope, ConvexFace.EdgeSlope(2.925, 26, ConvexFace.RadiusMm(2.925, 26)).Radians, 1e-12);
    }

    /// <summary>Stock 1.6, edge 0.20: least wheels 142.9, 205.7, 321.4 mm by 2 h² / (T − te); the exact rule adds the rise of the face, under 0.5 %.</summary>
    [Theory]
    [InlineData(10, 142.9)]
    [InlineData(12, 205.7)]
    [InlineData(15, 321.4)]
    public void Least_wheels(double height, double diameter) => Assert.Equal(diameter, 2 * HollowFace.LeastRadiusMm(1.6, 0.2, height), 0.005 * diameter);

    [Theory]
    [InlineData(1.6, 12, 254, WheelAnswer.Good, 0.20)]
    [InlineData(1.6, 12, 203.2, WheelAnswer.GoodWithNote, 0.20)]
    [InlineData(1.6, 12, 102, WheelAnswer.TooThin, 0.015)]
    [InlineData(1.6, 15, 355.6, WheelAnswer.Good, 0.20)]
    [InlineData(1.6, 15, 254, WheelAnswer.Thin, 0.180)]
    [InlineData(1.6, 15, 203.2, WheelAnswer.Thin, 0.124)]
    [InlineData(1.6, 15, 102, WheelAnswer.CutsThrough, -1)]
    [InlineData(2.0, 15, 254, WheelAnswer.Good, 0.20)]
    [InlineData(1.5875, 12, 203.2, WheelAnswer.GoodWithNote, 0.20)]
    [InlineData(1.5875, 13, 203.2, WheelAnswer.Thin, 0.188)]
    public void Wheels_judged(double stock, double height, double diameter, WheelAnswer answer, double thinnest)
    {
        var v = WheelVerdict.Of("w", Length.OfMm(diameter), Length.OfMm(stock), Length.OfMm(0.2), Length.OfMm(height));
        Assert.Equal(answer, v.Answer);
        if (thinnest < 0) Assert.Null(v.Thinnest);
        else Assert.Equal(thinnest, v.Thinnest!.Value.Mm, 0.0025); // the figures take the circle for a parabola
    }

    /// <summary>1.6 mm, 254 mm wheel, 12 mm high: 0.62 mm thick 6 mm above the edge by middle of the chord less twice the depth, 0.142 mm; on the leaning chord 0.615, within a tenth of the gauge's 0.05.</summary>
    [Fact]
    public void Thickness_half_way_up_a_hollow()
    {
        var face = new HollowFace(1.6, 0.2, 12, 127);
        Assert.Equal(0.62, face.ThicknessMm(6), 0.0055);
        Assert.Equal(0.142, face.DepthMm, 0.0005);
        var station = BevelStations.Of(Of("paring-knife"), 9)!.Stations[4];
        Assert.Equal(face.ThicknessMm(5), station.Thicknesses.First(t => t.Up.Mm == 5).Finished.Mm, 1e-6);
    }

    [Fact]
    public void Lines_to_scribe()
    {
        Assert.Equal(2.675, ScribeLines.Of(Length.OfMm(6.35), Length.OfMm(1), oneSided: false).FromFace.Mm, 1e-9);
        Assert.Equal(2.605, ScribeLines.Of(Length.OfMm(6.21), Length.OfMm(1), oneSided: false).FromFace.Mm, 1e-9);

        // 0.170 in stock and 0.030 in left: 0.070 in from each face, a class example of the trade
        Assert.Equal(0.070, ScribeLines.Of(Length.OfInches(0.170), Length.OfInches(0.030), oneSided: false).FromFace.Inches, 1e-9);
    }

    /// <summary>The hatchet's bar of 6.35 mm tapered from x 60 to 3.35 mm at x 0, edge 1 mm: at x 20, two thirds of the way, 4.35 mm thick, gauge 1.675; a bar of 6.20 is 4.30 there, gauge 1.65. A taper of the tang alone leaves the stations as thick as the bar.</summary>
    [Fact]
    public void Each_station_of_a_tapered_blade_has_its_own_lines()
    {
        var r = Of("skeleton-hatchet");
        Results With(Taper? distal, Taper? tang) => r with { Plan = r.Plan with { DistalTaper = distal, TangTaper = tang } };
        var taper = new Taper(Length.OfMm(60), Length.OfMm(0), Length.OfMm(3.35));
        var places = BevelStations.AtX(With(taper, null), 20)!.Stations;
        var lines = Assert.Single(StationLines.Of(With(taper, null).Plan, places, Length.OfMm(1), Length.OfMm(6.2)));
        Assert.Equal(20, places[0].Foot.X, 1e-6);
        Assert.Equal((4.35, 1.675), (Math.Round(lines.Sold.Stock.Mm, 6), Math.Round(lines.Sold.FromFace.Mm, 6)));
        Assert.Equal((4.3, 1.65), (Math.Round(lines.Measured!.Value.Stock.Mm, 6), Math.Round(lines.Measured.Value.FromFace.Mm, 6)));

        var n = BevelNumbers.Of(With(taper, null), new BevelsWanted((Length?)null)).Value;
        Assert.Equal(n.Table.Stations.Select(s => s.Name), n.ScribeAt.Select(s => s.Name));
        Assert.Equal(2.675, n.Scribe.FromFace.Mm, 1e-9);
        var tang = BevelNumbers.Of(With(null, new Taper(Length.OfMm(120), Length.OfMm(275), Length.OfMm(3))), new BevelsWanted((Length?)null)).Value;
        Assert.Empty(tang.ScribeAt);
        Assert.Contains(tang.Notes, t => t.Contains("tang is tapered", StringComparison.Ordinal));
    }

    /// <summary>
    /// The full bevel of the kitchen knife by height straight up: 1.40° from x 150 to 190, 1.47° at 100, 1.75° at 60, 3.45° at 20; 0.74, 0.77, 0.86, 1.45 mm thick 10 mm up.
    /// Square to the edge the belly's heights are others: near the tip up to a tenth.
    /// </summary>
    [Theory]
    [InlineData(190, 1.40, 0.74, 0.01)]
    [InlineData(150, 1.40, 0.74, 0.01)]
    [InlineData(100, 1.47, 0.77, 0.02)]
    [InlineData(60, 1.75, 0.86, 0.06)]
    [InlineData(20, 3.45, 1.45, 0.25)]
    public void Full_bevel_of_the_kitchen_knife(double x, double degrees, double tenUp, double off)
    {
        var station = Assert.Single(BevelStations.AtX(Of("kitchen-knife"), x)!.Stations);
        Assert.Equal(degrees, station.FinishedAngle.Degrees, off * degrees);
        Assert.Equal(tenUp, station.Thicknesses.First(t => t.Up.Mm == 10).Finished.Mm, off * tenUp);
    }

    [Fact]
    public void The_hatchet_at_the_belt()
    {
        var n = BevelNumbers.Of(Of("skeleton-hatchet"), new BevelsWanted(Length.OfMm(6.21))).Value;
        Assert.Equal((2.675, 2.605), (n.Scribe.FromFace.Mm, Math.Round(n.ScribeMeasured!.Value.FromFace.Mm, 6)));
        Assert.All(n.Table.Stations, s => Assert.Equal((5.87, 6.42), (Math.Round(s.SoftAngle!.Value.Degrees, 2), Math.Round(s.FinishedAngle.Degrees, 2))));
        Assert.InRange(n.SoftPerSideGrams!.Value, 19, 21);
        Assert.InRange(n.HardPerSideGrams!.Value, 1.7, 2.2);

        // 0.5 mm at 16° per side: 0.87 mm high when the faces under it are taken as square; on faces of 6.4° it is 1.43 mm
        Assert.Equal(0.5 / (2 * Math.Tan(16 * Math.PI / 180)), EdgeBevel.Of(0.5, Degrees(16), Degrees(0))!.Value.HeightMm, 1e-9);
        Assert.Equal(1.43, n.Facet!.Value.HeightMm, 0.005);
        Assert.NotNull(n.Advice!.Leave);
    }

    /// <summary>By the diffusion and scale laws in open air: 815 °C for 10 min 77 µm without carbon and 52 µm of scale, 29 of steel; 845 °C 95 and 37; 790 °C 63 and 23.</summary>
    [Theory]
    [InlineData(790, 63, 23)]
    [InlineData(815, 77, 29)]
    [InlineData(845, 95, 37)]
    public void What_the_oven_costs(double celsius, double carbonUm, double scaleUm)
    {
        Assert.Equal(carbonUm, 1000 * SurfaceLoss.CarbonMm(Temperature.OfCelsius(celsius), 10), 0.7);
        Assert.Equal(scaleUm, 1000 * SurfaceLoss.ScaleMm(Temperature.OfCelsius(celsius), 10), 0.6);
        Assert.Equal(0.25 * SurfaceLoss.FaceMm(Temperature.OfCelsius(celsius), 10, isProtected: false), SurfaceLoss.FaceMm(Temperature.OfCelsius(celsius), 10, isProtected: true), 1e-12);
    }

    /// <summary>The hatchet at 7° per side: (6.35 − 0.5) / (2 tan 7°) = 23.82 mm high; at 26 mm no edge is left, at 5.5° 1.34 mm.</summary>
    [Fact]
    public void Any_one_from_the_others()
    {
        var answer = PlanBevels.Of(Repository.Path("examples", "skeleton-hatchet.plan.toml"), null, new BevelsRequest()).Value;
        string Says(BevelTried t) => PlanBevels.Try(answer, t).Value.Says;
        Assert.Contains("23.82 mm", Says(new BevelTried("7", null, null, null)), StringComparison.Ordinal);
        Assert.Contains("the faces meet", Says(new BevelTried("7", null, null, null)), StringComparison.Ordinal);
        Assert.Contains("an edge of 1.34 mm", Says(new BevelTried("5.5", null, null, null)), StringComparison.Ordinal);
        Assert.Contains("4.69° per side", Says(new BevelTried(null, null, null, "3/16 in")), StringComparison.Ordinal);
        Assert.Contains("thinner than the stock", PlanBevels.Try(answer, new BevelTried(null, null, "7", null)).Faults[0].Remedy, StringComparison.Ordinal);
        Assert.Contains("per side", PlanBevels.Try(answer, new BevelTried("80", null, null, null)).Faults[0].Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Thin_stock_between_plates_is_ground_hard() => Assert.Null(EdgeForHardening.Of(Of("kitchen-knife"), isProtected: true)!.Leave);

    [Fact]
    public void Bad_asking_is_refused_in_words()
    {
        var r = Of("skeleton-hatchet");
        Assert.Contains("not thicker", BevelNumbers.Of(r, new BevelsWanted(Length.OfMm(0.9))).Faults[0].Message, StringComparison.Ordinal);
        Assert.Contains("stations", BevelNumbers.Of(r, new BevelsWanted(null, 0)).Faults[0].Message, StringComparison.Ordinal);
        Assert.Contains("no bevel", BevelNumbers.Of(r with { Plan = r.Plan with { Bevel = null } }, new BevelsWanted(null)).Faults[0].Message, StringComparison.Ordinal);
    }
}
