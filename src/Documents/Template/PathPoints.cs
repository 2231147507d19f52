using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>Points along a path, close enough together to find free room and to cut help lines; nothing true-scale is drawn from them.</summary>
internal static class PathPoints
{
    /// <summary>The points: ends of lines, curves about every millimetre.</summary>
    public static IEnumerable<Point> Of(Path path)
    {
        yield return path.Start;
        foreach (var s in path.Segments)
        {
            var steps = s is Line ? 1 : Math.Clamp((int)Math.Ceiling((s.Bounds.Width + s.Bounds.Height) * 1.6), 8, 400);
            for (var i = 1; i <= steps; i++) yield return s.At((double)i / steps);
        }
    }

    /// <summary>Points about every 2 mm, along lines too.</summary>
    public static IEnumerable<Point> Spots(Path path)
    {
        foreach (var s in path.Segments)
        {
            var steps = Math.Clamp((int)(s.Length / 2), 1, 2000);
            for (var i = 0; i <= steps; i++) yield return s.At((double)i / steps);
        }
    }

    /// <summary>Whether a point lies inside a closed polygon (even-odd).</summary>
    public static bool Inside(IReadOnlyList<Point> polygon, Point p)
    {
        var inside = false;
        for (var i = 0; i < polygon.Count; i++)
        {
            var (a, b) = (polygon[i], polygon[(i + 1) % polygon.Count]);
            if (a.Y > p.Y != b.Y > p.Y && p.X < a.X + ((p.Y - a.Y) / (b.Y - a.Y) * (b.X - a.X))) inside = !inside;
        }

        return inside;
    }

    /// <summary>Parameters along the line a + t (b − a) where it crosses a closed polygon, ascending.</summary>
    public static List<double> Crossings(IReadOnlyList<Point> polygon, Point a, Point b)
    {
        var found = new List<double>();
        var d = b - a;
        for (var i = 0; i < polygon.Count; i++)
        {
            var (p, q) = (polygon[i], polygon[(i + 1) % polygon.Count]);
            var (sp, sq) = (d.Cross(p - a), d.Cross(q - a));
            if (sp > 0 == sq > 0) continue;
            var hit = p.Toward(q, sp / (sp - sq));
            found.Add(d.Dot(hit - a) / d.Dot(d));
        }

        found.Sort();
        return found;
    }

    /// <summary>An open path of straight pieces; null with fewer than two points.</summary>
    public static Path? Polyline(IReadOnlyList<Point> points)
        => points.Count < 2 ? null : new Path([.. Enumerable.Range(1, points.Count - 1).Select(i => (Segment)new Line(points[i - 1], points[i]))], closed: false);
}
