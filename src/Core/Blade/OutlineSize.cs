using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Figures of the outline.</summary>
public static class OutlineSize
{
    /// <summary>Area, perimeter, size and centre of the outline; number and area of the holes.</summary>
    public static OutlineFigures Of(Plan plan, ImmutableArray<PlacedHole> holes)
    {
        var moments = Moments.Of(plan.Outline);
        var box = plan.Outline.Bounds;
        return new OutlineFigures(
            Area.OfMm2(Math.Abs(moments.AreaMm2)),
            Length.OfMm(plan.Outline.Length),
            Length.OfMm(box.Width),
            Length.OfMm(box.Height),
            moments.Centroid,
            holes.Length,
            Area.OfMm2(holes.Sum(h => 0.25 * Math.PI * h.Diameter.Mm * h.Diameter.Mm)));
    }
}
