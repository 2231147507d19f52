using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>Makes one path of segments that nearly meet: an end of a line is moved, else a short line bridges the gap.</summary>
internal static class JoinedEnds
{
    /// <summary>Gaps under this are rounding: the end is simply shared, mm.</summary>
    private const double RoundingMm = 1e-6;

    public static Path Of(IReadOnlyList<Segment> run, bool closed, List<double> gaps)
    {
        var parts = new List<Segment>(run.Count + 4);
        parts.Add(run[0]);
        for (var i = 1; i < run.Count; i++) Join(parts, run[i], gaps);
        if (closed) Close(parts, gaps);
        return new Path([.. parts], closed);
    }

    private static void Join(List<Segment> parts, Segment next, List<double> gaps)
    {
        var last = parts[^1];
        var gap = last.End.To(next.Start);
        if (gap > RoundingMm) gaps.Add(gap);
        if (gap <= 0) parts.Add(next);
        else if (WithStart(next, last.End, gap) is { } moved) parts.Add(moved);
        else if (WithEnd(last, next.Start, gap) is { } reached)
        {
            parts[^1] = reached;
            parts.Add(next);
        }
        else
        {
            parts.Add(new Line(last.End, next.Start));
            parts.Add(next);
        }
    }

    private static void Close(List<Segment> parts, List<double> gaps)
    {
        var (first, last) = (parts[0], parts[^1]);
        var gap = last.End.To(first.Start);
        if (gap > RoundingMm) gaps.Add(gap);
        if (gap <= 0) return;
        if (WithEnd(last, first.Start, gap) is { } reached) parts[^1] = reached;
        else if (WithStart(first, last.End, gap) is { } moved) parts[0] = moved;
        else parts.Add(new Line(last.End, first.Start));
    }

    private static Segment? WithStart(Segment s, Point start, double gap) => s switch
    {
        Line l when l.Length > 2 * gap => new Line(start, l.End),
        Arc a when gap <= RoundingMm => Arc.Between(start, a.End, a.Centre, a.AxisU, a.AxisV, a.StartAngle, a.Sweep),
        Bezier b when gap <= RoundingMm => new Bezier(start, b.Control1, b.Control2, b.End),
        _ => null,
    };

    private static Segment? WithEnd(Segment s, Point end, double gap) => WithStart(s.Reversed(), end, gap)?.Reversed();

    /// <summary>Open runs of loose segments, as far as they go without branching.</summary>
    public static List<(ImmutableArray<Segment> Run, string Layer)> LooseRuns(LineNet net, List<int> loose)
    {
        var ends = new Dictionary<int, List<(int Segment, int End)>>();
        foreach (var i in loose)
        {
            for (var e = 0; e < 2; e++)
            {
                var k = net.Knot(i, e);
                if (!ends.TryGetValue(k, out var list)) ends[k] = list = [];
                list.Add((i, e));
            }
        }

        var done = new HashSet<int>();
        var runs = new List<(ImmutableArray<Segment>, string)>();
        foreach (var first in loose.OrderBy(i => ends[net.Knot(i, 0)].Count == 2 && ends[net.Knot(i, 1)].Count == 2 ? 1 : 0).ThenBy(i => i))
        {
            if (done.Contains(first)) continue;
            var from = ends[net.Knot(first, 0)].Count == 2 && ends[net.Knot(first, 1)].Count != 2 ? 1 : 0;
            var run = ImmutableArray.CreateBuilder<Segment>();
            for (var (i, e) = (first, from); done.Add(i);)
            {
                var s = net.Segments[i].Segment;
                run.Add(e == 0 ? s : s.Reversed());
                var here = ends[net.Knot(i, 1 - e)];
                if (here.Count != 2) break;
                (i, e) = here[0] == (i, 1 - e) ? here[1] : here[0];
            }

            runs.Add((run.ToImmutable(), net.Segments[first].Layer));
        }

        return runs;
    }
}
