using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Critical cooling rates of Maynier and others, a second opinion for steel up to half a per cent of carbon.</summary>
[Formula("cooling rates for martensite, °C/s (Maynier 1978, as printed by Li)", "maynier-1978", "Carbon up to 0.5 %; over-states hardenability at 0.7 to 1 %")]
public static class MaynierRates
{
    /// <summary>Soak as one figure, °C.</summary>
    /// <param name="celsius">Temperature of the soak, °C.</param>
    /// <param name="hours">Time at heat, h.</param>
    public static double SoakCelsius(double celsius, double hours) => (1 / ((1 / (celsius + 273)) - (8.314 / 418_000 * Math.Log(hours)))) - 273;

    /// <summary>Slowest rate that leaves all martensite, °C/s at 700 °C.</summary>
    /// <param name="x">Composition.</param>
    /// <param name="soakCelsius">Soak as one figure, °C.</param>
    public static double MartensiteCPerSecond(Chemistry x, double soakCelsius)
        => Math.Pow(10, 9.81 - ((4.62 * x.CarbonPercent) + (1.05 * x.ManganesePercent) + (0.54 * x.NickelPercent) + (0.50 * x.ChromiumPercent) + (0.66 * x.MolybdenumPercent) + (0.00183 * soakCelsius))) / 3600;
}
