using Tangwright.UseCases;

namespace Tangwright.Tests;

/// <summary>What a way out of a finding would do, told beside the plan, then made and taken back.</summary>
public sealed class RemedyEffectTests : IDisposable
{
    private readonly Scratch _scratch = new();
    private readonly DeskFolder _folder;
    private readonly PlanOnDesk _plan;

    public RemedyEffectTests()
    {
        _scratch.PutExample("skeleton-hatchet");
        _folder = DeskFolder.Of(_scratch.Folder).Value;
        _plan = _folder.Plan("skeleton-hatchet").Value;
    }

    public void Dispose()
    {
        _folder.Dispose();
        _scratch.Dispose();
    }

    /// <summary>L1 drilled 15 mm instead of 16 in 6.35 mm of steel of 7.85 g/cm³ weighs π/4 (256 - 225) 6.35 · 0.00785 = 1.2 g more.</summary>
    [Fact]
    public void It_is_told_without_touching_the_plan()
    {
        var (text, version) = (_plan.Text, _plan.Version);
        var finding = _plan.Results.Findings.Single(f => f is { Code: "hole.web-to-outline", Where: "hole L1" });
        Assert.Equal(2, finding.Ways.Length);
        var effect = RemedyEffect.Of(_plan, finding.Ways[0]).Value;
        Assert.Equal((text, version), (_plan.Text, _plan.Version));
        Assert.Equal("hole L1", Assert.Single(effect.Parts).What);
        Assert.Equal("1 mm smaller", effect.Parts[0].By);
        Assert.Contains(effect.Findings.Gone, f => f == finding);
        Assert.Empty(effect.Findings.New);
        var weight = effect.Numbers.Single(n => n.Name == "Finished steel weighs");
        Assert.Equal(("455.3 g", "456.5 g", "+1.2 g"), (weight.Was, weight.Now, weight.By));

        Assert.Empty(_plan.Make(new MakeRemedy(finding.Ways[0])));
        Assert.DoesNotContain(_plan.Results.Findings, f => f is { Code: "hole.web-to-outline", Where: "hole L1" });
        _plan.Undo();
        Assert.Equal(text, _plan.Text);
    }
}
