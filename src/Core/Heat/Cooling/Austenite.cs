using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Heat properties of undercooled austenite, which is what cools in a quench, and the heat its changes give back.</summary>
[Formula("undercooled austenite: k = 15 + 0.0145 T W/(m·K), cp = 500 + 0.15 T J/(kg·K), 7800 kg/m³", "from memory", "0 to 1100 °C, engineering fit; heat of pearlite 77 kJ/kg, bainite 60, martensite 80 (from memory, ±20 %)")]
public static class Austenite
{
    /// <summary>Density, kg/m³.</summary>
    public const double DensityKgPerM3 = 7800;

    /// <summary>Heat given back by a change, J/kg.</summary>
    public const double PearliteJPerKg = 77e3, BainiteJPerKg = 60e3, MartensiteJPerKg = 80e3;

    /// <summary>W/(m·K).</summary>
    /// <param name="celsius">Temperature, °C.</param>
    public static double ConductivityWPerMK(double celsius) => 15 + (0.0145 * celsius);

    /// <summary>J/(kg·K).</summary>
    /// <param name="celsius">Temperature, °C.</param>
    public static double HeatJPerKgK(double celsius) => 500 + (0.15 * celsius);
}
