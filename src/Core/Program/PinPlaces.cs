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
        var fit = holes.Where(h => !h.IsDrilledHard && h.MadeDiameter.Mm <= MostMm).ToImmutableArray();
        if (fit.Length < 2) return [];
        var (a, b) = HolePairs.FarthestApart(fit);
        return a.MadeAt.To(corner) <= b.MadeAt.To(corner) ? [a, b] : [b, a];
    }

    /// <summary>Width of washer and nut as a share of the pin; the washer of ISO 7089 is 2.3 of an 3 mm thread, 2.0 of a 6 mm one.</summary>
    private const double WasherShare = 2.4;

    /// <summary>Height of washer and nut as a share of the pin, a turn of thread over it; common practice.</summary>
    private const double NutShare = 1.6;

    /// <summary>Steel kept between a washer and the rim of the piece, mm.</summary>
    private const double ClearMm = 0.5;

    /// <summary>Washers and nuts on threaded pins, which hold the piece down where no clamp has room; empty when one would stand over the rim.</summary>
    public static ImmutableArray<ClampBox> Nuts(ImmutableArray<WantedHole> pins, Path outline)
    {
        ImmutableArray<ClampBox> nuts = [.. pins.Select(p => new ClampBox($"nut on the pin in {p.Name}", new Box(p.At.X, p.At.Y, p.At.X, p.At.Y).Grown(WasherShare * p.DiameterMm / 2), Math.Ceiling(NutShare * p.DiameterMm)))];
        return outline.Segments.Any(s => Enumerable.Range(0, 24).Any(i => nuts.Any(n => n.Box.DistanceTo(s.At(i / 24.0)) < ClearMm))) ? [] : nuts;
    }
}
