using System.Collections.Immutable;

namespace Tangwright.Foundation;

/// <summary>Where a path meets itself or another: crossings, touchings and stretches that run along one another. Points to 1e-9 mm.</summary>
/// <remarks>
/// Pairs of segments are found by a sweep over their boxes and met on the true curves (<see cref="SegmentMeetings"/>); no polyline stands in.
/// The end points that neighbours share by construction do not count, and a smooth join or a cusp is no meeting.
/// </remarks>
public static class Crossings
{
    /// <summary>Two meetings closer than this are one, mm.</summary>
    public const double SameSpotMm = 1e-6;

    /// <summary>All meetings of a path with itself, in the path's order.</summary>
    /// <param name="path">The path.</param>
    /// <param name="atMost">Stop after so many.</param>
    public static ImmutableArray<Meeting> Of(Path path, int atMost = 1000)
    {
        var segments = path.Segments;
        var found = new List<Meeting>();
        for (var i = 0; i < segments.Length && found.Count < atMost; i++)
        {
            if (segments[i] is Bezier b && SelfMeeting.Of(b) is { } own && !(path.Closed && segments.Length == 1 && own.T0 <= 0 && own.T1 >= 1))
                found.Add(Named(path, i, path, i, own));
        }

        var pairs = new BoxSweep(segments);
        var raw = new List<RawMeeting>();
        while (found.Count < atMost && pairs.Next(out var i, out var j))
        {
            var n = segments.Length;
            var joints = Joints.None;
            if (j == i + 1) joints |= Joints.EndToStart;
            if (path.Closed && i == 0 && j == n - 1) joints |= Joints.StartToEnd;
            raw.Clear();
            SegmentMeetings.Find(segments[i], segments[j], joints, raw);
            foreach (var m in raw) Keep(found, Named(path, i, path, j, m));
        }

        return Sorted(found);
    }

    /// <summary>All meetings of two paths, in the first path's order.</summary>
    /// <param name="first">One path.</param>
    /// <param name="second">The other.</param>
    /// <param name="atMost">Stop after so many.</param>
    public static ImmutableArray<Meeting> Between(Path first, Path second, int atMost = 1000)
    {
        var found = new List<Meeting>();
        if (!first.Bounds.Grown(SegmentMeetings.TouchMm).Touches(second.Bounds)) return [];
        var raw = new List<RawMeeting>();
        var reach = second.Bounds.Grown(SegmentMeetings.TouchMm);
        for (var i = 0; i < first.Segments.Length && found.Count < atMost; i++)
        {
            var box = first.Segments[i].Bounds.Grown(SegmentMeetings.TouchMm);
            if (!box.Touches(reach)) continue;
            for (var j = 0; j < second.Segments.Length; j++)
            {
                if (!box.Touches(second.Segments[j].Bounds)) continue;
                raw.Clear();
                SegmentMeetings.Find(first.Segments[i], second.Segments[j], Joints.None, raw);
                foreach (var m in raw) Keep(found, Named(first, i, second, j, m));
            }
        }

        return Sorted(found);
    }

    private static void Keep(List<Meeting> found, Meeting m)
    {
        for (var k = 0; k < found.Count; k++)
        {
            if (found[k].At.To(m.At) > SameSpotMm && found[k].Until.To(m.At) > SameSpotMm) continue;
            if (m.Kind != MeetingKind.Overlap) return;
            if (found[k].Kind == MeetingKind.Overlap) continue;
            found.RemoveAt(k--);
        }

        found.Add(m);
    }

    private static ImmutableArray<Meeting> Sorted(List<Meeting> found)
    {
        found.Sort((a, b) =>
        {
            var c = a.First.Segment.CompareTo(b.First.Segment);
            if (c == 0) c = a.First.T.CompareTo(b.First.T);
            if (c == 0) c = a.Second.Segment.CompareTo(b.Second.Segment);
            return c == 0 ? a.Second.T.CompareTo(b.Second.T) : c;
        });
        return [.. found];
    }

    private static Meeting Named(Path first, int i, Path second, int j, RawMeeting m)
    {
        var a = new PathSpot(i, m.T0);
        var b = new PathSpot(j, m.T1);
        var at = first.At(a);
        if (m.IsOverlap) return new Meeting(MeetingKind.Overlap, at, first.Segments[i].At(m.Until0), a, b);
        return new Meeting(Passes(first, a, second, b) ? MeetingKind.Crossing : MeetingKind.Touch, at, at, a, b);
    }

    /// <summary>Whether the strands change sides: the second's two ways out lie on different sides of the first's.</summary>
    private static bool Passes(Path first, PathSpot a, Path second, PathSpot b)
    {
        if (Ways(first, a) is not var (back0, on0) || Ways(second, b) is not var (back1, on1)) return false;
        var sector = AngleFrom(on0, back0);
        var (p, q) = (AngleFrom(on0, back1), AngleFrom(on0, on1));
        const double same = 1e-7;
        foreach (var w in stackalloc[] { p, q })
        {
            if (w < same || w > (2 * Math.PI) - same || Math.Abs(w - sector) < same) return false;
        }

        return p < sector != q < sector;
    }

    private static double AngleFrom(Point zero, Point way)
    {
        var a = Math.Atan2(zero.Cross(way), zero.Dot(way));
        return a < 0 ? a + (2 * Math.PI) : a;
    }

    /// <summary>The directions back and onward along the path at a spot; null at an open end.</summary>
    private static (Point Back, Point On)? Ways(Path path, PathSpot spot)
    {
        var n = path.Segments.Length;
        var s = path.Segments[spot.Segment];
        var (back, on) = (-s.Tangent(spot.T), s.Tangent(spot.T));
        if (spot.T <= 0)
        {
            if (spot.Segment == 0 && !path.Closed) return null;
            back = -path.Segments[(spot.Segment + n - 1) % n].Tangent(1);
        }
        else if (spot.T >= 1)
        {
            if (spot.Segment == n - 1 && !path.Closed) return null;
            on = path.Segments[(spot.Segment + 1) % n].Tangent(0);
        }

        return (back, on);
    }
}
