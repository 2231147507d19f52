using System.Text.Json;

namespace Tangwright.Tests;

/// <summary>The verb that takes in measured holes, as a maker meets it.</summary>
public sealed class MeasureTests : IDisposable
{
    private readonly Scratch _scratch = new();

    public void Dispose() => _scratch.Dispose();

    private ProgramRun Measure(string plan, params string[] words) => ProgramRun.Of(_scratch.Folder, ["measure", plan, "--date", "2026-03-31", .. words]);

    private string[] Csv(string folder, string hole) => System.IO.File.ReadAllLines(_scratch.Path(folder, "holes.csv")).Single(l => l.StartsWith(hole + ",", StringComparison.Ordinal)).Split(',');

    /// <summary>The worked example of the skeleton hatchet: hole 3 of its guide piece came out at 147.22, 17.55.</summary>
    [Fact]
    public void The_guide_piece_carries_through_to_everything_that_comes_after()
    {
        var plan = _scratch.PutExample("skeleton-hatchet");
        var text = System.IO.File.ReadAllText(plan);
        Assert.Equal(0, Measure(plan, "--hole", "L3", "--at", "147.22,17.55", "--from", "plan").Exit);
        Assert.Equal("date,piece,what,name,x_mm,y_mm,value,unit\n2026-03-31,guide,corner,lower left,0,0,,\n2026-03-31,guide,hole,L3,147.22,17.55,,\n", System.IO.File.ReadAllText(_scratch.Path("skeleton-hatchet.measured.csv")));
        Assert.Equal(text, System.IO.File.ReadAllText(plan));

        Assert.Equal(0, ProgramRun.Of(_scratch.Folder, "packet", plan, "--out", "p").Exit);
        Assert.Equal(("147.22", "17.55", "150.22", "yes", "147", "17.6"), Csv("p", "L3") is var c ? (c[1], c[2], c[5], c[13], c[14], c[15]) : default);
        Assert.Equal(("124", "17.6", "no"), Csv("p", "L2") is var d ? (d[1], d[2], d[13]) : default);
        Assert.Contains("147.22", System.IO.File.ReadAllText(_scratch.Path("p", "outline.dxf")), StringComparison.Ordinal);
        Assert.Contains("147.22", System.IO.File.ReadAllText(_scratch.Path("p", "outline.svg")), StringComparison.Ordinal);
        foreach (var sheet in new[] { "holes", "layout", "measured" })
        {
            ProgramRun.Of(_scratch.Folder, "packet", plan, "--sheets", sheet, "--out", "p");
            Assert.Contains("150.22", ProgramRun.Other("pdftotext", _scratch.Folder, $"p/packet-{sheet}.pdf", "-").Out, StringComparison.Ordinal);
        }

        // typed from the bench edges instead: the sawn end lies 3 mm before the piece, the bar's edge half of what the bar is wider
        Measure(plan, "--take-out", "L3");
        Measure(plan, "--hole", "L3", "--at", "150.22,18.6512");
        Assert.Equal("147.22", Csv("p", "L3")[1]);
        ProgramRun.Of(_scratch.Folder, "packet", plan, "--out", "q");
        Assert.Equal(("147.22", "17.55"), Csv("q", "L3") is var e ? (e[1], e[2]) : default);

        // and when the bar is laid out otherwise afterwards, what was measured stays where it is
        System.IO.File.WriteAllText(plan, text.Replace("drilled_in = \"bar\"", "drilled_in = \"bar\"\nend_allowance = 10", StringComparison.Ordinal));
        ProgramRun.Of(_scratch.Folder, "packet", plan, "--out", "r");
        Assert.Equal(("147.22", "157.22"), Csv("r", "L3") is var f ? (f[1], f[5]) : default);
    }

