using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>The two holes of a piece that go on pins: the farthest apart, so that play turns the piece least.</summary>
internal static class PinPlaces
{
    /// <summary>Widest hole that goes on a pin, mm; common practice.</summary>
    private const double MostMm = 13;

    /// <summary>Two holes, the one nearer the corner of the stock first; empty when there are no two.</summary>
    public static ImmutableArray<PlacedHole> Of(ImmutableArray<PlacedHole> holes, Point corner)
    {
        var fit = holes.Where(h => !h.IsDrilledHard && h.MadeDiameter.Mm <= MostMm).ToArray();
        if (fit.Length < 2) return [];
        var (a, b) = fit.SelectMany((h, i) => fit.Skip(i + 1).Select(k => (h, k))).MaxBy(p => p.h.MadeAt.To(p.k.MadeAt));
        return a.MadeAt.To(corner) <= b.MadeAt.To(corner) ? [a, b] : [b, a];
    }
}
