using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>The best k of many straight cuts that all run along one convex piece: exact, by a dynamic program round the piece.</summary>
/// <remarks>
/// A point outside the piece is cut off by cuts whose directions form one arc shorter than half a turn. So for cuts in order of their direction what they take off together is the sum of what each takes off less, for each two neighbours under half a turn apart, what both take off; the same for any worth spread over the blank, and a cost of each cut taken off it.
/// </remarks>
[Formula("the k straight cuts of many that take most off a blank round a convex piece", "aggarwal-1985", "Cuts that touch the grown hull, at the angles looked at; exact: equal to trying every set")]
public sealed class BestCuts
{
    private readonly double[] _worth;
    private readonly int[][] _cuts;

    private BestCuts(double[] worth, int[][] cuts) => (_worth, _cuts) = (worth, cuts);

    /// <summary>Most cuts it was worked out for.</summary>
    public int Most => _worth.Length;

    /// <summary>What the best k cuts are worth; k from 1.</summary>
    public double Worth(int k) => _worth[k - 1];

    /// <summary>The best k cuts, as places in the list of candidates, ascending; k from 1.</summary>
    public ImmutableArray<int> Cuts(int k) => [.. _cuts[k - 1] ?? []];

    /// <summary>The best sets of 1 up to so many cuts.</summary>
    /// <param name="cuts">The candidates, by rising angle.</param>
    /// <param name="one">What each is worth.</param>
    /// <param name="both">What two share, [i, j] for i before j.</param>
    /// <param name="most">Most cuts.</param>
    public static BestCuts Of(ImmutableArray<SupportCut> cuts, double[] one, double[,] both, int most)
    {
        var m = cuts.Length;
        most = Math.Min(most, m);
        var (worth, best) = (new double[most], new int[most][]);
        Array.Fill(worth, double.NegativeInfinity);
        var (row, next) = (new double[m], new double[m]);
        var from = new int[most, m];
        for (var first = 0; first < m; first++)
        {
            Array.Fill(row, double.NegativeInfinity);
            row[first] = one[first];
            for (var k = 0; k < most; k++)
            {
                // close the round: what the last shares with the first, when that is the short way round
                var (top, last) = (double.NegativeInfinity, -1);
                for (var j = first + k; j < m; j++)
                {
                    if (double.IsNegativeInfinity(row[j])) continue;
                    var shared = k > 0 && cuts[j].AngleRadians - cuts[first].AngleRadians > Math.PI ? both[first, j] : 0;
                    if (row[j] - shared > top) (top, last) = (row[j] - shared, j);
                }

                if (last >= 0 && top > worth[k] + 1e-12)
                {
                    worth[k] = top;
                    var set = new int[k + 1];
                    var at = last;
                    for (var s = k; s >= 0; s--)
                    {
                        set[s] = at;
                        if (s > 0) at = from[s, at];
                    }

                    best[k] = set;
                }

                if (k + 1 == most) break;
                Array.Fill(next, double.NegativeInfinity);
                for (var j = first + k + 1; j < m; j++)
                {
                    for (var i = first + k; i < j; i++)
                    {
                        if (double.IsNegativeInfinity(row[i])) continue;
                        var shared = cuts[j].AngleRadians - cuts[i].AngleRadians < Math.PI ? both[i, j] : 0;
                        var v = row[i] + one[j] - shared;
                        if (v > next[j]) (next[j], from[k + 1, j]) = (v, i);
                    }
                }

                (row, next) = (next, row);
            }
        }

        return new BestCuts(worth, best);
    }
}
