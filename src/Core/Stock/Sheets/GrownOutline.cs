using System.Collections.Immutable;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Buffer;
using Tangwright.Foundation;
using Path = Tangwright.Foundation.Path;
using Point = Tangwright.Foundation.Point;

namespace Tangwright.Core;

/// <summary>A polygon that surely holds an outline and all that is nearer to it than half the clearance: two of them that do not meet leave the clearance between the true outlines. Hollows no saw could enter are closed.</summary>
/// <param name="Corners">Its corners, counter-clockwise, in the outline's own axes, mm.</param>
/// <param name="ReachMm">How far it stands out beyond the outline's box at least, mm.</param>
public sealed record GrownOutline(ImmutableArray<Point> Corners, double ReachMm)
{
    private const double ChordMm = 0.02;
    private const int ChordsInQuarter = 5;

    /// <summary>Grows an outline.</summary>
    /// <param name="outline">Closed.</param>
    /// <param name="clearanceMm">Clearance between two pieces, mm, more than 0.</param>
    public static GrownOutline Of(Path outline, double clearanceMm)
    {
        var corners = Chords.Of(Moments.Of(outline).AreaMm2 < 0 ? outline.Reversed() : outline, ChordMm);
        var ring = corners.Select(c => new Coordinate(c.X, c.Y)).ToList();
        var polygon = new Polygon(new LinearRing([.. ring, ring[0].Copy()]));

        // chords lie inside arcs, those of the outline and those round its corners alike: grown by as much more
        var reach = ((0.5 * clearanceMm) + ChordMm + 1e-3) / Math.Cos(Math.PI / (4 * ChordsInQuarter));
        var grown = BufferOp.Buffer(polygon, reach, new BufferParameters(ChordsInQuarter) { SimplifyFactor = 0 });
        var shell = ((Polygon)grown).Shell.Coordinates[..^1].Select(c => new Point(c.X, c.Y)).ToArray();
        if (PlanarKernels.Area(shell) < 0) Array.Reverse(shell);
        var (inner, outer) = (outline.Bounds, Box.Around(shell));
        return new GrownOutline([.. shell], Math.Min(Math.Min(inner.MinX - outer.MinX, outer.MaxX - inner.MaxX), Math.Min(inner.MinY - outer.MinY, outer.MaxY - inner.MaxY)));
    }
}
