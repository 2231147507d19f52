namespace Tangwright.Foundation;

/// <summary>The nearest spot of a path to a point, exact to rounding: lines and circles in closed form, ellipses and Béziers from all roots of the condition (p(t) − q)·p'(t) = 0.</summary>
public static class Nearest
{
    /// <summary>The nearest spot of a path, its point and its distance in mm. Of equally near spots the first along the path.</summary>
    /// <param name="path">The path.</param>
    /// <param name="p">The point.</param>
    /// <param name="within">Look no further than this, mm; when nothing is nearer it comes back as the distance, with the path's start.</param>
    public static (PathSpot Spot, Point At, double Distance) On(Path path, Point p, double within = double.PositiveInfinity)
    {
        var segments = path.Segments;

        // the nearest joint is a bound to begin with: most boxes then lie too far off to be looked into
        var joint = double.PositiveInfinity;
        foreach (var s in segments) joint = Math.Min(joint, (s.Start - p).Dot(s.Start - p));
        joint = Math.Sqrt(joint);
        var best = Math.Min(within, joint + (1e-9 * (1 + joint)));
        var (spot, at) = (default(PathSpot), path.Start);
        for (var i = 0; i < segments.Length; i++)
        {
            var s = segments[i];
            if (s.Bounds.DistanceTo(p) >= best) continue;
            var (t, point, distance) = On(s, p);
            if (distance >= best) continue;
            (best, at, spot) = (distance, point, new PathSpot(i, t));
        }

        return (spot, at, best);
    }

    /// <summary>The nearest spot of one segment: parameter, point and distance in mm.</summary>
    public static (double T, Point At, double Distance) On(Segment segment, Point p)
    {
        var best = new Best(segment, p);
        switch (segment)
        {
            case Line l:
                OnLine(l, ref best);
                break;
            case Arc { IsCircle: true } a:
                OnCircle(a, ref best);
                break;
            case Arc a:
                OnEllipse(a, ref best);
                break;
            case Bezier b:
                OnBezier(b, ref best);
                break;
            default:
                throw new InvalidOperationException("unknown segment");
        }

        return (best.T, best.At, best.Distance);
    }

    /// <summary>Distance from a point to a path, mm.</summary>
    public static double Distance(Path path, Point p) => On(path, p).Distance;

    /// <summary>Distance from a point to one segment, mm.</summary>
    public static double Distance(Segment segment, Point p) => On(segment, p).Distance;

    /// <summary>Distance from a point to the nearest loop of a piece, mm.</summary>
    public static double Distance(Region region, Point p)
    {
        var best = Distance(region.Outer, p);
        foreach (var hole in region.Holes)
        {
            if (hole.Bounds.DistanceTo(p) < best) best = Math.Min(best, Distance(hole, p));
        }

        return best;
    }

    private static void OnLine(Line l, ref Best best)
    {
        var d = l.End - l.Start;
        var length2 = d.Dot(d);
        if (length2 > 0) best.Try((best.P - l.Start).Dot(d) / length2);
    }

    private static void OnCircle(Arc a, ref Best best)
    {
        var d = best.P - a.Centre;
        if (d.Length == 0) return;
        best.TryAngle(a, Math.Atan2(d.Dot(a.AxisV), d.Dot(a.AxisU)));
    }

    private static void OnEllipse(Arc a, ref Best best)
    {
        // (p − q)·p' with p = c + U cos θ + V sin θ, d = c − q:
        // d·V cos θ − d·U sin θ + U·V cos 2θ + ½ (V·V − U·U) sin 2θ, on pieces of an eighth turn in τ = tan((θ − θm)/2): a quartic.
        var pieces = Math.Max(1, (int)Math.Ceiling(Math.Abs(a.Sweep) / (Math.PI / 2)));
        Span<double> roots = stackalloc double[4];
        for (var i = 0; i < pieces; i++)
        {
            var half = a.Sweep / (2 * pieces);
            var mid = a.StartAngle + (half * ((2 * i) + 1));
            var (s, c) = Math.SinCos(mid);
            var (u, v) = ((a.AxisU * c) + (a.AxisV * s), (a.AxisV * c) - (a.AxisU * s));
            var d = a.Centre - best.P;
            var (dv, du, uv, k) = (d.Dot(v), d.Dot(u), u.Dot(v), 0.5 * (v.Dot(v) - u.Dot(u)));

            // cos = (1 − τ²)/(1 + τ²), sin = 2τ/(1 + τ²), times (1 + τ²)²
            ReadOnlySpan<double> quartic =
            [
                dv + uv,
                (-2 * du) + (4 * k),
                -6 * uv,
                (-2 * du) - (4 * k),
                uv - dv,
            ];

            // a hair over, so that no root is lost on the joint of two pieces
            var reach = Math.Tan(0.5 * Math.Abs(half)) * (1 + 1e-9);
            var n = Roots.Between(quartic, -reach, reach, roots);
            for (var r = 0; r < n; r++) best.TryAngle(a, mid + (2 * Math.Atan(roots[r])));
        }
    }

    private static void OnBezier(Bezier b, ref Best best)
    {
        // power form about the point: p(t) − q = a0 + a1 t + a2 t² + a3 t³
        var a0 = b.Start - best.P;
        var a1 = (b.Control1 - b.Start) * 3;
        var a2 = (b.Control2 - (b.Control1 * 2) + b.Start) * 3;
        var a3 = b.End - b.Start - ((b.Control2 - b.Control1) * 3);
        ReadOnlySpan<double> quintic =
        [
            a0.Dot(a1),
            a1.Dot(a1) + (2 * a0.Dot(a2)),
            (3 * a1.Dot(a2)) + (3 * a0.Dot(a3)),
            (4 * a1.Dot(a3)) + (2 * a2.Dot(a2)),
            5 * a2.Dot(a3),
            3 * a3.Dot(a3),
        ];
        Span<double> roots = stackalloc double[5];
        var n = Roots.Between(quintic, 0, 1, roots);
        for (var i = 0; i < n; i++) best.Try(roots[i]);
    }

    private ref struct Best
    {
        private readonly Segment _segment;

        public Best(Segment segment, Point p)
        {
            (_segment, P) = (segment, p);
            (T, At, Distance) = (0, segment.Start, segment.Start.To(p));
            var end = segment.End.To(p);
            if (end < Distance) (T, At, Distance) = (1, segment.End, end);
        }

        public Point P { get; }

        public double T { get; private set; }

        public Point At { get; private set; }

        public double Distance { get; private set; }

        public void Try(double t)
        {
            if (!(t > 0 && t < 1)) return;
            var at = _segment.At(t);
            var distance = at.To(P);
            if (distance < Distance) (T, At, Distance) = (t, at, distance);
        }

        public void TryAngle(Arc a, double angle)
        {
            var turn = 2 * Math.PI;
            var ahead = (angle - a.StartAngle) * Math.Sign(a.Sweep) % turn;
            if (ahead < 0) ahead += turn;
            Try(ahead / Math.Abs(a.Sweep));
        }
    }
}
