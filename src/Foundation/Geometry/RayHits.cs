using System.Numerics;

namespace Tangwright.Foundation;

/// <summary>One crossing of a line of sight with the boundary of a piece.</summary>
/// <param name="Distance">Signed distance along the line from its origin, mm.</param>
/// <param name="Side">+1 where the line enters the steel, −1 where it leaves it, 0 where it only touches.</param>
/// <param name="Segment">Number of the segment, counted through all loops.</param>
/// <param name="T">Parameter on the segment.</param>
public readonly record struct RayHit(double Distance, int Side, int Segment, double T);

/// <summary>Crossings of rays with the whole boundary of a piece: lines, arcs and ellipses in closed form, Béziers by all roots of their cubic.</summary>
/// <remarks>Built once for a piece, then asked many times: boxes lie in flat arrays and are asked several at once; for many rays through one place <see cref="Within"/> leaves the far ones out. Steel lies to the left of every loop, so a ray enters where it crosses from right to left.</remarks>
public sealed class RayHits
{
    private readonly Segment[] _segments;

    // middle and half size of each box, filled up to whole vectors with boxes nothing meets; numbers of the segments they are of
    private readonly double[] _x, _y, _hx, _hy;
    private readonly int[] _numbers;

    /// <summary>For a piece.</summary>
    public RayHits(Region region)
        : this([.. region.Loops.SelectMany(l => l.Segments)])
    {
    }

    /// <summary>For some segments, steel to their left.</summary>
    public RayHits(IReadOnlyCollection<Segment> segments)
        : this([.. segments], segments.Count)
    {
        for (var i = 0; i < _segments.Length; i++)
        {
            var b = _segments[i].Bounds;
            var c = b.Centre;
            Put(i, i, c.X, c.Y, (0.5 * b.Width) + 1e-9, (0.5 * b.Height) + 1e-9);
        }
    }

    private RayHits(Segment[] segments, int room)
    {
        _segments = segments;
        room = (room + Vector<double>.Count - 1) / Vector<double>.Count * Vector<double>.Count;
        (_x, _y, _hx, _hy, _numbers) = (new double[room], new double[room], new double[room], new double[room], new int[room]);
        _x.AsSpan().Fill(double.NaN);
    }

    /// <summary>Greatest number of crossings one line can have.</summary>
    public int MostHits => 3 * _segments.Length;

    /// <summary>Number of segments.</summary>
    public int Count => _segments.Length;

    /// <summary>A segment by its number in a hit.</summary>
    public Segment this[int index] => _segments[index];

    /// <summary>Only the segments whose boxes touch a box; they keep their numbers.</summary>
    /// <param name="box">The box.</param>
    public RayHits Within(Box box)
    {
        var (cx, cy, rx, ry) = (box.Centre.X, box.Centre.Y, 0.5 * box.Width, 0.5 * box.Height);
        var n = 0;
        for (var i = 0; i < _x.Length; i++) n += IsNear(i) ? 1 : 0;
        var some = new RayHits(_segments, n);
        for (var (i, k) = (0, 0); k < n; i++)
        {
            if (IsNear(i)) some.Put(k++, _numbers[i], _x[i], _y[i], _hx[i], _hy[i]);
        }

        return some;

        bool IsNear(int i) => Math.Abs(_x[i] - cx) <= _hx[i] + rx && Math.Abs(_y[i] - cy) <= _hy[i] + ry;
    }

    /// <summary>Crossings at distances from <paramref name="from"/> to <paramref name="to"/> along a line, ascending.</summary>
    /// <param name="p">Origin.</param>
    /// <param name="u">Direction, length 1.</param>
    /// <param name="from">Least distance, mm; negative looks behind the origin.</param>
    /// <param name="to">Greatest distance, mm.</param>
    /// <param name="hits">Room for <see cref="MostHits"/> crossings.</param>
    /// <returns>How many were found.</returns>
    public int Along(Point p, Point u, double from, double to, Span<RayHit> hits)
    {
        var (ax, ay) = (Math.Abs(u.X), Math.Abs(u.Y));

        // the stretch asked about, as a box
        var (m, h) = (0.5 * (from + to), 0.5 * (to - from));
        var (mx, my, rx, ry) = (new Vector<double>(p.X + (m * u.X)), new Vector<double>(p.Y + (m * u.Y)), new Vector<double>(h * ax), new Vector<double>(h * ay));
        var count = 0;
        for (var i = 0; i < _x.Length; i += Vector<double>.Count)
        {
            // separating axes of an upright box and a stretch of line: x, y and square to the line
            var (dx, dy) = (new Vector<double>(_x, i) - mx, new Vector<double>(_y, i) - my);
            var (hx, hy) = (new Vector<double>(_hx, i), new Vector<double>(_hy, i));
            var meets = Vector.LessThanOrEqual(Vector.Abs(dx), hx + rx) & Vector.LessThanOrEqual(Vector.Abs(dy), hy + ry)
                & Vector.LessThanOrEqual(Vector.Abs((dx * u.Y) - (dy * u.X)), (hx * ay) + (hy * ax));
            if (meets == Vector<long>.Zero) continue;
            for (var k = 0; k < Vector<double>.Count; k++)
            {
                if (meets[k] != 0) count = With(_numbers[i + k], p, u, from, to, hits, count);
            }
        }

        return count;
    }

