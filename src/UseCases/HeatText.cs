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
        => [.. a.Heat.Oven.Select(HeatWords.Step), HeatWords.HeatUp(a.Heat), HeatWords.Clock, .. HeatWords.Critical(a.Heat), .. new[] { HeatWords.Loads(a.Heat), HeatWords.Skin(a.Heat), HeatWords.Left(a.Heat) }.Where(t => t.Length > 0)];

    /// <summary>Bath.</summary>
    public static ImmutableArray<string> Bath(HeatAnswer a) => HeatWords.Bath(a.Heat) is { IsEmpty: false } rows ? rows : HeatWords.Flash(a.Heat) is { Length: > 0 } flash ? [flash] : [];

    /// <summary>What else to know.</summary>
    public static ImmutableArray<string> Remarks(HeatAnswer a) => a.Heat.Remarks;

    /// <summary>Cautions.</summary>
    public static ImmutableArray<string> Cautions(HeatAnswer a) => HeatWords.Cautions(a.Heat);

    /// <summary>The temper: set-point, what comes out, what to aim for instead, what the log says.</summary>
    public static ImmutableArray<string> Temper(HeatAnswer a)
    {
        if (a.Temper is not { } t) return ["Temper: nothing is known of this steel; temper coupons and log them."];
        var lines = ImmutableArray.CreateBuilder<string>();
        var times = $"{(t.Cycle.Count == 1 ? "once" : $"{Shown.Number(t.Cycle.Count, 0)} times")} {HeatWords.Minutes(60 * t.Cycle.HoldHours)}";
        if (t.SetPoint is { } s)
        {
            if (s.Steel is { } steel && s.Set is { } set)
            {
                lines.Add($"Temper {times}: piece at {Shown.Both(steel)}, set {(t.OvenName.Length > 0 ? t.OvenName + " to " : "")}{Shown.Both(set)}; {(s.Gives is { } g ? Band(g) : "")}");
                if (s.StraightenAtMost is { } most) lines.Add($"Straightening temper: never above {Shown.Both(most)}.");
            }

            foreach (var i in s.Instead) lines.Add($"Aim for {Shown.Number(i.Band.LowHrc, 0)} to {Shown.Number(i.Band.HighHrc, 0)} HRC instead: piece at {Shown.Both(i.At)}.");
            if (s.Avoided is { } avoided) lines.Add($"Not tempered from {Shown.Both(avoided.From)} to {Shown.Both(avoided.To)}: {avoided.Why}.");
            if (s.Remark.Length > 0) lines.Add(char.ToUpperInvariant(s.Remark[0]) + s.Remark[1..] + ".");
        }

        if (a.AtWish is { } w) lines.Add(w.Gives.Hrc is { } hrc ? $"Tempered {times} at {Shown.Both(w.At)}: {Band(hrc)}" : $"Tempered at {Shown.Both(w.At)}: {w.Gives.Remark}.");
        if (t.OvenRemark.Length > 0) lines.Add(char.ToUpperInvariant(t.OvenRemark[0]) + t.OvenRemark[1..] + ".");
        if (t.Log.Bias.Readings > 0) lines.Add($"{Shown.Number(t.Log.Bias.Readings, 0)} readings of your own: it comes out {Shown.Number(Math.Abs(t.Log.Bias.MeanHrc), 1)} HRC {(t.Log.Bias.MeanHrc < 0 ? "softer" : "harder")} than predicted, ±{Shown.Number(t.Log.Bias.SdHrc, 1)}; that is counted in.");
        return lines.ToImmutable();
    }

    private static string Band(Estimate<double> e) => $"about {Shown.Number(e.Value, 0)} HRC ({Shown.Number(e.Low, 0)} to {Shown.Number(e.High, 0)}).";
}
