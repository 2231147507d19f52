using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>What bars cost by the shop's list.</summary>
internal static class BarPrices
{
    /// <summary>What one bar costs: its own price, else by the kilogram, of another length if need be, to the hundredth; null when the list does not say.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="stock">Steel and thickness.</param>
    /// <param name="density">Density of the steel; null when not known.</param>
    /// <param name="width">Width.</param>
    /// <param name="length">Length.</param>
    public static decimal? Of(Shop shop, Stock stock, Density? density, Length width, Length length)
    {
        var same = Offered(shop, stock).Where(b => Near(b.Width, width)).ToArray();
        if (same.FirstOrDefault(b => b.Price is not null && Near(b.Length, length)) is { } bar) return bar.Price;
        var byMass = same.FirstOrDefault(b => b.PricePerKg is not null && Near(b.Length, length)) ?? same.FirstOrDefault(b => b.PricePerKg is not null);
        return byMass is null || density is not { } d ? null : Math.Round(byMass.PricePerKg!.Value * (decimal)(Volume.OfMm3(width.Mm * stock.Thickness.Mm * length.Mm) * d).Grams / 1000, 2);
    }

    /// <summary>Bars of the list of the same steel and thickness.</summary>
    public static IEnumerable<PricedBar> Offered(Shop shop, Stock stock) => shop.Bars.Where(b => b.Steel == stock.Steel && Near(b.Thickness, stock.Thickness));

    /// <summary>That some bars have a price and others none, so that steel was counted and not money; nothing when all or none have.</summary>
    public static IEnumerable<string> Missing(IEnumerable<BarKind> kinds)
    {
        var news = kinds.Where(k => k.Rack is null).ToArray();
        if (news.Any(k => k.Price is not null) && news.FirstOrDefault(k => k.Price is null) is { } none) yield return $"The shop file has no price for a bar {Shown.Both(none.Width)} wide and {Shown.Both(none.Length)} long: the least steel was looked for, not the least money.";
    }

    /// <summary>Whether two sizes are the same, a hundredth of a millimetre aside.</summary>
    public static bool Near(Length a, Length b) => Math.Abs((a - b).Mm) < 0.01;
}
