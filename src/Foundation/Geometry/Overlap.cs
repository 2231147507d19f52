namespace Tangwright.Foundation;

/// <summary>The stretch two segments have in common, if they run along one another. Its ends are always end points of one of them.</summary>
internal static class Overlap
{
    private const double SameMm = 1e-8;

    public static RawMeeting? Of(Segment a, Segment b)
    {
        Span<(double T, double U)> ends = stackalloc (double, double)[4];
        var n = 0;
        if (Foot.Of(b, a.Start) is var u0 && b.At(u0).To(a.Start) < SameMm) ends[n++] = (0, u0);
        if (Foot.Of(b, a.End) is var u1 && b.At(u1).To(a.End) < SameMm) ends[n++] = (1, u1);
        if (Foot.Of(a, b.Start) is var t0 && a.At(t0).To(b.Start) < SameMm) ends[n++] = (t0, 0);
        if (Foot.Of(a, b.End) is var t1 && a.At(t1).To(b.End) < SameMm) ends[n++] = (t1, 1);
        for (var i = 0; i < n; i++)
        {
            for (var j = i + 1; j < n; j++)
            {
                var (lo, hi) = ends[i].T <= ends[j].T ? (ends[i], ends[j]) : (ends[j], ends[i]);
                if (a.At(lo.T).To(a.At(hi.T)) > 10 * Crossings.SameSpotMm && Along(a, b, lo.T, hi.T))
                    return new RawMeeting(lo.T, lo.U) { IsOverlap = true, Until0 = hi.T };
            }
        }

        return null;
    }

    private static bool Along(Segment a, Segment b, double from, double to)
    {
        for (var k = 1; k < 8; k++)
        {
            var p = a.At(from + ((to - from) * k / 8));
            if (b.At(Foot.Of(b, p)).To(p) > SameMm) return false;
        }

        return true;
    }
}

/// <summary>The parameter of the point of a segment nearest to a point, by sampling and Newton's method; good when the point lies on the segment or close to it.</summary>
internal static class Foot
{
    public static double Of(Segment s, Point p)
    {
        var (best, least) = (0.0, double.PositiveInfinity);
        for (var k = 0; k <= 48; k++)
        {
            var d = s.At(k / 48.0).To(p);
            if (d < least) (best, least) = (k / 48.0, d);
        }

        return Polished(s, best, p);
    }

    public static double Polished(Segment s, double t, Point p)
    {
        for (var k = 0; k < 20; k++)
        {
            var gap = s.At(t) - p;
            var d = s.Derivative(t);
            var slope = d.Dot(d) + gap.Dot(s.SecondDerivative(t));
            if (slope <= 0) slope = d.Dot(d);
            if (slope == 0) break;
            var step = gap.Dot(d) / slope;
            var next = Math.Clamp(t - step, 0, 1);
            if (Math.Abs(next - t) < 1e-16) break;
            t = next;
        }

        return t;
    }
}
