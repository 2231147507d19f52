using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Where bainite can begin on cooling, °C. Three prints; the kinetics use the one they were made with.</summary>
[Formula("bainite start Bs, °C (Li 1998; also Steven and Haynes 1956, Trzaska 2016)", "li-1998", "Carbon in solution; spread of the three prints 40 to 60 °C at high carbon; Trzaska from memory")]
public static class BainiteStart
{
    /// <summary>As printed with the kinetics of Li and others, °C.</summary>
    /// <param name="x">Composition in solution.</param>
    public static double LiCelsius(Chemistry x) => 637 - (58 * x.CarbonPercent) - (35 * x.ManganesePercent) - (15 * x.NickelPercent) - (34 * x.ChromiumPercent) - (41 * x.MolybdenumPercent);

    /// <summary>Steven and Haynes, °C.</summary>
    /// <param name="x">Composition in solution.</param>
    public static double StevenHaynesCelsius(Chemistry x) => 830 - (270 * x.CarbonPercent) - (90 * x.ManganesePercent) - (37 * x.NickelPercent) - (70 * x.ChromiumPercent) - (83 * x.MolybdenumPercent);

    /// <summary>Trzaska, °C.</summary>
    /// <param name="x">Composition in solution.</param>
    public static double TrzaskaCelsius(Chemistry x) => 771 - (231 * Math.Sqrt(x.CarbonPercent)) - (69 * x.ManganesePercent) - (23 * x.SiliconPercent) - (56 * x.ChromiumPercent) - (29 * x.NickelPercent) - (41 * x.MolybdenumPercent);
}
