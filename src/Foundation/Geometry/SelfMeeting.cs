namespace Tangwright.Foundation;

/// <summary>Where one cubic Bézier meets itself: at most one loop.</summary>
internal static class SelfMeeting
{
    /// <summary>
    /// With p = a t³ + b t² + c t + p0 and p(t) = p(u), t ≠ u: (s² − q) a + s b + c = 0 for s = t + u, q = t u;
    /// the cross product with a gives s, the scalar product q. A cusp has t = u and is no meeting.
    /// </summary>
    public static RawMeeting? Of(Bezier z)
    {
        var c = (z.Control1 - z.Start) * 3;
        var b = ((z.Control2 - z.Control1) * 3) - c;
        var a = z.End - z.Start - c - b;
        var size = c.Length + b.Length + a.Length;
        var bxa = b.Cross(a);
        if (Math.Abs(bxa) <= 1e-13 * size * size)
            return Math.Abs(c.Cross(a)) <= 1e-13 * size * size && Math.Abs(c.Cross(b)) <= 1e-13 * size * size ? FoldedLine(z) : null;
        var s = -c.Cross(a) / bxa;
        var q = (s * s) + (((s * b.Dot(a)) + c.Dot(a)) / a.Dot(a));
        var disc = (s * s) - (4 * q);
        if (disc <= 1e-9) return null;
        var root = Math.Sqrt(disc);
        var (t, u) = (0.5 * (s - root), 0.5 * (s + root));
        const double slack = 1e-12;
        if (t < -slack || u > 1 + slack) return null;
        return new RawMeeting(Math.Max(0, t), Math.Min(1, u));
    }

    private static RawMeeting? FoldedLine(Bezier z)
    {
        // all four points in line: it folds back where the derivative turns about
        var way = z.End - z.Start;
        if (way.Length == 0) way = z.Control1 - z.Start;
        for (var k = 1; k < 64; k++)
        {
            if (z.Derivative(k / 64.0).Dot(way) < -1e-9 * way.Dot(way)) return new RawMeeting((k - 1) / 64.0, (k + 1) / 64.0) { IsOverlap = true, Until0 = k / 64.0 };
        }

        return null;
    }
}
