namespace Tangwright.Foundation;

/// <summary>The stretch two segments have in common, if they run along one another. Its ends are always end points of one of them.</summary>
internal static class Overlap
{
    private const double SameMm = 1e-8;

    public static RawMeeting? Of(Segment a, Segment b)
    {
        Span<(double T, double U)> ends = stackalloc (double, double)[4];
        var n = 0;
        if (Nearest.On(b, a.Start) is var u0 && u0.Distance < SameMm) ends[n++] = (0, u0.T);
        if (Nearest.On(b, a.End) is var u1 && u1.Distance < SameMm) ends[n++] = (1, u1.T);
        if (Nearest.On(a, b.Start) is var t0 && t0.Distance < SameMm) ends[n++] = (t0.T, 0);
        if (Nearest.On(a, b.End) is var t1 && t1.Distance < SameMm) ends[n++] = (t1.T, 1);
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
            if (Nearest.Distance(b, p) > SameMm) return false;
        }

        return true;
    }
}
