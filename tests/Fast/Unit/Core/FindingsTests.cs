using Tangwright.Core;
using Tangwright.Foundation;
using Path = Tangwright.Foundation.Path;

namespace Tangwright.Tests;

/// <summary>Findings with their numbers, one plan each; none on a plain plate.</summary>
public class FindingsTests
{
    private static readonly Plan Plate = TestShop.Plate;

    private static Finding Single(Plan plan, string code, Shop? shop = null) => Assert.Single(TestShop.WorkedUp(plan, shop).Findings, f => f.Code == code);

    private static void None(Plan plan, string code) => Assert.DoesNotContain(TestShop.WorkedUp(plan).Findings, f => f.Code == code);

    [Fact]
    public void A_plain_plate_has_none() => Assert.Empty(TestShop.WorkedUp(Plate).Findings);

    [Fact]
    public void Gravest_first_then_from_left_to_right()
    {
        var found = TestShop.WorkedUp(Plate with
        {
            Holes = [TestShop.Hole("c", 150, 8, 10), TestShop.Hole("b", 100, 8, 10), TestShop.Hole("a", 50, 100, 10)],
            Grip = new Grip(new Point(10, 20), new Point(60, 20)),
        }).Findings;
        Assert.Equal(found.OrderByDescending(f => f.Severity).ThenBy(f => f.Place?.X ?? double.PositiveInfinity).Select(f => f.Code), found.Select(f => f.Code));
        Assert.Equal(FindingCodes.HoleOutside, found[0].Code);
    }

    [Fact]
    public void A_twisted_outline_is_told_where()
    {
        var f = TestShop.WorkedUp(Plate with { Outline = Path.Polygon(new(0, 0), new(200, 0), new(200, 40), new(100, -4), new(0, 40)) }).Findings.Where(f => f.Code == FindingCodes.OutlineCrossesItself).ToArray();
        Assert.Equal(2, f.Length);
        Assert.True(f[0].Place!.Value.To(new Point(1000.0 / 11, 0)) < 1e-9); // similar triangles: 100 · 40 / 44 from the left
        Assert.Equal(Severity.Error, f[0].Severity);
    }

    [Theory]
    [InlineData(39.9, FindingCodes.OutlineWiderThanStock, "0.10 mm")]
    [InlineData(41.9, FindingCodes.OutlineNearBarEdge, "0.10 mm")]
    [InlineData(40.5, FindingCodes.StockWidthTolerance, "39.50 mm")]
    public void Width_of_the_bar(double width, string code, string told)
    {
        var f = Single(Plate with { Stock = Plate.Stock with { Width = TestShop.Mm(width) } }, code);
        Assert.Contains(told, f.Remedy + f.Limit);
    }

    [Fact]
    public void A_bar_one_millimetre_wider_on_each_side_passes() => Assert.Empty(TestShop.WorkedUp(Plate with { Stock = Plate.Stock with { Width = TestShop.Mm(42) } }).Findings);

    [Fact]
    public void An_edge_margin_that_pushes_the_piece_out_of_the_bar_is_an_error()
        => Assert.Equal(Severity.Error, Single(Plate with { Layout = new Layout(DrilledIn.Bar, null, TestShop.Mm(12)) }, FindingCodes.OutlineWiderThanStock).Severity);

    [Fact]
    public void Strip_too_thin_for_the_bar_standards_has_no_rolling_tolerance()
        => None(Plate with { Stock = Plate.Stock with { Width = TestShop.Mm(40.5), Thickness = TestShop.Mm(2.5) } }, FindingCodes.StockWidthTolerance);

    [Fact]
    public void Ground_stock_has_no_rolling_tolerance()
        => None(Plate with { Stock = Plate.Stock with { Width = TestShop.Mm(40.5), Condition = "precision ground" } }, FindingCodes.StockWidthTolerance);

    [Theory]
    [InlineData(199, FindingCodes.OutlineLongerThanStock)]
    [InlineData(209, FindingCodes.OutlineNearBarEnd)]
    public void Length_of_the_bar(double length, string code) => Single(Plate with { Stock = Plate.Stock with { Length = TestShop.Mm(length) } }, code);

