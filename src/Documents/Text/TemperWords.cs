using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>How tempering and hardness are worded, the same on sheets, command line and desk.</summary>
public static class TemperWords
{
    /// <summary>"2 × 2 h".</summary>
    public static string Cycle(TemperPlan t) => $"{t.Cycle.Count} × {Shown.Trimmed(t.Cycle.HoldHours, 1)} h";

    /// <summary>"58 to 60 HRC".</summary>
    public static string Band(HardnessBand b) => $"{Shown.Trimmed(b.LowHrc, 1)} to {Shown.Trimmed(b.HighHrc, 1)} HRC";

    /// <summary>"58 HRC (56 to 60)"; a tenth only where it is known to better than 1.</summary>
    public static string Estimate(Estimate<double> e)
    {
        var tenth = 0.5 * (e.High - e.Low) < 1 ? 1 : 0;
        return $"{Shown.Number(e.Value, tenth)} HRC ({Shown.Number(e.Low, tenth)} to {Shown.Number(e.High, tenth)})";
    }

    /// <summary>"80CrV2 for 58 to 60 HRC: 2 × 2 h".</summary>
    public static string Head(TemperPlan t) => t.Steel.Name + (t.Wanted is { } w ? $" for {Band(w)}" : "") + ": " + Cycle(t);

    /// <summary>What the oven is set to: "219 °C (426 °F)"; empty when there is none.</summary>
    public static string Set(TemperPlan t) => t.Set is { } set ? Shown.Both(set) : "";

    /// <summary>Why the oven is set to that.</summary>
    public static string SetWhy(TemperPlan t)
    {
        if (t.SteelAt is not { } steel) return "";
        var off = t.Oven.ReadsHighByC is { } c && Math.Abs(c) >= 0.05 ? $"; {t.OvenName} reads {Difference(Math.Abs(c))} {(c > 0 ? "high" : "low")}" : "";
        var swing = t.Planned is null && t.SetPoint?.OverSwing is { } o && t.Oven.SwingC > 0 ? $"; while it swings by ±{Difference(t.Oven.SwingC)}: {Shown.Number(o.LowHrc, 0)} to {Shown.Number(o.HighHrc, 0)} HRC" : "";
        return $"The steel at {Shown.Both(steel)}{(t.Planned is null ? "" : ", as the plan says")}{off}{swing}. {(t.OvenRemark.Length > 0 ? Sentence(t.OvenRemark) : "")}".TrimEnd();
    }

    /// <summary>Where the hardness is from.</summary>
    public static string From(TemperPlan t)
    {
        var from = t.Route switch
        {
            TemperRoute.Table => $"by the printed table of the grade ({string.Join(", ", t.Steel.Heat.TemperTable.Select(p => p.SourceKey).Where(k => k != SourceTag.FromMemory).Distinct())}{(t.Steel.Heat.TemperTable.Count(p => p.SourceKey == SourceTag.FromMemory) is > 0 and var n ? $"; {n} of its {t.Steel.Heat.TemperTable.Length} rows from memory" : "")})",
            TemperRoute.Regression => "by a fit over published readings of 31 carbon and low-alloy steels (Grange and Baughman 1956, Hollomon and Jaffe 1945)",
            _ => Tempered.NoData,
        };
        var remark = t.SetPoint?.Remark is { Length: > 0 } r && t.Route != TemperRoute.None ? "; " + r : "";
        var quenched = t.AsQuenched is { } q && t.Route != TemperRoute.None ? $"; out of the quench {Estimate(q)}" : "";
        return Sentence(from + remark + quenched);
    }

