using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Specific heat of steel.</summary>
[Formula("specific heat of steel, J/(kg·K): 425 + 0.773 θ − 0.00169 θ² + 2.22e-6 θ³", "en-1993-1-2", "Carbon steel, 20 to 600 °C; stainless steel within about 10 %")]
public static class SteelHeatCapacity
{
    /// <summary>J/(kg·K).</summary>
    /// <param name="celsius">Temperature, °C.</param>
    public static double JPerKgK(double celsius) => 425 + (0.773 * celsius) - (0.00169 * celsius * celsius) + (2.22e-6 * celsius * celsius * celsius);
}
