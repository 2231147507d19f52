using System.Numerics;

namespace Tangwright.Foundation;

/// <summary>How large a ball that touches a path at a point may grow before it runs into the path elsewhere. mm.</summary>
/// <remarks>
/// A ball of radius n, tangent at p and centred at p + n u, runs into a point e when n &gt; |e − p|² / (2 (e − p)·u). The smallest such n over the path is the distance up to which p stays the
/// nearest point along the ray; it is also the largest wheel that reaches an inside radius at p. As e nears p the limit is the radius of curvature.
/// A straight side is met at its line, n = |g| / (1 − s u × w), g = (p − a) × w, s its sign, a its start and w its direction, when the ball's foot lies on it, else at an end: all sides at once in closed form.
/// Of curves, a ball that is clear by a tenth of its size of sample points, spaced by the path's turning, is let pass (it may lie in a curve by about 1e-4 of its size at most, as found by trial); otherwise it is shrunk against the nearest point of the curves until it is clear
/// (Ma, Bae and Choi, The Visual Computer 28 (2012) 7–19), to about 1e-9 mm.
/// </remarks>
public sealed class RollingBall
{
    private const double Slack = 1.1;

    // nearer than this to a side's line or to the tangent at p, mm, a point lies on it
    private const double OnLine = 1e-11;

    private readonly Segment[] _curves;

    // samples of the curves; ends of the straight sides
    private readonly double[] _x, _y, _ex, _ey;

    // straight sides: start, direction, length
    private readonly double[] _sx, _sy, _wx, _wy, _length;

    // the stretches of sides and ends that are looked at, whole vectors
    private (int From, int To) _sides, _ends;

    /// <summary>For a path.</summary>
    /// <param name="path">The path.</param>
    /// <param name="largest">Largest radius that will be asked for, mm: samples lie no further apart than a quarter of it.</param>
    public RollingBall(Path path, double largest)
    {
        var (x, y) = (new List<double>(), new List<double>());
        var segments = path.Segments;
        var round = path.Start.To(path.End) < 1e-6;
        for (var i = 0; i < segments.Length; i++)
        {
            var s = segments[i];
            if (s is Line) continue;
            var atStart = (i > 0 || round) && IsCorner(segments[i > 0 ? i - 1 : ^1], s);
            var atEnd = (i + 1 < segments.Length || round) && IsCorner(s, segments[(i + 1) % segments.Length]);
            Put(s.Start);
            Sample(s, 0, s.Start, 1, s.End, 0.25 * largest, atStart, atEnd, 0, Put);
        }

        void Put(Point p)
        {
            x.Add(p.X);
            y.Add(p.Y);
        }

        (_x, _y) = (Filled(x), Filled(y));
        _curves = [.. segments.Where(s => s is not Line)];
        var sides = segments.OfType<Line>().Where(l => l.Start != l.End).ToArray();
        var ends = sides.SelectMany(l => new[] { l.Start, l.End }).Distinct().ToArray();
        (_ex, _ey) = (Filled(ends.Select(e => e.X)), Filled(ends.Select(e => e.Y)));
        var ways = sides.Select(l => (l.End - l.Start).Unit).ToArray();
        (_sx, _sy) = (Filled(sides.Select(l => l.Start.X)), Filled(sides.Select(l => l.Start.Y)));
        (_wx, _wy, _length) = (Filled(ways.Select(w => w.X)), Filled(ways.Select(w => w.Y)), Filled(sides.Select(l => l.Length)));
        (_sides, _ends) = ((0, _sx.Length), (0, _ex.Length));
    }

    /// <summary>Says that the balls to come lie within a box: straight sides wholly outside are then not looked at, save between two that are not.</summary>
    /// <param name="box">The box.</param>
    public void StayWithin(Box box)
    {
        _sides = Stretch(_sx.Length, i => box.Touches(Box.Around(new(_sx[i], _sy[i]), new(_sx[i] + (_length[i] * _wx[i]), _sy[i] + (_length[i] * _wy[i])))));
        _ends = Stretch(_ex.Length, i => box.Holds(new(_ex[i], _ey[i])));

        static (int From, int To) Stretch(int count, Func<int, bool> isNear)
        {
            var (from, to, width) = (0, count, Vector<double>.Count);
            while (from < to && !isNear(from)) from++;
            while (to > from && !isNear(to - 1)) to--;
            return (from / width * width, (to + width - 1) / width * width);
        }
    }

    /// <summary>The largest radius, at most <paramref name="most"/>, at which the ball touching at p still holds no point of the path, mm.</summary>
    /// <param name="p">A point of the path.</param>
    /// <param name="u">Direction from p to the ball's centre, length 1, square to the path or within a corner's fan.</param>
    /// <param name="most">Largest radius of interest, mm.</param>
    /// <param name="curvature">The path's curvature at p towards u, 1/mm; 0 at a corner.</param>
    public double Reach(Point p, Point u, double most, double curvature = 0)
    {
        var n = Math.Min(AtSides(p, u, most), AtEnds(p, u, most));
        if (curvature * n > 1) n = 1 / curvature;
        if (_curves.Length == 0 || (n == most && IsClear(p + (u * (Slack * most)), Slack * most))) return n;
        for (var k = 0; k < 100; k++)
        {
            var c = p + (u * n);
            var (at, distance) = (c, n);
            foreach (var s in _curves)
            {
                if (s.Bounds.DistanceTo(c) >= distance) continue;
                var (_, q, d) = Nearest.On(s, c);
                if (d < distance) (at, distance) = (q, d);
            }

            if (distance >= n - 1e-10) break;
            var step = at - p;
            var next = step.Dot(step) / (2 * step.Dot(u));
            if (!(next > 0 && next < n)) break;
            n = next;
        }

        return n;
    }

