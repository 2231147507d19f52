using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>How much more one of two things side by side grows with heat than the other: ΔL = L Δα ΔT.</summary>
[Formula("difference in growth with heat of two materials, mm", "linear-expansion", "coefficients of 20 to 100 °C, both at the same temperature, free to move; wood moves far more with moisture than with heat")]
public static class ThermalMismatch
{
    private const double Millionth = 1e-6;

    /// <summary>What the first grows more than the second.</summary>
    /// <param name="length">Length or diameter both have at first.</param>
    /// <param name="firstMillionthsPerK">Growth of the first, millionths of the length per K.</param>
    /// <param name="secondMillionthsPerK">Growth of the second.</param>
    /// <param name="differenceC">How much hotter both become, °C.</param>
    public static Length Of(Length length, double firstMillionthsPerK, double secondMillionthsPerK, double differenceC) => length * ((firstMillionthsPerK - secondMillionthsPerK) * Millionth * differenceC);
}
