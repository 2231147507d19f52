using CsCheck;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.Tests;

/// <summary>Law: any text gives a value or faults with a message and a remedy; never an exception.</summary>
public class HostileInputTests
{
    private static readonly string[] Plans = [.. Directory.GetFiles(Repository.Path("examples"), "*.plan.toml").Order(StringComparer.Ordinal).Select(File.ReadAllText)];
    private static readonly string[] Shops = [.. Directory.GetFiles(Repository.Path("examples"), "*.shop.toml").Order(StringComparer.Ordinal).Select(File.ReadAllText)];
    private static readonly string[] Steels = [.. Directory.GetFiles(Repository.Path("data", "steels"), "*.toml").Order(StringComparer.Ordinal).Select(File.ReadAllText)];

    private static bool Holds<T>(Checked<T> read, bool mustFail = false)
        where T : class
        => (read.IsGood && !mustFail) || (read.Faults.Length is > 0 and <= 50 && read.Faults.All(f => f.Message.Length > 0 && f.Remedy.Length > 0 && f.LineText.Length < 300));

    private static void All(string text, bool mustFail = false)
    {
        Assert.True(Holds(PlanReader.Read(text, "x"), mustFail));
        Assert.True(Holds(ShopReader.Read(text, "x"), mustFail));
        Assert.True(Holds(SteelReader.Read(text, "x"), mustFail));
        Assert.True(Holds(SourceReader.Read(text, "x"), mustFail));
    }

    [Fact]
    public void Files_cut_off_anywhere()
    {
        foreach (var text in Plans.Concat(Shops).Concat(Steels))
        {
            for (var i = 0; i < text.Length; i += 53)
            {
                Assert.True(Holds(PlanReader.Read(text[..i], "x")));
                Assert.True(Holds(ShopReader.Read(text[..i], "x")));
                Assert.True(Holds(SteelReader.Read(text[..i], "x")));
            }
        }
    }

    [Fact]
    public void Files_with_characters_changed()
    {
        var odd = Gen.OneOf(Gen.Char[" \t\r\n\"'[]{}=#.,/\\-+_0123456789eExabMLAZz\0\uFEFF\u00A0é"], Gen.Char);
        Gen.Select(Gen.Const<string[]>([.. Plans, .. Shops, .. Steels]).SelectMany(a => Gen.Int[0, a.Length - 1].Select(i => a[i])), Gen.Select(Gen.Int[0, 1_000_000], odd).Array[1, 6]).Sample((text, changes) =>
        {
            var c = text.ToCharArray();
            foreach (var (at, to) in changes) c[at % c.Length] = to;
            var changed = new string(c);
            return Holds(PlanReader.Read(changed, "x")) && Holds(ShopReader.Read(changed, "x")) && Holds(SteelReader.Read(changed, "x"));
        }, iter: 400);
    }

    [Fact]
    public void Values_changed_to_others_of_any_kind()
    {
        var lines = Plans.Concat(Shops).SelectMany(t => t.Split('\n').Where(l => l.Contains(" = ") && !l.StartsWith('#')).Select(l => (Text: t, Line: l))).ToArray();
        string[] values = ["1", "-1", "0", "1e308", "inf", "nan", "\"\"", "\"x\"", "\"1/4 in\"", "true", "[]", "[1]", "[1, 2]", "[[1, 2], [3, 4]]", "[[[[[]]]]]", "{}", "{ a = 1 }", "[{}]", "1979-05-27", "\"M 0 0 L 1 1\"", "\"\\u0000\"", "'''\n\n'''", "9223372036854775807", "\"#1 to #80\"", "\"0 to 0 by 0\""];
        Gen.Select(Gen.Int[0, lines.Length - 1], Gen.Int[0, values.Length - 1].Select(k => values[k])).Sample((i, value) =>
        {
            var (text, line) = lines[i];
            var changed = text.Replace(line, line[..line.IndexOf('=')] + "= " + value, StringComparison.Ordinal);
            return Holds(PlanReader.Read(changed, "x")) && Holds(ShopReader.Read(changed, "x"));
        }, iter: 500);
    }

    [Fact]
    public void Junk_of_ten_million_characters() => All(new string('x', 10_000_000), mustFail: true);

    [Fact]
    public void Junk_just_under_the_limit()
    {
        All(string.Concat(Enumerable.Repeat("]=[\"'{}", 140_000)), mustFail: true);
        All(new string('\n', 49_000) + "=", mustFail: true);
    }

    [Theory]
    [InlineData("[")]
    [InlineData("{")]
    [InlineData("{a=")]
    [InlineData("[{a=")]
    public void Deep_nesting(string open)
    {
        foreach (var depth in new[] { 10, 63, 64, 65, 1000, 100_000 }) All("a = " + string.Concat(Enumerable.Repeat(open, depth)), mustFail: true);
        All("a = " + new string('[', 60) + new string(']', 60), mustFail: true);
    }

    [Fact]
    public void Many_keys_headings_and_dots()
    {
        All(string.Concat(Enumerable.Range(0, 40_000).Select(i => $"k{i} = {i}\n")), mustFail: true);
        All(string.Concat(Enumerable.Range(0, 40_000).Select(i => $"[t{i}]\n")), mustFail: true);
        All(string.Concat(Enumerable.Repeat("[[hole]]\n", 40_000)), mustFail: true);
        All(string.Join('.', Enumerable.Repeat("a", 100_000)) + " = 1", mustFail: true);
        All("[" + string.Join('.', Enumerable.Repeat("a", 100_000)) + "]", mustFail: true);
    }

    [Fact]
    public void A_path_and_a_list_without_end()
    {
        All(Plans[0].Replace("Z\n\"\"\"", string.Concat(Enumerable.Repeat("L 1 1 ", 150_000)) + "Z\n\"\"\"", StringComparison.Ordinal), mustFail: true);
        All("drills = [" + string.Concat(Enumerable.Repeat("1,", 490_000)) + "]", mustFail: true);
    }
}
