using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>The fewest grits from a coarse one to a fine one of those owned, none more than so many times finer than the one before where the grits owned allow it.</summary>
[Formula("fewest grits with a ratio of sizes at most", SourceTag.CommonPractice, "Ratio 2 for satin (2.2 is let pass, as P60 to P120 has 2.15), 1.5 for a mirror (1.6); where a gap of the grits owned is wider it is taken in one step and told")]
public static class GritLadder
{
    /// <summary>Most that one grit may be finer than the one before for a satin.</summary>
    public const double SatinRatio = 2.2;

    /// <summary>The same for a mirror.</summary>
    public const double MirrorRatio = 1.6;

    /// <summary>Grain size at and under which a finish counts as a mirror, µm: P1500 and finer.</summary>
    public const double MirrorMicron = 13;

    /// <summary>Greatest ratio for a wanted last size.</summary>
    public static double Ratio(double lastMicron) => lastMicron <= MirrorMicron ? MirrorRatio : SatinRatio;

    /// <summary>Which of the sizes, coarse to fine, from the first to the last, as indices.</summary>
    /// <param name="micron">Sizes owned, µm, descending; the first is where the ladder starts and the last where it ends.</param>
    /// <param name="most">Greatest ratio of a size to the next.</param>
    public static ImmutableArray<int> Of(ImmutableArray<double> micron, double most)
    {
        // the furthest that the ratio allows is never worse than a nearer one
        var (steps, at) = (ImmutableArray.CreateBuilder<int>(), 0);
        if (micron.IsEmpty) return [];
        steps.Add(0);
        while (at < micron.Length - 1)
        {
            var next = at + 1;
            while (next + 1 < micron.Length && micron[at] / micron[next + 1] <= most + 1e-9) next++;
            steps.Add(at = next);
        }

        return steps.ToImmutable();
    }
}
