using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Heat a hot face gives to still air and to what it sees: convection and radiation.</summary>
[Formula("heat of a face to still air, W/(m²·K): h + ε σ (T⁴ − T0⁴) / (T − T0)", "stefan-boltzmann", "Natural convection h 10 and oxidised steel ε 0.8, bright or in foil 0.3 (from memory)")]
public static class AirCooling
{
    /// <summary>Stefan and Boltzmann's constant, W/(m²·K⁴), exact in the SI of 2019.</summary>
    public const double StefanBoltzmann = 5.670374419e-8;

    /// <summary>Natural convection, W/(m²·K).</summary>
    public const double ConvectionWPerM2K = 10;

    /// <summary>Emissivity of oxidised steel, and of bright steel or foil.</summary>
    public const double OxidisedRatio = 0.8, BrightRatio = 0.3;

    /// <summary>W/(m²·K).</summary>
    /// <param name="faceCelsius">The face, °C.</param>
    /// <param name="aroundCelsius">Air and walls, °C.</param>
    /// <param name="emissivity">Emissivity with the share of the view that is open, 0 to 1.</param>
    public static double TransferWPerM2K(double faceCelsius, double aroundCelsius, double emissivity = OxidisedRatio)
    {
        var (a, b) = (faceCelsius + 273.15, aroundCelsius + 273.15);
        return ConvectionWPerM2K + (emissivity * StefanBoltzmann * ((a * a) + (b * b)) * (a + b));
    }
}
