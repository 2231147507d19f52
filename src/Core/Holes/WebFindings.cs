using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Is there steel enough between a hole and the outline, and between two holes?</summary>
public static class WebFindings
{
    private const string ForWarning = "the stock thickness";

    /// <summary>Hole to outline; holes that break through are another finding.</summary>
    public static IEnumerable<Finding> ToOutline(Results r, ImmutableArray<HoleClearance> clearances)
    {
        var t = r.Plan.Stock.Thickness;
        var remedy = new WebRemedy(r);
        foreach (var c in clearances)
        {
            if (c.WebMm < 0 || WebLimits.Judge(c.WebMm, t) is not { } severity) continue;
            var missing = WebLimits.WarnMm(t) - c.WebMm;
            var smaller = WebRemedy.Smaller(c.Hole, missing);
            var moved = remedy.Moved(c.Hole, c.Foot, missing);
            yield return new Finding(
                FindingCodes.WebToOutline,
                severity,
                $"hole {c.Hole.Name}",
                c.Hole.At.Toward(c.Foot, (c.CentreMm - (0.5 * c.WebMm)) / c.CentreMm),
                $"Only {Shown.Both(Length.OfMm(c.WebMm))} of steel between hole {c.Hole.Name} and the outline.",
                Shown.Both(Length.OfMm(c.WebMm)),
                LimitOf(severity, t),
                SourceTag.CommonPractice,
                remedy.InWords(smaller, moved, c.Hole.Name))
            {
                Ways = c.Hole.Row is null ? [.. Smaller(r, smaller), .. HoleWays.Moved(moved)] : RowWays.SmallerToOutline(r, c.Hole, Size(r, smaller), WebLimits.WarnMm(t)),
            };
        }
    }

    /// <summary>Hole to hole; holes that run into one another are another finding.</summary>
    public static IEnumerable<Finding> ToHole(Results r)
    {
        var t = r.Plan.Stock.Thickness;
        var remedy = new WebRemedy(r);
        foreach (var (a, b, web) in HolePairs.CloserThan(r.Holes, WebLimits.WarnMm(t)))
        {
            if (web < 0 || WebLimits.Judge(web, t) is not { } severity) continue;
            var missing = WebLimits.WarnMm(t) - web;
            var (large, small) = a.Diameter >= b.Diameter ? (a, b) : (b, a);
            var smaller = WebRemedy.Smaller(large, missing);
            var moved = remedy.Moved(small, large.At, missing) ?? remedy.Moved(large, small.At, missing);
            yield return new Finding(
                FindingCodes.WebToHole,
                severity,
                $"holes {a.Name} and {b.Name}",
                a.At.Toward(b.At, ((0.5 * a.Diameter.Mm) + (0.5 * web)) / a.At.To(b.At)),
                $"Only {Shown.Both(Length.OfMm(web))} of steel between holes {a.Name} and {b.Name}.",
                Shown.Both(Length.OfMm(web)),
                LimitOf(severity, t),
                SourceTag.CommonPractice,
                remedy.InWords(smaller, moved, large.Name))
            {
                Ways = a.Row is not null && a.Row == b.Row ? RowWays.Smaller(r, a, WebLimits.WarnMm(t)) : [.. Smaller(r, smaller), .. HoleWays.Moved(moved)],
            };
        }
    }

    private static ImmutableArray<RemedyWay> Smaller(Results r, WebChange? smaller)
        => smaller is null ? [] : HoleWays.Resized(r.Plan, (smaller.Hole, Size(r, smaller)));

    private static DrillSize? Size(Results r, WebChange? smaller)
        => smaller is null ? null : HoleWays.AtMost(r.Shop, r.Plan.Units, smaller.Hole, smaller.Diameter!.Value.Mm);

    private static string LimitOf(Severity severity, Length t) => severity == Severity.Warning
        ? $"{Shown.Both(Length.OfMm(WebLimits.WarnMm(t)))}, {ForWarning}"
        : $"{Shown.Both(Length.OfMm(WebLimits.ErrorMm(t)))} to be made at all, {Shown.Both(Length.OfMm(WebLimits.WarnMm(t)))} to pass";
}
