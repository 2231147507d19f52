using System.Text;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.Tests;

/// <summary>One bad file for every message. The message expected stands beside it; TANGWRIGHT_WRITE_DOCS=1 writes it anew, to be read before it is kept.</summary>
public class BrokenExamples
{
    public static TheoryData<string> Bad { get; } = [.. Directory.GetFiles(Files.Of("examples", "broken"), "*.toml").Where(f => f.EndsWith(".plan.toml", StringComparison.Ordinal) || f.EndsWith(".shop.toml", StringComparison.Ordinal)).Where(f => Expected(f) is var e && (File.Exists(e) || Environment.GetEnvironmentVariable("TANGWRIGHT_WRITE_DOCS") == "1")).Select(f => System.IO.Path.GetFileName(f)!).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Bad))]
    public void Says_what_is_wrong_and_what_to_write(string name)
    {
        var file = Files.Of("examples", "broken", name);
        var text = File.ReadAllText(file);
        var faults = name.EndsWith(".plan.toml", StringComparison.Ordinal) ? PlanReader.Read(text, name).Faults : ShopReader.Read(text, name).Faults;
        Assert.NotEmpty(faults);
        var shown = Shown(faults);
        if (Environment.GetEnvironmentVariable("TANGWRIGHT_WRITE_DOCS") == "1") File.WriteAllText(Expected(file), shown);
        Assert.Equal(File.ReadAllText(Expected(file)), shown);
        Assert.All(faults, f =>
        {
            Assert.NotEmpty(f.Message);
            Assert.NotEmpty(f.Remedy);
            Assert.True(f.Line == 0 || text.Split('\n')[f.Line - 1].TrimEnd('\r') == f.LineText);
        });
    }

    [Fact]
    public void There_is_one_for_every_kind() => Assert.True(Bad.Count > 100);

    private static string Expected(string file) => file[..^5] + ".expected.txt";

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