    private int With(int number, Point p, Point u, double from, double to, Span<RayHit> hits, int count)
    {
        var s = _segments[number];
        Span<double> roots = stackalloc double[3];
        var n = Crossings(s, p, u, roots);
        for (var k = 0; k < n; k++)
        {
            var t = roots[k];
            var distance = (s.At(t) - p).Dot(u);
            if (distance < from || distance > to) continue;
            var turn = s.Tangent(t).Cross(u);
            Insert(hits, count++, new RayHit(distance, turn > 1e-12 ? 1 : turn < -1e-12 ? -1 : 0, number, t));
        }

        return count;
    }

    private void Put(int i, int number, double x, double y, double hx, double hy) => (_numbers[i], _x[i], _y[i], _hx[i], _hy[i]) = (number, x, y, hx, hy);

    private static void Insert(Span<RayHit> hits, int count, RayHit hit)
    {
        var i = count;
        for (; i > 0 && hits[i - 1].Distance > hit.Distance; i--) hits[i] = hits[i - 1];
        hits[i] = hit;
    }

    private static int Crossings(Segment s, Point p, Point u, Span<double> t) => s switch
    {
        Line l => OfLine(l, p, u, t),
        Arc a => OfArc(a, p, u, t),
        Bezier b => OfBezier(b, p, u, t),
        _ => throw new InvalidOperationException("unknown segment"),
    };

    private static int OfLine(Line l, Point p, Point u, Span<double> t)
    {
        var (a, b) = (u.Cross(l.Start - p), u.Cross(l.End - p));
        if (a == b || (a > 0 && b > 0) || (a < 0 && b < 0)) return 0;
        t[0] = a / (a - b);
        return 1;
    }

    private static int OfArc(Arc arc, Point p, Point u, Span<double> t)
    {
        // u × (c − p) + u × U cos θ + u × V sin θ = 0
        var (k, a, b) = (u.Cross(arc.Centre - p), u.Cross(arc.AxisU), u.Cross(arc.AxisV));
        var r = Math.Sqrt((a * a) + (b * b));
        if (Math.Abs(k) > r) return 0;
        var (middle, half) = (Math.Atan2(b, a), Math.Acos(-k / r));
        var n = 0;
        if (OnSweep(arc, middle - half, out var first)) t[n++] = first;
        if (half > 0 && OnSweep(arc, middle + half, out var second)) t[n++] = second;
        return n;
    }

    private static bool OnSweep(Arc arc, double angle, out double t)
    {
        var full = 2 * Math.PI;
        var ahead = (angle - arc.StartAngle) * Math.Sign(arc.Sweep);
        ahead -= Math.Floor(ahead / full) * full;
        t = ahead / Math.Abs(arc.Sweep);

        // a hair before the start is the start
        if (t > 1 && full - ahead < 1e-12) t = 0;
        else if (t > 1 && ahead - Math.Abs(arc.Sweep) < 1e-12) t = 1;
        return t <= 1;
    }

    private static int OfBezier(Bezier b, Point p, Point u, Span<double> t)
    {
        var (a0, a1, a2, a3) = (u.Cross(b.Start - p), u.Cross(b.Control1 - p), u.Cross(b.Control2 - p), u.Cross(b.End - p));

        // all control points to one side: no crossing
        if ((a0 > 0 && a1 > 0 && a2 > 0 && a3 > 0) || (a0 < 0 && a1 < 0 && a2 < 0 && a3 < 0)) return 0;
        return Roots.Between([a0, 3 * (a1 - a0), 3 * (a2 - (2 * a1) + a0), a3 - (3 * a2) + (3 * a1) - a0], 0, 1, t);
    }
}
