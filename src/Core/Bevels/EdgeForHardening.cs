using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>How thick to leave the edge for hardening, with its reasons.</summary>
/// <param name="Leave">The recommended thickness; null when the bevel is better ground after hardening.</param>
/// <param name="Why">Reasons in words.</param>
/// <param name="TradeLow">Least of what the trade recommends for such a piece.</param>
/// <param name="TradeHigh">Most of it.</param>
/// <param name="FaceLoss">What the oven costs each face.</param>
/// <param name="At">Temperature counted with.</param>
/// <param name="Minutes">Minutes counted with.</param>
public sealed record EdgeAdvice(Length? Leave, string Why, Length TradeLow, Length TradeHigh, Length FaceLoss, Temperature At, double Minutes)
{
    /// <summary>The whole spread of what is recommended in the trade, without asking for stock, steel or quench; common practice.</summary>
    public static (Length Low, Length High) Spread => (Length.OfMm(0.76), Length.OfMm(2.4));
}

/// <summary>Recommends it: the middle of what the trade does for that stock and quench, or more when the oven takes more than that leaves above the finished edge.</summary>
public static class EdgeForHardening
{
    private const double ThinMm = 2;
    private const double SlenderMm = 3.6;
    private const double StoutMm = 5.5;

    /// <summary>The advice; null without a bevel.</summary>
    /// <param name="r">The plan worked up.</param>
    /// <param name="isProtected">Foil, coating or a box without air.</param>
    public static EdgeAdvice? Of(Results r, bool isProtected)
    {
        if (r.Plan.Bevel is not { } bevel) return null;
        var stainless = CuttingSpeeds.GroupOf(r.Steel).Contains("stainless", StringComparison.Ordinal);
        var cycle = r.Steel?.Heat.Hardening;
        var (at, minutes) = (r.Plan.Heat?.Harden ?? cycle?.Middle ?? Temperature.OfCelsius(stainless ? 1060 : 815), r.Plan.Heat?.SoakMinutes ?? cycle?.SoakToMinutes ?? (stainless ? 20.0 : 10));
        isProtected |= r.Shop.Oven is { Guard: not SkinGuard.None };
        var quench = r.Shop.Quenchant?.Name ?? "";
        var isMild = quench.Contains("plate", StringComparison.OrdinalIgnoreCase) || quench.Contains("air", StringComparison.OrdinalIgnoreCase);
        var stock = r.Plan.Stock.Thickness.Mm;
        var (low, high) = stock >= StoutMm ? (1.2, 2.0) : isMild || stock < SlenderMm ? (0.5, 0.8) : (0.8, 1.2);
        var loss = SurfaceLoss.FaceMm(at, minutes, isProtected);
        var oven = $"an oven at {Shown.Number(at.Celsius, 0)} °C ({Shown.Number(at.Fahrenheit, 0)} °F) for {Shown.Number(minutes, 0)} min costs each {(isProtected ? "protected" : "bare")} face up to {Shown.Both(Length.OfMm(loss))} of scale and lost carbon";
        if (stainless && !isProtected) oven += "; stainless scales less, but wants foil all the same";
        if (stock < ThinMm || (stock < SlenderMm && isMild))
        {
            return new EdgeAdvice(null, $"{Shown.Both(r.Plan.Stock.Thickness)} stock{(isMild ? " quenched between plates" : "")}: harden it flat and grind the bevel after, in {SourceTag.CommonPractice}; a thin edge waves in the quench", Length.OfMm(low), Length.OfMm(high), Length.OfMm(loss), at, minutes);
        }

        var middle = 0.5 * (low + high);
        var least = bevel.EdgeFinished.Mm + (2 * loss);
        var leave = Math.Ceiling(Math.Max(middle, least) * 20 - 1e-9) / 20;
        var kind = stock >= StoutMm ? "stout blades and hatchets" : isMild || stock < SlenderMm ? "thin knives" : "knives quenched in oil or water";
        var why = $"{SourceTag.CommonPractice} for {kind}, {Shown.Both(Length.OfMm(low))} to {Shown.Both(Length.OfMm(high))}; {oven}"
            + (least > middle ? $": more than that leaves above the finished {Shown.Both(bevel.EdgeFinished)}, so the edge is left thicker" : $", which leaves the finished {Shown.Both(bevel.EdgeFinished)} clean");
        return new EdgeAdvice(Length.OfMm(leave), why, Length.OfMm(low), Length.OfMm(high), Length.OfMm(loss), at, minutes);
    }
}