    /// <summary>What is the trouble, and what to aim for instead; empty when the hardness can be had.</summary>
    public static string Trouble(TemperPlan t)
    {
        if (t.SetPoint is not { } s || t.Wanted is not { } wanted) return "";
        if (t.Planned is not null && s.Steel is { } at) return t.PlannedGives is { } g && g.Value >= wanted.LowHrc && g.Value <= wanted.HighHrc ? "" : $"The temper of the plan is not the one computed for {Band(wanted)}: that would be {Shown.Both(at)} in the steel.";
        var aims = string.Join(", or ", s.Instead.Select((i, k) => $"{(k == 0 ? "Aim for " : "")}{Band(i.Band)}: steel near {Shown.Both(i.At)}{(t.Oven.ReadsHighByC is { } high && Math.Abs(high) >= 0.05 ? $", {t.OvenName} set to {Shown.Both(Temperature.OfCelsius(i.At.Celsius + high))}" : "")}{(IsKitchen(t) && i.At.Celsius > KitchenMostC ? ", hotter than a kitchen oven goes: in the hardening oven" : "")}"));
        return s.Verdict switch
        {
            TemperVerdict.Avoided when s.Avoided is { } a => $"{Band(wanted)} would need a temper between {Shown.Both(a.From)} and {Shown.Both(a.To)}: {a.Why}. {aims}.",
            TemperVerdict.TooHard => $"{Band(wanted)} is harder than {(t.Curve.IsEmpty ? "it comes out of the quench: another steel, or a lower hardness" : "the coldest temper leaves")}. {aims}{(aims.Length > 0 ? "." : "")}".TrimEnd(),
            TemperVerdict.TooSoft => $"How it gets as soft as {Band(wanted)} is not known. {aims}{(aims.Length > 0 ? "." : "")}",
            TemperVerdict.NoData => Sentence(s.Remark),
            TemperVerdict.Moved when s.Avoided is { } a => $"Kept at an end of {Band(wanted)}, out of {Shown.Both(a.From)} to {Shown.Both(a.To)}.",
            _ => "",
        };
    }

    /// <summary>What the temper must not do.</summary>
    public static ImmutableArray<string> Limits(TemperPlan t) =>
    [
        .. t.Steel.Heat.Avoided.Select(a => $"No temper from {Shown.Both(a.From)} to {Shown.Both(a.To)}: {a.Why}."),
        t.StraightenAtMost is { } most ? $"Never above {Shown.Both(most)} in the steel while straightening: 10 °C (18 °F) under the last temper, or it goes soft." : "Straighten at least 10 °C (18 °F) under the last temper.",
        "The clock starts when the steel is at heat: by a thermocouple on the piece, or a quarter of an hour more for each 6 mm (1/4 in) (common practice). Colours of the skin are no thermometer.",
    ];

    /// <summary>What the log has taught; says so when there is none.</summary>
    public static string Learned(TemperPlan t) => t.Log.Bias is { Readings: > 0 } b
        ? $"Before any reading: 0 ± {Shown.Number(HardnessBias.PriorSdHrc, 1)} HRC off. {b.Readings} {(b.Readings == 1 ? "reading" : "readings")} of {t.Steel.Name}{(t.OvenName.Length > 0 ? " in " + t.OvenName : "")}: it comes out {Shown.Number(Math.Abs(b.MeanHrc), 1)} HRC {(b.MeanHrc >= 0 ? "harder" : "softer")} than computed, ± {Shown.Number(b.SdHrc, 1)}; the set-point counts it."
        : t.Curve.IsEmpty ? $"No reading of {t.Steel.Name} that could be held against a computed hardness: none is published by temper. Readings go into hardness.csv beside the shop file."
        : $"No reading of {t.Steel.Name}{(t.OvenName.Length > 0 ? " in " + t.OvenName : "")} yet: a steel and oven not yet tried may lie ± {Shown.Number(HardnessBias.PriorSdHrc, 1)} HRC off; four readings bring that to ± 0.5. They go into hardness.csv beside the shop file.";

    /// <summary>A flagged reading, then what may be behind it, the likeliest first, then what to do.</summary>
    public static ImmutableArray<string> Flagged(JudgedReading j) =>
    [
        $"{(j.Entry.Batch.Length > 0 ? j.Entry.Batch + ", " : "")}piece {j.Entry.Piece}{(j.Entry.Load.Length > 0 ? $", load {j.Entry.Load}" : "")}: {Shown.Number(j.Hrc, 1)} HRC {(j.IsFarFromRest ? "is far from the rest of its batch" : "is outside the band")}. Look at, in this order:",
        .. j.Causes.Select((c, i) => $"{i + 1}. {c}"),
        Sentence("then " + j.Do),
    ];

    /// <summary>"14 °C (25 °F)", a difference.</summary>
    public static string Difference(double celsius) => $"{Shown.Number(celsius, 0)} °C ({Shown.Number(1.8 * celsius, 0)} °F)";

    // kitchen ovens end about there, common practice
    private const double KitchenMostC = 260;

    private static bool IsKitchen(TemperPlan t) => t.OvenName.Contains("kitchen", StringComparison.OrdinalIgnoreCase) || t.OvenName.Contains("toaster", StringComparison.OrdinalIgnoreCase);

    private static string Sentence(string s) => s.Length == 0 ? "" : char.ToUpperInvariant(s[0]) + s[1..] + (s.EndsWith('.') ? "" : ".");
}
