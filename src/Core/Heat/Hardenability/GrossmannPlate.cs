using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Ideal diameter that a size needs in a real quench: the centre takes as long to half its temperature as that of the ideal round.</summary>
/// <remarks>Definition of Grossmann, Asimov and Urban, 1939; with H = h / 2k and x = H · size the exact half times of the series for round and plate (Carslaw and Jaeger) give DI²: fitted here to 0.05 % for x from 0.01 to 100.</remarks>
[Formula("ideal diameter needed for a round or plate at severity H, from equal half-temperature times", "grossmann-1939", "H times size 0.01 to 100; half martensite in the centre; derived here from the exact series, 0.05 %")]
public static class GrossmannPlate
{
    /// <summary>Ideal diameter asked for 95 % martensite instead of half, over the one for half (engineering margin, no source).</summary>
    public const double ThroughRatio = 1.4;

    /// <summary>Ideal diameter a plate needs for half martensite in its middle.</summary>
    /// <param name="thickness">Thickness of the plate.</param>
    /// <param name="severityPerInch">Severity H, 1/in.</param>
    public static Length NeededBy(Length thickness, double severityPerInch)
    {
        var x = severityPerInch * thickness.Inches;
        return thickness * Math.Sqrt(1.88884 + (3.45667 / x) + (0.09956 / (1 + (0.20645 * Math.Pow(x, 1.11614)))));
    }

    /// <summary>Ideal diameter a round bar needs for half martensite in its middle.</summary>
    /// <param name="diameter">Diameter of the bar.</param>
    /// <param name="severityPerInch">Severity H, 1/in.</param>
    public static Length NeededByRound(Length diameter, double severityPerInch)
    {
        var x = severityPerInch * diameter.Inches;
        return diameter * Math.Sqrt(1 + (1.72834 / x) + (0.06457 / (1 + (0.10547 * Math.Pow(x, 1.23289)))));
    }
}
