using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>How much carbon austenite holds, plain steel at rest: the straight line through 0.77 % at 727 °C and 2.11 % at 1148 °C.</summary>
[Formula("full solution of carbon Acm, °C: 727 + 314.2 (C - 0.77)", "fe-c-diagram", "Plain steel of 0.77 to 2.11 % carbon at rest; in a short soak less goes in")]
public static class AcmLine
{
    private const double EutectoidPercent = 0.77, EutectoidCelsius = 727, SlopeCPerPercent = (1148 - 727) / (2.11 - 0.77);

    /// <summary>Temperature at which so much carbon is in solution, °C.</summary>
    /// <param name="carbonPercent">Carbon, mass per cent.</param>
    public static double Celsius(double carbonPercent) => EutectoidCelsius + (SlopeCPerPercent * (carbonPercent - EutectoidPercent));

    /// <summary>Most carbon in solution at a temperature, mass per cent.</summary>
    /// <param name="celsius">Temperature, °C.</param>
    public static double CarbonPercent(double celsius) => EutectoidPercent + ((celsius - EutectoidCelsius) / SlopeCPerPercent);
}
