using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Heat conductivity of carbon steel while it is heated.</summary>
[Formula("heat conductivity of steel, W/(m·K): 54 - 0.0333 θ to 800 °C, 27.3 above", "en-1993-1-2", "Carbon steel, 20 to 1200 °C")]
public static class SteelConductivity
{
    /// <summary>W/(m·K).</summary>
    /// <param name="celsius">Temperature, °C.</param>
    public static double WPerMK(double celsius) => celsius < 800 ? 54 - (0.0333 * celsius) : 27.3;
}
