using System.Text.Json;

namespace Tangwright.Tests;

/// <summary>The verb that compares two plans, as a maker meets it.</summary>
public sealed class CompareTests : IDisposable
{
    private readonly Scratch _scratch = new();

    public void Dispose() => _scratch.Dispose();

    [Fact]
    public void A_moved_hole_is_told_in_words_and_as_numbers()
    {
        var now = _scratch.PutExample("skeleton-hatchet");
        System.IO.Directory.CreateDirectory(_scratch.Path("kept"));
        System.IO.File.WriteAllText(_scratch.Path("kept", "a.plan.toml"), System.IO.File.ReadAllText(now).Replace("at = [100, 18.2]", "at = [97, 18.2]", StringComparison.Ordinal));
        var words = ProgramRun.Of(_scratch.Folder, "compare", "kept/a.plan.toml", now);
        Assert.Equal(0, words.Exit);
        Assert.Contains("moved 3 mm right", words.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("Finished steel weighs", words.Out, StringComparison.Ordinal);

        // the copy in its own folder is judged by the shop of the plan
        Assert.DoesNotContain("Assumed", words.Out, StringComparison.OrdinalIgnoreCase);
        var json = JsonDocument.Parse(ProgramRun.Of(_scratch.Folder, "compare", "kept/a.plan.toml", now, "--json").Out).RootElement;
        var hole = Assert.Single(json.GetProperty("holes").EnumerateArray());
        Assert.Equal(("L1", 3.0), (hole.GetProperty("name").GetString(), hole.GetProperty("moved_x_mm").GetDouble()));
        Assert.Equal(JsonValueKind.Null, json.GetProperty("outline").ValueKind);
    }

    [Fact]
    public void A_plan_is_the_same_as_itself()
    {
        var plan = _scratch.PutExample("paring-knife");
        Assert.Contains("the two plans are the same", ProgramRun.Of(_scratch.Folder, "compare", plan, plan).Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_missing_plan_exits_2_with_a_word()
    {
        var plan = _scratch.PutExample("paring-knife");
        var run = ProgramRun.Of(_scratch.Folder, "compare", plan, "no-such.plan.toml");
        Assert.Equal(2, run.Exit);
        Assert.Empty(run.Out);
        Assert.Contains("no-such.plan.toml", run.Error, StringComparison.Ordinal);
    }
}
