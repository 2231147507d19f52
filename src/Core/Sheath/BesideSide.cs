using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>The line at a distance outside the edge side of a sheath's room: straight beside its sides, an arc about each corner; from straight below the mouth to straight beside its last corner. mm.</summary>
internal static class BesideSide
{
    /// <summary>The line.</summary>
    /// <param name="side">Corners, each further to the right and higher, bending to the left only.</param>
    /// <param name="outside">Distance, mm; 0 or more.</param>
    /// <param name="endsSquareTo">Which way its end lies from the last corner: 0 ahead, 90 degrees up.</param>
    public static Path Of(ImmutableArray<Point> side, double outside, double endsSquareTo = 0)
    {
        var parts = ImmutableArray.CreateBuilder<Segment>();
        var normal = new Point(0, -1);
        for (var i = 0; i < side.Length; i++)
        {
            var next = i + 1 < side.Length ? -(side[i + 1] - side[i]).Unit.Left : endsSquareTo == 0 ? new Point(1, 0) : new Point(0, 1);
            var turn = Math.Atan2(normal.Cross(next), normal.Dot(next));
            var start = parts.Count > 0 ? parts[^1].End : side[i] + (normal * outside);
            var end = side[i] + (next * outside);
            if (outside > 0 && turn > 1e-9) parts.Add(Arc.Between(start, end, side[i], new Point(outside, 0), new Point(0, outside), Math.Atan2(normal.Y, normal.X), turn));
            else if (start != end && parts.Count > 0) parts[^1] = new Line(parts[^1].Start, end);
            if (i + 1 < side.Length) parts.Add(new Line(end, side[i + 1] + (next * outside)));
            normal = next;
        }

        return new Path(parts.ToImmutable(), closed: false);
    }
}
