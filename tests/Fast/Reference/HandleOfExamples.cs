using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.Tests.Reference;

// The worked examples of scales and cord, computed apart from this program (polygon and raster integration, tables by hand), and the handbook's coefficients.
public class HandleOfExamples
{
    private static readonly HandlePlan Kitchen = HandlePlan.Of(ExamplePieces.Kitchen(), new HandleWanted(8, null));

    private static Length Mm(double mm) => Length.OfMm(mm);

    // 173 g with scales of 26 g and pins of 9 g, balance 3.3 mm ahead of the heel; that has no glue, which this counts
    [Fact]
    public void Worked_example_weight_and_balance()
    {
        var whole = Kitchen.Results.At(Stage.Assembled)!;
        Assert.Equal(173, whole.Mass!.Value.Grams, 0.02 * 173);
        Assert.Equal(3.3, whole.BalanceFromDatum.Mm, 1.5);
        Assert.Equal(26, Kitchen.Parts.Single(p => p.Name == "scales").Weight.Grams, 0.08 * 26);
        Assert.Equal(9, Kitchen.Parts.Where(p => p.Name.StartsWith("pin", StringComparison.Ordinal)).Sum(p => p.Weight.Grams), 0.5);
    }

    // scales 24 mm across, 11 to 7 %: 0.26 mm flat-sawn, the steel 0.13 proud at each edge, 0.18 quarter-sawn; here the handle is 28.7 mm high at its butt
    [Fact]
    public void Worked_example_steel_proud()
    {
        var w = Assert.Single(Kitchen.Wood);
        Assert.Equal(-0.26 * w.Across.Mm / 24, w.Change!.Value.Mm, 0.005 * w.Across.Mm / 24);
        Assert.Equal(-0.13 * w.Across.Mm / 24, w.EachSide!.Value.Mm, 0.003 * w.Across.Mm / 24);
        Assert.True(w.IsFelt);
    }

    // 6 min each in 60 min, 24 clamps at 4 each: 6 at once by the clamps, so 8 go in 4 + 4; about 4 ml mixed for each
    [Fact]
    public void Worked_example_glue()
    {
        var g = Kitchen.Glue!;
        Assert.Equal([4, 4], g.Batches.PiecesEach);
        Assert.Equal(6, g.Batches.MostByClamps);
        Assert.Equal(8, g.Batches.MostByPotLife);
        Assert.Equal(4, g.Each.ToMix.Mm3 / 1000, 1.2);
    }

    [Fact]
    public void Glue_holes_are_no_pin_holes()
    {
        Assert.Equal(["P1", "P2", "P3"], Kitchen.Under.Where(u => u.IsDrilled).Select(u => u.Hole.Name));
        Assert.Equal(["G1", "G2", "G3", "G4"], Kitchen.Under.Where(u => !u.IsDrilled).Select(u => u.Hole.Name));
        Assert.All(Kitchen.Pins, p => Assert.Equal(18.5, p.Length.Mm, 0.05));
    }

    // cord of 4 mm over 150 mm of the skeleton hatchet: 37.5 turns of 81 mm, 3.05 m, 3.9 m with a tenth and 0.5 m of tails
    [Fact]
    public void Worked_example_cord()
    {
        var r = ExamplePieces.Hatchet();
        var cord = CordWrap.Of(r.Plan with { Cord = new CordPlan { Material = "nylon cord 4 mm", From = new(102, 18), To = new(252, 18) } }, r.Shop)!;
        Assert.Equal(37.5, cord.Turns, 1e-9);
        Assert.Equal(81, cord.TurnLength.Mm, 1.0);
        Assert.InRange(cord.Wound.Mm, 3010, 3090);
        Assert.InRange(cord.Cut.Mm, 3840, 3960);
        Assert.InRange(cord.Middle.X, 170, 184);
    }

    // inscribed and cut polygons by their corners: a square of 20 cut by the leg is regular, and so are the sixteen sides made of it
    [Theory]
    [InlineData(20)]
    [InlineData(31.7)]
    public void Facets_come_out_even(double side)
    {
        var leg = OctagonLeg.FromSquareMm(side);
        var facet = side - (2 * leg);
        Assert.Equal(leg * Math.Sqrt(2), facet, 9);
        Assert.Equal(side * Math.Tan(Math.PI / 8), facet, 9);
        var next = OctagonLeg.FromOctagonMm(facet);
        Assert.Equal(facet - (2 * next), 2 * next * Math.Cos(Math.PI / 8), 9);
        Assert.Equal(side * Math.Tan(Math.PI / 16), facet - (2 * next), 9);
    }

    // 19.7 % of a hand of 190 mm (Kong and Lowe 2005)
    [Fact]
    public void Best_round_of_a_hand() => Assert.Equal(37.4, BestGrip.Diameter(Mm(190)).Mm, 0.05);

