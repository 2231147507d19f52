using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Critical points at rest after Eldis.</summary>
[Formula("critical points Ae1 and Ae3, °C (Eldis)", "eldis-1978", "Low-alloy steel below the eutectoid")]
public static class EldisCritical
{
    /// <summary>Austenite begins, °C.</summary>
    /// <param name="x">Composition.</param>
    public static double LowerCelsius(Chemistry x) => 712 - (17.8 * x.ManganesePercent) - (19.1 * x.NickelPercent) + (20.1 * x.SiliconPercent) + (11.9 * x.ChromiumPercent) + (9.8 * x.MolybdenumPercent);

    /// <summary>Full austenite above it, steel below the eutectoid, °C.</summary>
    /// <param name="x">Composition.</param>
    public static double UpperCelsius(Chemistry x) => 871 - (254.4 * x.CarbonPercent) - (14.2 * x.NickelPercent) + (51.7 * x.SiliconPercent);
}
