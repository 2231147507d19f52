using System.Numerics;

namespace Tangwright.Foundation;

/// <summary>How large a ball that touches a path at a point may grow before it runs into the path elsewhere. mm.</summary>
/// <remarks>
/// A ball of radius n, tangent at p and centred at p + n u, runs into a point e when n &gt; |e − p|² / (2 (e − p)·u). The smallest such n over the path is the distance up to which p stays the
/// nearest point along the ray; it is also the largest wheel that reaches an inside radius at p. As e nears p the limit is the radius of curvature.
/// Straight sides are looked at as they are; of curves, a ball that is clear by a tenth of its size of sample points, spaced by the path's turning, is let pass; otherwise it is shrunk against the curve's own nearest point until it is clear
/// (Ma, Bae and Choi, The Visual Computer 28 (2012) 7–19), to about 1e-9 mm.
/// </remarks>
public sealed class RollingBall
{
    private const double Slack = 1.1;
    private readonly Path _path;
    private readonly double[] _x, _y;

    // straight sides: start, way to the end, one over its length squared
    private readonly double[] _sx, _sy, _wx, _wy, _per;

    /// <summary>For a path.</summary>
    /// <param name="path">The path.</param>
    /// <param name="largest">Largest radius that will be asked for, mm: samples lie no further apart than a quarter of it.</param>
    public RollingBall(Path path, double largest)
    {
        _path = path;
        var (x, y) = (new List<double>(), new List<double>());
        var segments = path.Segments;
        for (var i = 0; i < segments.Length; i++)
        {
            var s = segments[i];
            if (s is Line) continue;
            var atStart = i > 0 && IsCorner(segments[i - 1], s);
            var atEnd = i + 1 < segments.Length && IsCorner(s, segments[i + 1]);
            Put(s.Start);
            Sample(s, 0, s.Start, 1, s.End, 0.25 * largest, atStart, atEnd, 0, Put);
        }

        void Put(Point p)
        {
            x.Add(p.X);
            y.Add(p.Y);
        }

        // fill the last vector with copies of the last point
        while (x.Count > 0 && x.Count % Vector<double>.Count != 0)
        {
            x.Add(x[^1]);
            y.Add(y[^1]);
        }

        (_x, _y) = ([.. x], [.. y]);
        var sides = segments.OfType<Line>().Where(l => l.Start != l.End).ToList();
        while (sides.Count > 0 && sides.Count % Vector<double>.Count != 0) sides.Add(sides[^1]);
        (_sx, _sy) = ([.. sides.Select(l => l.Start.X)], [.. sides.Select(l => l.Start.Y)]);
        (_wx, _wy) = ([.. sides.Select(l => l.End.X - l.Start.X)], [.. sides.Select(l => l.End.Y - l.Start.Y)]);
        _per = [.. _wx.Zip(_wy, (a, b) => 1 / ((a * a) + (b * b)))];
    }

    /// <summary>The largest radius, at most <paramref name="most"/>, at which the ball touching at p still holds no point of the path, mm.</summary>
    /// <param name="p">A point of the path.</param>
    /// <param name="u">Direction from p to the ball's centre, length 1, square to the path or within a corner's fan.</param>
    /// <param name="most">Largest radius of interest, mm.</param>
    /// <param name="curvature">The path's curvature at p towards u, 1/mm; 0 at a corner.</param>
    public double Reach(Point p, Point u, double most, double curvature = 0)
    {
        var n = curvature * most > 1 ? 1 / curvature : most;
        if (n == most && IsClear(p + (u * (Slack * most)), Slack * most) && IsClearOfSides(p + (u * most), most)) return most;
        for (var k = 0; k < 100; k++)
        {
            var (_, at, distance) = Nearest.On(_path, p + (u * n), n);
            if (distance >= n - 1e-10) break;
            var d = at - p;
            var next = d.Dot(d) / (2 * d.Dot(u));
            if (!(next > 0 && next < n)) break;
            n = next;
        }

        return n;
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

    private bool IsClearOfSides(Point centre, double radius)
    {
        var (cx, cy) = (new Vector<double>(centre.X), new Vector<double>(centre.Y));
        var least = new Vector<double>(double.PositiveInfinity);
        var w = Vector<double>.Count;
        for (var i = 0; i < _sx.Length; i += w)
        {
            var (dx, dy) = (cx - new Vector<double>(_sx, i), cy - new Vector<double>(_sy, i));
            var (wx, wy) = (new Vector<double>(_wx, i), new Vector<double>(_wy, i));
            var t = Vector.Min(Vector.Max(((dx * wx) + (dy * wy)) * new Vector<double>(_per, i), Vector<double>.Zero), Vector<double>.One);
            (dx, dy) = (dx - (t * wx), dy - (t * wy));
            least = Vector.Min(least, (dx * dx) + (dy * dy));
        }

        var limit = radius * radius * (1 - 1e-11);
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
