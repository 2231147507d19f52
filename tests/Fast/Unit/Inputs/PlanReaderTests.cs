using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.Tests;

public class PlanReaderTests
{
    private static Plan Example(string name)
    {
        var read = PlanReader.Read(Repository.Text("examples", name + ".plan.toml"), name);
        Assert.True(read.IsGood, string.Join("\n", read.Faults));
        return read.Value.Plan;
    }

    [Fact]
    public void The_hatchet_reads_as_written()
    {
        var p = Example("skeleton-hatchet");
        Assert.Equal("Skeleton hatchet 275", p.Name);
        Assert.Equal(6.35, p.Stock.Thickness.Mm, 12);
        Assert.Equal(76.2, p.Stock.Width!.Value.Mm, 12);
        Assert.Equal(450, p.Target.Weight!.Value.Grams, 9);
        Assert.Equal(15, p.Target.WeightTolerance!.Value.Grams, 9);
        Assert.Equal(5, p.Target.BalanceTolerance!.Value.Mm, 9);
        Assert.Equal(new HardnessBand(55, 57), p.Target.Hardness);
        Assert.Equal(18, p.Outline.Segments.Length);
        Assert.Equal(2, p.Outline.Segments.OfType<Arc>().Count(a => a.IsCircle));
        Assert.Equal(8, p.Holes.Length);
        Assert.Equal(new Point(100, 18.2), ((Hole)p.Holes[0]).At);
        Assert.Equal(HoleUse.Lanyard, p.Holes[7].Use);
        Assert.Equal(26, p.Bevel!.Height!.Value.Mm);
        Assert.Equal(16, p.Bevel.SharpenPerSide!.Value.Degrees, 12);
    }

    /// <summary>Worked example of the skeleton hatchet: area 11 010 mm² and perimeter 668 mm to 1 %; centres of both arcs by hand.</summary>
    [Fact]
    public void The_arcs_of_the_hatchet_bulge_the_right_way()
    {
        var p = Example("skeleton-hatchet");
        Assert.InRange(Math.Abs(Moments.Of(p.Outline).AreaMm2), 11010 * 0.99, 11010 * 1.01);
        Assert.InRange(p.Outline.Length, 668 * 0.99, 668 * 1.01);
        var arcs = p.Outline.Segments.OfType<Arc>().ToArray();
        Assert.True(arcs[0].Centre.To(new Point(37, -46)) < 0.01);
        Assert.True(arcs[1].Centre.To(new Point(88, 45)) < 1e-9);
    }

    /// <summary>Worked examples of the two knives: 10 802 mm² and 2 965 mm², both by the corner formula.</summary>
    [Theory]
    [InlineData("kitchen-knife", 10802, 330)]
    [InlineData("paring-knife", 2965, 185)]
    public void The_knives_have_their_areas(string name, double area, double length)
    {
        var p = Example(name);
        Assert.InRange(Moments.Of(p.Outline).AreaMm2, area - 1, area + 1);
        Assert.Equal(length, p.Outline.Bounds.Width, 9);
    }

    [Fact]
    public void The_knives_read_as_written()
    {
        var k = Example("kitchen-knife");
        Assert.Null(k.Bevel!.Height);
        Assert.Equal(GroundWhen.AfterHardening, k.Bevel.Ground);
        Assert.Equal(198, k.Bevel.Plunge!.A.X);
        Assert.Equal(new DatumMark(DatumSide.At, Length.OfMm(200)), k.Datum.X);
        Assert.Equal(HoleMake.Ream, k.Holes[0].Make);
        Assert.Equal(new HardnessBand(60, 61), k.Target.Hardness);
        var p = Example("paring-knife");
        Assert.Equal(Grind.Hollow, p.Bevel!.Grind);
        Assert.True(p.BrokenEdges!.Rounded);
        Assert.Equal(DrilledIn.Rectangle, p.Layout.DrilledIn);
    }

    private const string Least = """
        tangwright = 1
        name = "x"
        units = "in"
        [stock]
        steel = "80CrV2"
        thickness = "3/16\""
        [outline]
        path = "M 0 0 H 4 V 1 H 0 Z"
        """;

    [Fact]
    public void Only_the_required_keys_are_enough_and_inches_are_inches()
    {
        var p = PlanReader.Read(Least, "x").Value.Plan;
        Assert.Equal(101.6, p.Outline.Bounds.Width, 12);
        Assert.Equal(4.7625, p.Stock.Thickness.Mm, 12);
        Assert.Equal("-", p.Revision);
        Assert.Null(p.Edge);
        Assert.Null(p.Bevel);
        Assert.Empty(p.Holes);
        Assert.Equal(DatumSide.Left, p.Datum.X.Side);
    }

    [Fact]
    public void A_byte_order_mark_and_other_line_ends_are_taken()
        => Assert.True(PlanReader.Read("\uFEFF" + Least.ReplaceLineEndings("\r\n"), "x").IsGood);

    [Fact]
    public void Rows_and_single_holes_stand_together_in_the_order_written()
    {
        var p = PlanReader.Read(Least + "\n" + """
            [grip]
            from = [1, 0.5]
            to = [3, 0.5]
            [[hole_row]]
            name = "R"
            along = "midline"
            from = ["25 mm", 0.5]
            count = 3
            diameters = ["#30", "F"]
            [[hole]]
            at = [0.5, "1/2 in"]
            diameter = "#30"
            [[hole_row]]
            name = "Q"
            along = [[1, 0.2], [3, 0.2]]
            count = 2
            diameters = 0.1
            spacing = "equal pitch"
            use = "glue"
            """, "x").Value.Plan;
        var row = Assert.IsType<HoleRow>(p.Holes[0]);
        Assert.True(row.OnMidline);
        Assert.Equal(25, row.From!.Value.X, 12);
        Assert.Equal(12.7, row.From!.Value.Y, 12);
        Assert.Null(row.To);
        Assert.Equal(0.257, row.Diameters[1].Inches, 12);
        var hole = Assert.IsType<Hole>(p.Holes[1]);
        Assert.Equal("H1", hole.Name);
        Assert.Equal("#30", hole.DiameterAsWritten);
        Assert.Equal(RowSpacing.EqualPitch, ((HoleRow)p.Holes[2]).Spacing);
    }

    [Fact]
    public void All_faults_are_collected_with_line_and_column()
    {
        var read = PlanReader.Read(Least + "\n" + """
            [[hole]]
            at = [0.5, "1-1/8 in"]
            diamter = "#30"
            [edge]
            from = [0, 0]
            to = [4, 0.3]
            """.Replace("4,", "3.9,", StringComparison.Ordinal), "f.toml");
        Assert.Equal(4, read.Faults.Length);
        Assert.All(read.Faults, f => Assert.Equal("f.toml", f.File));
        Assert.Equal((9, 1), (read.Faults[0].Line, read.Faults[0].Column));
        Assert.Contains("no diameter", read.Faults[0].Message, StringComparison.Ordinal);
        Assert.Equal((10, 12), (read.Faults[1].Line, read.Faults[1].Column));
        Assert.Equal("write 1 1/8 in", read.Faults[1].Remedy);
        Assert.Equal("did you mean diameter?", read.Faults[2].Remedy);
        Assert.Equal("diamter = \"#30\"", read.Faults[2].LineText);
        Assert.Contains("off the outline", read.Faults[3].Message, StringComparison.Ordinal);
    }
}
