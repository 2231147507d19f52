using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Critical points at rest after Grange; printed in °F.</summary>
[Formula("critical points Ae1 and Ae3, °C (Grange; printed in °F)", "grange-1961", "Low-alloy steel below the eutectoid; 10 to 20 °C (from memory)")]
public static class GrangeCritical
{
    /// <summary>Austenite begins, °C.</summary>
    /// <param name="x">Composition.</param>
    public static double LowerCelsius(Chemistry x) => Celsius(1333 - (25 * x.ManganesePercent) + (40 * x.SiliconPercent) + (42 * x.ChromiumPercent) - (26 * x.NickelPercent));

    /// <summary>Full austenite above it, steel below the eutectoid, °C.</summary>
    /// <param name="x">Composition.</param>
    public static double UpperCelsius(Chemistry x) => Celsius(1570 - (323 * x.CarbonPercent) - (25 * x.ManganesePercent) + (80 * x.SiliconPercent) - (3 * x.ChromiumPercent) - (32 * x.NickelPercent));

    private static double Celsius(double fahrenheit) => (fahrenheit - 32) / 1.8;
}
