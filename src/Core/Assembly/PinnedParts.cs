using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>One of the parts that pins go through: how much larger each hole is than its rod, and how each scatters.</summary>
/// <param name="Clearances">Hole less rod, as a diameter; under 0 the rod does not enter.</param>
/// <param name="SigmasMm">Scatter of each centre along one axis, mm.</param>
public sealed record PinnedPart(ImmutableArray<Length> Clearances, ImmutableArray<double> SigmasMm)
{
    /// <summary>A part whose holes are all alike.</summary>
    public static PinnedPart Alike(int pins, Length clearance, double sigmaMm) => new([.. Enumerable.Repeat(clearance, pins)], [.. Enumerable.Repeat(sigmaMm, pins)]);
}

/// <summary>Parts laid on one another with pins through all of them.</summary>
/// <param name="Pins">Where the pins are planned, mm.</param>
/// <param name="Parts">The parts; all have a hole for each pin.</param>
/// <param name="IsFree">Whether parts may be shifted and turned before the pins go in; false when each is held to its planned place, by its edges for instance.</param>
public sealed record PinnedParts(ImmutableArray<Point> Pins, ImmutableArray<PinnedPart> Parts, bool IsFree = true)
{
    /// <summary>The same with the holes of one part opened by as much, or all when it is null.</summary>
    /// <param name="part">Which part.</param>
    /// <param name="clearance">Hole less rod, the same for all its pins.</param>
    public PinnedParts Opened(int? part, Length clearance)
        => this with { Parts = [.. Parts.Select((p, j) => part is null || part == j ? PinnedPart.Alike(Pins.Length, clearance, 0) with { SigmasMm = p.SigmasMm } : p)] };
}
