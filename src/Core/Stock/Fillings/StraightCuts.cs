using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Bars it takes when pieces are cut off end to end.</summary>
/// <param name="Bars">Bars.</param>
/// <param name="AtLeast">It cannot be done with fewer.</param>
/// <param name="Fillings">How the bars are filled: pieces of each length, and how many bars.</param>
public sealed record StraightBars(int Bars, int AtLeast, ImmutableArray<(ImmutableArray<int> Counts, int Times)> Fillings)
{
    /// <summary>Whether fewer bars are proven to be impossible.</summary>
    public bool IsFewest => Bars <= AtLeast;
}

/// <summary>The fewest bars of one length for pieces of given lengths, cut off end to end: fillings are added while one is worth more than a bar, then all that a plan of so few bars can hold are chosen from.</summary>
[Formula("fewest bars for lengths cut end to end", "gilmore-gomory-1961", "Whole units of length, bar up to 20 000 units; proven fewest, or the bound beside it")]
public static class StraightCuts
{
    /// <summary>Longest bar in units.</summary>
    public const int MostUnits = 20_000;

    private const int MostRounds = 2000;
    private const int MostChosenFrom = 60_000;
    private const int MostDives = 24;
    private const double Hair = 1e-9;

    /// <summary>The fewest bars found; null when a piece is longer than the bar.</summary>
    /// <param name="lengths">Lengths, whole units, each with the kerf.</param>
    /// <param name="wanted">How many of each.</param>
    /// <param name="bar">Length of the bar, with one kerf.</param>
    /// <param name="solver">What solves the programs.</param>
    /// <param name="mostWork">Work for one choice.</param>
    /// <param name="stop">Ends the search early.</param>
    public static StraightBars? Of(ImmutableArray<int> lengths, ImmutableArray<int> wanted, int bar, IBarSolver solver, int mostWork = 10, CancellationToken stop = default)
    {
        if (lengths.IsEmpty || bar > MostUnits || lengths.Any(l => l < 1 || l > bar)) return null;

        // longest first
        var order = Enumerable.Range(0, lengths.Length).OrderByDescending(i => lengths[i]).ToArray();
        var (sizes, counts) = (order.Select(i => lengths[i]).ToImmutableArray(), order.Select(i => wanted[i]).ToImmutableArray());
        var best = FirstFit(sizes, counts, bar);
        var bars = best.Sum(b => b.Times);
        var atLeast = (int)((sizes.Select((s, i) => (long)s * counts[i]).Sum() + bar - 1) / bar);
        if (atLeast < bars)
        {
            // with worths at which no filling is worth more than a bar, the pieces are a bound on the bars
            var known = best.Select(b => b.Counts).ToList();
            var worths = Worths(sizes, counts, bar, solver, known, out _, stop);
            var bound = worths.Select((w, i) => w * counts[i]).Sum();
            atLeast = Math.Max(atLeast, (int)Math.Ceiling(bound - 1e-6));
            for (var other = 0; other < MostDives && atLeast < bars && !stop.IsCancellationRequested; other++)
            {
                var found = Dive(sizes, counts, bar, solver, known, other, bars - 1, stop);
                if (found is { } f) (best, bars) = (f, f.Sum(b => b.Times));
            }

            if (atLeast < bars) Prove();

            void Prove()
            {
                // all that a plan of so few bars can hold: no bar of it can be worth less
                var table = BestFilling.Of(sizes, [.. sizes.Select((s, i) => Math.Min(counts[i], bar / s))], bar, worths);
                for (var fewer = atLeast; fewer < bars && !stop.IsCancellationRequested; fewer++)
                {
                    var some = new List<ImmutableArray<int>>();
                    if (!table.AtLeast(1 - (fewer - bound) - Hair, MostChosenFrom, some)) return;
                    var end = solver.Choose(new FillingProblem(counts, [.. some.Select(f => new BarFilling(0, f, 1))]) { GoodEnough = fewer, MostWork = mostWork }, out var choice, stop);
                    if (end == FillingEnd.Found) (best, bars) = ([.. some.Zip(choice!.Times).Where(c => c.Second > 0)], fewer);
                    else if (end == FillingEnd.None) atLeast = fewer + 1;
                    else return;
                }
            }
        }

        // back to the order asked for
        return new StraightBars(bars, Math.Min(atLeast, bars), [.. best.Select(b => (Enumerable.Range(0, lengths.Length).Select(i => b.Counts[Array.IndexOf(order, i)]).ToImmutableArray(), b.Times))]);
    }

