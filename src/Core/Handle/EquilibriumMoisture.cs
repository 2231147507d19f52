using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>The moisture wood comes to in air, given time, and the air that keeps it at a moisture.</summary>
/// <remarks>The model of one hydrate: M = 1800/W (Kh/(1 − Kh) + (K₁Kh + 2K₁K₂K²h²)/(1 + K₁Kh + K₁K₂K²h²)), W, K, K₁, K₂ square in the temperature.</remarks>
[Formula("moisture of wood in balance with the air, per cent of dry mass, and the humidity for a moisture", "simpson-1998", "air -1 to 130 °C, 0 to 95 % humidity, bare wood of any kind; the printed table to 0.06, a piece of wood to 10 % of the figure and no better than 0.5 (from memory: it holds more on its way down than up)")]
public static class EquilibriumMoisture
{
    /// <summary>Coldest air the constants hold for, °C.</summary>
    public const double ColdestC = -1.2;

    /// <summary>Hottest air the constants hold for, °C.</summary>
    public const double HottestC = 130;

    /// <summary>Dampest air they hold for, per cent.</summary>
    public const double DampestPercent = 95;

    private const double BandShare = 0.10, LeastBandPercent = 0.5, FinestPercent = 1e-9;

    /// <summary>Moisture, per cent of the dry mass, with what a piece may differ.</summary>
    /// <param name="air">Temperature of the air.</param>
    /// <param name="relativeHumidityPercent">Humidity; held to 0 to 100.</param>
    public static Estimate<double> Of(Temperature air, double relativeHumidityPercent)
    {
        var held = Math.Clamp(relativeHumidityPercent, 0, 100);
        var value = Percent(Math.Clamp(air.Celsius, ColdestC, HottestC), held);
        var band = Math.Max(BandShare * value, LeastBandPercent);
        return new Estimate<double>(value, Math.Max(0, value - band), value + band, "simpson-1998", Outside(air, relativeHumidityPercent));
    }

    /// <summary>Humidity that keeps wood at a moisture, per cent; null when no air up to 95 % does.</summary>
    /// <param name="air">Temperature of the air.</param>
    /// <param name="moisturePercent">Moisture of the wood.</param>
    public static double? HumidityPercent(Temperature air, double moisturePercent)
    {
        var celsius = Math.Clamp(air.Celsius, ColdestC, HottestC);
        if (!(moisturePercent >= 0 && moisturePercent <= Percent(celsius, DampestPercent))) return null;
        return Bracket.Root(h => Percent(celsius, h) - moisturePercent, 0, DampestPercent, FinestPercent);
    }

    private static double Percent(double t, double relativeHumidityPercent)
    {
        var w = 349 + (1.29 * t) + (0.0135 * t * t);
        var k = 0.805 + (0.000736 * t) - (0.00000273 * t * t);
        var k1 = 6.27 - (0.00938 * t) - (0.000303 * t * t);
        var k2 = 1.91 + (0.0407 * t) - (0.000293 * t * t);
        var kh = k * relativeHumidityPercent / 100;
        return 1800 / w * ((kh / (1 - kh)) + (((k1 * kh) + (2 * k1 * k2 * kh * kh)) / (1 + (k1 * kh) + (k1 * k2 * kh * kh))));
    }

    private static string Outside(Temperature air, double humidity) => string.Join("; ", new[]
    {
        air.Celsius is >= ColdestC and <= HottestC ? "" : "air outside -1 to 130 °C: the nearer end is used",
        humidity is >= 0 and <= DampestPercent ? "" : "humidity outside 0 to 95 %",
    }.Where(t => t.Length > 0));
}
