using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>One point of a temper curve.</summary>
/// <param name="At">Temperature of the steel.</param>
/// <param name="Hrc">Hardness with its band, HRC.</param>
public readonly record struct TemperCurvePoint(Temperature At, Estimate<double> Hrc);

/// <summary>The temper of a plan in its shop: set-point, what comes out, limits, and what the log says.</summary>
/// <param name="Steel">The steel.</param>
/// <param name="Wanted">Hardness wanted; null when the plan does not say.</param>
/// <param name="AsQuenched">Hardness out of the quench, HRC; null when nothing is known.</param>
/// <param name="Cycle">Tempers.</param>
/// <param name="CountSourceKey">Where their count is from.</param>
/// <param name="OvenName">Oven it is tempered in; empty when the shop names none.</param>
/// <param name="Oven">How it holds heat.</param>
/// <param name="OvenRemark">What was assumed of it; empty when nothing.</param>
/// <param name="Route">Where the curve is from.</param>
/// <param name="Curve">Hardness by temperature for the tempers of the plan; empty when nothing is known.</param>
/// <param name="SetPoint">The temperature for the hardness wanted; null when none is wanted.</param>
/// <param name="Log">What the shop's log says of this steel in this oven.</param>
public sealed record TemperPlan(
    Steel Steel,
    HardnessBand? Wanted,
    Estimate<double>? AsQuenched,
    TemperCycle Cycle,
    string CountSourceKey,
    string OvenName,
    OvenHolds Oven,
    string OvenRemark,
    TemperRoute Route,
    ImmutableArray<TemperCurvePoint> Curve,
    TemperSetPoint? SetPoint,
    HardnessReview Log)
{
    /// <summary>Hours of each temper; common practice.</summary>
    public const double UsualHoldHours = 2;

    /// <summary>Tempers when the steel's file does not say; common practice.</summary>
    public const int UsualCount = 2;

    /// <summary>Swing to either side of an oven with a controller, °C; common practice.</summary>
    public const double UsualSwingC = 5;

    /// <summary>Swing to either side of a kitchen oven, °C: one was seen to go from 190 to 224 °C.</summary>
    public const double KitchenSwingC = 17;

    /// <summary>Temperature of the last temper as the plan says it; null when it does not.</summary>
    public Temperature? Planned { get; init; }

    /// <summary>What the planned temper gives, the shop's own readings counted in, HRC; null without one or when not known.</summary>
    public Estimate<double>? PlannedGives { get; init; }

    /// <summary>What the oven is set to: for the planned temper, else for the hardness wanted; null when there is neither.</summary>
    public Temperature? Set => Planned is { } p ? Temperature.OfCelsius(p.Celsius + (Oven.ReadsHighByC ?? 0)) : SetPoint?.Set;

    /// <summary>Temperature of the steel: planned, else for the hardness wanted; null when there is neither.</summary>
    public Temperature? SteelAt => Planned ?? SetPoint?.Steel;

    /// <summary>Hardness to be expected, HRC; null when not known.</summary>
    public Estimate<double>? Gives => Planned is null ? SetPoint?.Gives : PlannedGives;

    /// <summary>Hottest steel of a straightening temper; null without a temper.</summary>
    public Temperature? StraightenAtMost => SteelAt is { } t ? Temperature.OfCelsius(t.Celsius - TemperSetPoint.StraightenBelowC) : null;

    private const int CurveStepC = 5;

    /// <summary>Works it out; null when nothing is known of the steel's hardening.</summary>
    /// <param name="r">The plan worked up.</param>
    /// <param name="asQuenchedHrc">Hardness out of the quench when it was worked out, HRC; null: as published, else by the carbon.</param>
    public static TemperPlan? Of(Results r, double? asQuenchedHrc = null)
        => r.Steel is { } steel ? Of(steel, r.Shop, r.Plan.Heat, r.Plan.Target.Hardness, asQuenchedHrc) : null;

    /// <summary>The same without a plan; null when nothing is known of the steel's hardening.</summary>
    /// <param name="steel">The steel.</param>
    /// <param name="shop">The shop.</param>
    /// <param name="wish">What the plan asks for; null: nothing.</param>
    /// <param name="wanted">Hardness wanted; null when none is.</param>
    /// <param name="asQuenchedHrc">Hardness out of the quench when it was worked out, HRC; null: as published, else by the carbon.</param>
    public static TemperPlan? Of(Steel steel, Shop shop, HeatWish? wish, HardnessBand? wanted, double? asQuenchedHrc = null)
    {
        if (steel.Heat.Hardening is null && steel.Heat.TemperTable.IsEmpty) return null;
        var quenched = Quenched(steel, asQuenchedHrc);
        var oven = shop.TemperOven ?? shop.Oven;
        var isKitchen = oven is not null && (oven.Name.Contains("kitchen", StringComparison.OrdinalIgnoreCase) || oven.Name.Contains("toaster", StringComparison.OrdinalIgnoreCase));
        var holds = new OvenHolds(oven?.ReadsHighByC, oven?.SwingC ?? (isKitchen ? KitchenSwingC : UsualSwingC));
        var remark = string.Join("; ", new[]
        {
            oven is null ? "the shop names no oven" : oven.ReadsHighByC is null ? $"how wrong {oven.Name} reads was never measured: put a thermocouple in it" : "",
            oven?.SwingC is null ? $"a swing of ±{Shown.Number(holds.SwingC, 0)} °C is assumed" : "",
        }.Where(s => s.Length > 0));
        var cycle = new TemperCycle(wish?.Tempers ?? steel.Heat.Tempers?.Value ?? UsualCount, wish?.HoldMinutes / 60 ?? UsualHoldHours);
        var log = HardnessReview.Of(shop.HardnessLog, shop.HardnessTester, steel, oven?.Name ?? "", quenched?.Value, wanted);
        var curve = ImmutableArray.CreateBuilder<TemperCurvePoint>();
        var route = TemperRoute.None;
        for (var c = (int)TemperSetPoint.ColdestC; c <= FullTemperRegression.HottestC; c += CurveStepC)
        {
            var got = Tempered.Of(steel, quenched?.Value, Temperature.OfCelsius(c), cycle.Hours);
            if (got.Hrc is not { } hrc) continue;
            route = got.Route;
            curve.Add(new TemperCurvePoint(Temperature.OfCelsius(c), hrc));
        }

        var set = wanted is { } band ? TemperSetPoint.For(steel, quenched?.Value, band, cycle, holds, log.Bias) : null;
        return new TemperPlan(steel, wanted, quenched, cycle, wish?.Tempers is not null ? "the plan" : steel.Heat.Tempers?.SourceKey ?? SourceTag.CommonPractice, oven?.Name ?? "", holds, remark, route, curve.ToImmutable(), set, log)
        {
            Planned = wish?.Temper,
            PlannedGives = wish?.Temper is { } planned ? log.Bias.Shifted(Tempered.Of(steel, quenched?.Value, planned, cycle.Hours).Hrc) : null,
        };
    }

    private static Estimate<double>? Quenched(Steel steel, double? workedOut)
    {
        if (workedOut is { } given) return new Estimate<double>(given, given - MixedHardness.BandHrc, given + MixedHardness.BandHrc, "rule-of-mixtures");
        if (steel.Heat.AsQuenched is { } printed) return new Estimate<double>(0.5 * (printed.Value.LowHrc + printed.Value.HighHrc), printed.Value.LowHrc, printed.Value.HighHrc, printed.SourceKey);
        if ((steel.Heat.Hardening?.DissolvedCarbonPercent ?? (steel.Chemistry is { IsLowAlloy: true } a ? a.CarbonPercent : null)) is not { } carbon) return null;
        var hrc = InitialHardness.Hrc(carbon);
        return new Estimate<double>(hrc, hrc - InitialHardness.BandHrc, hrc + InitialHardness.BandHrc, "astm-a255");
    }
}
