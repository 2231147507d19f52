namespace Tangwright.Foundation;

/// <summary>Where two straight segments meet, in closed form.</summary>
internal static class LineMeetings
{
    public static void Find(Line a, Line b, Joints joints, List<RawMeeting> found)
    {
        var (da, db) = (a.End - a.Start, b.End - b.Start);
        var (la, lb) = (da.Length, db.Length);
        if (la == 0 || lb == 0) return;
        var gap = b.Start - a.Start;
        var det = da.Cross(db);
        if (Math.Abs(det) <= 1e-12 * la * lb)
        {
            if (Math.Abs(da.Cross(gap)) / la <= SegmentMeetings.TouchMm) Collinear(a, b, da, la, joints, found);
            return;
        }

        var (t, u) = (gap.Cross(db) / det, gap.Cross(da) / det);
        var (et, eu) = (SegmentMeetings.TouchMm / la, SegmentMeetings.TouchMm / lb);
        if (t < -et || t > 1 + et || u < -eu || u > 1 + eu) return;
        (t, u) = (Snapped(t, et), Snapped(u, eu));
        if (!SegmentMeetings.AtJoint(a.At(t), b.At(u), a, b, joints)) found.Add(new RawMeeting(t, u));
    }

    private static double Snapped(double t, double slack) => t < slack ? 0 : t > 1 - slack ? 1 : t;

    private static void Collinear(Line a, Line b, Point da, double la, Joints joints, List<RawMeeting> found)
    {
        var u0 = (b.Start - a.Start).Dot(da) / (la * la);
        var u1 = (b.End - a.Start).Dot(da) / (la * la);
        var (from, to) = (Math.Max(0, Math.Min(u0, u1)), Math.Min(1, Math.Max(u0, u1)));
        var length = (to - from) * la;
        if (length < -SegmentMeetings.TouchMm) return;
        double OnB(double t) => Math.Clamp((t - u0) / (u1 - u0), 0, 1);
        if (length > Crossings.SameSpotMm) found.Add(new RawMeeting(from, OnB(from)) { IsOverlap = true, Until0 = to });
        else if (!SegmentMeetings.AtJoint(a.At(from), b.At(OnB(from)), a, b, joints)) found.Add(new RawMeeting(Math.Clamp(from, 0, 1), OnB(from)));
    }
}
