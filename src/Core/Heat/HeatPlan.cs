using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>One step of the oven.</summary>
/// <param name="What">What it is, short.</param>
/// <param name="Piece">Temperature of the piece.</param>
/// <param name="Set">What the oven is set to, its error counted in.</param>
/// <param name="HoldMinutes">How long it is held, least and most, min.</param>
/// <param name="Then">What comes after.</param>
public sealed record OvenStep(string What, Temperature Piece, Temperature Set, (double LowMinutes, double HighMinutes) HoldMinutes, string Then);

/// <summary>The bath while pieces go through it.</summary>
/// <param name="At">Begins at.</param>
/// <param name="Warmest">Warmest it is let get.</param>
/// <param name="RiseRuleC">Rise of one piece by the rule of the trade, °C.</param>
/// <param name="RiseHeatC">Rise of one piece by its heat, °C.</param>
/// <param name="InARow">Pieces before a wait.</param>
/// <param name="LoadLitres">Bath for all pieces of a load without a wait, L.</param>
/// <param name="WaitMinutes">Wait after that, by still air, least and most, min.</param>
public sealed record BathAnswer(Temperature At, Temperature Warmest, double RiseRuleC, double RiseHeatC, int InARow, double LoadLitres, (double LowMinutes, double HighMinutes) WaitMinutes)
{
    /// <summary>The greater of both.</summary>
    public double MostRiseC => Math.Max(RiseRuleC, RiseHeatC);
}

/// <summary>How a piece comes to heat.</summary>
/// <param name="AloneMinutes">Alone in the oven, min.</param>
/// <param name="RackedMinutes">Between neighbours on the rack, min; the same when there are none.</param>
/// <param name="EmissivityRatio">Emissivity counted with.</param>
public readonly record struct HeatUp(double AloneMinutes, double RackedMinutes, double EmissivityRatio);

