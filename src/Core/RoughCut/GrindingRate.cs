using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Steel a belt takes off: Q = P · η / u.</summary>
[Formula("steel ground off in a minute by a motor's power, g/min: P · η · ρ / u", "malkin-grinding", "Steady pressure, sharp coarse belt: u 5 to 15 J/mm³ (common practice), bonded wheels 13.8 at least; dull or fine belts take 20 to 50")]
public static class GrindingRate
{
    /// <summary>Share of the motor's power that reaches the belt; common practice.</summary>
    public const double UsualShare = 0.6;

    /// <summary>Energy a sharp coarse belt takes for steel, J/mm³; common practice 5 to 15.</summary>
    public const double SharpJPerMm3 = 12;

    /// <summary>g/min.</summary>
    /// <param name="powerW">Motor power, W.</param>
    /// <param name="share">Share that reaches the belt.</param>
    /// <param name="energyJPerMm3">Energy for a volume of steel, J/mm³.</param>
    /// <param name="densityGPerCm3">Density, g/cm³.</param>
    public static double GramsPerMinute(double powerW, double share, double energyJPerMm3, double densityGPerCm3) => powerW * share / energyJPerMm3 * 0.001 * densityGPerCm3 * 60;
}
