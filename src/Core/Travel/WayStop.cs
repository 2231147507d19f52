using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>A hole on the way of a tool.</summary>
/// <param name="Hole">The hole.</param>
/// <param name="At">Its distances from the two edges, mm.</param>
/// <param name="PastXMm">Where to go past to along the first axis before coming to it, mm; null when it is come to from the right side anyway.</param>
/// <param name="PastYMm">The same across.</param>
public sealed record WayStop(PlacedHole Hole, Point At, double? PastXMm, double? PastYMm)
{
    /// <summary>Smaller moves are none, mm.</summary>
    private const double SameMm = 1e-6;

    /// <summary>The stops of a way, every one come to from smaller x and smaller y.</summary>
    /// <param name="from">Where the table stands before, mm from the two edges.</param>
    /// <param name="holes">The holes in order.</param>
    /// <param name="place">Distances of a hole from the two edges, mm.</param>
    /// <param name="past">How far to go past; null: no play.</param>
    public static ImmutableArray<WayStop> Along(Point from, IEnumerable<PlacedHole> holes, Func<PlacedHole, Point> place, Length? past)
    {
        var (at, stops) = (from, ImmutableArray.CreateBuilder<WayStop>());
        foreach (var hole in holes)
        {
            var to = place(hole);
            stops.Add(new(hole, to, Past(at.X, to.X, past), Past(at.Y, to.Y, past)));
            at = to;
        }

        return stops.ToImmutable();
    }

    private static double? Past(double from, double to, Length? past) => past is { } far && from > to + SameMm ? to - far.Mm : null;
}
