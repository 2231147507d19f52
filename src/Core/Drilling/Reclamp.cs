using System.Collections.Immutable;

namespace Tangwright.Core;

/// <summary>Holes spread further than the travel: which can be made in each clamping, and the two that pin the piece for the next.</summary>
/// <param name="Clampings">Holes of each clamping, along the piece.</param>
/// <param name="Pins">For each change the two holes, made before it, that take the pins; fewer than two when none can be reached from both.</param>
public sealed record Reclamp(ImmutableArray<ImmutableArray<PlacedHole>> Clampings, ImmutableArray<ImmutableArray<PlacedHole>> Pins)
{
    /// <summary>Clampings of a row of holes under a travel, mm; one when all are reached at once.</summary>
    /// <param name="holes">The holes.</param>
    /// <param name="travelMm">How far the table travels along the piece, mm.</param>
    /// <param name="sign">+1 from the left end on, -1 from the right end on.</param>
    /// <remarks>Each clamping after the first lies so that the last two holes of the one before are within reach again.</remarks>
    public static Reclamp Along(IEnumerable<PlacedHole> holes, double travelMm, int sign = 1)
    {
        double X(PlacedHole h) => sign * h.MadeAt.X;
        var left = holes.OrderBy(X).ThenBy(h => h.MadeAt.Y).ToList();
        var clampings = ImmutableArray.CreateBuilder<ImmutableArray<PlacedHole>>();
        var pins = ImmutableArray.CreateBuilder<ImmutableArray<PlacedHole>>();
        ImmutableArray<PlacedHole> pinned = [];
        while (left.Count > 0)
        {
            var start = pinned.Length == 2 ? X(pinned[0]) : X(left[0]);
            var now = left.TakeWhile(h => X(h) <= start + travelMm + 1e-9).ToImmutableArray();
            if (now.IsEmpty)
            {
                // the pins are too far back to reach on: begin anew from the next hole, without pins
                pinned = [];
                now = [.. left.TakeWhile(h => X(h) <= X(left[0]) + travelMm + 1e-9)];
            }

            if (clampings.Count > 0) pins.Add(pinned);
            clampings.Add(now);
            left.RemoveRange(0, now.Length);
            var all = clampings.SelectMany(c => c).ToArray();
            pinned = all.Length < 2 ? [] : [all[^2], all[^1]];
        }

        return new(clampings.ToImmutable(), pins.ToImmutable());
    }
}
