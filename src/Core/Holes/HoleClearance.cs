using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>How a hole lies to the outline.</summary>
/// <param name="Hole">The hole.</param>
/// <param name="Inside">Whether its centre lies inside the outline.</param>
/// <param name="Foot">Nearest point of the outline to its centre, mm.</param>
/// <param name="WebMm">Steel between its rim and the outline, mm; negative when it breaks through or lies outside.</param>
public sealed record HoleClearance(PlacedHole Hole, bool Inside, Point Foot, double WebMm)
{
    /// <summary>Centre to outline, mm.</summary>
    public double CentreMm => Hole.At.To(Foot);

    /// <summary>All holes of a piece against its outline.</summary>
    public static ImmutableArray<HoleClearance> Of(Path outline, ImmutableArray<PlacedHole> holes)
    {
        var b = ImmutableArray.CreateBuilder<HoleClearance>(holes.Length);
        foreach (var hole in holes)
        {
            var foot = Nearest.On(outline, hole.At);
            var inside = Tangwright.Foundation.Inside.Of(outline, hole.At);
            b.Add(new HoleClearance(hole, inside, foot.At, WebLimits.Settled((inside ? foot.Distance : -foot.Distance) - (0.5 * hole.Diameter.Mm))));
        }

        return b.MoveToImmutable();
    }
}
