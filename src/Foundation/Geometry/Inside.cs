namespace Tangwright.Foundation;

/// <summary>Whether a point lies inside a closed path or in the steel of a piece, by the winding number against the curves themselves, not against chords.</summary>
/// <remarks>A point on the boundary counts as either, to rounding (about 1e-12 mm). Method: O'Rourke, Computational Geometry in C, §7.4, with each curve cut where it turns back in y.</remarks>
public static class Inside
{
    /// <summary>Whether the path winds round the point.</summary>
    public static bool Of(Path loop, Point p) => Winding(loop, p) != 0;

    /// <summary>Whether the point lies in the steel: inside the outer loop and in no hole.</summary>
    public static bool Of(Region region, Point p)
    {
        if (!region.Outer.Bounds.Holds(p) || !Of(region.Outer, p)) return false;
        foreach (var hole in region.Holes)
        {
            if (hole.Bounds.Holds(p) && Of(hole, p)) return false;
        }

        return true;
    }

    /// <summary>How often the path goes round the point, counter-clockwise positive.</summary>
    public static int Winding(Path loop, Point p)
    {
        // count the crossings of the half line from p towards +x
        var segments = loop.Segments;
        var winding = 0;
        for (var i = 0; i < segments.Length; i++)
        {
            var s = segments[i];
            winding += Crossings(s, p);
            var next = segments[(i + 1) % segments.Length].Start;
            if (next != s.End) winding += OfLine(s.End, next, p);
        }

        return winding;
    }

    private static int Crossings(Segment s, Point p)
    {
        var box = s.Bounds;
        if (p.Y < box.MinY || p.Y > box.MaxY || p.X > box.MaxX) return 0;
        if (p.X < box.MinX) return Rise(s.Start.Y, s.End.Y, p.Y);
        if (s is Line) return OfLine(s.Start, s.End, p);
        Span<double> turns = stackalloc double[8];
        var n = s is Arc arc ? TurnsInY(arc, turns) : TurnsInY((Bezier)s, turns);
        turns[n] = 1;
        var (t0, a, winding) = (0.0, s.Start, 0);
        for (var i = 0; i <= n; i++)
        {
            var b = s.At(turns[i]);
            var rise = Rise(a.Y, b.Y, p.Y);
            if (rise != 0 && IsRight(s, t0, a, turns[i], b, p)) winding += rise;
            (t0, a) = (turns[i], b);
        }

        return winding;
    }

    // half open: an end shared by two pieces belongs to the one above it
    private static int Rise(double y0, double y1, double y) => y0 <= y && y < y1 ? 1 : y1 <= y && y < y0 ? -1 : 0;

    private static int OfLine(Point a, Point b, Point p)
    {
        var rise = Rise(a.Y, b.Y, p.Y);
        return rise != 0 && (b - a).Cross(p - a) * rise > 0 ? rise : 0;
    }

    // whether the piece from t0 to t1, monotone in y, meets the height of p to the right of p: halved down to the last bit of t
    private static bool IsRight(Segment s, double t0, Point a, double t1, Point b, Point p)
    {
        var up = b.Y > a.Y;
        while (true)
        {
            var t = 0.5 * (t0 + t1);
            if (t <= t0 || t >= t1 || t1 - t0 < 1e-15) return 0.5 * (a.X + b.X) > p.X;
            var m = s.At(t);
            if (m.Y <= p.Y == up) (t0, a) = (t, m);
            else (t1, b) = (t, m);
        }
    }

    private static int TurnsInY(Arc a, Span<double> turns)
    {
        var n = 0;
        var top = Math.Atan2(a.AxisV.Y, a.AxisU.Y);
        var step = Math.PI / Math.Abs(a.Sweep);
        var first = (top - a.StartAngle) / a.Sweep;
        first -= Math.Floor(first / step) * step;
        for (var t = first; t < 1 && n < 6; t += step)
        {
            if (t > 0) turns[n++] = t;
        }

        return n;
    }

    private static int TurnsInY(Bezier b, Span<double> turns)
    {
        ReadOnlySpan<double> slope =
        [
            b.Control1.Y - b.Start.Y,
            2 * (b.Control2.Y - (2 * b.Control1.Y) + b.Start.Y),
            b.End.Y - (3 * b.Control2.Y) + (3 * b.Control1.Y) - b.Start.Y,
        ];
        var n = Roots.Between(slope, 0, 1, turns);
        return n;
    }
}
