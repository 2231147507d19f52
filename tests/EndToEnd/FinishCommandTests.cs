using System.Text.Json;

namespace Tangwright.Tests;

/// <summary>The verb of the finish and its log, as a maker meets them.</summary>
public sealed class FinishCommandTests : IDisposable
{
    private readonly Scratch _scratch = new();

    public void Dispose() => _scratch.Dispose();

    [Fact]
    public void Three_logged_batches_change_the_times()
    {
        var plan = _scratch.PutExample("skeleton-hatchet");
        foreach (var (batch, grams) in new[] { ("spring", "360"), ("summer", "480"), ("autumn", "420") })
        {
            Assert.Equal(0, ProgramRun.Of(_scratch.Folder, "finish", plan, "--ground", "ceramic p36", "--batch", batch, "--pieces", "12", "--minutes", "30", "--grams", grams, "--belts", "0.5", "--date", "2026-11-01").Exit);
        }

        Assert.Equal(4, System.IO.File.ReadAllLines(_scratch.Path("grinding.csv")).Length);
        var step = JsonDocument.Parse(ProgramRun.Of(_scratch.Folder, "finish", plan, "--json").Out).RootElement.GetProperty("steps")[0];
        Assert.Equal(step.GetProperty("grams").GetDouble() / 14, step.GetProperty("minutes").GetDouble(), 1e-3);
    }

    [Fact]
    public void A_belt_nobody_owns_is_refused_and_nothing_is_written()
    {
        var plan = _scratch.PutExample("paring-knife");
        var run = ProgramRun.Of(_scratch.Folder, "finish", plan, "--ground", "P36", "--batch", "x", "--pieces", "1", "--minutes", "3");
        Assert.Equal(2, run.Exit);
        Assert.Contains("choose from", run.Error, StringComparison.Ordinal);
        Assert.False(System.IO.File.Exists(_scratch.Path("grinding.csv")));
        Assert.Contains("without its series", ProgramRun.Of(_scratch.Folder, "finish", plan, "--last", "400").Error, StringComparison.Ordinal);
    }
}
