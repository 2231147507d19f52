using System.Collections.Immutable;

namespace Tangwright.Foundation;

/// <summary>The tightest convex polygon around points. mm.</summary>
public static class ConvexHull
{
    /// <summary>Its corners, counter-clockwise, none on the straight line between two others; fewer than three when the points lie on one line.</summary>
    /// <remarks>Method: sorted points, lower and upper chain (Andrew 1979).</remarks>
    /// <param name="points">The points.</param>
    public static ImmutableArray<Point> Of(IEnumerable<Point> points)
    {
        var p = points.Distinct().OrderBy(q => q.X).ThenBy(q => q.Y).ToArray();
        if (p.Length < 3) return [.. p];
        var hull = new List<Point>(p.Length);
        Chain(p, hull);
        Array.Reverse(p);
        Chain(p, hull);
        return [.. hull];
    }

    private static void Chain(Point[] sorted, List<Point> hull)
    {
        var start = hull.Count;
        foreach (var q in sorted)
        {
            while (hull.Count >= start + 2 && (hull[^1] - hull[^2]).Cross(q - hull[^2]) <= 0) hull.RemoveAt(hull.Count - 1);
            hull.Add(q);
        }

        hull.RemoveAt(hull.Count - 1);
    }
}
