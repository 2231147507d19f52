using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Critical points on slow heating after Trzaska.</summary>
[Formula("critical points Ac1 and Ac3 on heating, °C (Trzaska)", "trzaska-2016", "Structural and tool steel; coefficients from memory")]
public static class TrzaskaCritical
{
    /// <summary>Austenite begins, °C.</summary>
    /// <param name="x">Composition.</param>
    public static double LowerCelsius(Chemistry x) => 742 - (29 * x.CarbonPercent) - (14 * x.ManganesePercent) + (13 * x.SiliconPercent) + (16 * x.ChromiumPercent) - (17 * x.NickelPercent) - (16 * x.MolybdenumPercent) + (45 * x.VanadiumPercent) + (36 * x.CopperPercent);

    /// <summary>Full austenite above it, steel below the eutectoid, °C.</summary>
    /// <param name="x">Composition.</param>
    public static double UpperCelsius(Chemistry x) => 925 - (219 * Math.Sqrt(x.CarbonPercent)) - (7 * x.ManganesePercent) + (39 * x.SiliconPercent) - (16 * x.NickelPercent) + (13 * x.MolybdenumPercent) + (97 * x.VanadiumPercent);
}
