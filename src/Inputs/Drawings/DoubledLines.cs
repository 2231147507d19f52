using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>A segment of a drawing and the layer it lies on.</summary>
internal readonly record struct LayeredSegment(Segment Segment, string Layer);

/// <summary>Drops what is drawn twice: the same segment, also run the other way, and lines and arcs that lie over one another.</summary>
internal static class DoubledLines
{
    /// <summary>Segments this near one another are the same, mm.</summary>
    public const double SameMm = 0.01;

    /// <summary>Comparisons before the search for overlaps is given up: such a file is no shop drawing.</summary>
    private const int MostComparisons = 5_000_000;

    public static List<LayeredSegment> Drop(List<LayeredSegment> all, out int dropped)
    {
        var kept = WithoutSame(all);
        kept = Overlaps(kept);
        dropped = all.Count - kept.Count;
        return kept;
    }

    private static List<LayeredSegment> WithoutSame(List<LayeredSegment> all)
    {
        var kept = new List<LayeredSegment>(all.Count);
        var seen = new Dictionary<(long X, long Y), List<Segment>>();
        foreach (var one in all)
        {
            var mid = one.Segment.At(0.5);
            var (x, y) = ((long)Math.Floor(mid.X / SameMm), (long)Math.Floor(mid.Y / SameMm));
            var known = false;
            for (var i = -1; i <= 1 && !known; i++)
            {
                for (var j = -1; j <= 1 && !known; j++) known = seen.TryGetValue((x + i, y + j), out var near) && near.Take(64).Any(s => Same(s, one.Segment));
            }

            if (known) continue;
            if (!seen.TryGetValue((x, y), out var here)) seen[(x, y)] = here = [];
            here.Add(one.Segment);
            kept.Add(one);
        }

        return kept;
    }

    private static bool Same(Segment a, Segment b)
    {
        bool Near(Point p, Point q) => p.To(q) <= SameMm;
        var along = Near(a.Start, b.Start) && Near(a.End, b.End) && Near(a.At(0.25), b.At(0.25)) && Near(a.At(0.75), b.At(0.75));
        var against = Near(a.Start, b.End) && Near(a.End, b.Start) && Near(a.At(0.25), b.At(0.75)) && Near(a.At(0.75), b.At(0.25));

        // a segment shorter than the tolerance would be the same as its neighbour
        return (along || against) && Math.Min(a.Bounds.Width + a.Bounds.Height, b.Bounds.Width + b.Bounds.Height) > 2 * SameMm;
    }

    private static List<LayeredSegment> Overlaps(List<LayeredSegment> all)
    {
        var order = Enumerable.Range(0, all.Count).Where(i => all[i].Segment is Line or Arc { IsCircle: true }).OrderBy(i => all[i].Segment.Bounds.MinX).ToArray();
        var now = all.Select(s => s.Segment).ToArray();
        var gone = new bool[all.Count];
        var spent = 0;
        for (var a = 0; a < order.Length; a++)
        {
            for (var b = a + 1; b < order.Length; b++)
            {
                var (i, j) = (order[a], order[b]);
                if (gone[i]) break;
                if (++spent > MostComparisons) return all;
                if (now[j].Bounds.MinX > now[i].Bounds.MaxX + SameMm) break;
                if (gone[j] || Joined(now[i], now[j]) is not { } one) continue;
                now[i] = one;
                gone[j] = true;
                b = a; // what is longer now may lie over lines looked at before
            }
        }

        return [.. Enumerable.Range(0, all.Count).Where(i => !gone[i]).Select(i => all[i] with { Segment = now[i] })];
    }

    /// <summary>The one segment that two overlapping ones make, or null when they do not lie over one another.</summary>
    private static Segment? Joined(Segment a, Segment b)
    {
        if (!a.Bounds.Grown(SameMm).Touches(b.Bounds)) return null;
        return (a, b) switch
        {
            (Line k, Line l) => Joined(k, l),
            (Arc k, Arc l) when k.Centre.To(l.Centre) <= SameMm && Math.Abs(k.Radius - l.Radius) <= SameMm => Within(k, l) ? k : Within(l, k) ? l : null,
            _ => null,
        };
    }

    private static Line? Joined(Line a, Line b)
    {
        if (b.Length > a.Length) (a, b) = (b, a);
        var along = (a.End - a.Start).Unit;
        if (Math.Abs(along.Cross(b.Start - a.Start)) > SameMm || Math.Abs(along.Cross(b.End - a.Start)) > SameMm || b.Length <= SameMm) return null;
        var (s, e) = (along.Dot(b.Start - a.Start), along.Dot(b.End - a.Start));
        var (lowPoint, highPoint) = s < e ? (b.Start, b.End) : (b.End, b.Start);
        var (low, high) = (Math.Min(s, e), Math.Max(s, e));

        // only end to end: not over one another
        if (Math.Min(high, a.Length) - Math.Max(low, 0) <= SameMm) return null;
        var start = low < -SameMm ? lowPoint : a.Start;
        var end = high > a.Length + SameMm ? highPoint : a.End;
        return start == a.Start && end == a.End ? a : new Line(start, end);
    }

    private static bool Within(Arc outer, Arc inner)
    {
        double From(Point p)
        {
            var (u, v) = (outer.Start - outer.Centre, p - outer.Centre);
            var t = Math.Atan2(u.Cross(v), u.Dot(v)) * (outer.IsCounterClockwise ? 1 : -1);
            return t < -SameMm / outer.Radius ? t + (2 * Math.PI) : t;
        }

        var (s, m, e, all) = (From(inner.Start), From(inner.At(0.5)), From(inner.End), Math.Abs(outer.Sweep) + (SameMm / outer.Radius));
        return s <= all && m <= all && e <= all && Math.Abs(inner.Sweep) <= all && m >= Math.Min(s, e) && m <= Math.Max(s, e);
    }
}
