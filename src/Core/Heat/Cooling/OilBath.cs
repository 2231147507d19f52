using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>How warm a bath gets from a hot piece, and how long it takes to cool again.</summary>
[Formula("rise of a quench bath, °C: by the volume rule of the trade, and by the heat of the steel over that of the bath", "quench-volume-rule", "Oil 0.875 kg/L, 2.0 kJ/(kg·K); water 1 kg/L, 4.19 (from memory); all of the piece's heat into the bath, none lost")]
public static class OilBath
{
    private const double RuleC = 38, RuleLitresPerKg = 3.785411784 / 0.45359237;

    /// <summary>Rise by the rule: a US gallon for each pound, 38 °C, °C.</summary>
    /// <param name="steelGrams">Steel quenched, g.</param>
    /// <param name="litres">Bath, L.</param>
    public static double RuleRiseC(double steelGrams, double litres) => RuleC * RuleLitresPerKg * steelGrams / 1000 / litres;

    /// <summary>Rise by the heat of the steel, °C.</summary>
    /// <param name="steelGrams">Steel quenched, g.</param>
    /// <param name="fromCelsius">Out of the oven, °C.</param>
    /// <param name="toCelsius">Out of the bath, °C.</param>
    /// <param name="litres">Bath, L.</param>
    /// <param name="isWater">Whether it is water.</param>
    public static double HeatRiseC(double steelGrams, double fromCelsius, double toCelsius, double litres, bool isWater)
        => steelGrams / 1000 * HeatJPerKg(fromCelsius, toCelsius) / (litres * JPerLitreK(isWater));

    /// <summary>Heat a kilogram brings into the bath: austenite down to where it turns, and the heat of martensite, J/kg.</summary>
    /// <param name="fromCelsius">Out of the oven, °C.</param>
    /// <param name="toCelsius">Out of the bath, °C.</param>
    public static double HeatJPerKg(double fromCelsius, double toCelsius)
        => ((fromCelsius - toCelsius) * Austenite.HeatJPerKgK(0.5 * (fromCelsius + toCelsius))) + (toCelsius < 150 ? Austenite.MartensiteJPerKg * 0.9 : 0);

    /// <summary>Minutes to cool by still air about the tank from one temperature to another: least and most.</summary>
    /// <param name="litres">Bath, L.</param>
    /// <param name="fromCelsius">From, °C.</param>
    /// <param name="toCelsius">To, °C.</param>
    /// <param name="isWater">Whether it is water.</param>
    /// <param name="airCelsius">Air, °C.</param>
    public static (double LowMinutes, double HighMinutes) CoolMinutes(double litres, double fromCelsius, double toCelsius, bool isWater, double airCelsius = 20)
    {
        // a tank as wide as it is high gives heat from five faces; 15 to 8 W/(m²·K), from memory
        var area = 5 * Math.Pow(litres / 1000, 2.0 / 3);
        var log = Math.Log((fromCelsius - airCelsius) / (toCelsius - airCelsius));
        double At(double h) => litres * JPerLitreK(isWater) * log / (h * area) / 60;
        return (At(15), At(8));
    }

    private static double JPerLitreK(bool isWater) => isWater ? 4190 : 0.875 * 2000;
}