    [Theory]
    [InlineData(9.99, Severity.Warning)]
    [InlineData(7.51, Severity.Warning)]
    [InlineData(7.49, Severity.Error)]
    public void Web_to_the_outline_by_stock_thickness(double centre, Severity severity)
        => Assert.Equal(severity, Single(Plate with { Holes = [TestShop.Hole("H", 100, centre, 10)] }, FindingCodes.WebToOutline).Severity);

    [Fact]
    public void A_web_as_thick_as_the_stock_passes() => None(Plate with { Holes = [TestShop.Hole("H", 100, 10, 10)] }, FindingCodes.WebToOutline);

    [Fact]
    public void In_thin_stock_a_web_under_1_5_mm_is_an_error()
    {
        var thin = Plate with { Stock = Plate.Stock with { Thickness = TestShop.Mm(1.6) } };
        Assert.Equal(Severity.Error, Single(thin with { Holes = [TestShop.Hole("H", 100, 6.49, 10)] }, FindingCodes.WebToOutline).Severity);
        Assert.Equal(Severity.Warning, Single(thin with { Holes = [TestShop.Hole("H", 100, 6.55, 10)] }, FindingCodes.WebToOutline).Severity);
    }

    [Fact]
    public void Web_between_holes_names_both_and_the_smallest_changes()
    {
        var f = Single(Plate with { Holes = [TestShop.Hole("A", 90, 20, 12), TestShop.Hole("B", 105, 20, 10)] }, FindingCodes.WebToHole);
        Assert.Equal("holes A and B", f.Where);
        Assert.Contains("4.00 mm", f.Found);
        Assert.Contains("drill A 10 mm", f.Remedy);
        Assert.Contains("move B 1.00 mm (0.039 in) right", f.Remedy);
    }

    [Fact]
    public void Overlap_twice_and_outside_are_errors()
    {
        Assert.Contains("2.00 mm", Single(Plate with { Holes = [TestShop.Hole("A", 90, 20, 12), TestShop.Hole("B", 100, 20, 12)] }, FindingCodes.HoleOverlap).Remedy);
        Assert.Contains("leave out B", Single(Plate with { Holes = [TestShop.Hole("A", 90, 20, 12), TestShop.Hole("B", 90, 20, 12)] }, FindingCodes.HoleTwice).Remedy);
        Assert.Contains("breaks through", Single(Plate with { Holes = [TestShop.Hole("A", 90, 3, 12)] }, FindingCodes.HoleOutside).Message);
        Assert.Contains("outside", Single(Plate with { Holes = [TestShop.Hole("A", 90, -3, 12)] }, FindingCodes.HoleOutside).Message);
    }

    [Fact]
    public void A_drill_not_owned_names_the_neighbours_and_is_a_note_in_the_assumed_shop()
    {
        var plan = Plate with { Holes = [TestShop.Hole("A", 60, 20, 9), TestShop.Hole("B", 120, 20, 9)] };
        var f = Single(plan, FindingCodes.DrillNotOwned);
        Assert.Equal(Severity.Warning, f.Severity);
        Assert.Equal("holes A, B", f.Where);
        Assert.Equal("nearest owned: 8 mm below, 10 mm above", f.Limit);
        var assumed = Single(plan, FindingCodes.DrillNotOwned, TestShop.Own with { IsAssumed = true });
        Assert.Equal(Severity.Note, assumed.Severity);
        Assert.True(assumed.AssumedShop);
        Assert.Contains("ssumed shop", assumed.Message);
    }

    [Fact]
    public void A_quarter_inch_drill_is_a_6_35_mm_hole()
        => Assert.Empty(TestShop.WorkedUp(Plate with { Holes = [TestShop.Hole("A", 60, 20, 6.35)] }, TestShop.Own with { Drills = [new DrillSize("1/4 in", Length.OfInches(0.25))] }).Findings);

    [Fact]
    public void A_reamed_hole_asks_for_the_reamer_not_the_drill()
    {
        var plan = Plate with { Holes = [TestShop.Hole("A", 60, 20, 7, HoleMake.Ream)] };
        Single(plan, FindingCodes.ReamerNotOwned);
        None(plan, FindingCodes.DrillNotOwned);
        None(Plate with { Holes = [TestShop.Hole("A", 60, 20, 5, HoleMake.Ream)] }, FindingCodes.ReamerNotOwned);
    }

