using System.Collections.Immutable;
using System.Numerics;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>The shortest open way over few places, by dynamic programming over their subsets (Held and Karp, 1962).</summary>
internal static class ExactWay
{
    /// <summary>The order; time and memory double with every place.</summary>
    public static ImmutableArray<int> Over(Point start, ImmutableArray<Point> places)
    {
        var n = places.Length;
        var full = (1 << n) - 1;

        // least[set, last]: shortest way from the start over the set, ending at its member last
        var least = new double[full + 1, n];
        var before = new int[full + 1, n];
        for (var set = 1; set <= full; set++)
        {
            for (var last = 0; last < n; last++)
            {
                if ((set & (1 << last)) == 0) continue;
                var rest = set & ~(1 << last);
                (least[set, last], before[set, last]) = rest == 0 ? (start.To(places[last]), -1) : Best(places, least, rest, last);
            }
        }

        var end = Enumerable.Range(0, n).MinBy(i => least[full, i]);
        var order = new int[n];
        for (var (set, k) = (full, BitOperations.PopCount((uint)full) - 1); k >= 0; k--)
        {
            order[k] = end;
            (set, end) = (set & ~(1 << end), before[set, end]);
        }

        return [.. order];
    }

    private static (double Least, int Before) Best(ImmutableArray<Point> places, double[,] least, int rest, int last)
    {
        var (best, from) = (double.PositiveInfinity, -1);
        for (var k = 0; k < places.Length; k++)
        {
            if ((rest & (1 << k)) == 0) continue;
            var way = least[rest, k] + places[k].To(places[last]);
            if (way < best) (best, from) = (way, k);
        }

        return (best, from);
    }
}
