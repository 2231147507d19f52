namespace Tangwright.Core;

/// <summary>What conduction needs to know of a material.</summary>
/// <param name="DensityKgPerM3">Density, kg/m³.</param>
/// <param name="ConductivityWPerMK">Conductivity, W/(m·K), by temperature, °C.</param>
/// <param name="HeatJPerKgK">Heat capacity, J/(kg·K), by temperature, °C.</param>
public sealed record HeatProperties(double DensityKgPerM3, Func<double, double> ConductivityWPerMK, Func<double, double> HeatJPerKgK)
{
    /// <summary>Undercooled austenite.</summary>
    public static HeatProperties OfAustenite { get; } = new(Austenite.DensityKgPerM3, Austenite.ConductivityWPerMK, Austenite.HeatJPerKgK);

    /// <summary>The same at all temperatures.</summary>
    public static HeatProperties Fixed(double densityKgPerM3, double conductivityWPerMK, double heatJPerKgK) => new(densityKgPerM3, _ => conductivityWPerMK, _ => heatJPerKgK);
}
