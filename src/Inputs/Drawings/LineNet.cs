using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>Segments and the knots where their ends meet. Ends that agree to <see cref="TouchMm"/> meet at once; of the rest the nearest free ends within the join tolerance are joined.</summary>
internal sealed class LineNet
{
    /// <summary>Ends this near are one point, mm: rounding of the writer.</summary>
    public const double TouchMm = 1e-4;

    private readonly int[] _parent;

    public LineNet(IReadOnlyList<LayeredSegment> segments, double joinMm)
    {
        Segments = segments;
        _parent = [.. Enumerable.Range(0, 2 * segments.Count)];
        Alive = [.. Enumerable.Repeat(true, segments.Count)];
        Meet(Enumerable.Range(0, _parent.Length), Math.Min(TouchMm, joinMm), (_, _) => true);
        for (var i = 0; i < segments.Count; i++)
        {
            // shorter than the writer's rounding: a point
            if (Knot(i, 0) == Knot(i, 1) && segments[i].Segment.Length <= 4 * TouchMm) Alive[i] = false;
        }

        var ends = Ends();
        var free = ends.Where(k => k.Value.Count == 1).Select(k => (2 * k.Value[0].Segment) + k.Value[0].End).ToHashSet();
        Meet(free, joinMm, (a, b) =>
        {
            if (!free.Contains(a) || !free.Contains(b) || (a / 2 == b / 2 && segments[a / 2].Segment.Length < 4 * joinMm)) return false;
            free.Remove(a);
            free.Remove(b);
            return true;
        });
    }

    public IReadOnlyList<LayeredSegment> Segments { get; }

    /// <summary>Whether a segment still counts.</summary>
    public bool[] Alive { get; }

    /// <summary>The point of an end: 0 start, 1 end.</summary>
    public Point At(int segment, int end) => end == 0 ? Segments[segment].Segment.Start : Segments[segment].Segment.End;

    /// <summary>The knot an end belongs to.</summary>
    public int Knot(int segment, int end) => Root((2 * segment) + end);

    /// <summary>The living ends at every knot.</summary>
    public Dictionary<int, List<(int Segment, int End)>> Ends()
    {
        var ends = new Dictionary<int, List<(int, int)>>();
        for (var i = 0; i < Segments.Count; i++)
        {
            for (var e = 0; e < 2 && Alive[i]; e++)
            {
                var k = Knot(i, e);
                if (!ends.TryGetValue(k, out var list)) ends[k] = list = [];
                list.Add((i, e));
            }
        }

        return ends;
    }

    /// <summary>Takes off, again and again, whatever ends in nothing. Returns what was taken off.</summary>
    public List<int> Prune()
    {
        var ends = Ends();
        var queue = new Queue<int>(ends.Where(k => k.Value.Count == 1).Select(k => k.Key));
        var off = new List<int>();
        while (queue.TryDequeue(out var knot))
        {
            if (ends[knot].Count != 1) continue;
            var (i, e) = ends[knot][0];
            Alive[i] = false;
            off.Add(i);
            ends[knot].Clear();
            var other = Knot(i, 1 - e);
            ends[other].Remove((i, 1 - e));
            if (ends[other].Count == 1) queue.Enqueue(other);
        }

        return off;
    }

    private int Root(int i)
    {
        while (_parent[i] != i) i = _parent[i] = _parent[_parent[i]];
        return i;
    }

    private Point EndPoint(int end) => At(end / 2, end % 2);

    private void Meet(IEnumerable<int> ends, double within, Func<int, int, bool> may)
    {
        if (within <= 0) within = 1e-9;
        var cells = new Dictionary<(long, long), List<int>>();
        (long X, long Y) Cell(Point p) => ((long)Math.Floor(p.X / within), (long)Math.Floor(p.Y / within));
        var pairs = new List<(double Gap, int A, int B)>();
        foreach (var a in ends.Order().ToArray())
        {
            var p = EndPoint(a);
            var (x, y) = Cell(p);
            for (var i = -1; i <= 1; i++)
            {
                for (var j = -1; j <= 1; j++)
                {
                    if (!cells.TryGetValue((x + i, y + j), out var near)) continue;

                    // hundreds of ends in one spot need no more than a few pairs each to become one knot
                    foreach (var b in near.Take(32))
                    {
                        var gap = p.To(EndPoint(b));
                        if (gap <= within) pairs.Add((gap, b, a));
                    }
                }
            }

            if (!cells.TryGetValue((x, y), out var here)) cells[(x, y)] = here = [];
            here.Add(a);
        }

        pairs.Sort();
        foreach (var (_, a, b) in pairs)
        {
            if (Root(a) != Root(b) && may(a, b)) _parent[Root(b)] = Root(a);
            else if (Root(a) == Root(b)) may(a, b);
        }
    }
}
