using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>How long a plate takes to come to heat in an oven that is hot already: both faces take radiation and convection, the thickness is as warm as its faces.</summary>
/// <remarks>t = ∫ ρ c(T) s / 2 / (h + radiation) (To − T) dT. An oven that falls back when the door opens, or has little power, takes longer.</remarks>
[Formula("time to come to heat, s: ∫ ρ c s / (2 q) dT, q = ε σ (To⁴ − T⁴) + h (To − T)", "stefan-boltzmann", "1 to 10 mm, oven at heat; steel as warm as its faces (Bi under 0.1); ε 0.8 oxidised, 0.3 bright or in foil (from memory)")]
public static class OvenHeating
{
    /// <summary>A piece counts as at heat this far under the oven, °C.</summary>
    public const double NearC = 10;

    private const double DensityKgPerM3 = 7850;

    /// <summary>Seconds from cold to a temperature.</summary>
    /// <param name="thicknessMm">Thickness, mm.</param>
    /// <param name="ovenCelsius">Oven, °C.</param>
    /// <param name="toCelsius">Temperature of the piece, below the oven's, °C.</param>
    /// <param name="emissivity">Emissivity, with the open share of the view.</param>
    /// <param name="fromCelsius">Cold, °C.</param>
    public static double Seconds(double thicknessMm, double ovenCelsius, double toCelsius, double emissivity = AirCooling.OxidisedRatio, double fromCelsius = 20)
    {
        const double step = 0.5;
        var n = (int)Math.Ceiling((toCelsius - fromCelsius) / step);
        var (dt, sum) = ((toCelsius - fromCelsius) / n, 0.0);
        for (var i = 0; i < n; i++)
        {
            var t = fromCelsius + ((i + 0.5) * dt);
            sum += SteelHeatCapacity.JPerKgK(t) / (AirCooling.TransferWPerM2K(t, ovenCelsius, emissivity) * (ovenCelsius - t)) * dt;
        }

        return sum * DensityKgPerM3 * 0.0005 * thicknessMm;
    }
}
