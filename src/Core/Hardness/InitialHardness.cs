using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Hardness of steel that is all martensite, by the carbon dissolved in it.</summary>
[Formula("hardness of full martensite by its dissolved carbon, HRC", "astm-a255", "C 0.10 to 0.69 %, taken as the nearer end outside; about ±1.5 HRC")]
public static class InitialHardness
{
    /// <summary>Least carbon, mass per cent.</summary>
    public const double LeastCarbonPercent = 0.10;

    /// <summary>Most carbon, mass per cent.</summary>
    public const double MostCarbonPercent = 0.69;

    /// <summary>How far it may be off, HRC.</summary>
    public const double BandHrc = 1.5;

    /// <summary>Its hardness, HRC.</summary>
    /// <param name="carbonPercent">Carbon dissolved at heat, mass per cent.</param>
    public static double Hrc(double carbonPercent)
    {
        var c = Math.Clamp(carbonPercent, LeastCarbonPercent, MostCarbonPercent);
        return 33.087 + (c * (50.723 + (c * (33.662 + (c * (-2.7048 + (c * (-107.02 + (c * 43.523)))))))));
    }
}
