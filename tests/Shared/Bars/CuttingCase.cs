using System.Collections.Immutable;
using System.Globalization;

namespace Tangwright.Tests.Bars;

/// <summary>One case of a public set of cutting stock in one dimension.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Bar">Length of a bar, whole units.</param>
/// <param name="Lengths">Lengths, all different.</param>
/// <param name="Wanted">How many of each.</param>
/// <param name="Known">Fewest bars known when the set was published; 0 when not given.</param>
internal sealed record CuttingCase(string Name, int Bar, ImmutableArray<int> Lengths, ImmutableArray<int> Wanted, int Known)
{
    /// <summary>Cases of one file of the folder.</summary>
    public static IReadOnlyList<CuttingCase> Read(string folder, string file)
    {
        var lines = File.ReadAllLines(System.IO.Path.Combine(folder, file)).Select(l => l.Trim()).Where(l => l.Length > 0).ToArray();
        return file.StartsWith("falkenauer", StringComparison.Ordinal) ? [.. Items(lines)] : [.. Kinds(lines)];
    }

    // name; bar, number of items, bars known; then an item a line, to a tenth
    private static IEnumerable<CuttingCase> Items(string[] lines)
    {
        var at = 1;
        while (at < lines.Length)
        {
            var (name, head) = (lines[at], Numbers(lines[at + 1]));
            var items = lines.Skip(at + 2).Take((int)head[1]).Select(l => (int)Math.Round(10 * Numbers(l)[0])).GroupBy(l => l).OrderByDescending(g => g.Key).ToArray();
            yield return new CuttingCase(name, (int)Math.Round(10 * head[0]), [.. items.Select(g => g.Key)], [.. items.Select(g => g.Count())], (int)head[2]);
            at += 2 + (int)head[1];
        }
    }

    // 'name'; number of lengths; bar; then length and count a line
    private static IEnumerable<CuttingCase> Kinds(string[] lines)
    {
        for (var at = 0; at < lines.Length;)
        {
            var kinds = (int)Numbers(lines[at + 1])[0];
            var rows = lines.Skip(at + 3).Take(kinds).Select(Numbers).ToArray();
            yield return new CuttingCase(lines[at].Trim('\''), (int)Numbers(lines[at + 2])[0], [.. rows.Select(r => (int)r[0])], [.. rows.Select(r => (int)r[1])], 0);
            at += 3 + kinds;
        }
    }

    private static double[] Numbers(string line) => [.. line.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).Select(n => double.Parse(n, CultureInfo.InvariantCulture))];
}
