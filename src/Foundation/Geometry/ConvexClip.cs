using System.Collections.Immutable;

namespace Tangwright.Foundation;

/// <summary>A convex polygon cut by a straight line. mm.</summary>
public static class ConvexClip
{
    /// <summary>What lies on or beyond the line n·p = c, on the side n points to; empty when nothing.</summary>
    /// <remarks>Method: Sutherland, Hodgman 1974, one line.</remarks>
    /// <param name="corners">The polygon, convex, either way round.</param>
    /// <param name="n">Direction, length 1.</param>
    /// <param name="c">Distance of the line from the origin along n, mm.</param>
    public static ImmutableArray<Point> Beyond(ImmutableArray<Point> corners, Point n, double c)
    {
        Span<Point> room = stackalloc Point[corners.Length + 2];
        var count = Beyond(corners.AsSpan(), n, c, room);
        return count < 3 ? [] : [.. room[..count]];
    }

    /// <summary>The same into room for one corner more than the polygon has, and one to spare; how many corners were written.</summary>
    public static int Beyond(ReadOnlySpan<Point> corners, Point n, double c, Span<Point> into)
    {
        var count = 0;
        for (var i = 0; i < corners.Length; i++)
        {
            var (a, b) = (corners[i], corners[i + 1 == corners.Length ? 0 : i + 1]);
            var (da, db) = (n.Dot(a) - c, n.Dot(b) - c);
            if (da >= 0) into[count++] = a;
            if ((da > 0 && db < 0) || (da < 0 && db > 0)) into[count++] = a + ((b - a) * (da / (da - db)));
        }

        return count;
    }

    /// <summary>Area, mm²; positive whichever way round.</summary>
    public static double AreaMm2(ReadOnlySpan<Point> corners)
    {
        if (corners.Length < 3) return 0;
        var (sum, o) = (0.0, corners[0]);
        for (var i = 1; i + 1 < corners.Length; i++) sum += (corners[i] - o).Cross(corners[i + 1] - o);
        return Math.Abs(0.5 * sum);
    }

    /// <summary>Where the line n·p = c runs through the polygon, seen with the side n points to on the right; null when it misses it.</summary>
    public static (Point From, Point To)? Chord(ImmutableArray<Point> corners, Point n, double c)
    {
        var along = n.Left;
        var (least, most, from, to) = (double.PositiveInfinity, double.NegativeInfinity, default(Point), default(Point));
        for (var i = 0; i < corners.Length; i++)
        {
            var (a, b) = (corners[i], corners[(i + 1) % corners.Length]);
            var (da, db) = (n.Dot(a) - c, n.Dot(b) - c);
            if ((da > 0 && db > 0) || (da < 0 && db < 0)) continue;
            if (da == 0) Take(a);
            if (db == 0) Take(b);
            if (da != db && da * db < 0) Take(a + ((b - a) * (da / (da - db))));
        }

        return most > least ? (from, to) : null;

        void Take(Point p)
        {
            var s = p.Dot(along);
            if (s < least) (least, from) = (s, p);
            if (s > most) (most, to) = (s, p);
        }
    }
}
