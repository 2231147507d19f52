using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Hardness of steel that is half martensite, by the carbon dissolved in it: what a test piece shows where it has just failed to harden.</summary>
[Formula("hardness at half martensite by the dissolved carbon, HRC", "astm-a255-02", "C 0.10 to 0.69 %, taken as the nearer end outside; equation from memory, about ±2 HRC")]
public static class HalfMartensiteHardness
{
    /// <summary>Its hardness, HRC.</summary>
    /// <param name="carbonPercent">Carbon dissolved at heat, mass per cent.</param>
    public static double Hrc(double carbonPercent)
    {
        var c = Math.Clamp(carbonPercent, InitialHardness.LeastCarbonPercent, InitialHardness.MostCarbonPercent);
        return 22.974 + (c * (6.214 + (c * (356.364 + (c * (-1091.488 + (c * (1464.880 + (c * -750.441)))))))));
    }
}
