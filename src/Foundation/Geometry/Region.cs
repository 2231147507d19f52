using System.Collections.Immutable;

namespace Tangwright.Foundation;

/// <summary>A flat piece: one outer loop, counter-clockwise, and holes, clockwise, so that steel always lies to the left.</summary>
public sealed class Region
{
    /// <summary>A piece from its loops, turned as needed.</summary>
    public Region(Path outer, ImmutableArray<Path> holes)
    {
        Outer = Moments.Of(outer).AreaMm2 < 0 ? outer.Reversed() : outer;
        Holes = [.. holes.Select(h => Moments.Of(h).AreaMm2 > 0 ? h.Reversed() : h)];
    }

    /// <summary>Outer loop, counter-clockwise.</summary>
    public Path Outer { get; }

    /// <summary>Holes, clockwise.</summary>
    public ImmutableArray<Path> Holes { get; }

    /// <summary>All loops, the outer first.</summary>
    public IEnumerable<Path> Loops => Holes.Prepend(Outer);
}
