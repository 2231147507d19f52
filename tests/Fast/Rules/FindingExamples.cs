using Tangwright.Core;
using Tangwright.UseCases;

namespace Tangwright.Tests.Rules;

/// <summary>Every finding has a broken plan that brings it out, and stands in docs/findings.md.</summary>
public class FindingExamples
{
    private const string Expects = "# expects: ";

    public static TheoryData<string> Plans()
    {
        var data = new TheoryData<string>();
        foreach (var file in System.IO.Directory.EnumerateFiles(Repository.Path("examples", "broken"), "*.plan.toml").Order(StringComparer.Ordinal))
        {
            if (CodeOf(file) is not null) data.Add(System.IO.Path.GetFileName(file));
        }

        return data;
    }

    [Theory]
    [MemberData(nameof(Plans))]
    public void A_broken_plan_brings_out_its_finding(string name)
    {
        var file = Repository.Path("examples", "broken", name);
        var worked = CheckPlan.Of(file, null);
        Assert.True(worked.IsGood, string.Join("\n", worked.Faults));
        var found = worked.Value.Findings.Where(f => f.Code == CodeOf(file)).ToArray();
        Assert.True(found.Length > 0, "found only: " + string.Join(", ", worked.Value.Findings.Select(f => f.Code)));
        Assert.All(found, f =>
        {
            Assert.NotEmpty(f.Message);
            Assert.NotEmpty(f.Found);
            Assert.NotEmpty(f.Limit);
            Assert.NotEmpty(f.Source);
            Assert.NotEmpty(f.Remedy);
            Assert.DoesNotContain("NaN", f.Message + f.Found + f.Limit + f.Remedy);
        });
        var listed = FindingCodes.All.Single(c => c.Code == CodeOf(file));
        Assert.All(found, f => Assert.True(f.Severity <= listed.Severity));
    }

    [Fact]
    public void Every_code_has_a_broken_plan()
    {
        var shown = System.IO.Directory.EnumerateFiles(Repository.Path("examples", "broken"), "*.plan.toml").Select(CodeOf).ToHashSet();
        Assert.Empty(FindingCodes.All.Where(c => !shown.Contains(c.Code)).Select(c => c.Code));
        Assert.Empty(shown.Where(c => c is not null && FindingCodes.All.All(k => k.Code != c)));
    }

    [Fact]
    public void Every_code_in_the_source_is_listed_once()
    {
        var constants = typeof(FindingCodes).GetFields().Where(f => f.IsLiteral).Select(f => (string)f.GetRawConstantValue()!).Order(StringComparer.Ordinal);
        Assert.Equal(constants, FindingCodes.All.Select(c => c.Code).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void The_page_of_findings_is_fresh() => GeneratedPage.Check(FindingCodesPage.Text(), "docs", "findings.md");

    private static string? CodeOf(string file)
    {
        var first = System.IO.File.ReadLines(file).FirstOrDefault() ?? "";
        return first.StartsWith(Expects, StringComparison.Ordinal) && first[Expects.Length..] is var code && code.Contains('.') && !code.Contains(' ') ? code : null;
    }
}
