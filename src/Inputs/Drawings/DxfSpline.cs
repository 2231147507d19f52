using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>A B-spline as cubic Béziers, arcs and lines.</summary>
/// <remarks>
/// Each knot span is taken out by its polar form (blossom; L. Piegl and W. Tiller, The NURBS Book, 2nd ed., algorithms A2.3 and A5.6 give the same pieces).
/// Not rational and of degree 3 or less: exact. A rational span that is a circle to 1e-9 of its radius becomes an arc.
/// All else is fitted by cubic Béziers within <see cref="FitMm"/>.
/// </remarks>
internal static class DxfSpline
{
    /// <summary>Farthest a fitted curve may stray, mm.</summary>
    public const double FitMm = 1e-4;

    private readonly record struct Weighted(double X, double Y, double W)
    {
        public Point Flat => new(X / W, Y / W);

        public static Weighted operator +(Weighted a, Weighted b) => new(a.X + b.X, a.Y + b.Y, a.W + b.W);

        public static Weighted operator *(Weighted a, double f) => new(a.X * f, a.Y * f, a.W * f);
    }

    /// <summary>Segments of a spline whose control points are already in their place, or null when a fit did not settle.</summary>
    public static ImmutableArray<Segment>? Of(int degree, double[] knots, Point[] points, double[] weights)
    {
        var rational = weights.Any(w => Math.Abs(w - weights[0]) > 1e-12 * weights[0]);
        var homogeneous = points.Select((p, i) => rational ? new Weighted(p.X * weights[i], p.Y * weights[i], weights[i]) : new Weighted(p.X, p.Y, 1)).ToArray();
        var parts = ImmutableArray.CreateBuilder<Segment>();
        Point? last = null;
        for (var k = degree; k < points.Length; k++)
        {
            if (!(knots[k + 1] > knots[k])) continue;
            var net = Span(degree, knots, homogeneous, k);
            var start = last ?? net[0].Flat;
            var end = net[degree].Flat;
            if (!rational && degree <= 3) AddExact(parts, start, end, net, degree);
            else if (rational && Round(net, start, end) is { } arc) parts.Add(arc);
            else if (!Fit(parts, net, 0, 1, start, end, 0)) return null;
            last = end;
        }

        return parts.ToImmutable();
    }

    private static Weighted[] Span(int degree, double[] knots, Weighted[] points, int k)
    {
        var (a, b) = (knots[k], knots[k + 1]);
        var net = new Weighted[degree + 1];
        var d = new Weighted[degree + 1];
        for (var j = 0; j <= degree; j++)
        {
            for (var i = 0; i <= degree; i++) d[i] = points[k - degree + i];
            for (var r = 1; r <= degree; r++)
            {
                var u = r <= j ? b : a;
                for (var i = degree; i >= r; i--)
                {
                    var (lo, hi) = (knots[i + k - degree], knots[i + 1 + k - r]);
                    var share = (u - lo) / (hi - lo);
                    d[i] = (d[i - 1] * (1 - share)) + (d[i] * share);
                }
            }

            net[j] = d[degree];
        }

        return net;
    }

    private static void AddExact(ImmutableArray<Segment>.Builder parts, Point start, Point end, Weighted[] net, int degree)
    {
        if (degree == 1 && start.To(end) <= 0) return;
        parts.Add(degree switch
        {
            1 => new Line(start, end),
            2 => Bezier.OfQuadratic(start, net[1].Flat, end),
            _ => new Bezier(start, net[1].Flat, net[2].Flat, end),
        });
    }

    private static Arc? Round(Weighted[] net, Point start, Point end)
    {
        var mid = At(net, 0.5).Point;
        var (a, b) = (mid - start, end - start);
        var det = 2 * a.Cross(b);
        if (Math.Abs(det) <= 1e-9 * a.Length * b.Length) return null;
        var (aa, bb) = (a.Dot(a), b.Dot(b));
        var centre = start + new Point(((aa * b.Y) - (bb * a.Y)) / det, ((bb * a.X) - (aa * b.X)) / det);
        var r = centre.To(start);
        var turned = 0.0;
        var before = start - centre;
        for (var i = 1; i <= 16; i++)
        {
            var p = (i == 16 ? end : At(net, i / 16.0).Point) - centre;
            if (Math.Abs(p.Length - r) > 1e-9 * r) return null;
            turned += Math.Atan2(before.Cross(p), before.Dot(p));
            before = p;
        }

        var s = start - centre;
        return Arc.Between(start, end, centre, new Point(r, 0), new Point(0, r), Math.Atan2(s.Y, s.X), turned);
    }

    private static bool Fit(ImmutableArray<Segment>.Builder parts, Weighted[] net, double t0, double t1, Point start, Point end, int depth)
    {
        var third = (t1 - t0) / 3;
        var (p, q) = (At(net, t0), At(net, t1));
        var curve = new Bezier(start, start + (p.Step * third), end - (q.Step * third), end);
        var close = true;
        for (var i = 1; i < 12 && close; i++) close = curve.At(i / 12.0).To(At(net, t0 + ((t1 - t0) * i / 12)).Point) <= 0.5 * FitMm;
        if (close)
        {
            parts.Add(curve);
            return true;
        }

        if (depth >= 14 || parts.Count > CurveTray.MostSegments) return false;
        var m = 0.5 * (t0 + t1);
        var mid = At(net, m).Point;
        return Fit(parts, net, t0, m, start, mid, depth + 1) && Fit(parts, net, m, t1, mid, end, depth + 1);
    }

    private static (Point Point, Point Step) At(Weighted[] net, double t)
    {
        Span<Weighted> d = stackalloc Weighted[net.Length];
        net.CopyTo(d);
        for (var r = net.Length - 1; r > 1; r--)
        {
            for (var i = 0; i < r; i++) d[i] = (d[i] * (1 - t)) + (d[i + 1] * t);
        }

        var h = (d[0] * (1 - t)) + (d[1] * t);
        var step = (d[1] + (d[0] * -1)) * (net.Length - 1);
        var p = h.Flat;
        return (p, new Point((step.X - (step.W * p.X)) / h.W, (step.Y - (step.W * p.Y)) / h.W));
    }
}
