using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>The holes of the plan with what was measured on the guide piece: its centres take the place of the planned ones on everything that comes after, as measured from the same edges; the best fit is for judging only.</summary>
public static class AsBuiltHoles
{
    /// <summary>The holes; those that were not measured, or so far off that the measuring is in doubt, stay as planned.</summary>
    /// <param name="holes">The plan's holes.</param>
    /// <param name="reports">The measured pieces.</param>
    public static ImmutableArray<PlacedHole> Of(ImmutableArray<PlacedHole> holes, ImmutableArray<PositionReport> reports)
        => reports.FirstOrDefault(r => r.IsGuide) is { } guide ? With(holes, [.. guide.Holes.Where(h => !h.IsFarOff).Select(h => h.Hole)]) : holes;

    /// <summary>The holes with those that were measured in their places.</summary>
    internal static ImmutableArray<PlacedHole> With(ImmutableArray<PlacedHole> holes, ImmutableArray<PlacedHole> built)
        => [.. holes.Select(h => built.FirstOrDefault(b => b.Name == h.Name) ?? h)];

    /// <summary>Steel between a hole as built and the outline or its neighbours as built, mm; negative when it breaks through.</summary>
    internal static double WebMm(Path outline, ImmutableArray<PlacedHole> holes, PlacedHole hole)
    {
        var foot = Nearest.On(outline, hole.MadeAt);
        var toOutline = Inside.Of(outline, hole.MadeAt) ? foot.Distance : -foot.Distance;
        var toHole = holes.Where(o => o.Name != hole.Name).Select(o => o.MadeAt.To(hole.MadeAt) - (0.5 * o.MadeDiameter.Mm)).DefaultIfEmpty(double.PositiveInfinity).Min();
        return Math.Min(toOutline, toHole) - (0.5 * hole.MadeDiameter.Mm);
    }
}
