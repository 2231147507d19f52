using System.Collections.Immutable;

namespace Tangwright.Core;

/// <summary>Bars of several lengths that hold so many pieces at the least cost, or with the least steel; of equal cost the fewest bars.</summary>
public sealed class FewestBars
{
    private readonly ImmutableArray<(double LengthMm, int Holds, double Cost)> _kinds;
    private readonly (double LengthMm, int Bars, int Kind, double Cost)[] _best;

    private FewestBars(ImmutableArray<(double LengthMm, int Holds, double Cost)> kinds, (double LengthMm, int Bars, int Kind, double Cost)[] best) => (_kinds, _best) = (kinds, best);

    /// <summary>Works it out for every count up to the most.</summary>
    /// <param name="kinds">Length, how many pieces it holds, at least 1, and what it costs; its length again where no prices are known.</param>
    /// <param name="most">Most pieces.</param>
    public static FewestBars Of(ImmutableArray<(double LengthMm, int Holds, double Cost)> kinds, int most)
    {
        var best = new (double LengthMm, int Bars, int Kind, double Cost)[most + 1];
        for (var n = 1; n <= most; n++)
        {
            best[n] = (double.PositiveInfinity, int.MaxValue, -1, double.PositiveInfinity);
            for (var k = 0; k < kinds.Length; k++)
            {
                var rest = best[Math.Max(0, n - kinds[k].Holds)];
                var (cost, bars) = (rest.Cost + kinds[k].Cost, rest.Bars + 1);
                if (cost < best[n].Cost - 1e-6 || (cost < best[n].Cost + 1e-6 && bars < best[n].Bars)) best[n] = (rest.LengthMm + kinds[k].LengthMm, bars, k, cost);
            }
        }

        return new FewestBars(kinds, best);
    }

    /// <summary>Steel and bars for a count.</summary>
    public (double LengthMm, int Bars) For(int pieces) => (_best[Math.Max(0, pieces)].LengthMm, _best[Math.Max(0, pieces)].Bars);

    /// <summary>How many bars of each kind, in the order of the kinds.</summary>
    public ImmutableArray<int> Counts(int pieces)
    {
        var counts = new int[_kinds.Length];
        for (var n = pieces; n > 0; n -= _kinds[_best[n].Kind].Holds) counts[_best[n].Kind]++;
        return [.. counts];
    }
}
