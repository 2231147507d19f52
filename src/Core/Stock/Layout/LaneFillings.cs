using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>How many of each pattern lie in a lane, and the least length that takes.</summary>
public sealed class LaneFilling
{
    internal LaneFilling(ImmutableArray<int> counts, int states)
    {
        Counts = counts;
        From = new int[states];
        Along = new double[states];
        Array.Fill(Along, double.PositiveInfinity);
    }

    /// <summary>Pieces of each pattern.</summary>
    public ImmutableArray<int> Counts { get; }

    /// <summary>No layout of the kind is shorter, mm.</summary>
    public double AtLeastMm { get; internal set; }

    /// <summary>Where the last piece begins, by how it lies; let go when all longer ones are worked out.</summary>
    internal double[] Along { get; set; }

    internal int[] From { get; }

    internal int Last { get; set; }

    internal double RankMm { get; set; }
}

/// <summary>All fillings of a lane up to a length.</summary>
public sealed class LaneFillings
{
    private readonly ImmutableArray<LanePiece> _pieces;
    private readonly MixedSteps _steps;
    private readonly Dictionary<string, LaneFilling> _known = new(StringComparer.Ordinal);

    private LaneFillings(ImmutableArray<LanePiece> pieces, MixedSteps steps) => (_pieces, _steps) = (pieces, steps);

    /// <summary>All of them, fewest pieces first.</summary>
    public ImmutableArray<LaneFilling> All { get; private set; } = [];

    /// <summary>The filling of so many of each; null when there is none.</summary>
    public LaneFilling? Find(ImmutableArray<int> counts) => _known.GetValueOrDefault(Key(counts));

    internal static LaneFillings? Of(ImmutableArray<LanePiece> pieces, MixedSteps steps, ImmutableArray<int> most, double longestMm, int mostTogether, int mostFillings, double mostWork, (int Count, double WidthMm)? keep)
    {
        var table = new LaneFillings(pieces, steps);
        var (all, level) = (new List<LaneFilling>(), new List<LaneFilling>());
        var states = steps.States.Length;
        for (var t = 0; t < pieces.Length; t++)
        {
            if (most[t] < 1) continue;
            var one = new LaneFilling([.. Enumerable.Range(0, pieces.Length).Select(i => i == t ? 1 : 0)], states);
            for (var s = steps.Firsts[t]; s < steps.Firsts[t + 1]; s++) (one.Along[s], one.From[s]) = (0, -1);
            level.Add(one);
        }

        level = table.Closed(level, longestMm, keep);
        while (level.Count > 0)
        {
            all.AddRange(level);
            if (all.Count > mostFillings || (double)all.Count * states * states > mostWork) return null;
            var (next, byKey) = (new List<LaneFilling>(), new Dictionary<string, LaneFilling>(StringComparer.Ordinal));
            foreach (var filling in level)
            {
                var together = filling.Counts.Count(c => c > 0);
                for (var t = 0; t < pieces.Length; t++)
                {
                    if (filling.Counts[t] >= most[t] || (filling.Counts[t] == 0 && together >= mostTogether)) continue;
                    var counts = filling.Counts.SetItem(t, filling.Counts[t] + 1);
                    var key = Key(counts);
                    if (!byKey.TryGetValue(key, out var more))
                    {
                        byKey.Add(key, more = new LaneFilling(counts, states));
                        next.Add(more);
                    }

                    table.Append(filling, more, t);
                }
            }

            foreach (var done in level) done.Along = [];
            level = table.Closed(next, longestMm, keep);
        }

        table.All = [.. all];
        return table;
    }

    /// <summary>Lays a filling out: where the pieces truly lie, clear of every earlier one, not of the neighbour alone.</summary>
    internal LaneLayout Lay(LaneFilling filling)
    {
        var n = filling.Counts.Sum();
        var states = new int[n];
        var (at, counts) = (filling, filling.Counts);
        states[^1] = filling.Last;
        for (var k = n - 1; k > 0; k--)
        {
            states[k - 1] = at.From[states[k]];
            var t = _steps.States[states[k]].Pattern;
            counts = counts.SetItem(t, counts[t] - 1);
            at = Find(counts)!;
        }

        var along = new double[n];
        var length = 0.0;
        for (var j = 0; j < n; j++)
        {
            for (var i = 0; i < j; i++) along[j] = Math.Max(along[j], along[i] + _steps.From(states[i])[states[j]]);
            length = Math.Max(length, along[j] + _pieces[_steps.States[states[j]].Pattern].LengthMm);
        }

        return new LaneLayout([.. states.Select((s, i) => new LanePlace((Lie)_steps.States[s].Lie, along[i], _steps.States[s].UpMm) { Pattern = _steps.States[s].Pattern })], length, filling.AtLeastMm);
    }

    private static string Key(ImmutableArray<int> counts) => string.Create(counts.Length, counts, (span, c) =>
    {
        for (var i = 0; i < span.Length; i++) span[i] = (char)c[i];
    });

    private void Append(LaneFilling before, LaneFilling more, int pattern)
    {
        var (first, end) = (_steps.Firsts[pattern], _steps.Firsts[pattern + 1]);
        var (along, from) = (more.Along, more.From);
        for (var s = 0; s < before.Along.Length; s++)
        {
            var here = before.Along[s];
            if (double.IsPositiveInfinity(here)) continue;
            var steps = _steps.From(s);
            for (var t = first; t < end; t++)
            {
                if (here + steps[t] < along[t] - 1e-9) (along[t], from[t]) = (here + steps[t], s);
            }
        }
    }

    /// <summary>What fits, with its length; where too many do, the most promising.</summary>
    private List<LaneFilling> Closed(List<LaneFilling> level, double longestMm, (int Count, double WidthMm)? keep)
    {
        var kept = new List<LaneFilling>();
        foreach (var f in level)
        {
            var least = double.PositiveInfinity;
            for (var s = 0; s < f.Along.Length; s++)
            {
                var end = f.Along[s] + _pieces[_steps.States[s].Pattern].LengthMm;
                if (end > longestMm + 1e-9) f.Along[s] = double.PositiveInfinity;
                else if (end < least - 1e-9) (least, f.Last) = (end, s);
            }

            if (double.IsPositiveInfinity(least)) continue;
            f.AtLeastMm = least;
            kept.Add(f);
        }

        if (keep is { } k && kept.Count > k.Count)
        {
            foreach (var f in kept) f.RankMm = Waste(f, k.WidthMm);
            kept = [.. kept.OrderBy(f => f.RankMm).Take(k.Count)];
        }

        foreach (var f in kept) _known.Add(Key(f.Counts), f);
        return kept;
    }

    /// <summary>How far the middle of the right side lies past where it would without any waste, mm.</summary>
    private double Waste(LaneFilling f, double widthMm)
    {
        var steel = 0.0;
        for (var t = 0; t < f.Counts.Length; t++) steel += f.Counts[t] * Math.Abs(Moments.Of(_pieces[t].Outline).AreaMm2) / widthMm;
        var least = double.PositiveInfinity;
        for (var s = 0; s < f.Along.Length; s++)
        {
            if (double.IsPositiveInfinity(f.Along[s])) continue;
            var sides = _pieces[_steps.States[s].Pattern].Flanks[_steps.States[s].Lie].RightSide;
            least = Math.Min(least, f.Along[s] + sides.Sum(e => 0.5 * (e.Low.X + e.High.X) * (e.High.Y - e.Low.Y)) / sides.Sum(e => e.High.Y - e.Low.Y));
        }

        return least - steel;
    }
}
