using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Can the hardness wanted be had, and where the steel is still tough?</summary>
public static class TemperFindings
{
    /// <summary>Hardness wanted in the trough, or out of reach.</summary>
    public static IEnumerable<Finding> Of(Results r)
    {
        if (TemperPlan.Of(r) is not { } t) yield break;
        foreach (var f in Planned(t)) yield return f;
        if (t is not { Wanted: { } wanted, SetPoint: { } set }) yield break;
        var source = t.Curve.IsEmpty ? t.AsQuenched?.SourceKey ?? SourceTag.FromMemory : t.Route == TemperRoute.Table ? string.Join(", ", t.Steel.Heat.TemperTable.Select(p => p.SourceKey).Distinct()) : "temper-regression";
        if (set.Verdict == TemperVerdict.Avoided && set.Avoided is { } avoided)
        {
            yield return new Finding(
                FindingCodes.HeatTrough,
                Severity.Warning,
                "hardness",
                null,
                $"{Band(wanted)} in {t.Steel.Name} needs a temper between {Shown.Both(avoided.From)} and {Shown.Both(avoided.To)}: {avoided.Why}.",
                Band(wanted),
                $"no temper from {Shown.Both(avoided.From)} to {Shown.Both(avoided.To)}",
                avoided.SourceKey,
                Aims(set))
            {
                Ways = Ways(set),
            };
        }
        else if (set.Verdict is TemperVerdict.TooHard or TemperVerdict.TooSoft)
        {
            var edge = t.Curve.IsEmpty ? (TemperCurvePoint?)null : set.Verdict == TemperVerdict.TooHard ? t.Curve.MaxBy(p => p.Hrc.Value) : t.Curve.MinBy(p => p.Hrc.Value);
            var reach = edge is { } e ? $"{Shown.Number(e.Hrc.Value + t.Log.Bias.MeanHrc, 1)} HRC after {t.Cycle.Count} × {Shown.Trimmed(t.Cycle.HoldHours, 1)} h at {Shown.Both(e.At)}" : $"{Shown.Number(t.AsQuenched?.High ?? 0, 1)} HRC out of the quench, and less after any temper";
            yield return new Finding(
                FindingCodes.HardnessOutOfReach,
                Severity.Warning,
                "hardness",
                null,
                set.Verdict == TemperVerdict.TooHard ? $"{t.Steel.Name} does not keep {Band(wanted)} {(edge is null ? "after any temper: it comes softer out of the quench" : "even after the coldest temper")}." : $"How {t.Steel.Name} gets as soft as {Band(wanted)} is not known.",
                Band(wanted),
                (set.Verdict == TemperVerdict.TooHard ? "at most " : "as far as is known down to ") + reach,
                source,
                Aims(set) is { Length: > 0 } aims ? aims : "another steel, or another hardness")
            {
                Ways = Ways(set),
            };
        }
    }

    /// <summary>The temper the plan names: in the trough, or clearly not for the hardness wanted.</summary>
    private static IEnumerable<Finding> Planned(TemperPlan t)
    {
        if (t.Planned is not { } planned) yield break;
        var solved = t.SetPoint?.Steel is { } at ? new[] { new RemedyWay($"temper at {Shown.Both(at)}", [new WordSet("heat", "temper", $"{Shown.Number(at.Celsius, 0)} C")]) } : [];
        if (t.Steel.Heat.Avoided.FirstOrDefault(a => planned.Celsius + t.Oven.SwingC > a.From.Celsius && planned.Celsius - t.Oven.SwingC < a.To.Celsius) is { } avoided)
        {
            var below = Temperature.OfCelsius(Math.Floor(avoided.From.Celsius - t.Oven.SwingC));
            yield return new Finding(
                FindingCodes.HeatTrough,
                Severity.Warning,
                "temper",
                null,
                $"The temper, with the swing of the oven, comes between {Shown.Both(avoided.From)} and {Shown.Both(avoided.To)}: {avoided.Why}.",
                Shown.Both(planned),
                $"no temper from {Shown.Both(avoided.From)} to {Shown.Both(avoided.To)}",
                avoided.SourceKey,
                $"temper at {Shown.Both(t.SetPoint?.Steel ?? below)}")
            {
                Ways = solved.Length > 0 ? [.. solved] : [new RemedyWay($"temper at {Shown.Both(below)}", [new WordSet("heat", "temper", $"{Shown.Number(below.Celsius, 0)} C")])],
            };
        }

        if (t is { Wanted: { } wanted, PlannedGives: { } gives } && (gives.Low > wanted.HighHrc || gives.High < wanted.LowHrc))
        {
            yield return new Finding(
                FindingCodes.TemperMisses,
                Severity.Warning,
                "temper",
                null,
                $"{t.Cycle.Count} × {Shown.Trimmed(t.Cycle.HoldHours, 1)} h at {Shown.Both(planned)} leave {t.Steel.Name} {(gives.Low > wanted.HighHrc ? "harder" : "softer")} than wanted.",
                $"{Shown.Number(gives.Low, 1)} to {Shown.Number(gives.High, 1)} HRC",
                Band(wanted),
                gives.SourceKey,
                solved.Length > 0 ? solved[0].Says : "another hardness, or go by test pieces")
            {
                Ways = [.. solved],
            };
        }
    }

    private static string Aims(TemperSetPoint set) => string.Join(", or ", set.Instead.Select((i, k) => $"{(k == 0 ? "aim for " : "")}{Band(i.Band)}, tempered near {Shown.Both(i.At)}"));

    private static ImmutableArray<RemedyWay> Ways(TemperSetPoint set) => [.. set.Instead.Select(i => new RemedyWay($"want {Band(i.Band)}", [new WordSet("target", "hardness", Band(i.Band))]))];

    private static string Band(HardnessBand b) => $"{Shown.Trimmed(b.LowHrc, 1)} to {Shown.Trimmed(b.HighHrc, 1)} HRC";
}
