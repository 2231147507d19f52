using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>How hardening is worded, the same on sheets, command line and desk.</summary>
public static class HeatWords
{
    /// <summary>What the numbers are.</summary>
    public const string Start = "These numbers are starting points: harden a coupon of the same bar first, and go by what it measures. The maker's sheets of steel, oil and oven, local fire rules and the oven's manual come first.";

    /// <summary>When the soak begins.</summary>
    public const string Clock = "The soak clock starts when the piece is at heat, not when the oven says so.";

    /// <summary>The cautions of heat treatment in short, for every card of it.</summary>
    public const string EveryCard = "Face shield, dry gloves, natural cloth; moving air and a carbon-monoxide alarm. Oil fire: whole blade under at once, lid, dry powder or CO2, never water, bath 28 °C (50 °F) under its flash point. Temper within the hour; no oil residue in the temper oven, and never an oven for food. Cold baths burn the skin and take the air; straightening can snap a blade; plates stay hot, foil edges cut. Local fire code and the makers' sheets of oil, steel and oven come first. Numbers are starting points: a coupon first.";

    /// <summary>What a temper oven is not.</summary>
    public const string TemperOvenCaution = "Wipe off every trace of quench oil before the temper: it smokes and can take fire. An oven used for steel is never one for food, before or after.";

    /// <summary>Cautions of the hot oven and the quench.</summary>
    /// <param name="p">The plan.</param>
    public static ImmutableArray<string> Cautions(HeatPlan p)
    {
        var kind = p.Hardens?.Medium.Kind;
        string[] all =
        [
            "Hot work: face shield and dry leather gloves, cotton or wool clothes, closed shoes, tongs that fit, a clear way from oven to quench. Steel burns long after it has stopped glowing.",
            "Forge, torch and oven give carbon monoxide and fumes of coatings and oil: work with moving air, a carbon-monoxide alarm in the room, nobody alone.",
            kind == QuenchKind.Oil || (kind is null && HeatPlan.QuenchantOf(p.Subject) is not null) ? "Quench oil can catch fire: a steel tank with a lid that shuts, two thirds full, nothing that burns beside it; the whole blade under at once and not drawn out half way; dry powder or CO2 to hand, never water, no drop of water in the oil; bath at least 28 °C (50 °F) under its flash point." : "",
            kind == QuenchKind.Water ? "Water and brine spit and crack steel: a crack can let go with a bang. Face shield on until it is tempered." : "",
            kind == QuenchKind.Plates ? "Plates get hot, foil edges cut like a blade: gloves; hot foil is not opened in the hand." : "",
            "Temper at once, within the hour, as soon as the piece is hand-warm (65 °C, 150 °F): it is brittle as glass before. Never leave it overnight.",
            TemperOvenCaution,
            "Straightening can snap a blade without a sign: face shield, gloves, nobody in line with it.",
            p.Subject.Wish.SubZero is not null ? "Dry ice and liquid nitrogen burn the skin and take the air in a closed room: insulated gloves, face shield, doors open, never in a shut container." : "",
        ];
        return [.. all.Where(c => c.Length > 0), .. p.Hardens?.Medium.Cautions ?? []];
    }

    /// <summary>"8670, 6.35 mm (0.250 in): hardens through in fast oil".</summary>
    public static string Head(HeatPlan p)
        => $"{p.Subject.Steel.Name}, {Shown.Both(p.Subject.Stock)}: {(p.Hardens is { } h ? $"{h.Verdict.Words()} in {h.Medium.Name}" : NoQuenchant(p))}";

    /// <summary>Why the verdict.</summary>
    public static string Why(HeatPlan p) => p.Hardens is { } h ? Sentence(h.Why) : "";

    /// <summary>The ideal diameter and what it is held against; empty when it does not apply.</summary>
    public static string Diameter(HeatPlan p) => p.Hardens is { Ideal: { } ideal, Needed: { } needed }
        ? $"Ideal diameter {Round(ideal)} ({A255(p)}); half through wants {Round(needed.Least)} to {Round(needed.Most)}, through and through {Shown.Number(GrossmannPlate.ThroughRatio, 1)} times that."
        : "";

    private static string Round(Length l) => $"{Shown.Number(l.Mm, 0)} mm ({Shown.Number(l.Inches, 1)} in)";

    private static string A255(HeatPlan p)
    {
        var bar = p.Subject.Steel.Chemistry!.Value;
        var biased = CarbonSteelBias.Applies(bar) ? $"{Shown.Number(CarbonSteelBias.UsualFactor, 2)} of ASTM A255, as measured on such steel: {Shown.Number(CarbonSteelBias.LowFactor, 2)} to {Shown.Number(CarbonSteelBias.HighFactor, 2)}" : "ASTM A255";
        return IdealDiameter.IsInRange(bar) ? biased : biased + "; the composition lies outside the standard's range for use without doubt";
    }

