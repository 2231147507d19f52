using System.Text.Json;

namespace Tangwright.Tests;

/// <summary>The verb <c>roughcut</c> as it is typed.</summary>
public sealed class RoughcutTests : IDisposable
{
    private readonly Scratch _scratch = new();

    public void Dispose() => _scratch.Dispose();

    [Fact]
    public void Areas_add_up_and_both_times_are_told()
    {
        var plan = _scratch.PutExample("skeleton-hatchet");
        var run = ProgramRun.Of(_scratch.Folder, "roughcut", plan, "--json");
        Assert.Equal(0, run.Exit);
        using var json = JsonDocument.Parse(run.Out);
        var areas = json.RootElement.GetProperty("areas");
        double Area(string name) => areas.GetProperty(name).GetDouble();
        Assert.Equal(Area("blank_mm2"), Area("offcuts_mm2") + Area("kerf_mm2") + Area("left_mm2"), 1e-4);
        Assert.Equal(281 * 76.2, Area("blank_mm2"), 1e-6);
        Assert.True(json.RootElement.GetProperty("least_gap_mm").GetDouble() >= json.RootElement.GetProperty("allowance_mm").GetDouble());
        Assert.True(json.RootElement.GetProperty("saw_then_grind").GetProperty("minutes").GetDouble() < json.RootElement.GetProperty("grind_only").GetProperty("grind_minutes").GetDouble());
        var told = ProgramRun.Of(_scratch.Folder, "roughcut", plan);
        Assert.Contains("Saw then grind: 17 min", told.Out);
        Assert.Contains("Grind only: 31 min", told.Out);
        Assert.Contains("manual come first", told.Out);
    }

    [Theory]
    [InlineData("--cuts", "9", "0 to 8")]
    [InlineData("--saw", "laser", "name one of: portable band saw on its stand")]
    public void What_cannot_be_is_told(string option, string value, string says)
    {
        var run = ProgramRun.Of(_scratch.Folder, "roughcut", _scratch.PutExample("skeleton-hatchet"), option, value);
        Assert.Equal(2, run.Exit);
        Assert.Contains(says, run.Error);
        Assert.Empty(run.Out);
    }
}
