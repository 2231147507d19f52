using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Austenite that does not turn: exp(−α (Ms − T)), T the coldest the piece has been. It turns on cooling only, so a colder bath leaves less.</summary>
[Formula("share of austenite left at a temperature: exp(-α (Ms - T)); α after van Bohemen", "van-bohemen-2012", "Ms down to -80 °C, colder counts as -80 (from memory); good to a factor of about 1.5")]
public static class RetainedAustenite
{
    /// <summary>The law's coldest, °C.</summary>
    public const double ColdestCelsius = -80;

    /// <summary>Koistinen and Marburger's own α, a share for each °C.</summary>
    public const double KoistinenMarburgerRatio = 0.011;

    /// <summary>α after van Bohemen, a share for each °C.</summary>
    /// <param name="x">Composition in solution.</param>
    public static double Alpha(Chemistry x)
        => 1e-3 * (27.2 - (0.14 * x.ManganesePercent) - (0.21 * x.SiliconPercent) - (0.11 * x.ChromiumPercent) - (0.08 * x.NickelPercent) - (0.05 * x.MolybdenumPercent) - (19.8 * (1 - Math.Exp(-1.56 * x.CarbonPercent))));

    /// <summary>Share left, of what was austenite at Ms, 0 to 1.</summary>
    /// <param name="x">Composition in solution.</param>
    /// <param name="coldestCelsius">Coldest it has been, °C.</param>
    public static double Share(Chemistry x, double coldestCelsius) => Share(Alpha(x), MartensiteStart.Celsius(x), coldestCelsius);

    /// <summary>Share left for an α and a start.</summary>
    /// <param name="alpha">α, a share for each °C.</param>
    /// <param name="startCelsius">Ms, °C.</param>
    /// <param name="coldestCelsius">Coldest it has been, °C.</param>
    public static double Share(double alpha, double startCelsius, double coldestCelsius)
        => Math.Exp(-alpha * Math.Max(0, startCelsius - Math.Max(coldestCelsius, ColdestCelsius)));
}
