using System.Collections.Immutable;
using CsCheck;
using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.Tests;

/// <summary>The file of measured values: read, added to and taken from without changing another line.</summary>
public class MeasuredFileTests
{
    private const string Full = "date,piece,what,name,x_mm,y_mm,value,unit\r\n"
        + "2026-03-30,3,weight,,,,452.5,g\r\n"
        + "2026-03-31,guide,corner,lower right,275,0,,\r\n"
        + "2026-03-31,guide,hole,L3,128,17.55,0.5525,in\r\n"
        + "\r\n"
        + ",\"no. 4, spare\",hole,\"say \"\"hole\"\"\",103.5,-18,,\r\n"
        + "2026-04-01,guide,hole,L3,127.9,17.5,,";

    private static MeasuredFile Read(string text)
    {
        var read = MeasuredReader.Read(text, "x.measured.csv");
        Assert.True(read.IsGood, string.Join("\n", read.Faults));
        return read.Value;
    }

    [Fact]
    public void Holes_with_their_edges_are_read_and_the_rest_is_left()
    {
        var file = Read(Full);
        Assert.Equal(Full, file.Text);
        Assert.Equal(["L3", "say \"hole\"", "L3"], file.Holes.Select(h => h.Name));
        Assert.Equal("no. 4, spare", file.Holes[1].Piece);
        Assert.Equal(new DateOnly(2026, 3, 31), file.Holes[0].Date);
        Assert.Null(file.Holes[1].Date);
        Assert.Equal(0.5525 * 25.4, file.Holes[0].Diameter!.Value.Mm, 9);

        // from the right end of a piece of 275 mm
        Assert.Equal(new Point(147, 17.55), file.Holes[0].Edges!.InPlan(file.Holes[0].At));
        Assert.Null(file.Holes[1].Edges);
    }

    [Fact]
    public void A_hole_without_a_corner_is_measured_from_the_bench_edges()
    {
        var bench = BenchEdges.Of(TestShop.Hatchet, TestShop.Own);
        var hole = Read("date,piece,what,name,x_mm,y_mm,value,unit\n,guide,hole,L3,150.22,18.65,,\n").Holes[0];
        Assert.Equal(hole.At, bench.ToBench(hole.InPlan(bench)));
        var edges = MeasuredEdges.OfProfile(TestShop.Hatchet.Outline, bench);
        Assert.Equal(new Point(0, 0), edges.Corner);
        Assert.Equal(new Point(3, 4), edges.FromEdges(edges.InPlan(new Point(3, 4))));
    }

    [Fact]
    public void A_line_added_changes_no_other()
    {
        var file = Read(Full);
        var more = MeasuredEdit.Add(file, [new MeasuredHole("guide", "L4", new Point(106, 17.8), Length.OfMm(13.05), new MeasuredEdges(new Point(275, 0), true, false), new DateOnly(2026, 4, 2))]);
        Assert.Equal(Full + "\r\n2026-04-02,guide,hole,L4,106,17.8,13.05,mm\r\n", more.Value.Text);

        // from other edges: the corner first
        var other = MeasuredEdit.Add(more.Value, [new MeasuredHole("guide", "L4", new Point(169, 17.8), null, MeasuredEdges.OfPlan, null), new MeasuredHole("guide", "L5", new Point(190, 18), null, MeasuredEdges.OfPlan, null)]);
        Assert.Equal(more.Value.Text + ",guide,corner,lower left,0,0,,\r\n,guide,hole,L4,169,17.8,,\r\n,guide,hole,L5,190,18,,\r\n", other.Value.Text);
    }

