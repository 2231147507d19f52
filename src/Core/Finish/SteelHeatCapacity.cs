using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Specific heat of steel while it is heated, with the heat of the change to austenite about 735 °C.</summary>
[Formula("specific heat of steel, J/(kg·K): 425 + 0.773 θ − 0.00169 θ² + 2.22e-6 θ³ to 600 °C, then the peak of the change, 650 from 900 °C", "en-1993-1-2", "Carbon steel, 20 to 1200 °C; stainless steel within about 10 %")]
public static class SteelHeatCapacity
{
    /// <summary>J/(kg·K).</summary>
    /// <param name="celsius">Temperature, °C.</param>
    public static double JPerKgK(double celsius) => celsius switch
    {
        < 600 => 425 + (0.773 * celsius) - (0.00169 * celsius * celsius) + (2.22e-6 * celsius * celsius * celsius),
        < 735 => 666 + (13002 / (738 - celsius)),
        < 900 => 545 + (17820 / (celsius - 731)),
        _ => 650,
    };

    /// <summary>Heat of a kilogram between two temperatures, J/kg.</summary>
    /// <param name="fromCelsius">From, °C.</param>
    /// <param name="toCelsius">To, °C.</param>
    public static double JPerKg(double fromCelsius, double toCelsius)
    {
        const double step = 0.5;
        var n = Math.Max(1, (int)Math.Ceiling((toCelsius - fromCelsius) / step));
        var h = (toCelsius - fromCelsius) / n;
        var sum = 0.0;
        for (var i = 0; i < n; i++) sum += JPerKgK(fromCelsius + ((i + 0.5) * h)) * h;
        return sum;
    }
}
