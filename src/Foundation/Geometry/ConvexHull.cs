using System.Collections.Immutable;

namespace Tangwright.Foundation;

/// <summary>The tightest outline without hollows about points.</summary>
public static class ConvexHull
{
    /// <summary>Its corners, counter-clockwise, none in the middle of a side.</summary>
    public static ImmutableArray<Point> Of(IEnumerable<Point> points)
    {
        var sorted = points.Distinct().OrderBy(p => p.X).ThenBy(p => p.Y).ToArray();
        if (sorted.Length < 3) return [.. sorted];
        var hull = new List<Point>();
        Half(sorted);
        Half(sorted.Reverse());
        return [.. hull];

        void Half(IEnumerable<Point> way)
        {
            var first = hull.Count;
            foreach (var p in way)
            {
                while (hull.Count - first >= 2 && Turn(hull[^2], hull[^1], p) <= 0) hull.RemoveAt(hull.Count - 1);
                hull.Add(p);
            }

            hull.RemoveAt(hull.Count - 1);
        }
    }

    private static double Turn(Point a, Point b, Point c) => ((b.X - a.X) * (c.Y - a.Y)) - ((b.Y - a.Y) * (c.X - a.X));
}
