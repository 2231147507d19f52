using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.UseCases;

/// <summary>A stretch of an outline between two corners.</summary>
/// <param name="From">Number of the corner it begins at.</param>
/// <param name="To">Number of the corner it ends at.</param>
/// <param name="Said">Which and how long, in words.</param>
public sealed record OutlineStretch(int From, int To, string Said);

/// <summary>Places on an outline that can be pointed at: its corners, numbered, and others close enough together for a finger.</summary>
/// <param name="Corners">Corners from 1, along the outline.</param>
/// <param name="Between">Places between the corners.</param>
/// <param name="Stretches">The stretches between neighbouring corners.</param>
public sealed record OutlineStops(ImmutableArray<Point> Corners, ImmutableArray<Point> Between, ImmutableArray<OutlineStretch> Stretches)
{
    private const double LeastTurnDegrees = 12;
    private const int MostCorners = 60;
    private const int WantedStops = 110;

    /// <summary>Those of an outline.</summary>
    public static OutlineStops Of(Path outline)
    {
        var segments = outline.Segments;
        var corners = Enumerable.Range(0, segments.Length).Where(i => Turn(segments[(i + segments.Length - 1) % segments.Length], segments[i]) >= LeastTurnDegrees).Take(MostCorners).ToArray();

        // a smooth outline still needs two places to name
        if (corners.Length < 2) corners = [.. Enumerable.Range(0, Math.Min(segments.Length, 12)).Select(i => i * segments.Length / Math.Min(segments.Length, 12)).Distinct()];
        var apart = outline.Length / WantedStops;
        var between = ImmutableArray.CreateBuilder<Point>();
        var last = new Point(double.MaxValue, double.MaxValue);
        for (var i = 0; i < segments.Length; i++)
        {
            var n = (int)Math.Ceiling(segments[i].Length / apart);
            for (var k = 0; k < n; k++)
            {
                var p = segments[i].At((double)k / n);
                if (p.To(last) < 0.6 * apart || corners.Any(c => segments[c].Start.To(p) < 0.6 * apart)) continue;
                between.Add(p);
                last = p;
            }
        }

        return new OutlineStops([.. corners.Select(c => segments[c].Start)], between.ToImmutable(), [.. Enumerable.Range(0, corners.Length).Select(Stretch)]);

        OutlineStretch Stretch(int i)
        {
            var next = (i + 1) % corners.Length;
            var length = outline.Between(new PathSpot(corners[i], 0), new PathSpot(corners[next], 0)).Length;
            return new OutlineStretch(i + 1, next + 1, $"from corner {i + 1} to corner {next + 1}, {Shown.Both(Length.OfMm(length))} long");
        }
    }

    /// <summary>Turn of the direction from the end of one segment to the start of the next, degrees.</summary>
    private static double Turn(Segment before, Segment after)
    {
        var (u, v) = (before.Tangent(1), after.Tangent(0));
        return Math.Abs(Math.Atan2(u.Cross(v), u.Dot(v))) * 180 / Math.PI;
    }
}
