using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>An inside corner that an end mill leaves round.</summary>
/// <param name="At">The corner, from the program's zero, mm.</param>
/// <param name="Mm">Steel left in it, mm.</param>
public sealed record RoundCorner(Point At, double Mm);

/// <summary>Inside corners that an end mill leaves round because it is wider than they are.</summary>
internal static class RoundCorners
{
    /// <summary>What is left in a corner without a word, mm.</summary>
    public const double LeastMm = 0.02;

    /// <summary>What is left in a corner for the file, mm; common practice.</summary>
    public const double MostMm = 1;

    private const double StepMm = 0.5;

    /// <summary>Places nearer to each other than this are one corner, mm.</summary>
    private const double OneCornerMm = 3;

    /// <summary>The corners, where most is left in each.</summary>
    /// <param name="outline">The outline.</param>
    /// <param name="loop">The way of the tool's centre.</param>
    /// <param name="radius">Radius of the tool, mm.</param>
    public static ImmutableArray<RoundCorner> Of(Path outline, Path loop, double radius)
    {
        var found = new List<RoundCorner>();
        foreach (var s in outline.Segments)
        {
            var count = Math.Max(8, (int)Math.Ceiling(s.Length / StepMm));
            for (var i = 0; i < count; i++)
            {
                var p = s.At((double)i / count);
                var left = Nearest.Distance(loop, p) - radius;
                if (left <= LeastMm) continue;
                var same = found.FindIndex(f => f.At.To(p) < OneCornerMm);
                if (same < 0) found.Add(new(p, left));
                else if (left > found[same].Mm) found[same] = new(p, left);
            }
        }

        return [.. found];
    }
}
