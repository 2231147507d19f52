using System.Collections.Immutable;

namespace Tangwright.Core;

/// <summary>Holes spread further than the travel: which can be made in each clamping, and the two that pin the piece for the next.</summary>
/// <param name="Clampings">Holes of each clamping, along the piece.</param>
/// <param name="Pins">For each change the two holes, made before it, that take the pins; fewer than two when none can be reached from both.</param>
public sealed record Reclamp(ImmutableArray<ImmutableArray<PlacedHole>> Clampings, ImmutableArray<ImmutableArray<PlacedHole>> Pins)
{
    /// <summary>Clampings of a row of holes under a travel, mm; one when all are reached at once.</summary>
    /// <remarks>Each clamping after the first lies so that the last two holes of the one before are within reach again.</remarks>
    public static Reclamp Along(IEnumerable<PlacedHole> holes, double travelMm)
    {
        var left = holes.OrderBy(h => h.At.X).ThenBy(h => h.At.Y).ToList();
        var clampings = ImmutableArray.CreateBuilder<ImmutableArray<PlacedHole>>();
        var pins = ImmutableArray.CreateBuilder<ImmutableArray<PlacedHole>>();
        ImmutableArray<PlacedHole> pinned = [];
        while (left.Count > 0)
        {
            var start = pinned.Length == 2 ? pinned[0].At.X : left[0].At.X;
            var now = left.TakeWhile(h => h.At.X <= start + travelMm + 1e-9).ToImmutableArray();
            if (now.IsEmpty)
            {
                // the pins are too far back to reach on: begin anew from the next hole, without pins
                pinned = [];
                now = [.. left.TakeWhile(h => h.At.X <= left[0].At.X + travelMm + 1e-9)];
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
