using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Outline of a section square to the edge, ground finished and not sharpened.</summary>
public static class BevelSection
{
    private const int Steps = 24;

    /// <summary>Half thickness to both sides over the height above the edge, counter-clockwise, mm; for one ground face the flat face is at x = 0.</summary>
    /// <param name="plan">A plan with a bevel.</param>
    /// <param name="s">The station.</param>
    /// <param name="topMm">Height drawn to, mm.</param>
    public static ImmutableArray<Point> Of(Plan plan, BevelStation s, double topMm)
    {
        var law = GrindProfile.Finished(plan) with { SharpenTangent = 0 };
        var face = new FaceAlong(law, s.Foot.X, s.Inward.X, law.FlatTangent is null ? s.Height.Mm : double.PositiveInfinity);
        var heights = Enumerable.Range(0, Steps + 1).Select(i => s.Height.Mm * i / Steps).Where(h => h < topMm).Append(topMm).ToArray();
        var thick = Array.ConvertAll(heights, face.At);
        return plan.Bevel!.OneSided
            ? [new(0, topMm), new(0, 0), .. heights.Select((h, i) => new Point(thick[i], h))]
            : [.. heights.Select((h, i) => new Point(-0.5 * thick[i], h)).Reverse(), .. heights.Select((h, i) => new Point(0.5 * thick[i], h))];
    }
}
