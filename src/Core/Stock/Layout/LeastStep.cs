using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>How far along the bar one piece must lie behind another so that they are never closer than a clearance, also when they are slid further apart.</summary>
[Formula("least step along the bar between two outlines at a clearance, mm", "convex-functions", "Polygons, any shape; exact to rounding: max over pairs of points of x1 − x2 + √(c² − Δy²), which on a pair of edges has its greatest value where a corner of one meets the other")]
public static class LeastStep
{
    /// <summary>The step from the left piece's origin to the right one's, mm; negative infinity when they pass each other.</summary>
    /// <param name="left">Flank of the left piece.</param>
    /// <param name="right">Flank of the right piece.</param>
    /// <param name="upMm">How much higher the right piece lies, mm.</param>
    /// <param name="clearanceMm">Clearance, mm; 0: they may touch.</param>
    public static double Mm(Flanks left, Flanks right, double upMm, double clearanceMm)
    {
        var (a, b) = (left.RightSide, right.LeftSide);
        var most = double.NegativeInfinity;
        foreach (var p in left.RightCorners)
        {
            foreach (var e in b) most = Math.Max(most, On(p.X - e.Low.X, p.Y - e.Low.Y - upMm, p.X - e.High.X, p.Y - e.High.Y - upMm, clearanceMm));
        }

        foreach (var q in right.LeftCorners)
        {
            foreach (var e in a) most = Math.Max(most, On(e.Low.X - q.X, e.Low.Y - q.Y - upMm, e.High.X - q.X, e.High.Y - q.Y - upMm, clearanceMm));
        }

        return most;
    }

    /// <summary>Greatest x + √(c² − y²) on a straight stretch, where |y| ≤ c.</summary>
    private static double On(double x0, double y0, double x1, double y1, double c)
    {
        var (low, high) = y0 < y1 ? (y0, y1) : (y1, y0);
        if (low > c || high < -c) return double.NegativeInfinity;
        var (dx, dy) = (x1 - x0, y1 - y0);
        var slope = dx / dy;
        var y = double.IsFinite(slope) ? c * slope / Math.Sqrt(1 + (slope * slope)) : Math.CopySign(c, slope);
        y = Math.Clamp(y, Math.Max(low, -c), Math.Min(high, c));
        return x0 + (dx * Math.Clamp((y - y0) / dy, 0, 1)) + Math.Sqrt(Math.Max(0, (c * c) - (y * y)));
    }
}

/// <summary>What of a polygon can be rightmost or leftmost at some height: its rising and its falling edges, when it runs counter-clockwise.</summary>
/// <param name="RightSide">Edges that face right.</param>
/// <param name="LeftSide">Edges that face left.</param>
/// <param name="RightCorners">Their corners.</param>
/// <param name="LeftCorners">Their corners.</param>
public sealed record Flanks(ImmutableArray<FlankEdge> RightSide, ImmutableArray<FlankEdge> LeftSide, ImmutableArray<Point> RightCorners, ImmutableArray<Point> LeftCorners)
{
    /// <summary>The flanks of a polygon.</summary>
    /// <param name="corners">Its corners, counter-clockwise, mm.</param>
    public static Flanks Of(ImmutableArray<Point> corners)
    {
        var (right, left) = (ImmutableArray.CreateBuilder<FlankEdge>(), ImmutableArray.CreateBuilder<FlankEdge>());
        for (var i = 0; i < corners.Length; i++)
        {
            var (a, b) = (corners[i], corners[(i + 1) % corners.Length]);
            if (b.Y > a.Y) right.Add(new FlankEdge(a, b));
            else if (b.Y < a.Y) left.Add(new FlankEdge(b, a));
        }

        return new Flanks(right.ToImmutable(), left.ToImmutable(), Corners(right), Corners(left));
    }

    private static ImmutableArray<Point> Corners(IEnumerable<FlankEdge> edges) => [.. edges.SelectMany(e => new[] { e.Low, e.High }).Distinct()];
}

/// <summary>An edge that is not level.</summary>
/// <param name="Low">Its lower end, mm.</param>
/// <param name="High">Its upper end, mm.</param>
public readonly record struct FlankEdge(Point Low, Point High);
