using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Looks at a layout again, apart from how it was found: the true outline with its arcs, every piece against every other that is near.</summary>
public static class GapCheck
{
    /// <summary>The least gap between any two pieces, mm, from below; 0 when two overlap; looked for up to twice the clearance.</summary>
    /// <param name="outline">The true outline, plan's axes.</param>
    /// <param name="places">Where the pieces lie, from left to right.</param>
    /// <param name="clearanceMm">What was asked for, mm.</param>
    public static double LeastMm(Path outline, ImmutableArray<LanePlace> places, double clearanceMm)
    {
        var (least, box) = (2 * clearanceMm, outline.Bounds);
        var near = new Queue<(Path Path, double RightMm)>();
        foreach (var p in places)
        {
            var here = outline.Transformed(Lies.Turn(p.Lie, box).Then(Transform.Shift(new Point(p.AlongMm, p.UpMm))));
            while (near.TryPeek(out var first) && first.RightMm + (2 * clearanceMm) < p.AlongMm) near.Dequeue();
            foreach (var (other, _) in near)
            {
                // equal pieces: one lies in the other only when their lines cross, or when they are one on the other
                least = Inside.Of(other, here.Start) || Inside.Of(here, other.Start) ? 0 : Math.Min(least, LeastGap.Of(here, other, least));
            }

            near.Enqueue((here, p.AlongMm + box.Width));
        }

        return least;
    }
}
