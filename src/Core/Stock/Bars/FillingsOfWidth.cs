using System.Collections.Immutable;

namespace Tangwright.Core;

/// <summary>All fillings of bars of one width, worked out once for the longest.</summary>
internal sealed class FillingsOfWidth
{
    private readonly MixedLane _lane;
    private readonly LaneFillings _fillings;
    private readonly ImmutableArray<int> _asked; // which of the order's patterns the lane's are
    private readonly ImmutableArray<int> _most;
    private readonly int _patterns;

    private FillingsOfWidth(MixedLane lane, LaneFillings fillings, ImmutableArray<int> asked, ImmutableArray<int> most, int patterns, int mostTogether)
        => (_lane, _fillings, _asked, _most, _patterns, MostTogether) = (lane, fillings, asked, most, patterns, mostTogether);

    /// <summary>Most different patterns in one bar that were looked at.</summary>
    public int MostTogether { get; }

    /// <summary>The table; null when no pattern is low enough for the width.</summary>
    public static FillingsOfWidth? Of(ImmutableArray<LanePiece> pieces, ImmutableArray<int> wanted, double laneMm, double longestMm, double clearanceMm)
    {
        ImmutableArray<int> asked = [.. Enumerable.Range(0, pieces.Length).Where(t => wanted[t] > 0 && pieces[t].HeightMm <= laneMm + 1e-9 && pieces[t].LengthMm <= longestMm + 1e-9)];
        if (asked.IsEmpty) return null;
        var lane = MixedLane.Of([.. asked.Select(t => pieces[t])], laneMm, clearanceMm)!;
        ImmutableArray<int> most = [.. asked.Select(t => Math.Min(wanted[t], Lane.MostInBar))];
        for (var together = asked.Length; ; together--)
        {
            if (lane.Fill(most, longestMm, together, isLast: together == 1) is { } fillings) return new FillingsOfWidth(lane, fillings, asked, most, pieces.Length, together == asked.Length ? int.MaxValue : together);
        }
    }

    /// <summary>The shortest layout of so many of each of the order's patterns.</summary>
    public LaneLayout Lay(ImmutableArray<int> counts) => Asked(_lane.Lay([.. _asked.Select(t => counts[t])], _fillings));

    /// <summary>Fillings of a length that leave no room for one more of what is wanted.</summary>
    public IEnumerable<(ImmutableArray<int> Counts, LaneLayout Layout)> Full(double lengthMm)
    {
        var (fits, seen) = (new Dictionary<LaneFilling, LaneLayout?>(), new HashSet<LaneFilling>());
        var open = new Queue<LaneFilling>(_fillings.All.Where(f => f.AtLeastMm <= lengthMm + 1e-9 && !More(f).Any(m => m.AtLeastMm <= lengthMm + 1e-9)));
        while (open.TryDequeue(out var f))
        {
            if (!seen.Add(f)) continue;
            if (Fits(f) is { } layout)
            {
                var counts = new int[_patterns];
                for (var i = 0; i < _asked.Length; i++) counts[_asked[i]] = f.Counts[i];
                yield return ([.. counts], Asked(layout));
                continue;
            }

            // neighbours alone would fit, all together do not: with one piece less
            for (var t = 0; t < f.Counts.Length; t++)
            {
                if (f.Counts[t] > 0 && _fillings.Find(f.Counts.SetItem(t, f.Counts[t] - 1)) is { } less) open.Enqueue(less);
            }
        }

        LaneLayout? Fits(LaneFilling f)
        {
            if (fits.TryGetValue(f, out var known)) return known;
            var layout = _fillings.Lay(f);
            return fits[f] = layout.LengthMm <= lengthMm + 1e-9 ? layout : null;
        }
    }

    private IEnumerable<LaneFilling> More(LaneFilling f)
    {
        for (var t = 0; t < f.Counts.Length; t++)
        {
            if (f.Counts[t] < _most[t] && _fillings.Find(f.Counts.SetItem(t, f.Counts[t] + 1)) is { } more) yield return more;
        }
    }

    private LaneLayout Asked(LaneLayout layout) => layout with { Places = [.. layout.Places.Select(p => p with { Pattern = _asked[p.Pattern] })] };
}
