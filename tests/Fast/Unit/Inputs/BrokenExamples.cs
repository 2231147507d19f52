using System.Text;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.Tests;

/// <summary>One bad file for every message. The message expected stands beside it; TANGWRIGHT_WRITE_DOCS=1 writes it anew, to be read before it is kept.</summary>
public class BrokenExamples
{
    /// <summary>All but the plans that read well and bring out a finding; those say so in a line that begins with "# expects: ".</summary>
    public static TheoryData<string> Bad { get; } =
    [
        .. from file in System.IO.Directory.GetFiles(Repository.Path("examples", "broken"), "*.toml").Order(StringComparer.Ordinal)
           where file.EndsWith(".plan.toml", StringComparison.Ordinal) || file.EndsWith(".shop.toml", StringComparison.Ordinal)
           where !System.IO.File.ReadAllText(file).Contains("# expects: ", StringComparison.Ordinal)
           select System.IO.Path.GetFileName(file),
    ];

    [Theory]
    [MemberData(nameof(Bad))]
    public void Says_what_is_wrong_and_what_to_write(string name)
    {
        var text = Repository.Text("examples", "broken", name);
        var faults = name.EndsWith(".plan.toml", StringComparison.Ordinal) ? PlanReader.Read(text, name).Faults : ShopReader.Read(text, name).Faults;
        Assert.NotEmpty(faults);
        GeneratedPage.Check(Shown(faults), "examples", "broken", name[..^5] + ".expected.txt");
        Assert.All(faults, f =>
        {
            Assert.NotEmpty(f.Message);
            Assert.NotEmpty(f.Remedy);
            Assert.True(f.Line == 0 || text.Split('\n')[f.Line - 1].TrimEnd('\r') == f.LineText);
        });
    }

    [Fact]
    public void There_is_one_for_every_kind() => Assert.True(Bad.Count > 100);

    private static string Shown(IEnumerable<Fault> faults)
    {
        var s = new StringBuilder();
        foreach (var f in faults)
        {
            s.Append(f.Line > 0 ? $"line {f.Line}, column {f.Column}: {f.Message}\n" : $"{f.Message}\n");
            if (f.LineText.Length > 0) s.Append("    ").Append(f.LineText).Append('\n');
            s.Append("    ").Append(f.Remedy).Append('\n');
        }

        return s.ToString();
    }
}
