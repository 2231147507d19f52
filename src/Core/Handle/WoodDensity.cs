using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Density of wood from its specific gravity: ρ = 1000 G (1 + M/100) kg/m³.</summary>
[Formula("density of wood at a moisture, g/cm³", "wood-handbook", "the specific gravity of the same moisture; a board of one kind is within about 10 % of the mean (from memory)")]
public static class WoodDensity
{
    /// <summary>The density.</summary>
    /// <param name="specificGravityRatio">Dry mass in the volume at this moisture, against water.</param>
    /// <param name="moisturePercent">Moisture, per cent of the dry mass.</param>
    public static Density Of(double specificGravityRatio, double moisturePercent) => Density.OfGramsPerCm3(specificGravityRatio * (1 + (moisturePercent / 100)));
}
