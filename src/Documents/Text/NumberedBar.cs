using System.Collections.Immutable;
using Tangwright.Core;

namespace Tangwright.Documents;

/// <summary>One bar of an order with its number, and the numbers of the pieces that come out of it.</summary>
/// <param name="Number">Number of the bar, from 1.</param>
/// <param name="CutNumber">Which way of cutting, from 1.</param>
/// <param name="Cut">How it is cut.</param>
/// <param name="Pieces">For each pattern in it the first and last number of its pieces.</param>
public sealed record NumberedBar(int Number, int CutNumber, BarCut Cut, ImmutableArray<(StockPattern Pattern, int First, int Last)> Pieces)
{
    /// <summary>All bars in the order of the cut map.</summary>
    public static IEnumerable<NumberedBar> Of(StockPlan s)
    {
        var (number, next) = (0, new int[s.Patterns.Length]);
        for (var i = 0; i < s.Cuts.Length; i++)
        {
            var here = s.Cuts[i].Places.GroupBy(p => p.Pattern).OrderBy(g => g.Key).Select(g => (Pattern: g.Key, Count: g.Count())).ToArray();
            for (var k = 0; k < s.Cuts[i].Count; k++)
            {
                yield return new NumberedBar(++number, i + 1, s.Cuts[i], [.. here.Select(h => (s.Patterns[h.Pattern], next[h.Pattern] + 1, next[h.Pattern] + h.Count))]);
                foreach (var h in here) next[h.Pattern] += h.Count;
            }
        }
    }

    /// <summary>"Bar 4" or "Bars 4 to 9" for one way of cutting.</summary>
    public static string Words(StockPlan s, int cut)
    {
        var first = 1 + s.Cuts.Take(cut).Sum(c => c.Count);
        var name = s.IsOnSheets ? "Sheet" : "Bar";
        return s.Cuts[cut].Count == 1 ? $"{name} {first}" : $"{name}s {first} to {first + s.Cuts[cut].Count - 1}";
    }
}