    /// <summary>What a cold bath asks; empty when the plan names none.</summary>
    public static string Cold(HeatPlan p) => p.Subject.Wish.SubZero is { } z
        ? $"Cold: as soon as it is at room temperature, within the hour, on to {Shown.Both(z)} and hold about an hour (common practice); let it warm in air, then temper at once."
        : "";

    /// <summary>A thickness and what comes of it.</summary>
    public static string Station(HardensAt a)
    {
        var soft = a.Structure is { } s ? $", {Share(s.SoftShare)} soft, {Share(s.AusteniteShare)} austenite left" : "";
        var fast = a.Run.Seconds(540) is { } t ? $"540 °C after {Shown.Number(t, t < 10 ? 1 : 0)} s" : "slow";
        return $"{a.Station.Where}, {Shown.Both(Length.OfMm(a.Station.ThicknessMm))}: {fast}{soft}; {Hardness(a.Hardness)}";
    }

    /// <summary>"64 HRC (62.5 to 65.5) out of the quench".</summary>
    public static string Hardness(Estimate<double>? e) => e is { } h ? $"{Shown.Number(h.Value, 0)} HRC ({Shown.Number(h.Low, 0)} to {Shown.Number(h.High, 0)}) out of the quench" : "hardness out of the quench not known: a coupon says";

    /// <summary>Critical points with their spread.</summary>
    public static ImmutableArray<string> Critical(HeatPlan p)
    {
        var c = p.Critical;
        if (c.Lower is not { } lower) return ["Critical points: the formulas of low-alloy steel do not hold for this grade; its maker's sheet gives the window."];
        string Range(Temperature a, Temperature b) => a.Celsius + 1 >= b.Celsius ? Shown.Both(a) : $"{Shown.Number(a.Celsius, 0)} to {Shown.Number(b.Celsius, 0)} °C ({Shown.Number(a.Fahrenheit, 0)} to {Shown.Number(b.Fahrenheit, 0)} °F)";
        string[] all =
        [
            $"Hardening begins to be possible at {Range(lower.Low, lower.High)}{(c.Upper is { } up ? $", all of it by {Shown.Both(up)}" : "")}: {Shown.Number(c.Opinions.Length, 0)} {(c.Opinions.Length == 1 ? "source" : "sources")}, ±15 °C each.",
            c.FullSolution is { } acm ? $"Over the eutectoid: all carbon goes into solution from {Shown.Both(acm)} on, at rest; in a short soak part of it stays in carbides, which wear well." : "",
            c.MartensiteBegins is { } ms ? $"Martensite begins at {Shown.Both(ms)}: above that a warped blade still bends by hand, below it stiffens, and cold it snaps." : "",
        ];
        return [.. all.Where(t => t.Length > 0)];
    }

    /// <summary>Coming to heat.</summary>
    public static string HeatUp(HeatPlan p)
    {
        var (alone, racked) = (p.HeatUp.AloneMinutes, p.HeatUp.RackedMinutes);
        var rack = racked > alone * 1.02 ? $", up to {Minutes(racked)} between neighbours on the rack" : "";
        return $"Coming to heat in a hot oven: about {Minutes(alone)} alone{rack} ({(p.HeatUp.EmissivityRatio < 0.5 ? "in foil" : "bare, scaled steel")}); then the soak of {Range(p.SoakMinutes)}.";
    }

    /// <summary>A step of the oven.</summary>
    public static string Step(OvenStep s) => $"{char.ToUpperInvariant(s.What[0]) + s.What[1..]}: piece at {Shown.Both(s.Piece)}, set {Shown.Both(s.Set)}, hold {Range(s.HoldMinutes)}, {s.Then}";

    /// <summary>"5 to 10 min".</summary>
    public static string Range((double LowMinutes, double HighMinutes) m) => Math.Abs(m.LowMinutes - m.HighMinutes) < 0.01 ? Minutes(m.LowMinutes) : m.HighMinutes >= 120 ? $"{Minutes(m.LowMinutes)} to {Minutes(m.HighMinutes)}" : $"{Shown.Number(m.LowMinutes, 0)} to {Minutes(m.HighMinutes)}";

    /// <summary>"8.6 min", "2 h".</summary>
    public static string Minutes(double m) => m >= 120 ? $"{Shown.Trimmed(m / 60, 1)} h" : $"{Shown.Number(m, m < 10 ? 1 : 0)} min";

    /// <summary>The skin.</summary>
    public static string Skin(HeatPlan p) => $"Skin: up to {Shown.Both(p.FaceLoss)} of each {(HeatPlan.IsGuarded(p.Subject) ? "guarded" : "bare")} face is scale and steel that lost carbon; it must come off after.{(p.Subject.Steel.Chemistry!.Value.IsLowAlloy ? "" : " The law is for carbon steel: stainless and air-hardening steel lose less.")}{(HeatPlan.IsGuarded(p.Subject) ? "" : " Foil, a coating or a box without air leave about a quarter of it.")}";

