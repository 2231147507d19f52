using Tangwright.Foundation;

namespace Tangwright.UseCases;

/// <summary>The middle of a piece at a place along it.</summary>
internal static class Middle
{
    /// <summary>Half way up the tallest stretch of steel straight above a place, to 0.01 mm; null beside the piece.</summary>
    /// <param name="outline">The outline, closed.</param>
    /// <param name="x">Place along the piece, mm.</param>
    public static Point? Of(Path outline, double x)
    {
        var b = outline.Bounds;
        if (!(x > b.MinX && x < b.MaxX)) return null;
        var rays = new RayHits(outline.Segments);
        var hits = new RayHit[rays.MostHits];
        var foot = new Point(x, b.MinY - 1);
        var n = rays.Along(foot, new Point(0, 1), 0, b.Height + 2, hits);
        var heights = hits.Take(n).Select(h => foot.Y + h.Distance).Distinct().Order().ToArray();
        var best = (Low: 0.0, High: 0.0);
        for (var i = 0; i + 1 < heights.Length; i++)
        {
            if (heights[i + 1] - heights[i] > best.High - best.Low && Inside.Of(outline, new Point(x, 0.5 * (heights[i] + heights[i + 1])))) best = (heights[i], heights[i + 1]);
        }

        return best.High > best.Low ? new Point(x, Math.Round(0.5 * (best.Low + best.High), 2)) : null;
    }
}
