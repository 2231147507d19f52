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
    public static double LeastMm(Path outline, ImmutableArray<LanePlace> places, double clearanceMm) => LeastMm([outline], places, clearanceMm);

    /// <summary>The same for pieces of several patterns.</summary>
    /// <param name="outlines">The true outlines, each in its plan's axes.</param>
    /// <param name="places">Where the pieces lie.</param>
    /// <param name="clearanceMm">What was asked for, mm.</param>
    public static double LeastMm(ImmutableArray<Path> outlines, ImmutableArray<LanePlace> places, double clearanceMm)
    {
        var least = 2 * clearanceMm;
        var near = new List<(Path Path, double RightMm)>();
        foreach (var p in places.OrderBy(p => p.AlongMm))
        {
            var box = outlines[p.Pattern].Bounds;
            var here = outlines[p.Pattern].Transformed(Lies.Turn(p.Lie, box).Then(Transform.Shift(new Point(p.AlongMm, p.UpMm))));
            near.RemoveAll(n => n.RightMm + (2 * clearanceMm) < p.AlongMm);
            foreach (var (other, _) in near)
            {
                least = Inside.Of(other, here.Start) || Inside.Of(here, other.Start) ? 0 : Math.Min(least, LeastGap.Of(here, other, least));
            }

            near.Add((here, p.AlongMm + box.Width));
        }

        return least;
    }
}
