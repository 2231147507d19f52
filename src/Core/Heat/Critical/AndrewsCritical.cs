using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Critical points at rest after Andrews. The chromium and copper terms of Ae3 are taken as minus: a compilation that prints plus has lost its brackets (from memory, and as in the sister formula of Roberts).</summary>
[Formula("critical points Ae1 and Ae3, °C (Andrews)", "andrews-1965", "Low-alloy steel, carbon under 0.6 % (standard error about 10 to 15 °C, from memory)")]
public static class AndrewsCritical
{
    /// <summary>Austenite begins, °C.</summary>
    /// <param name="x">Composition.</param>
    public static double LowerCelsius(Chemistry x) => 723 - (10.7 * x.ManganesePercent) - (16.9 * x.NickelPercent) + (29.1 * x.SiliconPercent) + (16.9 * x.ChromiumPercent) + (6.38 * x.TungstenPercent);

    /// <summary>Full austenite above it, steel below the eutectoid, °C.</summary>
    /// <param name="x">Composition.</param>
    public static double UpperCelsius(Chemistry x) => 910 - (203 * Math.Sqrt(x.CarbonPercent)) - (15.2 * x.NickelPercent) + (44.7 * x.SiliconPercent) + (104 * x.VanadiumPercent) + (31.5 * x.MolybdenumPercent) + (13.1 * x.TungstenPercent) - (30 * x.ManganesePercent) - (11 * x.ChromiumPercent) - (20 * x.CopperPercent);
}