    // the least n at which the ball meets a straight side between its ends
    private double AtSides(Point p, Point u, double most)
    {
        var (px, py, ux, uy) = (new Vector<double>(p.X), new Vector<double>(p.Y), new Vector<double>(u.X), new Vector<double>(u.Y));
        var least = new Vector<double>(most);
        for (var i = _sides.From; i < _sides.To; i += Vector<double>.Count)
        {
            var (wx, wy) = (new Vector<double>(_wx, i), new Vector<double>(_wy, i));
            var (ax, ay) = (px - new Vector<double>(_sx, i), py - new Vector<double>(_sy, i));
            var g = (ax * wy) - (ay * wx);
            var (along, away) = ((ux * wx) + (uy * wy), (ux * wy) - (uy * wx));
            away = Vector.ConditionalSelect(Vector.LessThan(g, Vector<double>.Zero), -away, away);
            g = Vector.Abs(g);

            // 1 − away, and where that would cancel (1 − away²) / (1 + away)
            var leaves = Vector.GreaterThan(away, Vector<double>.Zero);
            var n = Vector.ConditionalSelect(leaves, g * (Vector<double>.One + away), g) / Vector.ConditionalSelect(leaves, along * along, Vector<double>.One - away);
            var foot = (ax * wx) + (ay * wy) + (n * along);
            var meets = Vector.GreaterThan(g, new Vector<double>(OnLine)) & Vector.GreaterThanOrEqual(foot, Vector<double>.Zero) & Vector.LessThanOrEqual(foot, new Vector<double>(_length, i));
            least = Vector.ConditionalSelect(meets & Vector.LessThan(n, least), n, least);
        }

        return Least(least);
    }

    private double AtEnds(Point p, Point u, double most)
    {
        var (px, py, ux, uy) = (new Vector<double>(p.X), new Vector<double>(p.Y), new Vector<double>(u.X), new Vector<double>(u.Y));
        var least = new Vector<double>(most);
        for (var i = _ends.From; i < _ends.To; i += Vector<double>.Count)
        {
            var (dx, dy) = (new Vector<double>(_ex, i) - px, new Vector<double>(_ey, i) - py);
            var height = (dx * ux) + (dy * uy);
            var n = ((dx * dx) + (dy * dy)) / (height + height);
            least = Vector.ConditionalSelect(Vector.GreaterThan(height, new Vector<double>(OnLine)) & Vector.LessThan(n, least), n, least);
        }

        return Least(least);
    }

    private static double Least(Vector<double> values)
    {
        var least = values[0];
        for (var i = 1; i < Vector<double>.Count; i++) least = Math.Min(least, values[i]);
        return least;
    }

    // whole vectors, the last filled with copies of the last value
    private static double[] Filled(IEnumerable<double> values)
    {
        var all = values.ToList();
        while (all.Count > 0 && all.Count % Vector<double>.Count != 0) all.Add(all[^1]);
        return [.. all];
    }

    private bool IsClear(Point centre, double radius)
    {
        var (cx, cy) = (new Vector<double>(centre.X), new Vector<double>(centre.Y));
        var least = new Vector<double>(double.PositiveInfinity);
        var w = Vector<double>.Count;
        for (var i = 0; i < _x.Length; i += w)
        {
            var dx = new Vector<double>(_x, i) - cx;
            var dy = new Vector<double>(_y, i) - cy;
            least = Vector.Min(least, (dx * dx) + (dy * dy));
        }

        var limit = radius * radius * (1 - 1e-9);
        for (var i = 0; i < w; i++)
        {
            if (least[i] < limit) return false;
        }

        return true;
    }

    // points close enough that the path turns little between them, and ever closer towards a corner
    private static void Sample(Segment s, double t0, Point a, double t1, Point b, double longest, bool cornerAtStart, bool cornerAtEnd, int depth, Action<Point> put)
    {
        var chord = a.To(b);
        var split = chord > longest
            || (s is not Line && (depth < 1 || Math.Abs(Turn(s.Tangent(t0), s.Tangent(t1))) > 0.25))
            || (cornerAtStart && chord > a.To(s.Start) + 1e-5)
            || (cornerAtEnd && chord > b.To(s.End) + 1e-5);
        if (!split || depth >= 24)
        {
            put(b);
            return;
        }

        var t = 0.5 * (t0 + t1);
        var m = s.At(t);
        Sample(s, t0, a, t, m, longest, cornerAtStart, cornerAtEnd, depth + 1, put);
        Sample(s, t, m, t1, b, longest, cornerAtStart, cornerAtEnd, depth + 1, put);
    }

    private static bool IsCorner(Segment before, Segment after) => Math.Abs(Turn(before.Tangent(1), after.Tangent(0))) > 1e-6;

    private static double Turn(Point a, Point b) => Math.Atan2(a.Cross(b), a.Dot(b));
}
