using Tangwright.Core;
using Tangwright.Inputs;

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
        var read = PlanReader.Read(System.IO.File.ReadAllText(file), name);
        Assert.True(read.IsGood, string.Join("\n", read.Faults));
        var findings = WorkUp.Of(read.Value.Plan, ShopOf(file), SteelOf(read.Value.Plan)).Findings;
        var found = findings.Where(f => f.Code == CodeOf(file)).ToArray();
        Assert.True(found.Length > 0, "found only: " + string.Join(", ", findings.Select(f => f.Code)));
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
        Assert.Equal(FindingCodes.All.Select(c => c.Code).Order(StringComparer.Ordinal), shown.OfType<string>().Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Every_code_in_the_source_is_listed_once()
    {
        var constants = typeof(FindingCodes).GetFields().Where(f => f.IsLiteral).Select(f => (string)f.GetRawConstantValue()!).Order(StringComparer.Ordinal);
        Assert.Equal(constants, FindingCodes.All.Select(c => c.Code).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void The_page_of_findings_is_fresh() => GeneratedPage.Check(FindingCodesPage.Text(), "docs", "findings.md");

    /// <summary>The shop beside the plan, when one is needed to bring the finding out.</summary>
    internal static Shop ShopOf(string planFile)
    {
        var beside = planFile.Replace(".plan.toml", ".shop.toml", StringComparison.Ordinal);
        return beside.Contains("broken", StringComparison.Ordinal) && System.IO.File.Exists(beside) ? ShopReader.Read(System.IO.File.ReadAllText(beside), beside).Value : TestShop.Own;
    }

    internal static Steel? SteelOf(Plan plan)
        => new[] { Repository.Path("examples", "broken", "steels"), Repository.Path("data", "steels") }
            .SelectMany(folder => System.IO.Directory.EnumerateFiles(folder, "*.toml"))
            .Select(file => SteelReader.Read(System.IO.File.ReadAllText(file), file).Value)
            .FirstOrDefault(steel => steel.Name == plan.Stock.Steel);

    private static string? CodeOf(string file)
    {
        var first = System.IO.File.ReadLines(file).FirstOrDefault() ?? "";
        return first.StartsWith(Expects, StringComparison.Ordinal) && first[Expects.Length..] is var code && code.Contains('.') && !code.Contains(' ') ? code : null;
    }
}
