using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Will it harden, and can the shop do it?</summary>
public static class HeatFindings
{
    private static readonly Lock Gate = new();
    private static (Steel Steel, double ThicknessMm, QuenchMedium Medium, Temperature At, Temperature Bath) _lastAsked;
    private static (Hardens Hardens, HeatWays? Ways)? _last;

    /// <summary>Does the thickest place harden?</summary>
    public static IEnumerable<Finding> Verdict(Results r)
    {
        if (Asked(r) is not { } s || HeatPlan.QuenchantOf(s) is not { } quenchant) yield break;
        var own = r.Plan.Heat?.Quenchant is null;
        if (quenchant.Medium is not { } medium)
        {
            yield return Told(new Finding(FindingCodes.QuenchantUnknown, Severity.Note, "quenchant", null, $"{quenchant.Name} is in no quenchant file: it cannot be said whether the steel hardens.", quenchant.Name, "a quenchant with a file", "the quenchants that come with the program and the shop's own", $"name it as its file does: {string.Join(", ", s.Shop.KnownMedia.Select(m => m.Name))}; or write a file for it"), own ? r.Shop : null);
            yield break;
        }

        var at = s.Wish.Harden ?? s.Steel.Heat.Hardening!.Middle;
        if (OfThickest(s, medium, at, HeatPlan.BathAt(quenchant)) is not (var h, { } ways)) yield break;
        var isLost = h.Verdict == HardensVerdict.WillNot;
        var thinner = ways.Thickest is { } t ? $"stock of {Shown.Both(t)} or less" : "";
        string[] words = [ways.Media is [var first, ..] ? $"quench in {first.Name}" : "", thinner, "a steel that hardens deeper"];
        yield return Told(new Finding(
            isLost ? FindingCodes.WillNotHarden : FindingCodes.HardensMarginally,
            isLost ? Severity.Error : Severity.Warning,
            "hardening",
            null,
            $"{s.Steel.Name} at {Shown.Both(r.Plan.Stock.Thickness)} {(isLost ? "does not harden in" : "hardens only in part, or not for sure, in")} {medium.Name}: {h.Why}.",
            h.At[^1].Structure is { } c ? $"{Shown.Number(100 * c.SoftShare, 1)} % soft in the middle" : h.Verdict.Words(),
            $"at most {Shown.Number(100 * Hardens.ThroughShare, 0)} % soft by its cooling, and the ideal diameter its thickness asks for",
            "li-1998, astm-a255",
            string.Join(", or ", words.Where(w => w.Length > 0)))
        {
            Ways = [.. ways.Media.Take(2).Select(m => new RemedyWay($"quench in {m.Name}", [new WordSet("heat", "quenchant", m.Name)]))],
        }, own ? r.Shop : null);
    }

    /// <summary>Bath: is there enough of it, and is it far from its flash point?</summary>
    public static IEnumerable<Finding> Bath(Results r)
    {
        if (Asked(r) is not { } s || HeatPlan.QuenchantOf(s) is not { Medium: { Kind: QuenchKind.Oil } medium } q) yield break;
        var (begin, warmest) = (HeatPlan.BathAt(q), q.Warmest ?? medium.Bath?.Value.To);
        if (q.FlashPoint is { } flash && Math.Max(begin.Celsius, warmest?.Celsius ?? 0) > flash.Celsius - HeatPlan.FlashMarginC)
        {
            var most = Temperature.OfCelsius(flash.Celsius - HeatPlan.FlashMarginC);
            yield return Told(new Finding(FindingCodes.NearFlashPoint, Severity.Error, "quenchant", null, $"The bath is let come nearer than {HeatPlan.FlashMarginC:0} °C to its flash point: it can catch fire.", Shown.Both(Temperature.OfCelsius(Math.Max(begin.Celsius, warmest?.Celsius ?? 0))), $"at most {Shown.Both(most)}", "fire-code-86", $"use it no warmer than {Shown.Both(most)}, or an oil with a higher flash point"), r.Shop);
        }

        if (q.Litres is not { } litres || s.Weight is not { } weight || warmest is not { } top) yield break;
        var at = s.Wish.Harden ?? s.Steel.Heat.Hardening!.Middle;
        var rise = Math.Max(OilBath.RuleRiseC(weight.Grams, litres), OilBath.HeatRiseC(weight.Grams, at.Celsius, Hardens.OutCelsius, litres, isWater: false));
        var room = top.Celsius - begin.Celsius;
        if (rise <= room + 1e-9) yield break;
        var needed = room > 0.5 ? $"{Shown.Number(litres * rise / room, 0)} L ({Shown.Number(litres * rise / room / 3.785411784, 1)} US gal), or let it begin cooler" : "let it begin cooler, or let it get warmer when the flash point allows";
        yield return Told(new Finding(FindingCodes.OilTooLittle, Severity.Warning, "quenchant", null, $"One piece warms {Shown.Trimmed(litres, 1)} L of {q.Name} by {Shown.Number(rise, 0)} °C: past the warmest it is let get.", $"{Shown.Number(rise, 0)} °C ({Shown.Number(1.8 * rise, 0)} °F)", $"{Shown.Number(Math.Max(0, room), 0)} °C ({Shown.Number(1.8 * Math.Max(0, room), 0)} °F) from {Shown.Both(begin)} to {Shown.Both(top)}", "quench-volume-rule", needed), r.Shop);
    }

