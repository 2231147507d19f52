namespace Tangwright.Foundation;

/// <summary>The least distance between two paths, from below: never more than the truth. Lines exactly; curves to <see cref="WithinMm"/>.</summary>
[Formula("least distance between two outlines, never more than the truth", "dlmf-3", "Lines to rounding; curves to 0.02 µm: each is halved until chord and curve are that close, by the bound of its second derivative")]
public static class LeastGap
{
    /// <summary>How far under the truth the answer may be when curves are nearest, mm.</summary>
    public const double WithinMm = 2e-5;

    private const double BowMm = 0.5 * WithinMm;

    /// <summary>The least distance, mm; 0 when they cross or touch.</summary>
    /// <param name="a">One path.</param>
    /// <param name="b">The other.</param>
    /// <param name="within">Look no further than this, mm: what lies further off comes back as this.</param>
    public static double Of(Path a, Path b, double within = double.PositiveInfinity)
    {
        var best = within;
        foreach (var s in a.Segments)
        {
            var p = Piece.Whole(s);
            if (Apart(p.Box, b.Bounds) >= best) continue;
            foreach (var t in b.Segments) Look(p, Piece.Whole(t), ref best);
        }

        return Math.Max(0, best);
    }

    private static void Look(in Piece p, in Piece q, ref double best)
    {
        if (Apart(p.Box, q.Box) >= best) return;
        var least = Between(p.From, p.To, q.From, q.To) - p.Bow - q.Bow;
        if (least >= best) return;
        if (p.Bow <= BowMm && q.Bow <= BowMm)
        {
            best = least;
            return;
        }

        if (p.Bow >= q.Bow)
        {
            Look(p.Half(0), q, ref best);
            Look(p.Half(1), q, ref best);
        }
        else
        {
            Look(p, q.Half(0), ref best);
            Look(p, q.Half(1), ref best);
        }
    }

    private static double Apart(Box a, Box b)
    {
        var dx = Math.Max(0, Math.Max(a.MinX - b.MaxX, b.MinX - a.MaxX));
        var dy = Math.Max(0, Math.Max(a.MinY - b.MaxY, b.MinY - a.MaxY));
        return Math.Sqrt((dx * dx) + (dy * dy));
    }

    /// <summary>Distance of two straight stretches.</summary>
    private static double Between(Point a, Point b, Point c, Point d)
    {
        var (u, v) = (b - a, d - c);
        var (c0, d0, a0, b0) = (u.Cross(c - a), u.Cross(d - a), v.Cross(a - c), v.Cross(b - c));
        if (((c0 > 0 && d0 < 0) || (c0 < 0 && d0 > 0)) && ((a0 > 0 && b0 < 0) || (a0 < 0 && b0 > 0))) return 0;
        return Math.Min(Math.Min(To(a, c, d), To(b, c, d)), Math.Min(To(c, a, b), To(d, a, b)));
    }

    private static double To(Point p, Point a, Point b)
    {
        var d = b - a;
        var l = d.Dot(d);
        var t = l > 0 ? Math.Clamp((p - a).Dot(d) / l, 0, 1) : 0;
        return p.To(a + (d * t));
    }

    /// <summary>A stretch of a segment between two parameters, its chord, and how far it may bow off the chord.</summary>
    private readonly record struct Piece(Segment On, double T0, double T1, Point From, Point To, double Bend)
    {
        // |p − chord| ≤ max |p''| Δt² / 8
        public double Bow => Bend * (T1 - T0) * (T1 - T0) / 8;

        public Box Box => Box.Around(From, To).Grown(Bow);

        public static Piece Whole(Segment s) => new(s, 0, 1, s.Start, s.End, s switch
        {
            Line => 0,
            Arc a => a.Sweep * a.Sweep * (a.IsCircle ? a.Radius : Math.Sqrt((a.AxisU.Length * a.AxisU.Length) + (a.AxisV.Length * a.AxisV.Length))),
            _ => Math.Max(s.SecondDerivative(0).Length, s.SecondDerivative(1).Length),
        });

        public Piece Half(int which)
        {
            var t = 0.5 * (T0 + T1);
            var m = On.At(t);
            return which == 0 ? this with { T1 = t, To = m } : this with { T0 = t, From = m };
        }
    }
}