    /// <summary>Worths at which no filling is worth more than a bar; fillings found on the way are added to the known ones.</summary>
    private static ImmutableArray<double> Worths(ImmutableArray<int> sizes, ImmutableArray<int> counts, int bar, IBarSolver solver, List<ImmutableArray<int>> known, out ImmutableArray<double> times, CancellationToken stop)
    {
        var most = sizes.Select((s, i) => Math.Min(counts[i], bar / s)).ToImmutableArray();
        using var now = solver.Worths(counts);
        for (var i = 0; i < sizes.Length && known.Count < 100_000; i++) known.Add([.. Enumerable.Range(0, sizes.Length).Select(k => k == i ? most[i] : 0)]);
        foreach (var f in known) now.Add(f);
        for (var round = 0; ; round++)
        {
            var worths = now.Now();
            var filling = BestFilling.Of(sizes, most, bar, worths);
            if (filling.Worth <= 1 + Hair || round == MostRounds || stop.IsCancellationRequested)
            {
                times = now.Bars();
                return [.. worths.Select(w => w / Math.Max(1, filling.Worth))];
            }

            known.Add(filling.Counts());
            now.Add(known[^1]);
        }
    }

    /// <summary>Takes what the broken numbers take whole, else the most nearly whole one, and works the rest out anew; null when more bars are needed than allowed.</summary>
    private static ImmutableArray<(ImmutableArray<int> Counts, int Times)>? Dive(ImmutableArray<int> sizes, ImmutableArray<int> counts, int bar, IBarSolver solver, List<ImmutableArray<int>> known, int other, int most, CancellationToken stop)
    {
        var (rest, taken, bars) = (counts, new List<(ImmutableArray<int>, int)>(), 0);
        while (rest.Any(c => c > 0) && !stop.IsCancellationRequested)
        {
            var here = Enumerable.Range(0, sizes.Length).Where(i => rest[i] > 0).ToArray();
            var (fewer, left) = (here.Select(i => sizes[i]).ToImmutableArray(), here.Select(i => rest[i]).ToImmutableArray());
            var some = known.Select(f => here.Select((i, k) => Math.Min(f[i], left[k])).ToImmutableArray()).Where(f => f.Any(c => c > 0)).DistinctBy(f => string.Join(',', f)).ToList();
            var worths = Worths(fewer, left, bar, solver, some, out var times, stop);
            if (bars + Math.Ceiling(worths.Select((w, i) => w * left[i]).Sum() - 1e-6) > most) return null;
            var whole = Enumerable.Range(0, times.Length).Where(f => times[f] >= 1 - 1e-6).ToArray();
            if (whole.Length == 0 || other > 0)
            {
                var order = Enumerable.Range(0, times.Length).Where(f => times[f] > 1e-6).OrderByDescending(f => times[f]).ThenBy(f => f).ToArray();
                whole = [order[Math.Min(other, order.Length - 1)]];
                other = 0;
            }

            foreach (var f in whole)
            {
                var often = Math.Max(1, (int)Math.Floor(times[f] + 1e-6));
                var full = new int[sizes.Length];
                for (var k = 0; k < here.Length; k++) full[here[k]] = some[f][k];
                taken.Add(([.. full], often));
                bars += often;
                rest = [.. rest.Select((c, i) => Math.Max(0, c - (often * full[i])))];
            }
        }

        return rest.Any(c => c > 0) || bars > most ? null : [.. taken];
    }

    /// <summary>Each piece, longest first, into the first bar with room for it.</summary>
    private static ImmutableArray<(ImmutableArray<int> Counts, int Times)> FirstFit(ImmutableArray<int> sizes, ImmutableArray<int> counts, int bar)
    {
        var (bars, left) = (new List<int[]>(), new List<int>());
        for (var i = 0; i < sizes.Length; i++)
        {
            var at = 0;
            for (var k = 0; k < counts[i]; k++)
            {
                while (at < bars.Count && left[at] < sizes[i]) at++;
                if (at == bars.Count)
                {
                    bars.Add(new int[sizes.Length]);
                    left.Add(bar);
                }

                bars[at][i]++;
                left[at] -= sizes[i];
            }
        }

        return [.. bars.Select(b => (b.ToImmutableArray(), 1))];
    }
}