/// <summary>Hardening of a piece: what to set, how long, in what, and what comes of it.</summary>
/// <param name="Subject">What is hardened.</param>
/// <param name="Critical">Critical points.</param>
/// <param name="At">Hardening temperature of the piece.</param>
/// <param name="SoakMinutes">Time at heat, least and most, min.</param>
/// <param name="HeatUp">Coming to heat.</param>
/// <param name="Loads">Loads.</param>
/// <param name="Oven">Steps of the oven.</param>
/// <param name="Hardens">Whether it hardens; null without a quenchant that is known.</param>
/// <param name="Bath">The bath; null for plates and air or without its volume.</param>
/// <param name="FaceLoss">Steel lost on a face.</param>
/// <param name="AusteniteLeft">Share of austenite left at room temperature and after the cold; null when not worked out.</param>
/// <param name="Remarks">What else to know, a sentence each.</param>
public sealed record HeatPlan(
    HeatSubject Subject,
    CriticalSpread Critical,
    Temperature At,
    (double LowMinutes, double HighMinutes) SoakMinutes,
    HeatUp HeatUp,
    OvenLoads Loads,
    ImmutableArray<OvenStep> Oven,
    Hardens? Hardens,
    BathAnswer? Bath,
    Length FaceLoss,
    (double RoomShare, double? ColdShare)? AusteniteLeft,
    ImmutableArray<string> Remarks)
{
    /// <summary>Under the flash point the bath is kept by so much, °C (from memory of a fire code: 28 °C).</summary>
    public const double FlashMarginC = 28;

    /// <summary>Where stress is relieved, °C; common practice.</summary>
    public const double RelieveC = 625;

    /// <summary>Out of the quench at the edge, which is what cuts and is tempered, HRC; null when not known.</summary>
    public Estimate<double>? AsQuenchedHrc => Hardens?.At[0].Hardness;

    /// <summary>Whether it does not harden, so that there is nothing to temper.</summary>
    public bool IsSoft => Hardens?.Verdict == HardensVerdict.WillNot;

    /// <summary>The plan; null when nothing is known of the steel's hardening.</summary>
    /// <param name="s">What is hardened.</param>
    public static HeatPlan? Of(HeatSubject s)
    {
        if (s.Steel.Heat.Hardening is not { } cycle || s.Steel.Chemistry is null) return null;
        var at = s.Wish.Harden ?? cycle.Middle;
        var soak = s.Wish.SoakMinutes is { } m ? (m, m) : (cycle.SoakFromMinutes, cycle.SoakToMinutes);
        var hot = HotUp(s, at);
        var loads = OvenLoads.Of(s.Shop.Oven, s.Size?.Length ?? Length.Zero, s.Size?.Height ?? Length.Zero, s.Stock, s.Pieces);
        var hardens = Quench(s, at);
        if (s.Shop.Oven is null && hardens is not null) hardens = hardens with { At = [.. hardens.At.Select(a => a with { Hardness = a.Hardness is { } h ? h with { Low = h.Value - (2 * (h.Value - h.Low)), High = h.Value + (2 * (h.High - h.Value)) } : null })] };
        var bath = BathOf(s, at, loads);
        var isGuarded = IsGuarded(s);
        var loss = Length.OfMm(SurfaceLoss.FaceMm(at, soak.Item2, isGuarded));
        var left = InSolution.Of(s.Steel) is { } x && s.Steel.Chemistry.Value.IsLowAlloy
            ? (RetainedAustenite.Share(x, 25), s.Wish.SubZero is { } z ? RetainedAustenite.Share(x, z.Celsius) : (double?)null)
            : ((double, double?)?)null;
        return new HeatPlan(s, CriticalSpread.Of(s.Steel), at, soak, hot, loads, OvenSteps.Of(s, cycle, at, soak), hardens, bath, loss, left, HeatRemarks.Of(s, cycle, at, hardens));
    }

    /// <summary>What it is quenched in: the plan's choice, else the shop's.</summary>
    public static Quenchant? QuenchantOf(HeatSubject s) => s.Wish.Quenchant is { } named
        ? string.Equals(named.Name, s.Shop.Quenchant?.Name, StringComparison.OrdinalIgnoreCase) ? s.Shop.Quenchant! with { Medium = s.Shop.Quenchant.Medium ?? named.Medium } : named
        : s.Shop.Quenchant;

    /// <summary>Whether something keeps the air off.</summary>
    public static bool IsGuarded(HeatSubject s) => s.Shop.Oven is { Guard: not SkinGuard.None };

    /// <summary>Temperature of the bath, plates or air.</summary>
    public static Temperature BathAt(Quenchant quenchant) => quenchant.At
        ?? (quenchant.Medium?.Bath is { } b ? Temperature.OfCelsius(0.5 * (b.Value.From.Celsius + b.Value.To.Celsius)) : Temperature.OfCelsius(25));

    /// <summary>Whether it hardens; null without a known quenchant.</summary>
    public static Hardens? Quench(HeatSubject s, Temperature at)
        => QuenchantOf(s) is { Medium: { } medium } quenchant ? WholeSection.Of(s.Steel, Core.Hardens.Of(s.Steel, s.Stations, medium, at, BathAt(quenchant))) : null;

    private static HeatUp HotUp(HeatSubject s, Temperature at)
    {
        var e = s.Shop.Oven?.Guard == SkinGuard.Foil ? AirCooling.BrightRatio : AirCooling.OxidisedRatio;
        var mm = s.Stations.Max(t => t.ThicknessMm);
        var alone = OvenHeating.Seconds(mm, at.Celsius, at.Celsius - OvenHeating.NearC, e) / 60;
        var gap = OvenLoads.UsualPitchMm - mm;
        var racked = s.Pieces > 1 && s.Size is { } size && gap > 0 ? OvenHeating.Seconds(mm, at.Celsius, at.Celsius - OvenHeating.NearC, e * RackView.OpenShare(gap, size.Height.Mm)) / 60 : alone;
        return new HeatUp(alone, racked, e);
    }

    private static BathAnswer? BathOf(HeatSubject s, Temperature at, OvenLoads loads)
    {
        if (QuenchantOf(s) is not { Litres: { } litres, Medium: { Kind: QuenchKind.Oil or QuenchKind.Water } medium } quenchant || s.Weight is not { } weight) return null;
        var begin = BathAt(quenchant);
        var warmest = quenchant.Warmest ?? medium.Bath?.Value.To ?? Temperature.OfCelsius(begin.Celsius + 15);
        var isWater = medium.Kind == QuenchKind.Water;
        var heat = OilBath.HeatRiseC(weight.Grams, at.Celsius, Core.Hardens.OutCelsius, litres, isWater);
        var rule = isWater ? heat : OilBath.RuleRiseC(weight.Grams, litres);
        var (rise, room) = (Math.Max(rule, heat), Math.Max(0, warmest.Celsius - begin.Celsius));
        var row = (int)Math.Floor((room / rise) + 1e-9);
        var load = Math.Max(1, loads.Loads.DefaultIfEmpty(1).Max());
        var wait = row > 0 && begin.Celsius > 25 ? OilBath.CoolMinutes(litres, begin.Celsius + (Math.Min(row, load) * rise), begin.Celsius, isWater) : default;
        return new BathAnswer(begin, warmest, rule, heat, row, room > 0 ? litres * load * rise / room : double.PositiveInfinity, wait);
    }
}