    // the first 29 men of the public ANSUR II table, length and breadth in mm: about as many lie over the survey's 95th share as should, none far under the small woman
    [Fact]
    public void Hands_of_the_survey()
    {
        (double Length, double Breadth)[] men =
        [
            (193, 90), (195, 86), (203, 93), (194, 91), (218, 94), (190, 85), (220, 93), (198, 88), (197, 93), (200, 88), (200, 89), (194, 88), (210, 94), (194, 91), (184, 90),
            (203, 88), (188, 85), (203, 90), (179, 85), (198, 92), (195, 88), (185, 88), (180, 86), (227, 98), (194, 92), (181, 82), (199, 94), (192, 84), (193, 90),
        ];
        Check(HandSurvey.Length, [.. men.Select(m => m.Length)]);
        Check(HandSurvey.Breadth, [.. men.Select(m => m.Breadth)]);

        static void Check(HandMeasure m, double[] read)
        {
            var middle = read.Order().ElementAt(read.Length / 2);
            Assert.Equal(m.ManMm, middle, 3.0);
            Assert.InRange(read.Count(v => v > m.LargeMm), 0, 4);

            // with 1.645 of their scatter over the middle the large man is met as well
            var mean = read.Average();
            var scatter = Math.Sqrt(read.Sum(v => (v - mean) * (v - mean)) / (read.Length - 1));
            Assert.Equal(mean + (1.645 * scatter), m.LargeMm, 0.03 * m.LargeMm);
            Assert.True(read.Min() > m.SmallMm);
        }
    }

    // a flat scale over a rectangle, by hand: 40 x 20 x 8 less the rounds of 3 mm along three sides
    [Fact]
    public void Solid_of_a_plain_scale()
    {
        var plan = Plain(new ScalesPlan(null, null, 0.95) { Material = "black walnut", Thickness = Mm(8), Front = new(new(60, -5), new(60, 25)), Round = Mm(3) });
        var shape = ScaleShape.Of(plan)!;
        var solid = shape.Solid([]);
        const double Lost = 9 * (1 - (Math.PI / 4));

        // each of the two corners at the butt is counted twice where its two rounds cross
        Assert.Equal((40 * 20 * 8) - (Lost * 100), solid.AreaMm2, 12.0);
        Assert.Equal(40, shape.Outline.Path.Bounds.Width, 9);
        Assert.Equal(8, shape.At(new Point(80, 10)), 9);
        Assert.Equal(8 - 3 + Math.Sqrt(9 - 4), shape.At(new Point(80, 1)), 9);
        Assert.Equal(0, shape.At(new Point(50, 10)));
    }

    // the half ellipse: area pi/4 of its box
    [Fact]
    public void Solid_of_a_bulged_scale()
    {
        var plan = Plain(new ScalesPlan(null, null, 0.95) { Material = "black walnut", Thickness = Mm(8), Front = new(new(60, -5), new(60, 25)), Section = HandleSection.Oval, Side = Mm(2) });
        var shape = ScaleShape.Of(plan)!;
        Assert.Equal(40 * 20 * (2 + (Math.PI / 4 * 6)), shape.Solid([]).AreaMm2, 1e-6);
        Assert.Equal(8, shape.At(new Point(80, 10)), 6);
        Assert.Equal(2 + (6 * Math.Sqrt(0.75)), shape.At(new Point(80, 5)), 6);
        Assert.Equal(80, shape.Solid([]).Centroid.X, 9);
    }

    // by thickness at places: 6 mm at the front, 10 at the butt, so 8 in the mean
    [Fact]
    public void Solid_of_a_scale_that_thickens()
    {
        var plan = Plain(new ScalesPlan(null, null, 0.95) { Material = "black walnut", Thickness = Mm(10), Stations = [new(Mm(60), Mm(6)), new(Mm(100), Mm(10))], Front = new(new(60, -5), new(60, 25)), Section = HandleSection.Oval, Side = Mm(0) });
        var solid = ScaleShape.Of(plan)!.Solid([]);
        Assert.Equal(Math.PI / 4 * 40 * 20 * 8, solid.AreaMm2, 1e-6);
        Assert.True(solid.Centroid.X > 80);
    }

    private static Plan Plain(ScalesPlan scales)
        => PlanReader.Read("tangwright = 1\nname = \"Plain\"\nunits = \"mm\"\n[stock]\nsteel = \"80CrV2\"\nthickness = 4\n[outline]\npath = \"M 0 0 L 100 0 L 100 20 L 0 20 Z\"\n[grip]\nfrom = [62, 10]\nto = [98, 10]\n", "x").Value.Plan with { Scales = scales };
}
