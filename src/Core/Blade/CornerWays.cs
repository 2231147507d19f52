using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Ways out of a sharp inside corner: an arc the smallest wheel makes, or the least one by file, where it fits.</summary>
internal static class CornerWays
{
    /// <summary>The ways for the corner at a place; none where no arc fits.</summary>
    public static ImmutableArray<RemedyWay> Of(Results r, Point place, Wheel? wheel)
    {
        var all = r.Plan.Outline.Segments;
        var (n, least) = (all.Length, Length.OfMm(InsideRadiusFindings.LeastBeforeHardeningMm));
        var after = Enumerable.Range(0, n).Where(i => all[i].Start.To(place) < 1e-6).Select(i => (int?)i).FirstOrDefault();
        if (after is not { } at) return [];
        var byWheel = wheel is null ? Length.Zero : wheel.Diameter / 2;
        return
        [
            .. byWheel >= least ? Round(byWheel, ", which " + wheel!.Name + " makes") : [],
            .. Round(least, byWheel > least ? ", by file" : ""),
        ];

        ImmutableArray<RemedyWay> Round(Length radius, string how)
            => RoundedCorner.Of(all[(at + n - 1) % n], all[at], radius.Mm) is null ? [] : [new RemedyWay($"round the corner with {Shown.Both(radius)}{how}", [new CornerRounded(place, radius)])];
    }
}
