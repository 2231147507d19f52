using System.Text.Json;

namespace Tangwright.Tests;

/// <summary>The verb <c>balance</c> as it is typed.</summary>
public sealed class BalanceTests : IDisposable
{
    private readonly Scratch _scratch = new();

    public void Dispose() => _scratch.Dispose();

    [Fact]
    public void What_it_says_written_into_the_plan_is_so()
    {
        var plan = _scratch.PutExample("kitchen-knife");
        var run = ProgramRun.Of(_scratch.Folder, "balance", plan, "--to", "10", "--levers", "tang-taper", "--json");
        Assert.Equal(0, run.Exit);
        using var json = JsonDocument.Parse(run.Out);
        var lever = json.RootElement.GetProperty("levers")[0];
        Assert.True(lever.GetProperty("reaches").GetBoolean());
        var butt = lever.GetProperty("value").GetDouble();
        // 1.5 in the worked example, which leaves the glue out
        Assert.InRange(butt, 1.25, 1.5);
        var text = System.IO.File.ReadAllText(plan).Replace("# [tang_taper]\n# starts = 206\n# thickness = 1.5", FormattableString.Invariant($"[tang_taper]\nstarts = 206\nthickness = {butt:F4}"), StringComparison.Ordinal);
        var tapered = _scratch.Put("tapered.plan.toml", text);
        using var figures = JsonDocument.Parse(ProgramRun.Of(_scratch.Folder, "balance", tapered, "--json").Out);
        Assert.Equal(10, figures.RootElement.GetProperty("now").GetProperty("balance_from_datum_mm").GetDouble(), 0.01);
    }

    [Theory]
    [InlineData("--to", "far", "--to")]
    [InlineData("--weight", "12", "unit")]
    [InlineData("--levers", "luck", "tang-taper, distal-taper")]
    public void What_cannot_be_is_told(string option, string value, string says)
    {
        var run = ProgramRun.Of(_scratch.Folder, "balance", _scratch.PutExample("kitchen-knife"), option, value);
        Assert.Equal(2, run.Exit);
        Assert.Contains(says, run.Error);
        Assert.Empty(run.Out);
    }
}
