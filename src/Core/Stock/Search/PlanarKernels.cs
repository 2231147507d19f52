using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>The few plain pieces of plane geometry the search needs many million times. Lengths in one unit, areas in its square.</summary>
internal static class PlanarKernels
{
    /// <summary>Square of the distance from a point to a straight stretch.</summary>
    public static double PointToSegmentSquared(double px, double py, double ax, double ay, double bx, double by)
    {
        var (dx, dy) = (bx - ax, by - ay);
        var length = (dx * dx) + (dy * dy);
        var t = length > 0 ? Math.Clamp((((px - ax) * dx) + ((py - ay) * dy)) / length, 0, 1) : 0;
        var (ex, ey) = (px - ax - (t * dx), py - ay - (t * dy));
        return (ex * ex) + (ey * ey);
    }

    /// <summary>Whether a point lies inside a polygon.</summary>
    public static bool Inside(double[] xs, double[] ys, double px, double py)
    {
        var inside = false;
        for (int i = 0, j = xs.Length - 1; i < xs.Length; j = i++)
        {
            if (ys[j] > py != ys[i] > py && px < ((xs[i] - xs[j]) * (py - ys[j]) / (ys[i] - ys[j])) + xs[j]) inside = !inside;
        }

        return inside;
    }

    /// <summary>Area of a polygon, positive counter-clockwise.</summary>
    public static double Area(ReadOnlySpan<Point> corners)
    {
        var (sum, last) = (0.0, corners[^1]);
        foreach (var c in corners)
        {
            sum += (last - corners[0]).Cross(c - corners[0]);
            last = c;
        }

        return 0.5 * sum;
    }
}
