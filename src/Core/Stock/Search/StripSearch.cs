using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>How long to search.</summary>
/// <param name="Work">Placements weighed up at most, all cores together; the same seed, work and number of searches give the same layout.</param>
/// <param name="Searches">Searches side by side, one for each core.</param>
/// <param name="Seed">Seed of the lots.</param>
public sealed record SearchEffort(long Work, int Searches, ulong Seed)
{
    /// <summary>How far the time allowed is used up, 0 to 1, when a clock decides; null: the work does.</summary>
    public Func<double>? ClockShare { get; init; }
}

/// <summary>The shortest strip of a given width that many unlike pieces can be cut from, by search: a first layout at once, shorter ones while it runs.</summary>
public static class StripSearch
{
    /// <summary>Most pieces laid out in one search.</summary>
    public const int MostPieces = 500;

    private const double ExploreShare = 0.8;
    private const long RoundWork = 100_000;
    private const double HairShare = 1e-9;

    /// <summary>Searches; gives every layout that is shorter than the one before, the last being the best.</summary>
    /// <param name="pieces">The pieces, in all at most <see cref="MostPieces"/>; each fits the width in at least one of its turns.</param>
    /// <param name="stock">The bars, sheets or endless strip.</param>
    /// <param name="effort">How long.</param>
    /// <param name="stop">Stops it; the layouts given stay good.</param>
    public static IEnumerable<StripLayout> Run(ImmutableArray<SheetPiece> pieces, StripStock stock, SearchEffort effort, CancellationToken stop = default)
    {
        var fields = new PieceFields(Fitting(pieces, stock.WidthMm), HairShare * stock.WidthMm);
        var room = new StripRoom(stock) { Narrowest = fields.Ways.Min(w => w.Min(t => t.Width)) };
        int[] kinds = [.. pieces.SelectMany((p, i) => Enumerable.Repeat(i, p.Count))];
        var area = pieces.Sum(p => p.Count * Math.Abs(PlanarKernels.Area(p.Corners.AsSpan())));
        var first = Shelves.Of(fields, kinds, room);
        var least = Math.Max(room.Least(area), fields.Ways.Max(w => w.Min(t => t.Width)));
        var task = new StripTask(fields, kinds, room, least, first);
        yield return Layout(task, area);
        var workers = Enumerable.Range(0, effort.Searches).Select(i => new StripWorker(task, i, effort.Seed)).ToArray();
        var (round, worked) = (0, 0L);
        while (!stop.IsCancellationRequested && task.Best.Length > least * (1 + 1e-9))
        {
            var used = effort.ClockShare?.Invoke() ?? workers.Sum(w => w.Work) / (double)effort.Work;
            if (used >= 1) break;
            (task.IsCompressing, task.Compressed) = (used >= ExploreShare, (used - ExploreShare) / (1 - ExploreShare));
            var until = ++round * RoundWork;
            if (workers.Length == 1) workers[0].Go(until, stop);
            else Parallel.ForEach(workers, new ParallelOptions { MaxDegreeOfParallelism = workers.Length }, w => w.Go(until, stop));
            var found = workers.Select(w => w.Found).Where(f => f is not null).MinBy(f => f!.Length);
            foreach (var w in workers) w.Told();

            // nothing left to try: every piece lies as it must
            var work = workers.Sum(w => w.Work);
            if (found is null && work == worked) yield break;
            worked = work;
            if (found is null || found.Length >= task.Best.Length) continue;
            task.Best = found;
            yield return Layout(task, area) with { Work = workers.Sum(w => w.Work) };
        }
    }

    private static ImmutableArray<SheetPiece> Fitting(ImmutableArray<SheetPiece> pieces, double width)
        => [.. pieces.Select(p => p with { Turns = [.. p.Turns.Where(t => Box.Around([.. p.Corners.Select(t.Transform.Map)]).Height <= width)] })];

    private static StripLayout Layout(StripTask task, double area)
    {
        var (b, room) = (task.Best, task.Room);
        var places = task.Kinds.Select((k, i) => new SheetPlace(k, room.BarAt(b.Xs[i]), b.Ways[i].Turn, b.Xs[i] - room.Start(room.BarAt(b.Xs[i])), b.Ys[i])).ToImmutableArray();
        var last = room.BarAt(b.Length);
        ImmutableArray<double> used = [.. Enumerable.Range(0, last + 1).Select(bar => bar < last ? room.LengthOf(bar) : b.Length - room.Start(last))];
        return new(places, room.Width, used, area / (room.Width * used.Sum()));
    }
}
