using System.Text.Json;

namespace Tangwright.Tests;

/// <summary>The verb and the sheet of pins and fits, as a maker meets them.</summary>
public sealed class FitsTests : IDisposable
{
    private readonly Scratch _scratch = new();

    public void Dispose() => _scratch.Dispose();

    private ProgramRun Fits(params string[] words) => ProgramRun.Of(_scratch.Folder, ["fits", .. words]);

    [Fact]
    public void A_size_is_written_as_anywhere_and_told_in_both_units()
    {
        var quarter = Fits("1/4", "in", "--pin", "p6");
        Assert.Equal(0, quarter.Exit);
        Assert.Contains("hole H7   6.350 to 6.365 mm (0.2500 to 0.2506 in)", quarter.Out, StringComparison.Ordinal);
        Assert.Contains("0.000 to 0.024 mm (0.0000 to 0.0009 in) of overlap: press", quarter.Out, StringComparison.Ordinal);

        // letter E is a quarter inch
        Assert.Equal(quarter.Out, Fits("E", "--pin", "p6").Out);
        var json = JsonDocument.Parse(Fits("6.35 mm", "--pin", "m6", "--json").Out).RootElement;
        Assert.Equal((-0.015, 0.009), (json.GetProperty("clearance_least_mm").GetDouble(), json.GetProperty("clearance_most_mm").GetDouble()));
        Assert.Equal("C", json.GetProperty("drills")[2].GetProperty("to_ream").GetProperty("drill").GetString());
    }

    [Theory]
    [InlineData("60 mm", "H7", "up to 50 mm")]
    [InlineData("6", "H7", "write 6 mm or 6 in")]
    [InlineData("6 mm", "h7", "small letters are for pins")]
    [InlineData("six mm", "H7", "SIZE")]
    public void What_cannot_be_answered_is_told_once_with_what_to_write(string size, string hole, string says)
    {
        var run = Fits(size, "--hole", hole);
        Assert.Equal(2, run.Exit);
        Assert.Empty(run.Out);
        Assert.Contains(says, run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Pins_of_a_plan_stand_on_their_sheet_and_a_measured_hole_as_measured()
    {
        var plan = _scratch.PutExample("kitchen-knife");
        Assert.Contains("4.8 mm drill, then 5 mm reamer", Fits(plan).Out, StringComparison.Ordinal);
        ProgramRun.Of(_scratch.Folder, "measure", plan, "--hole", "P2", "--at", "266,34.5", "--diameter", "5.124", "--from", "plan", "--date", "2026-03-31");
        Assert.Contains("5.124 mm (0.2017 in), as measured", Fits(plan).Out, StringComparison.Ordinal);
        ProgramRun.Of(_scratch.Folder, "packet", plan, "--sheets", "fits", "--out", "p");
        var sheet = ProgramRun.Other("pdftotext", _scratch.Folder, "p/packet-fits.pdf", "-").Out;
        foreach (var words in new[] { "Pins and fits", "5.018", "5.124", "0.2017", "Local rules and the machine's manual come first" }) Assert.Contains(words, sheet.ReplaceLineEndings(" "), StringComparison.Ordinal);
    }

    [Fact]
    public void A_plan_without_pins_has_no_such_sheet()
    {
        var plan = _scratch.Put("plain.plan.toml", string.Join("[[hole]]", System.IO.File.ReadAllText(_scratch.PutExample("kitchen-knife")).Split("[[hole]]").Where(p => !p.Contains("make = \"ream\"", StringComparison.Ordinal))));
        ProgramRun.Of(_scratch.Folder, "packet", plan, "--out", "p");
        Assert.DoesNotContain("Pins and fits", ProgramRun.Other("pdftotext", _scratch.Folder, "p/packet.pdf", "-").Out, StringComparison.Ordinal);
    }
}
