using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Documents;
using Tangwright.Foundation;

namespace Tangwright.UseCases;

/// <summary>Heat treatment in words, the same on the command line and the desk.</summary>
public static class HeatText
{
    /// <summary>What the numbers are.</summary>
    public static string Start => HeatWords.Start;

    /// <summary>When the soak begins.</summary>
    public static string Clock => HeatWords.Clock;

    /// <summary>The verdict in one line.</summary>
    public static string Head(HeatAnswer a) => HeatWords.Head(a.Heat);

    /// <summary>Why, what it was held against, and what would do.</summary>
    public static ImmutableArray<string> Why(HeatAnswer a)
        => [.. new[] { HeatWords.Why(a.Heat), HeatWords.Diameter(a.Heat) }.Concat(HeatWords.Ways(a.Heat, a.Ways)).Append(a.OtherSteels.IsEmpty ? "" : $"Steels that would, in {a.Heat.Hardens?.Medium.Name}: {string.Join(", ", a.OtherSteels)}.").Where(t => t.Length > 0)];

    /// <summary>Each thickness.</summary>
    public static ImmutableArray<string> Stations(HeatAnswer a) => [.. (a.Heat.Hardens?.At ?? []).Select(HeatWords.Station)];

    /// <summary>Oven: steps, coming to heat, critical points, loads, skin.</summary>
    public static ImmutableArray<string> Oven(HeatAnswer a)
        => [.. a.Heat.Oven.Select(HeatWords.Step), HeatWords.HeatUp(a.Heat), HeatWords.Clock, .. HeatWords.Critical(a.Heat), .. new[] { HeatWords.Loads(a.Heat), HeatWords.Skin(a.Heat), HeatWords.Left(a.Heat), HeatWords.Cold(a.Heat) }.Where(t => t.Length > 0)];

    /// <summary>Bath.</summary>
    public static ImmutableArray<string> Bath(HeatAnswer a) => HeatWords.Bath(a.Heat) is { IsEmpty: false } rows ? rows : HeatWords.Flash(a.Heat) is { Length: > 0 } flash ? [flash] : [];

    /// <summary>What else to know.</summary>
    public static ImmutableArray<string> Remarks(HeatAnswer a) => a.Heat.Remarks;

    /// <summary>Cautions.</summary>
    public static ImmutableArray<string> Cautions(HeatAnswer a) => HeatWords.Cautions(a.Heat);

    /// <summary>The temper: what to set, what comes out, what to aim for instead, limits, what the log says.</summary>
    public static ImmutableArray<string> Temper(HeatAnswer a)
    {
        if (a.Heat.IsSoft) return ["It does not harden in this quench, so there is nothing to temper."];
        if (a.Temper is not { } t) return ["Nothing is known of the temper of this steel: temper coupons and log them."];
        string[] all =
        [
            t.SetPoint is { Set: not null, Gives: { } gives } ? $"{TemperWords.Cycle(t)}: set {(t.OvenName.Length > 0 ? t.OvenName + " to " : "")}{TemperWords.Set(t)}; comes out at {TemperWords.Estimate(gives)}." : "",
            TemperWords.SetWhy(t),
            TemperWords.Trouble(t),
            a.AtWish is { } w ? w.Gives.Hrc is { } hrc ? $"{TemperWords.Cycle(t)} with the steel at {Shown.Both(w.At)}: {TemperWords.Estimate(hrc with { Value = hrc.Value + t.Log.Bias.MeanHrc, Low = hrc.Low + t.Log.Bias.MeanHrc, High = hrc.High + t.Log.Bias.MeanHrc })}." : $"With the steel at {Shown.Both(w.At)}: {w.Gives.Remark}." : "",
            t.SetPoint is null && a.AtWish is null ? "No hardness is wanted yet: write it under [target] in the plan, or ask for one." : "",
            TemperWords.From(t),
        ];
        return [.. all.Where(l => l.Length > 0).Distinct(), .. TemperWords.Limits(t), TemperWords.Learned(t)];
    }

    /// <summary>Readings of the log that are out of line, with what may be behind them.</summary>
    public static ImmutableArray<string> Flagged(HeatAnswer a) => a.Temper is { } t ? [.. t.Log.Readings.Where(r => r.IsFlagged).Select(r => string.Join(" ", TemperWords.Flagged(r)))] : [];
}
