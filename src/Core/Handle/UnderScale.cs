using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>A hole of the tang that lies under the scales, and whether the scales are drilled through it.</summary>
/// <param name="Hole">The hole.</param>
/// <param name="Pin">The pin through it; null: the scales are not drilled here.</param>
/// <param name="Loose">How much larger the hole is than the plan's thinnest rod, when no pin goes through it; null when there is no rod.</param>
/// <param name="Wood">From the rim of the hole in the scale to the nearest edge of the scale; null when it is not drilled.</param>
public sealed record UnderScale(PlacedHole Hole, HandlePin? Pin, Length? Loose, Length? Wood)
{
    /// <summary>Whether the scales are drilled here.</summary>
    public bool IsDrilled => Pin is not null || Hole.Use is HoleUse.Lanyard or HoleUse.Hanging;

    /// <summary>Those of a plan, in its order.</summary>
    /// <param name="r">The plan worked up.</param>
    /// <param name="shape">Its scale.</param>
    /// <param name="pins">Its pins.</param>
    public static ImmutableArray<UnderScale> Of(Results r, ScaleShape shape, ImmutableArray<HandlePin> pins)
    {
        var rod = pins.IsEmpty ? (Length?)null : pins.Min(p => p.Diameter.Mm) is var mm ? Length.OfMm(mm) : null;
        return [.. r.Holes.Where(h => Inside.Of(shape.Outline.Path, h.MadeAt)).Select(h =>
        {
            var pin = pins.FirstOrDefault(p => p.Hole.Name == h.Name);
            var drilled = pin?.Diameter ?? (h.Use is HoleUse.Lanyard or HoleUse.Hanging ? h.MadeDiameter : null);
            return new UnderScale(h, pin, pin is null && rod is { } d ? h.MadeDiameter - d : null, drilled is { } bore ? Length.OfMm(Nearest.Distance(shape.Outline.Path, h.MadeAt) - (0.5 * bore.Mm)) : null);
        })];
    }
}