    [Fact]
    public void The_last_line_of_a_hole_is_taken_out_and_the_one_before_counts_again()
    {
        var file = MeasuredEdit.TakeOut(Read(Full), "guide", "L3").Value;
        Assert.Equal(Full[..Full.LastIndexOf("2026-04-01", StringComparison.Ordinal)], file.Text);
        Assert.Equal(128, file.Holes.Single(h => h.Name == "L3").At.X);
        Assert.Contains("was not measured", MeasuredEdit.TakeOut(file, "guide", "L9").Faults.Single().Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Any_holes_come_back_as_they_were_written()
        => Gen.Select(Gen.String[Gen.Char[" ,\"abc;7é"], 1, 8], Gen.Double[-300, 300], Gen.Double[-300, 300], Gen.Double[0.1, 40]).Array[1, 9].Sample(rows =>
        {
            ImmutableArray<MeasuredHole> holes = [.. rows.Where(r => r.Item1.Trim().Length > 0).Select(r => new MeasuredHole("guide", r.Item1.Trim(), new Point(Math.Round(r.Item2, 3), Math.Round(r.Item3, 3)), Length.OfMm(Math.Round(r.Item4, 3)), MeasuredEdges.OfPlan, null))];
            var file = MeasuredEdit.Add(MeasuredFile.Empty, holes).Value;
            Assert.Equal(holes, file.Holes);
            Assert.Equal(file.Text, Read(file.Text).Text);
        });

    [Theory]
    [InlineData("", "does not name the columns")]
    [InlineData("name,x,y\n", "does not name the columns")]
    [InlineData("date,piece,what,name,x_mm,y_mm,value,unit\n,guide,hole,L3,147,22,17,55,,\n", "10 values where 8")]
    [InlineData("date,piece,what,name,x_mm,y_mm,value,unit\n,guide,hole,L3,147.x,17,,\n", "is no number of mm")]
    [InlineData("date,piece,what,name,x_mm,y_mm,value,unit\n,guide,hole,L3,147,,,\n", "y_mm is missing")]
    [InlineData("date,piece,what,name,x_mm,y_mm,value,unit\n,guide,hole,,147,17,,\n", "has no name")]
    [InlineData("date,piece,what,name,x_mm,y_mm,value,unit\n,,hole,L3,147,17,,\n", "has no name")]
    [InlineData("date,piece,what,name,x_mm,y_mm,value,unit\n,guide,hole,L3,147,17,14,\n", "has no unit")]
    [InlineData("date,piece,what,name,x_mm,y_mm,value,unit\n,guide,hole,L3,147,17,-1,mm\n", "is no diameter")]
    [InlineData("date,piece,what,name,x_mm,y_mm,value,unit\n31.3.26,guide,hole,L3,147,17,,\n", "is no date")]
    [InlineData("date,piece,what,name,x_mm,y_mm,value,unit\n,guide,corner,left,0,0,,\n", "is no corner")]
    [InlineData("date,piece,what,name,x_mm,y_mm,value,unit\n,guide,hole,\"L3,0,0,,\n", "not closed")]
    public void What_cannot_be_read_is_said_with_its_line(string text, string words)
    {
        var faults = MeasuredReader.Read(text, "x.measured.csv").Faults;
        Assert.Contains(faults, f => f.Message.Contains(words, StringComparison.Ordinal) && f.Remedy.Length > 0);
    }

    [Theory]
    [InlineData("L3,147.22,17.55\nL4,169,17.8,13.05\n", 147.22)]
    [InlineData("hole;x;y;d\nL3;147.22;17.55;\nL4;169;17.8;13.05\n", 147.22)]
    [InlineData("name\tx_in\ty_in\nL3\t5.796\t0.691\nL4\t6.6535\t0.7008\t0.5138\n", 147.2184)]
    [InlineData("L3,5.796 in,17.55 mm\nL4,169,17.8,13.05\n", 147.2184)]
    public void A_list_of_a_readout_or_a_spreadsheet_is_read(string text, double mm)
    {
        var list = HoleListReader.Read(text, "list.csv").Value.Holes;
        Assert.Equal(["L3", "L4"], list.Select(h => h.Name));
        Assert.Equal(mm, list[0].At.X, 9);
        Assert.Null(list[0].Diameter);
        Assert.Equal(13.05, list[1].Diameter!.Value.Mm, 2);
    }

    [Theory]
    [InlineData("", "no hole in it")]
    [InlineData("L3,147\n", "fewer than three")]
    [InlineData("L3,147,17,0\n", "diameter of 0")]
    public void A_list_that_cannot_be_read(string text, string words)
        => Assert.Contains(words, HoleListReader.Read(text, "list.csv").Faults[0].Message, StringComparison.Ordinal);
}
