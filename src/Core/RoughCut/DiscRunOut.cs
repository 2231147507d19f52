using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>How much further a disc cuts on the face it stands on than on the far face.</summary>
[Formula("run-out of a cut-off disc: √(R² − (R − p − t)²) − √(R² − (R − p)²), mm", "circle-equation", "Disc of radius R square to the plate, reaching p below the far face of a plate of thickness t, p + t up to R; exact")]
public static class DiscRunOut
{
    /// <summary>How far a disc is let through the far face, mm; common practice.</summary>
    public const double ThroughMm = 4;

    /// <summary>mm.</summary>
    /// <param name="radiusMm">Radius of the disc, mm.</param>
    /// <param name="throughMm">How far it reaches below the far face, mm.</param>
    /// <param name="thicknessMm">Thickness, mm.</param>
    public static double Mm(double radiusMm, double throughMm, double thicknessMm)
    {
        double Half(double depth) => Math.Sqrt(Math.Max(0, (radiusMm * radiusMm) - ((radiusMm - depth) * (radiusMm - depth))));
        return Half(Math.Min(radiusMm, throughMm + thicknessMm)) - Half(Math.Min(radiusMm, throughMm));
    }
}