    [Fact]
    public void A_hole_on_an_inside_corner_makes_it()
    {
        var step = Plate with { Outline = Path.Polygon(new(0, 0), new(100, 0), new(100, 10), new(200, 10), new(200, 40), new(0, 40)) };
        Assert.Contains("90°", Single(step, FindingCodes.SharpInsideCorner).Message);
        None(step with { Holes = [TestShop.Hole("A", 100, 10, 5)] }, FindingCodes.SharpInsideCorner);
    }

    private static Plan Blade(Bevel? bevel = null) => Plate with
    {
        Outline = Path.Polygon(new(0, 20), new(20, 0), new(200, 0), new(200, 40), new(0, 40)),
        Edge = new SharpenedPart(new Point(20, 0), new Point(120, 0)),
        Bevel = bevel ?? Saber,
    };

    private static readonly Bevel Saber = new(Grind.Flat, false, TestShop.Mm(15), GroundWhen.BeforeHardening, TestShop.Mm(1), TestShop.Mm(0.5), Angle.OfDegrees(16), new PlungeLine(new Point(120, 0), new Point(120, 40)));

    private static PlungeLine At(double x) => new(new Point(x, 0), new Point(x, 40));

    [Fact]
    public void A_plain_blade_has_none() => Assert.Empty(TestShop.WorkedUp(Blade()).Findings);

    [Theory]
    [InlineData(123, FindingCodes.EdgeShortOfPlunge, "3.00 mm")]
    [InlineData(117, FindingCodes.EdgePastPlunge, "3.00 mm")]
    public void Edge_and_plunge_line(double x, string code, string off) => Assert.Contains(off, Single(Blade(Saber with { Plunge = At(x) }), code).Found);

    [Fact]
    public void A_plunge_line_within_half_a_millimetre_passes() => Assert.Empty(TestShop.WorkedUp(Blade(Saber with { Plunge = At(120.5) })).Findings);

    [Fact]
    public void Plunge_and_holes()
    {
        Single(Blade(Saber with { Plunge = At(300) }), FindingCodes.PlungeMissesPiece);
        Single(Blade(Saber with { Plunge = new PlungeLine(new Point(1, 1), new Point(1, 1)) }), FindingCodes.PlungeMissesPiece);
        Single(Blade() with { Holes = [TestShop.Hole("A", 121, 12, 6)] }, FindingCodes.PlungeThroughHole);
        None(Blade() with { Holes = [TestShop.Hole("A", 121, 30, 6)] }, FindingCodes.PlungeThroughHole);
        Assert.Contains("rim 13.00 mm", Single(Blade() with { Holes = [TestShop.Hole("A", 60, 16, 6)] }, FindingCodes.BevelIntoHole).Found);
        None(Blade() with { Holes = [TestShop.Hole("A", 60, 18, 6)] }, FindingCodes.BevelIntoHole);
        None(Blade() with { Holes = [TestShop.Hole("A", 150, 10, 6)] }, FindingCodes.BevelIntoHole);
    }

    [Fact]
    public void Edge_bevel_and_sharpening()
    {
        Single(Blade(Saber with { EdgeFinished = TestShop.Mm(5) }), FindingCodes.EdgeThickerThanStock);
        Single(Blade(Saber with { Height = TestShop.Mm(45) }), FindingCodes.BevelPastSpine);
        Single(Blade(Saber with { Grind = Grind.Hollow }), FindingCodes.BevelTakenAsFlat);

        // atan((5 − 0.5) / 30) = 8.53°
        var f = Single(Blade(Saber with { SharpenPerSide = Angle.OfDegrees(8.5) }), FindingCodes.SharpeningFlatterThanBevel);
        Assert.Contains("8.53° per side (17.06° inclusive)", f.Limit);
        Assert.Empty(TestShop.WorkedUp(Blade(Saber with { SharpenPerSide = Angle.OfDegrees(8.6) })).Findings);
    }