    [Fact]
    public void Another_piece_is_judged_but_not_carried_on()
    {
        var plan = _scratch.PutExample("skeleton-hatchet");
        _scratch.Put("list.csv", "name;x;y;d\nL1;100.1;18.2;16.05\nL2;124;17.7;\nL3;147.22;17.55;\n");
        var json = JsonDocument.Parse(Measure(plan, "--import", "list.csv", "--piece", "4", "--from", "plan", "--json").Out).RootElement;
        var piece = Assert.Single(json.GetProperty("pieces").EnumerateArray());
        Assert.False(piece.GetProperty("carried_on").GetBoolean());
        Assert.Equal(0.451221, piece.GetProperty("holes")[2].GetProperty("position_mm").GetDouble(), 6);
        Assert.Equal(3, json.GetProperty("scatter").GetProperty("degrees_of_freedom").GetInt32());
        ProgramRun.Of(_scratch.Folder, "packet", plan, "--out", "p");
        Assert.Equal("147", Csv("p", "L3")[1]);
    }

    [Fact]
    public void The_scatter_is_written_into_the_shop_file_and_replaced_the_next_time()
    {
        var plan = _scratch.PutExample("skeleton-hatchet");
        var shop = _scratch.Path("skeleton-hatchet.shop.toml");
        var before = System.IO.File.ReadAllText(shop);
        _scratch.Put("list.csv", "L1,100.05,18.2\nL2,124,17.66\nL3,147,17.6\nL4,168.95,17.8\nL5,190,18.04\n");
        Measure(plan, "--import", "list.csv", "--from", "plan");
        Assert.Equal(0, Measure(plan, "--learn", "readout", "--machine", "mill-drill").Exit);
        var after = System.IO.File.ReadAllText(shop);
        Assert.StartsWith(before.TrimEnd(), after, StringComparison.Ordinal);
        Assert.Contains("way = \"readout\"\nmachine = \"mill-drill\"\n", after, StringComparison.Ordinal);
        Assert.Contains("measured_holes = 5\n", after, StringComparison.Ordinal);
        Measure(plan, "--hole", "L6", "--at", "210.02,18", "--from", "plan", "--learn", "readout", "--machine", "mill-drill");
        Assert.Equal(after.Split("[[placing]]").Length, System.IO.File.ReadAllText(shop).Split("[[placing]]").Length);
        Assert.Contains("measured_holes = 6\n", System.IO.File.ReadAllText(shop), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("the plan has no hole", "--hole", "L33", "--at", "147.22,17.55")]
    [InlineData("write --at 147.22,17.55", "--hole", "L3", "--at", "147.22")]
    [InlineData("no hole is named", "--at", "147.22,17.55")]
    [InlineData("is no length", "--hole", "L3", "--at", "a,17.55")]
    [InlineData("was not measured", "--take-out", "L3")]
    [InlineData("no such file", "--import", "none.csv")]
    [InlineData("too few measured holes", "--learn", "readout")]
    public void What_cannot_be_done_is_said_and_nothing_is_written(string says, params string[] words)
    {
        var plan = _scratch.PutExample("skeleton-hatchet");
        var run = Measure(plan, words);
        Assert.Equal(2, run.Exit);
        Assert.Contains(says, run.Error, StringComparison.Ordinal);
        Assert.False(System.IO.File.Exists(_scratch.Path("skeleton-hatchet.measured.csv")));
    }

    [Fact]
    public void A_measured_file_that_cannot_be_read_stops_with_its_line()
    {
        var plan = _scratch.PutExample("skeleton-hatchet");
        _scratch.Put("skeleton-hatchet.measured.csv", "date,piece,what,name,x_mm,y_mm,value,unit\n,guide,hole,L3,147,22,17.55,,\n");
        var run = ProgramRun.Of(_scratch.Folder, "packet", plan, "--out", "p");
        Assert.Equal(2, run.Exit);
        Assert.Contains("skeleton-hatchet.measured.csv:2", run.Error, StringComparison.Ordinal);
        Assert.False(System.IO.Directory.Exists(_scratch.Path("p")));
    }
}
