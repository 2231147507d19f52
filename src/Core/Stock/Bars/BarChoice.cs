using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>A kind of bar to fill: one of the rack, or one that can be bought.</summary>
/// <param name="Rack">The bar of the rack; null for a new one.</param>
/// <param name="Width">Width.</param>
/// <param name="Length">Length.</param>
/// <param name="Price">What a new one costs; null when not known.</param>
internal sealed record BarKind(RackBar? Rack, Length Width, Length Length, decimal? Price);

/// <summary>A bar chosen, and how many of each pattern come out of it.</summary>
/// <param name="Kind">Kind of bar.</param>
/// <param name="Counts">Pieces of each pattern.</param>
/// <param name="Layout">Where they lie; patterns counted as asked for.</param>
internal sealed record ChosenBar(BarKind Kind, ImmutableArray<int> Counts, LaneLayout Layout);

/// <summary>Fills bars of one steel and thickness: all fillings that leave no room for one more piece, then the cheapest choice of them.</summary>
internal sealed class BarChoice
{
    private readonly ImmutableArray<LanePiece> _pieces;
    private readonly BarRoom _room;
    private readonly Dictionary<double, FillingsOfWidth?> _tables = [];

    public BarChoice(ImmutableArray<LanePiece> pieces, BarRoom room) => (_pieces, _room) = (pieces, room);

    /// <summary>Most different patterns in one bar that were looked at.</summary>
    public int MostTogether { get; private set; } = int.MaxValue;

    /// <summary>Whether no choice is proven to cost less.</summary>
    public bool IsLeast { get; private set; }

    /// <summary>The bars, or the patterns that come out of none.</summary>
    public (ImmutableArray<ChosenBar> Bars, ImmutableArray<int> Nowhere) Choose(ImmutableArray<int> wanted, ImmutableArray<BarKind> kinds, IBarSolver solver, CancellationToken stop)
    {
        foreach (var width in kinds.Select(k => k.Width.Mm).Distinct())
        {
            var longest = kinds.Where(k => Math.Abs(k.Width.Mm - width) < 1e-9).Max(k => k.Length.Mm) - (2 * _room.End.Mm);
            _tables[width] = FillingsOfWidth.Of(_pieces, wanted, width - (2 * _room.Edge.Mm), longest, _room.Clearance.Mm);
        }

        var tables = _tables.Values.OfType<FillingsOfWidth>().ToArray();
        if (tables.Length > 0) MostTogether = tables.Min(t => t.MostTogether);
        var isPriced = kinds.All(k => k.Rack is not null || k.Price is not null);
        var (fillings, layouts) = (new List<BarFilling>(), new List<ChosenBar>());
        for (var k = 0; k < kinds.Length; k++)
        {
            var kind = kinds[k];
            if (_tables[kind.Width.Mm] is not { } table) continue;

            // the rack is nearly free: a small bar of it before a large one
            var area = kind.Width.Mm * kind.Length.Mm;
            var cost = (long)Math.Max(1, Math.Round(kind.Rack is not null ? area / 1e4 : isPriced ? (double)kind.Price!.Value * 1000 : area));
            foreach (var (counts, layout) in table.Full(kind.Length.Mm - (2 * _room.End.Mm)))
            {
                fillings.Add(new BarFilling(k, counts, cost));
                layouts.Add(new ChosenBar(kind, counts, layout));
            }
        }

        var nowhere = Enumerable.Range(0, wanted.Length).Where(t => wanted[t] > 0 && !fillings.Any(f => f.Counts[t] > 0)).ToImmutableArray();
        if (nowhere.Length > 0) return ([], nowhere);
        var problem = new FillingProblem(wanted, [.. fillings]) { MostBars = [.. kinds.Select(k => k.Rack is null ? (int?)null : 1)], FewestBars = true };
        var end = solver.Choose(problem, out var choice, stop);
        if (end == FillingEnd.None) return ([], [.. Enumerable.Range(0, wanted.Length)]);
        IsLeast = end == FillingEnd.Found && choice!.IsLeast;
        var times = end == FillingEnd.Found ? choice!.Times.ToArray() : Greedy(problem);
        return (Trimmed(wanted, layouts, times), []);
    }

    /// <summary>Without an answer of the solver: again and again the filling that takes most of what is left for its cost.</summary>
    private static int[] Greedy(FillingProblem p)
    {
        var (left, times, used) = (p.Wanted.ToArray(), new int[p.Fillings.Length], new int[p.MostBars.Length]);
        while (left.Any(l => l > 0))
        {
            var (best, at) = (0.0, -1);
            for (var i = 0; i < times.Length; i++)
            {
                var f = p.Fillings[i];
                if (p.MostBars[f.Kind] is { } most && used[f.Kind] >= most) continue;
                var worth = f.Counts.Select((c, t) => Math.Min(c, left[t])).Sum() / (double)f.Cost;
                if (worth > best) (best, at) = (worth, i);
            }

            if (at < 0) break;
            times[at]++;
            used[p.Fillings[at].Kind]++;
            for (var t = 0; t < left.Length; t++) left[t] -= p.Fillings[at].Counts[t];
        }

        return times;
    }

    /// <summary>Takes out what is over, from one bar as far as it goes, so that its drop is long.</summary>
    private ImmutableArray<ChosenBar> Trimmed(ImmutableArray<int> wanted, List<ChosenBar> layouts, int[] times)
    {
        var bars = layouts.SelectMany((b, i) => Enumerable.Repeat(b, times[i])).ToList();
        var over = wanted.Select((w, t) => bars.Sum(b => b.Counts[t]) - w).ToArray();
        while (over.Any(o => o > 0))
        {
            var (best, at, bestRoom) = ((ChosenBar?)null, -1, double.NegativeInfinity);
            foreach (var bar in bars.Distinct())
            {
                var counts = bar.Counts.Select((c, t) => c - Math.Min(c, over[t])).ToImmutableArray();
                if (counts.SequenceEqual(bar.Counts)) continue;
                var layout = counts.Sum() == 0 ? new LaneLayout([], 0, 0) : _tables[bar.Kind.Width.Mm]!.Lay(counts);
                var room = bar.Kind.Length.Mm - layout.LengthMm;
                if (room > bestRoom + 1e-6) (best, at, bestRoom) = (new ChosenBar(bar.Kind, counts, layout), bars.IndexOf(bar), room);
            }

            for (var t = 0; t < over.Length; t++) over[t] -= bars[at].Counts[t] - best!.Counts[t];
            bars.RemoveAt(at);
            if (best!.Counts.Sum() > 0) bars.Add(best);
        }

        return [.. bars];
    }
}
