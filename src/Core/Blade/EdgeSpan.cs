using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>The sharpened part as a stretch of the outer loop, steel to its left.</summary>
/// <param name="From">Where it starts on the outer loop.</param>
/// <param name="To">Where it ends on the outer loop.</param>
/// <param name="Path">The stretch itself.</param>
public sealed record EdgeSpan(PathSpot From, PathSpot To, Path Path)
{
    /// <summary>Whether it goes all the way round.</summary>
    public bool IsWholeLoop => Path.Start.To(Path.End) < 1e-6;

    /// <summary>The sharpened part of a plan on its piece; null when the plan has none.</summary>
    public static EdgeSpan? Of(Plan plan, Region piece)
    {
        if (plan.Edge is not { } edge) return null;

        // the piece's loop runs counter-clockwise; a plan written the other way round has its span turned about with it
        var turned = Moments.Of(plan.Outline).AreaMm2 < 0;
        return turned ? Of(piece.Outer, edge.To, edge.From) : Of(piece.Outer, edge.From, edge.To);
    }

    /// <summary>The stretch of a loop from the spot nearest one point to the spot nearest another, in the loop's direction; the whole loop when they are the same.</summary>
    public static EdgeSpan Of(Path loop, Point from, Point to)
    {
        var (a, b) = (SpotOf(loop, from), SpotOf(loop, to));
        if (loop.At(a).To(loop.At(b)) < 1e-9) b = a;
        return new EdgeSpan(a, b, loop.Between(a, b));
    }

    /// <summary>Whether a spot of the outer loop lies on it.</summary>
    public bool Holds(int segment, double t)
    {
        var (at, from, to) = (segment + t, From.Segment + From.T, To.Segment + To.T);
        return from < to ? at >= from && at <= to : at >= from || at <= to;
    }

    /// <summary>A point about half way along it.</summary>
    public Point Middle
    {
        get
        {
            var left = 0.5 * Path.Length;
            foreach (var s in Path.Segments)
            {
                var l = s.Length;
                if (left <= l) return s.At(left / l);
                left -= l;
            }

            return Path.End;
        }
    }

    // the end of a segment is told as the start of the next
    private static PathSpot SpotOf(Path loop, Point p)
    {
        var spot = Nearest.On(loop, p).Spot;
        var s = loop.Segments[spot.Segment];
        var at = s.At(spot.T);
        if (at.To(s.End) < 1e-9) return new PathSpot((spot.Segment + 1) % loop.Segments.Length, 0);
        return at.To(s.Start) < 1e-9 ? new PathSpot(spot.Segment, 0) : spot;
    }
}
