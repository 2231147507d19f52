using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>What no saw of the shop can do with this stock.</summary>
public static class SawFindings
{
    /// <summary>Across the bar.</summary>
    public static IEnumerable<Finding> Across(Results r)
    {
        if (r.Plan.Stock.Width is not { } width || r.Shop.Saws.IsDefaultOrEmpty) yield break;
        ImmutableArray<Point> bar = [new(0, 0), new(r.Outline.Length.Mm + 20, 0), new(r.Outline.Length.Mm + 20, width.Mm), new(0, width.Mm)];
        var square = new SupportCut(0, r.Outline.Length.Mm + 10, true);
        var refused = r.Shop.Saws.Select(s => (Saw: s, Why: new SawLimits(s, []).Refuses(bar, square))).ToArray();
        if (refused.Any(s => s.Why is null)) yield break;
        yield return ShopFinding.Of(r.Shop, new Finding(
            FindingCodes.SawCannotCross,
            Severity.Warning,
            "stock",
            null,
            $"No saw of the shop cuts across a bar {Shown.Both(width)} wide: the {refused[0].Saw.Name} {refused[0].Why}.",
            Shown.Both(width),
            refused[0].Saw.LongestCut is { } longest ? Shown.Both(longest) : refused[0].Saw.Throat is { } throat ? Shown.Both(throat) : "square across",
            "saws of the shop file",
            "have the bar cut where you buy it, take a narrower bar, or write what your saw really cuts"));
    }

    /// <summary>Teeth in the steel.</summary>
    public static IEnumerable<Finding> Teeth(Results r)
    {
        var t = r.Plan.Stock.Thickness;
        foreach (var saw in r.Shop.Saws.Where(s => SawPractice.HasTeeth(s.Kind) && !s.TeethPerInch.IsDefaultOrEmpty))
        {
            if (TeethInWork.Of(saw.TeethPerInch, t) is not null) continue;
            var coarse = saw.TeethPerInch[^1] * t.Inches < TeethInWork.Least;
            var best = coarse ? saw.TeethPerInch[^1] : saw.TeethPerInch[0];
            yield return ShopFinding.Of(r.Shop, new Finding(
                FindingCodes.SawTeeth,
                Severity.Warning,
                $"saw {saw.Name}",
                null,
                coarse
                    ? $"No blade of the {saw.Name} has 3 teeth in {Shown.Both(t)} of steel: the teeth straddle it and strip."
                    : $"No blade of the {saw.Name} has 3 to 24 teeth in {Shown.Both(t)} of steel: more clog, fewer strip.",
                $"{Shown.Trimmed(best, 1)} teeth per inch, {Shown.Number(best * t.Inches, 1)} in the steel",
                "3 to 24 teeth in the steel",
                SourceTag.CommonPractice,
                coarse
                    ? $"a blade of at least {Shown.Number(Math.Ceiling(TeethInWork.PerInch(TeethInWork.Least, t) - 1e-9), 0)} teeth per inch, or clamp {Shown.Number(Math.Ceiling((TeethInWork.Least / (best * t.Inches)) - 1e-9), 0)} blanks together"
                    : $"a blade of at most {Shown.Number(Math.Floor(TeethInWork.PerInch(TeethInWork.Most, t) + 1e-9), 0)} teeth per inch"));
        }
    }
}