    /// <summary>The bath while pieces go through it; empty when it does not apply.</summary>
    public static ImmutableArray<string> Bath(HeatPlan p)
    {
        if (p.Bath is not { } b) return [];
        var quenchant = HeatPlan.QuenchantOf(p.Subject)!;
        string[] all =
        [
            $"Each piece warms {Shown.Trimmed(quenchant.Litres!.Value, 1)} L ({Shown.Trimmed(quenchant.Litres.Value / 3.785411784, 1)} US gal) by {Shown.Number(Math.Min(b.RiseRuleC, b.RiseHeatC), 0)} to {Shown.Number(b.MostRiseC, 0)} °C ({Shown.Number(1.8 * Math.Min(b.RiseRuleC, b.RiseHeatC), 0)} to {Shown.Number(1.8 * b.MostRiseC, 0)} °F): by its heat, and by the rule of a gallon a pound.",
            b.InARow switch
            {
                0 => $"From {Shown.Both(b.At)} not one piece stays under {Shown.Both(b.Warmest)}: more oil, or let it begin cooler.",
                1 => $"From {Shown.Both(b.At)} up to {Shown.Both(b.Warmest)}: one piece, then wait until it is back.",
                _ => $"From {Shown.Both(b.At)} up to {Shown.Both(b.Warmest)}: {Shown.Number(b.InARow, 0)} in a row, then wait until it is back.",
            },
            b.InARow > 0 && b.WaitMinutes.HighMinutes > 0 ? $"Back to {Shown.Both(b.At)} by still air: some {Shown.Number(b.WaitMinutes.LowMinutes, 0)} to {Shown.Number(b.WaitMinutes.HighMinutes, 0)} min; stir and measure." : "",
            double.IsFinite(b.LoadLitres) && p.Loads.Loads.DefaultIfEmpty(1).Max() > b.InARow ? $"A whole load without a wait wants about {Shown.Number(b.LoadLitres, 0)} L ({Shown.Number(b.LoadLitres / 3.785411784, 0)} US gal)." : "",
        ];
        return [.. all.Where(t => t.Length > 0), Flash(p)];
    }

    /// <summary>Bath and flash point; empty for anything but oil.</summary>
    public static string Flash(HeatPlan p)
    {
        if (p.Hardens?.Medium.Kind != QuenchKind.Oil || HeatPlan.QuenchantOf(p.Subject) is not { } q) return "";
        return q.FlashPoint is { } f
            ? $"Flash point {Shown.Both(f)}: the bath stays under {Shown.Both(Temperature.OfCelsius(f.Celsius - HeatPlan.FlashMarginC))}."
            : "Flash point not in the shop file: look it up on the oil maker's sheet and write it there; the bath stays 28 °C (50 °F) under it.";
    }

    /// <summary>Loads.</summary>
    public static string Loads(HeatPlan p) => p.Loads switch
    {
        { Fits: false } l => $"The oven is too small: {l.Limit}.",
        { Loads.Length: 0 } => "",
        { Loads: [1] } => "One piece, one load.",
        { Loads: var n } l => $"{Shown.Number(n.Sum(), 0)} pieces in {Shown.Number(n.Length, 0)} {(n.Length == 1 ? "load" : "loads")} of {string.Join(" + ", n)}: {l.Limit}.",
    };

    /// <summary>Austenite left, and what a cold bath does; empty when not worked out.</summary>
    public static string Left(HeatPlan p)
    {
        if (p.AusteniteLeft is not { } a) return "";
        var cold = a.ColdShare is { } c && p.Subject.Wish.SubZero is { } z ? $"; cooled on to {Shown.Both(z)} within the hour about {Share(c)}" : "";
        return $"Austenite left at room temperature: about {Share(a.RoomShare)}, good to a factor of 1.5{cold}. Colder than -80 °C adds little for such steel.";
    }

    /// <summary>What would harden through; empty when it does.</summary>
    public static ImmutableArray<string> Ways(HeatPlan p, HeatWays? ways)
    {
        if (ways is null || p.Hardens is not { } h) return [];
        string[] all =
        [
            ways.Media.IsEmpty ? "No oil known here hardens it through at this thickness." : $"Would harden through: {string.Join(", ", ways.Media.Select(m => m.Name))}.",
            ways.Thickest is { } t ? $"In {h.Medium.Name} this steel hardens through up to {Shown.Both(t)}." : $"In {h.Medium.Name} not even 1 mm (0.039 in) of it hardens through by both methods.",
        ];
        return [.. all];
    }

    /// <summary>"about 4 %".</summary>
    public static string Share(double share) => share < 0.0005 ? "under 0.1 %" : $"{Shown.Number(100 * share, share < 0.095 ? 1 : 0)} %";

    private static string NoQuenchant(HeatPlan p) => HeatPlan.QuenchantOf(p.Subject) is { } q ? $"{q.Name} is in no quenchant file, so it cannot be said whether it hardens" : "the shop names no quenchant, so it cannot be said whether it hardens";

    private static string Sentence(string text) => char.ToUpperInvariant(text[0]) + text[1..] + ".";
}
