using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Cuts in an order that the saw can make, with the least sawing.</summary>
/// <param name="Cuts">In order; empty when no order can be made.</param>
/// <param name="SawnMm">Length sawn in all, mm.</param>
/// <param name="Offending">When no order can be made: the cut most often refused.</param>
/// <param name="Why">Why it was refused.</param>
public sealed record OrderedCuts(ImmutableArray<SupportCut> Cuts, double SawnMm, SupportCut? Offending, string Why);

/// <summary>The order of cuts: what comes off does not depend on it, but the length of every cut does, and so does whether the saw can make it.</summary>
[Formula("the order of straight cuts with the least sawing", "held-karp-1962", "Up to 8 cuts; exact: over all sets already cut")]
public static class CutOrder
{
    /// <summary>Most cuts.</summary>
    public const int Most = 8;

    /// <summary>The best order.</summary>
    /// <param name="blank">The blank, convex.</param>
    /// <param name="cuts">The cuts.</param>
    /// <param name="refuses">Why a cut cannot be made in a piece; null when it can, or when every cut can.</param>
    public static OrderedCuts Of(ImmutableArray<Point> blank, ImmutableArray<SupportCut> cuts, Func<ImmutableArray<Point>, SupportCut, string?>? refuses = null)
    {
        if (cuts.Length > Most) throw new ArgumentException($"more than {Most} cuts", nameof(cuts));
        var (k, all) = (cuts.Length, (1 << cuts.Length) - 1);
        var (best, last) = (new double[all + 1], new int[all + 1]);
        var (refused, why) = (new int[k], new string[k]);
        Array.Fill(best, double.PositiveInfinity);
        best[0] = 0;
        var pieces = new ImmutableArray<Point>[all + 1];
        pieces[0] = blank;
        for (var done = 0; done < all; done++)
        {
            // the piece when these are cut
            if (done > 0)
            {
                var one = System.Numerics.BitOperations.TrailingZeroCount(done);
                pieces[done] = ConvexClip.Beyond(pieces[done & (done - 1)], -cuts[one].Normal, -cuts[one].OffsetMm);
            }

            for (var i = 0; i < k; i++)
            {
                if ((done & (1 << i)) != 0) continue;
                if (refuses?.Invoke(pieces[done], cuts[i]) is { } no)
                {
                    (refused[i], why[i]) = (refused[i] + 1, no);
                    continue;
                }

                var chord = ConvexClip.Chord(pieces[done], cuts[i].Normal, cuts[i].OffsetMm) is { } c ? c.From.To(c.To) : 0;
                var (length, next) = (best[done] + chord, done | (1 << i));
                if (length < best[next] - 1e-9) (best[next], last[next]) = (length, i);
            }
        }

        if (double.IsPositiveInfinity(best[all]))
        {
            var worst = Array.IndexOf(refused, refused.Max());
            return new OrderedCuts([], 0, cuts[worst], why[worst]);
        }

        var order = new SupportCut[k];
        for (var (set, at) = (all, k - 1); at >= 0; at--)
        {
            order[at] = cuts[last[set]];
            set &= ~(1 << last[set]);
        }

        return new OrderedCuts([.. order], best[all], null, "");
    }
}
