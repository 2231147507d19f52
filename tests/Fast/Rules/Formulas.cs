using System.Reflection;
using System.Text;
using Tangwright.Foundation;

namespace Tangwright.Tests.Rules;

/// <summary>Every formula names a listed source, is tested by a case and by a law, and stands in docs/formulas.md.</summary>
public class Formulas
{
    private static readonly (Type Type, FormulaAttribute Mark)[] All =
    [
        .. from a in new[] { typeof(Point).Assembly, typeof(Core.Plan).Assembly, typeof(Documents.SheetKind).Assembly, typeof(Inputs.PlanReader).Assembly }
           from t in a.GetTypes()
           let mark = t.GetCustomAttribute<FormulaAttribute>()
           where mark is not null
           orderby t.Name
           select (t, mark),
    ];

    [Fact]
    public void There_are_some() => Assert.NotEmpty(All);

    [Fact]
    public void Name_a_listed_source()
    {
        var listed = SourceKeys();
        Assert.Empty(All.Where(f => !listed.Contains(f.Mark.SourceKey)).Select(f => $"{f.Type.Name}: {f.Mark.SourceKey}"));
    }

    [Fact]
    public void Are_tested_by_a_case_and_by_a_law()
    {
        string[] cases = [.. TestText("Reference"), .. TestText("Unit")];
        var laws = TestText("Laws");
        Assert.Empty(All.Where(f => !Array.Exists(cases, c => c.Contains(f.Type.Name + ".", StringComparison.Ordinal))).Select(f => f.Type.Name + " has no case"));
        Assert.Empty(All.Where(f => !Array.Exists(laws, c => c.Contains(f.Type.Name + ".", StringComparison.Ordinal))).Select(f => f.Type.Name + " has no law"));
    }

    [Fact]
    public void Stand_in_the_docs()
    {
        var sources = Inputs.SourceReader.Read(Repository.Text("data", "sources.toml"), "data/sources.toml").Value;
        var page = new StringBuilder("# Formulas\n\nMade from the marks in the code; do not edit by hand.\n\n| gives | file | source | holds for |\n| --- | --- | --- | --- |\n");
        foreach (var (type, mark) in All)
        {
            page.Append($"| {mark.Gives} | `{FileOf(type)}` | {(sources.Find(mark.SourceKey)?.Title ?? mark.SourceKey)} | {mark.Range} |\n");
        }

        GeneratedPage.Check(page.ToString(), "docs", "formulas.md");
    }

    private static HashSet<string> SourceKeys()
        => [.. Inputs.SourceReader.Read(Repository.Text("data", "sources.toml"), "data/sources.toml").Value.All.Select(s => s.Key), SourceTag.FromMemory, SourceTag.CommonPractice];

    private static string[] TestText(string folder)
        => System.IO.Directory.Exists(Repository.Path("tests", "Fast", folder))
            ? [.. System.IO.Directory.EnumerateFiles(Repository.Path("tests", "Fast", folder), "*.cs", System.IO.SearchOption.AllDirectories).Select(System.IO.File.ReadAllText)]
            : [];

    private static string FileOf(Type type)
        => System.IO.Directory.EnumerateFiles(Repository.Path("src"), type.Name + ".cs", System.IO.SearchOption.AllDirectories)
            .Select(f => f[(Repository.Root.Length + 1)..].Replace('\\', '/'))
            .FirstOrDefault(f => !f.Contains("/obj/", StringComparison.Ordinal)) ?? type.Name;
}
