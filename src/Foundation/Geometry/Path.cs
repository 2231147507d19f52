using System.Collections.Immutable;

namespace Tangwright.Foundation;

/// <summary>A spot on a path: the segment's number and the parameter on it.</summary>
/// <param name="Segment">Index of the segment.</param>
/// <param name="T">0 to 1.</param>
public readonly record struct PathSpot(int Segment, double T);

/// <summary>Segments joined end to end; closed when the last meets the first. mm.</summary>
public sealed class Path
{
    private Box? _bounds;
    private double? _length;

    /// <summary>A path of segments each of which starts where the one before ends.</summary>
    /// <exception cref="ArgumentException">The segments do not join to 1e-6 mm, or there is none.</exception>
    public Path(ImmutableArray<Segment> segments, bool closed)
    {
        if (segments.IsDefaultOrEmpty) throw new ArgumentException("a path needs a segment", nameof(segments));
        for (var i = 1; i < segments.Length; i++)
        {
            if (segments[i - 1].End.To(segments[i].Start) > 1e-6) throw new ArgumentException($"segment {i} does not start where the one before ends", nameof(segments));
        }

        if (closed && segments[^1].End.To(segments[0].Start) > 1e-6) throw new ArgumentException("the path is not closed", nameof(segments));
        Segments = segments;
        Closed = closed;
    }

    /// <summary>The segments in order.</summary>
    public ImmutableArray<Segment> Segments { get; }

    /// <summary>Whether the last segment ends where the first starts.</summary>
    public bool Closed { get; }

    /// <summary>First point.</summary>
    public Point Start => Segments[0].Start;

    /// <summary>Last point.</summary>
    public Point End => Segments[^1].End;

    /// <summary>Length along the path, mm.</summary>
    public double Length => _length ??= Segments.Sum(s => s.Length);

    /// <summary>The tightest upright box.</summary>
    public Box Bounds => _bounds ??= Segments.Aggregate(Box.Nothing, (b, s) => b.With(s.Bounds));

    /// <summary>A circle, counter-clockwise, as two half arcs starting at the right.</summary>
    public static Path Circle(Point centre, double radius)
    {
        var right = new Point(centre.X + radius, centre.Y);
        var left = new Point(centre.X - radius, centre.Y);
        var (u, v) = (new Point(radius, 0), new Point(0, radius));
        return new Path([Arc.Between(right, left, centre, u, v, 0, Math.PI), Arc.Between(left, right, centre, u, v, Math.PI, Math.PI)], closed: true);
    }

    /// <summary>A polygon through corner points, closed.</summary>
    public static Path Polygon(params ReadOnlySpan<Point> corners)
    {
        var b = ImmutableArray.CreateBuilder<Segment>(corners.Length);
        for (var i = 0; i < corners.Length; i++) b.Add(new Line(corners[i], corners[(i + 1) % corners.Length]));
        return new Path(b.MoveToImmutable(), closed: true);
    }

    /// <summary>The same path run the other way.</summary>
    public Path Reversed() => new([.. Segments.Reverse().Select(s => s.Reversed())], Closed);

    /// <summary>The path under a map.</summary>
    public Path Transformed(Transform map) => new([.. Segments.Select(s => s.Transformed(map))], Closed);

    /// <summary>The point at a spot.</summary>
    public Point At(PathSpot spot) => Segments[spot.Segment].At(spot.T);

    /// <summary>The open part from one spot to another in the path's own direction; round the start of a closed path when the second comes first.</summary>
    public Path Between(PathSpot from, PathSpot to)
    {
        var parts = ImmutableArray.CreateBuilder<Segment>();
        var ahead = from.Segment < to.Segment || (from.Segment == to.Segment && from.T < to.T);
        if (!ahead && !Closed) throw new ArgumentException("the second spot lies before the first on an open path", nameof(to));
        var i = from.Segment;
        var t = from.T;
        var wrapped = ahead;
        while (true)
        {
            var last = i == to.Segment && wrapped;
            var t1 = last ? to.T : 1;
            if (t1 - t > 1e-12) parts.Add(t <= 0 && t1 >= 1 ? Segments[i] : Segments[i].Part(t, t1));
            if (last) break;
            i++;
            t = 0;
            if (i == Segments.Length)
            {
                i = 0;
                wrapped = true;
            }
        }

        return new Path(parts.ToImmutable(), closed: false);
    }
}
