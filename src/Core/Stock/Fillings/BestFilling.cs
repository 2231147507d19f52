using System.Collections.Immutable;

namespace Tangwright.Core;

/// <summary>Lengths that fill a bar to the greatest worth: a knapsack with so many of each at most.</summary>
internal sealed class BestFilling
{
    private readonly ImmutableArray<int> _lengths;
    private readonly ImmutableArray<int> _most;
    private readonly double[][] _worthFrom; // [from this length on][room left]

    private BestFilling(ImmutableArray<int> lengths, ImmutableArray<int> most, double[][] worthFrom) => (_lengths, _most, _worthFrom) = (lengths, most, worthFrom);

    /// <summary>The greatest worth.</summary>
    public double Worth => _worthFrom[0][^1];

    /// <summary>Works it out for every room that may be left.</summary>
    /// <param name="lengths">Lengths, whole units.</param>
    /// <param name="most">Most of each.</param>
    /// <param name="bar">Length of the bar.</param>
    /// <param name="worths">What each is worth.</param>
    public static BestFilling Of(ImmutableArray<int> lengths, ImmutableArray<int> most, int bar, ImmutableArray<double> worths)
    {
        var from = new double[lengths.Length + 1][];
        from[^1] = new double[bar + 1];
        for (var i = lengths.Length - 1; i >= 0; i--)
        {
            var (next, here) = (from[i + 1], from[i] = new double[bar + 1]);
            for (var room = 0; room <= bar; room++)
            {
                var best = next[room];
                for (var k = 1; k <= most[i] && k * lengths[i] <= room; k++) best = Math.Max(best, (k * worths[i]) + next[room - (k * lengths[i])]);
                here[room] = best;
            }
        }

        return new BestFilling(lengths, most, from) { Worths = worths };
    }

    private ImmutableArray<double> Worths { get; init; }

    /// <summary>Fillings worth at least so much, longest pieces first; stops when there are too many, and says so.</summary>
    public bool AtLeast(double worth, int mostFound, List<ImmutableArray<int>> found)
    {
        var counts = new int[_lengths.Length];
        return Next(0, _worthFrom[0].Length - 1, 0);

        bool Next(int i, int room, double have)
        {
            if (have + _worthFrom[i][room] < worth) return true;
            if (i == _lengths.Length)
            {
                if (found.Count >= mostFound) return false;
                found.Add([.. counts]);
                return true;
            }

            for (var k = Math.Min(_most[i], room / _lengths[i]); k >= 0; k--)
            {
                counts[i] = k;
                if (!Next(i + 1, room - (k * _lengths[i]), have + (k * Worths[i]))) return false;
            }

            counts[i] = 0;
            return true;
        }
    }

    /// <summary>One filling of the greatest worth.</summary>
    public ImmutableArray<int> Counts()
    {
        var (counts, room) = (new int[_lengths.Length], _worthFrom[0].Length - 1);
        for (var i = 0; i < _lengths.Length; i++)
        {
            var k = 0;
            while (k < _most[i] && (k + 1) * _lengths[i] <= room && _worthFrom[i][room] - ((k * Worths[i]) + _worthFrom[i + 1][room - (k * _lengths[i])]) > 1e-12) k++;
            counts[i] = k;
            room -= k * _lengths[i];
        }

        return [.. counts];
    }
}
