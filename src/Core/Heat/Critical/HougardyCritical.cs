using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Critical points on slow heating after Hougardy.</summary>
[Formula("critical points Ac1 and Ac3 on heating, °C (Hougardy)", "hougardy-1984", "Low-alloy steel below the eutectoid; Ac3 from memory")]
public static class HougardyCritical
{
    /// <summary>Austenite begins, °C.</summary>
    /// <param name="x">Composition.</param>
    public static double LowerCelsius(Chemistry x) => 739 - (22 * x.CarbonPercent) - (7 * x.ManganesePercent) + (2 * x.SiliconPercent) + (14 * x.ChromiumPercent) + (13 * x.MolybdenumPercent) - (13 * x.NickelPercent);

    /// <summary>Full austenite above it, steel below the eutectoid, °C.</summary>
    /// <param name="x">Composition.</param>
    public static double UpperCelsius(Chemistry x) => 902 - (255 * x.CarbonPercent) - (11 * x.ManganesePercent) + (19 * x.SiliconPercent) - (5 * x.ChromiumPercent) + (13 * x.MolybdenumPercent) - (20 * x.NickelPercent) + (55 * x.VanadiumPercent);
}
