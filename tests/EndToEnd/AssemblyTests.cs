using System.Text.Json;

namespace Tangwright.Tests;

/// <summary>The verb that says whether tang and scales will go together, as a maker meets it.</summary>
public sealed class AssemblyTests : IDisposable
{
    private readonly Scratch _scratch = new();

    public void Dispose() => _scratch.Dispose();

    private ProgramRun Assembly(string plan, params string[] words) => ProgramRun.Of(_scratch.Folder, ["assembly", plan, .. words]);

    [Fact]
    public void The_same_seed_gives_the_same_numbers_and_another_seed_nearly()
    {
        var plan = _scratch.PutExample("kitchen-knife");
        var (first, again, other) = (Assembly(plan, "--trials", "4000", "--json"), Assembly(plan, "--trials", "4000", "--json", "--seed", "1"), Assembly(plan, "--trials", "4000", "--json", "--seed", "2"));
        Assert.Equal(0, first.Exit);
        Assert.Equal(first.Out, again.Out);
        Assert.NotEqual(first.Out, other.Out);
        Assert.Equal(Chance(first, "readout"), Chance(other, "readout"), 0.05);
        Assert.True(Chance(first, "drilled together") > 0.9);
        Assert.Contains("> scales pinned to the tang and drilled through it, as the plan says", Assembly(plan, "--trials", "100").Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--trials", "5")]
    [InlineData("--seed", "-1")]
    [InlineData("--trials", "many")]
    public void What_cannot_be_asked_is_refused(string option, string value)
    {
        var run = Assembly(_scratch.PutExample("kitchen-knife"), option, value);
        Assert.Equal(2, run.Exit);
        Assert.NotEmpty(run.Error);
        Assert.Empty(run.Out);
    }

    [Fact]
    public void A_plan_without_scales_says_what_is_missing_and_tells_its_rows()
    {
        var plan = _scratch.PutExample("skeleton-hatchet");
        System.IO.File.AppendAllText(plan, "\n[[hole_row]]\nname = \"R\"\nalong = [[120, 26], [200, 26]]\ncount = 5\ndiameters = [3]\n");
        var run = Assembly(plan);
        Assert.Equal(0, run.Exit);
        Assert.Contains("write [scales]", run.Out, StringComparison.Ordinal);
        Assert.Contains("row R: how far its holes stand off their best line", run.Out, StringComparison.Ordinal);
    }

    private static double Chance(ProgramRun run, string way)
    {
        using var json = JsonDocument.Parse(run.Out);
        return json.RootElement.GetProperty("ways").EnumerateArray().Single(w => w.GetProperty("way").GetString() == way).GetProperty("chance").GetDouble();
    }
}
