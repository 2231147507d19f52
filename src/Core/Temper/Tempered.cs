using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Where a tempered hardness is from.</summary>
public enum TemperRoute
{
    /// <summary>The table printed for the grade.</summary>
    Table,

    /// <summary>The fit over published readings of many steels.</summary>
    Regression,

    /// <summary>Nothing known: a test piece has to tell.</summary>
    None,
}

/// <summary>Hardness after a temper, by the best of what is known of the steel.</summary>
/// <param name="Route">Where it is from.</param>
/// <param name="Hrc">Hardness with its band, HRC; null when nothing is known.</param>
/// <param name="Remark">What to know of it, in words; empty when nothing.</param>
public sealed record Tempered(TemperRoute Route, Estimate<double>? Hrc, string Remark)
{
    /// <summary>What is said where nothing is known.</summary>
    public const string NoData = "no published hardness by temper for this steel: temper test pieces from the bar and log them";

    private const double JoinedByC = 450;

    /// <summary>After so long at one temperature.</summary>
    /// <param name="steel">The steel.</param>
    /// <param name="asQuenchedHrc">Hardness out of the quench, HRC; null when not known.</param>
    /// <param name="at">Temperature of the steel.</param>
    /// <param name="hours">Time at heat in all, h.</param>
    public static Tempered Of(Steel steel, double? asQuenchedHrc, Temperature at, double hours)
    {
        if (TemperByTable.IsTable(steel.Heat.TemperTable))
        {
            return TemperByTable.Hrc(steel.Heat.TemperTable, at, hours) is { } printed
                ? new Tempered(TemperRoute.Table, asQuenchedHrc is { } hardest ? Under(printed, hardest) : printed, printed.OutsideRange)
                : new Tempered(TemperRoute.None, null, "the printed table of this steel says nothing there");
        }

        if (steel.Chemistry is not { IsLowAlloy: true } bar) return new Tempered(TemperRoute.None, null, NoData);
        if (TemperRegression.Outside(bar, hours) is { Length: > 0 } outside) return new Tempered(TemperRoute.None, null, $"{NoData} ({outside})");
        if (at.Celsius is < TemperRegression.ColdestC or > FullTemperRegression.HottestC) return new Tempered(TemperRoute.None, null, "the fit holds from 140 to 700 °C");
        var value = Joined(bar, at, hours);
        if (value < FullTemperRegression.SoftestHrc) return new Tempered(TemperRoute.None, null, "softer than the fit holds for, 20 HRC");
        var band = at.Celsius <= TemperRegression.HottestC ? TemperRegression.BandHrc : FullTemperRegression.BandHrc(at);
        var capped = asQuenchedHrc is { } quenched ? TemperRegression.Capped(value, quenched, at) : value;
        var remark = string.Join("; ", new[]
        {
            capped < value ? "held under the quenched hardness by a rule set by eye" : "",
            bar.VanadiumPercent > 0.1 || bar.TungstenPercent > 0.1 ? "vanadium and tungsten count nothing in the fit" : "",
        }.Where(r => r.Length > 0));
        return new Tempered(TemperRoute.Regression, new Estimate<double>(capped, capped - band, capped + band, "temper-regression"), remark);
    }

    /// <summary>After several tempers and ramps, taken as one at the hottest of them.</summary>
    /// <param name="steel">The steel.</param>
    /// <param name="asQuenchedHrc">Hardness out of the quench, HRC; null when not known.</param>
    /// <param name="holds">The holds; at least one.</param>
    public static Tempered Of(Steel steel, double? asQuenchedHrc, IReadOnlyCollection<TemperHold> holds)
    {
        var hottest = holds.MaxBy(h => h.At.Celsius).At;
        return Of(steel, asQuenchedHrc, hottest, HollomonJaffe.HoursAt(holds, hottest));
    }

    // over 350 °C the fit for all tempers, led on from where the better one for low tempers ends; what lies between them there fades out
    private static double Joined(Chemistry bar, Temperature at, double hours)
    {
        if (at.Celsius <= TemperRegression.HottestC) return TemperRegression.Hrc(bar, at, hours);
        var join = Temperature.OfCelsius(TemperRegression.HottestC);
        var step = TemperRegression.Hrc(bar, join, hours) - FullTemperRegression.Hrc(bar, join, hours);
        var share = Math.Clamp((JoinedByC - at.Celsius) / (JoinedByC - TemperRegression.HottestC), 0, 1);
        return FullTemperRegression.Hrc(bar, at, hours) + (share * step);
    }

    private static Estimate<double> Under(Estimate<double> e, double hardest) => e.Value <= hardest ? e : e with { Value = hardest, Low = e.Low - (e.Value - hardest), High = hardest };
}