    [Fact]
    public void Grip_and_targets_and_steel()
    {
        Assert.Contains("15.00 mm", Single(Plate with { Grip = new Grip(new Point(100, 20), new Point(215, 20)) }, FindingCodes.GripOutside).Found);
        Single(Plate with { Grip = new Grip(new Point(100, 20), new Point(180, 20)) }, FindingCodes.GripShort);

        var stage = new StageFigures(Stage.Finished, Volume.OfMm3(40000), Mass.OfGrams(314), new Point(100, 20), TestShop.Mm(100), TestShop.Mm(20), default);
        var heavy = TestShop.WorkedUp(Plate with { Target = Target.None with { Weight = Mass.OfGrams(300), WeightTolerance = Mass.OfGrams(10) } }, stages: stage).Findings.Single();
        Assert.Equal(FindingCodes.TargetWeight, heavy.Code);
        Assert.Contains("take off 4.0 g (0.14 oz), 102 mm²", heavy.Remedy); // 4 g / 7.85 g/cm³ / 5 mm = 101.9 mm²
        Assert.Empty(TestShop.WorkedUp(Plate with { Target = Target.None with { Weight = Mass.OfGrams(305), WeightTolerance = Mass.OfGrams(10) } }, stages: stage).Findings);

        // s V / (d + s): 15 mm · 40 000 / 115 = 5217 mm³ = 41.0 g
        var off = TestShop.WorkedUp(Plate with { Target = Target.None with { BalanceFromDatum = TestShop.Mm(80), BalanceTolerance = TestShop.Mm(5) } }, stages: stage).Findings.Single();
        Assert.Contains("41.0 g (1.44 oz) off at the right end", off.Remedy);

        Assert.Equal(FindingCodes.SteelUnknown, TestShop.WorkedUp(Plate, noSteel: true).Findings.Single().Code);
        Assert.Equal(FindingCodes.SteelNoDensity, TestShop.WorkedUp(Plate, steel: TestShop.Steel with { Density = null }).Findings.Single().Code);
    }

    [Fact]
    public void Structural_rules_by_their_own_factors()
    {
        // 1.2 · 12 = 14.4 mm to the side, 2.2 · 10 = 22 mm from centre to centre
        Single(Plate with { Holes = [TestShop.Hole("A", 60, 14.39, 12)] }, FindingCodes.EdgeDistanceRule);
        None(Plate with { Holes = [TestShop.Hole("A", 60, HoleRuleFindings.EdgeDiameters * 12, 12)] }, FindingCodes.EdgeDistanceRule);
        Single(Plate with { Holes = [TestShop.Hole("A", 60, 20, 10), TestShop.Hole("B", 81.9, 20, 8)] }, FindingCodes.PitchRule);
        None(Plate with { Holes = [TestShop.Hole("A", 60, 20, 10), TestShop.Hole("B", 82, 20, 8)] }, FindingCodes.PitchRule);
        Single(Plate with { Holes = [TestShop.Hole("A", 60, 20, 18.1)] }, FindingCodes.ShareOfHeight);
        None(Plate with { Holes = [TestShop.Hole("A", 60, 20, 18)] }, FindingCodes.ShareOfHeight);
        Assert.Equal(5, WebLimits.WarnMm(TestShop.Mm(5)));
        Assert.Equal(2.5, WebLimits.ErrorMm(TestShop.Mm(5)));
    }

    [Fact]
    public void Bar_tolerances_are_those_of_the_standards()
    {
        // EN 10058:2018 widths 10-40, 40-80, 80-100, 100-120, 120-150; ASTM A29 flats under nominal
        Assert.Equal([0.75, 1, 1.5, 2, 2.5], new[] { 40.0, 76.2, 100, 120, 150 }.Select(w => BarTolerance.En10058Width(TestShop.Mm(w))!.Value.Mm));
        Assert.Equal([0.5, 1, 1, 1.5, 2.5], new[] { 25.0, 50, 100, 150, 200 }.Select(w => BarTolerance.AstmA29WidthUnder(TestShop.Mm(w))!.Value.Mm));
        Assert.Null(BarTolerance.En10058Width(TestShop.Mm(151)));
        Assert.Null(BarTolerance.WidthWorst(TestShop.Mm(300)));
    }
}
