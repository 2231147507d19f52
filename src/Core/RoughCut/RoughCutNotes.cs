using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>What to know of rough cuts, in words.</summary>
internal static class RoughCutNotes
{
    /// <summary>The notes that apply.</summary>
    public static ImmutableArray<string> Of(Results r, RoughCutPlan p, string refused, int? wanted)
    {
        var notes = ImmutableArray.CreateBuilder<string>();
        if (r.Shop.IsAssumed || r.Shop.SawsAreAssumed) notes.Add(r.Shop.IsAssumed ? "Saw and belt are those of the assumed shop: write down your own." : "Your shop file names no saw; an assumed one stands in: write yours under [[saw]].");
        if (p.Cuts.IsEmpty) notes.Add(RoughCutPlan.NoCut);
        if (wanted > p.Cuts.Length && !p.Cuts.IsEmpty) notes.Add($"{wanted} cuts were asked for; more than {p.Cuts.Length} that keep off the piece and take waste were not found.");
        if (!p.Cuts.IsEmpty) notes.Add("For a piece sawn off as a rectangle of its own. Where the cut map lays pieces closer, or a service cuts the outline, go by the cut map and leave these cuts out.");
        notes.Add($"Every cut keeps {Shown.Both(p.Allowance)} off the line: {p.AllowanceSays}. The kerf lies outside it, in the waste.");
        if (refused.Length > 0) notes.Add($"A better cut was left out because the {p.Saw.Name} {refused}.");
        if (p.Saw.Kind == SawKind.Chop) notes.Add($"The {p.Saw.Name} cuts across the bar only and cannot stop inside the steel; long sides and hollows stay for the grinder. A band saw or a disc would take them.");
        if (p.Cuts.Any(c => c.FromBothEnds)) notes.Add($"Where it says so, saw in from both ends: the frame of the {p.Saw.Name} ends the cut at {Shown.Both(p.Saw.Throat!.Value)}.");
        if (p.Saw.Kind == SawKind.Disc && !p.Reliefs.IsEmpty)
        {
            var disc = p.Saw.DiscDiameter?.Mm ?? SawPractice.DiscMm;
            var run = DiscRunOut.Mm(0.5 * disc, DiscRunOut.ThroughMm, r.Plan.Stock.Thickness.Mm);
            notes.Add($"A disc of {Shown.Both(Length.OfMm(disc))} let {Shown.Both(Length.OfMm(DiscRunOut.ThroughMm))} through cuts {Shown.Both(Length.OfMm(run))} further on its own face than on the far one: stop when the far face reaches the hole.");
        }

        if (p.NearestHole is { Mm: < 10 } hole && r.Bench.State != DrilledIn.Profile) notes.Add($"The nearest hole's rim is {Shown.Both(hole)} from a cut.");
        notes.Add($"Times are planning values:{(p.Cuts.IsEmpty ? "" : $" sawing {Band(p.LowSawMinutes, p.HighSawMinutes)},")} grinding {Shown.Number(p.Belt.LowGramsPerMinute, 0)} to {Shown.Number(p.Belt.HighGramsPerMinute, 0)} g a minute with {p.Belt.Belt.Name} ({p.Belt.Says}). Put your own numbers in the shop file.");
        return notes.ToImmutable();
    }

    /// <summary>Which blade to mount; empty for a saw without teeth.</summary>
    public static string Blade(RoughCutPlan p, Length thickness)
    {
        if (!SawPractice.HasTeeth(p.Saw.Kind)) return "";
        var (least, low, high) = (TeethInWork.PerInch(TeethInWork.Least, thickness), TeethInWork.PerInch(TeethInWork.Ideal.Low, thickness), TeethInWork.PerInch(TeethInWork.Ideal.High, thickness));
        var text = $"Blade: at least {Shown.Number(Math.Ceiling(least - 1e-9), 0)} {(least > 1 ? "teeth" : "tooth")} per inch for {Shown.Both(thickness)} lying flat (3 teeth in the steel)";
        text += low > FinestBlade ? "." : $"; {Shown.Number(low, 0)} to {Shown.Number(high, 0)} would put 6 to 12 in it.";
        if (least > FinestBlade) return text + $" No blade is finer than {Shown.Number(FinestBlade, 0)}: clamp {Shown.Number(Math.Ceiling((least / FinestBlade) - 1e-9), 0)} blanks together, or hold the steel at a slant.";
        if (p.TeethPerInch is { } mount) return text + $" Mount {Shown.Trimmed(mount, 1)}: {Shown.Number(mount * thickness.Inches, 1)} teeth in the steel.";
        return p.Saw.TeethPerInch.IsDefaultOrEmpty ? text : text + " None of your blades fits: clamp two blanks together, or hold the steel at a slant so that more teeth are in it.";
    }

    /// <summary>Finest blade sold, teeth per inch; common practice.</summary>
    private const double FinestBlade = 32;

    private static string Band(double low, double high) => high - low < 0.05 ? $"{Shown.Number(high, 1)} min" : $"{Shown.Number(low, 1)} to {Shown.Number(high, 1)} min";
}