    /// <summary>Oven: is there one, is it large enough, is it set inside the steel's window?</summary>
    public static IEnumerable<Finding> Oven(Results r)
    {
        if (Asked(r) is not { } s) yield break;
        var cycle = s.Steel.Heat.Hardening!;
        if (s.Shop.Oven is null && cycle.WithoutOven == WithoutOven.No)
        {
            yield return Told(new Finding(FindingCodes.WantsOven, Severity.Warning, "hardening", null, $"{s.Steel.Name} wants {HoursOf(cycle)} held at heat, which no forge or torch does, and the shop has no oven.", "no oven", "an oven that holds its heat", cycle.SourceKey, "send it out to be hardened, or take a plain carbon steel"), r.Shop);
        }

        if (s.Wish.Harden is { } at && (at.Celsius < cycle.From.Celsius - 1 || at.Celsius > cycle.To.Celsius + 1))
        {
            var isHot = at.Celsius > cycle.To.Celsius;
            yield return new Finding(FindingCodes.OutsideWindow, Severity.Warning, "hardening", null, $"{Shown.Both(at)} is {(isHot ? "above" : "below")} the window of {s.Steel.Name}: {(isHot ? "the grain grows and more stays austenite" : "too little carbon goes into solution, it comes out soft or patchy")}.", Shown.Both(at), $"{Shown.Both(cycle.From)} to {Shown.Both(cycle.To)}", cycle.SourceKey, $"harden at {Shown.Both(isHot ? cycle.To : cycle.From)}")
            {
                Ways = [new RemedyWay($"harden at {Shown.Both(isHot ? cycle.To : cycle.From)}", [new WordSet("heat", "harden", $"{Shown.Trimmed((isHot ? cycle.To : cycle.From).Celsius, 0)} C")])],
            };
        }

        if (s.Size is { } size && OvenLoads.Of(s.Shop.Oven, size.Length, size.Height, s.Stock, 1) is { Fits: false } loads)
        {
            yield return Told(new Finding(FindingCodes.OvenTooSmall, Severity.Warning, "hardening", null, $"The piece does not go into {s.Shop.Oven!.Name}: {loads.Limit}.", Shown.Both(size.Length), s.Shop.Oven.Depth is { } d ? $"{Shown.Both(d)} deep" : "the chamber", SourceTag.CommonPractice, "a larger oven, a shorter piece, or send it out"), r.Shop);
        }
    }

    private static Finding Told(Finding finding, Shop? shop) => shop is null ? finding : ShopFinding.Of(shop, finding);

    private static string HoursOf(HardeningCycle c) => $"{Shown.Number(c.SoakFromMinutes, 0)} to {Shown.Number(c.SoakToMinutes, 0)} min";

    private static HeatSubject? Asked(Results r) => HeatSubject.Of(r) is { Steel: { Heat.Hardening: not null, Chemistry: not null } } s ? s : null;

    // a drag of the outline asks the same again and again: the last answer is kept
    private static (Hardens Hardens, HeatWays? Ways) OfThickest(HeatSubject s, QuenchMedium medium, Temperature at, Temperature bath)
    {
        var station = s.Stations.MaxBy(x => x.ThicknessMm);
        var asked = (s.Steel, station.ThicknessMm, medium, at, bath);
        lock (Gate)
        {
            if (_last is { } known && _lastAsked == asked) return known;
        }

        var h = Hardens.Of(s.Steel, [station], medium, at, bath);
        var answer = (h, h.Verdict is HardensVerdict.Marginal or HardensVerdict.WillNot ? HeatWays.Of(s, at) : null);
        lock (Gate) (_lastAsked, _last) = (asked, answer);
        return answer;
    }
}
