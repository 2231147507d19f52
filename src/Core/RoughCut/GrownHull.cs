using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>The convex hull of an outline, grown by an allowance: where straight cuts may run. Curves are taken from outside: no cut comes nearer than the allowance to the true outline.</summary>
/// <param name="Corners">Corners of the hull before it is grown, counter-clockwise; on the outline.</param>
/// <param name="GrowMm">How far a cut stays off the corners, mm: the allowance and what chords may lie off their curves.</param>
public sealed record GrownHull(ImmutableArray<Point> Corners, double GrowMm)
{
    /// <summary>Chords stay this close to their curves, mm.</summary>
    public const double ChordMm = 0.01;

    /// <summary>The hull of an outline.</summary>
    /// <param name="outline">Closed.</param>
    /// <param name="allowanceMm">Allowance, mm.</param>
    public static GrownHull Of(Path outline, double allowanceMm)
        => new(ConvexHull.Of(Chords.Of(outline, ChordMm)), allowanceMm + (outline.Segments.All(s => s is Line) ? 0 : 2 * ChordMm));

    /// <summary>The cut with its waste in a direction.</summary>
    public SupportCut Cut(double angleRadians, bool isFlush = false)
    {
        var n = Point.Direction(angleRadians);
        var most = double.NegativeInfinity;
        foreach (var p in Corners) most = Math.Max(most, n.Dot(p));
        return new SupportCut(angleRadians, most + GrowMm, isFlush);
    }

    /// <summary>Cuts worth looking at: along every side of the hull, and all round in even steps.</summary>
    /// <param name="stepDegrees">The step.</param>
    /// <param name="mostOffSquareDegrees">Greatest angle off a square cut across the bar that the saw holds.</param>
    public ImmutableArray<SupportCut> Candidates(double stepDegrees = 3, double mostOffSquareDegrees = 90)
    {
        var angles = new SortedDictionary<double, bool>();
        var steps = (int)Math.Round(360 / stepDegrees);
        for (var i = 0; i < steps; i++) angles[2 * Math.PI * i / steps] = false;
        for (var i = 0; i < Corners.Length; i++)
        {
            var side = Corners[(i + 1) % Corners.Length] - Corners[i];
            if (side.Length < LeastSideMm) continue;
            var angle = Math.Atan2(-side.X, side.Y);
            angles[angle < 0 ? angle + (2 * Math.PI) : angle] = true;
        }

        return [.. angles.Select(a => Cut(a.Key, a.Value)).Where(c => c.OffSquareDegrees <= mostOffSquareDegrees + 1e-9)];
    }

    /// <summary>Shorter sides are chords of a curve and lie between the even steps.</summary>
    private const double LeastSideMm = 1.5;
}
