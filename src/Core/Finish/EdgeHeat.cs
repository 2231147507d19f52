using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>How much may come off a face between two dips before a thin edge is as hot as it was tempered.</summary>
/// <param name="LowUm">When the belt is dull and most heat goes into the steel, µm.</param>
/// <param name="UsualUm">Planned with, µm.</param>
/// <param name="HighUm">When the belt is sharp and little heat goes into the steel, µm.</param>
public readonly record struct HeatRoom(double LowUm, double UsualUm, double HighUm);

/// <summary>Heat of grinding in a thin edge: what a face takes up, a share of the energy of grinding, spread through the thickness and not led away: depth = ρ c t ΔT / (ε u).</summary>
/// <remarks>Nothing is led away into the rest of the blade, the air or the belt, so it is a bound on the careful side for one spot ground without a stop. Energy and share are ranges: their band is wide and is shown.</remarks>
[Formula("depth off a face that heats a thin edge by ΔT, µm: ρ c t ΔT / (ε u)", "malkin-grinding", "Heat kept in the thickness under the belt; energy u 5 to 15 J/mm³ for a sharp coarse belt, 20 to 50 for a fine or dull one (common practice), share into the steel ε 0.2 to 0.6 (from memory)")]
public static class EdgeHeat
{
    /// <summary>Share of the energy that stays in the steel: least, usual, most.</summary>
    public static (double Low, double Usual, double High) IntoSteel => (0.2, 0.4, 0.6);

    /// <summary>Warmth of a blade fresh from the dip, °C.</summary>
    public const double DippedC = 25;

    /// <summary>Kept under the tempering temperature, °C.</summary>
    public const double MarginC = 25;

    /// <summary>Energy for a volume of steel, J/mm³: sharp and coarse up to P80, else fine.</summary>
    public static (double Low, double Usual, double High) EnergyJPerMm3(double micron) => micron >= 195 ? (5, 12, 15) : (20, 30, 50);

    /// <summary>Depth off one face between dips.</summary>
    /// <param name="thicknessMm">Thickness there, mm.</param>
    /// <param name="micron">Grain size of the belt, µm.</param>
    /// <param name="temperedC">Tempering temperature, °C.</param>
    /// <param name="densityGPerCm3">Density, g/cm³.</param>
    public static HeatRoom Between(double thicknessMm, double micron, double temperedC, double densityGPerCm3)
    {
        var rise = Math.Max(0, temperedC - MarginC - DippedC);
        var heat = densityGPerCm3 * 1e-6 * SteelHeatCapacity.JPerKgK(DippedC + (0.5 * rise)) * thicknessMm * rise; // J/mm²
        var (u, share) = (EnergyJPerMm3(micron), IntoSteel);
        double Depth(double energy, double into) => 1000 * heat / (energy * into);
        return new HeatRoom(Depth(u.High, share.High), Depth(u.Usual, share.Usual), Depth(u.Low, share.Low));
    }
}
