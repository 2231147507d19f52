using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>How the piece swings about the middle of the grip, as a rigid body turning about an axis square to its face.</summary>
/// <remarks>
/// I = ρ ∫ t ((x − px)² + (y − py)²) dA (parallel axes); centre of percussion at q = I / (m r) from the pivot through the balance point, r the distance between the two
/// (Meriam and Kraige, Engineering Mechanics: Dynamics, fixed-axis rotation; place in the book from memory). What the plan puts on the steel is counted with it; a cord is not.
/// </remarks>
[Formula("Moment of inertia about the grip, kg·m², and centre of percussion, mm", "meriam-kraige", "Rigid body: the steel and what the plan puts on it; no cord")]
public static class Striking
{
    /// <summary>Inertia and centre of percussion; null without a grip, without a density, or when the balance point lies in the pivot.</summary>
    public static StrikingFigures? Of(Plan plan, StageFigures last, Steel? steel)
    {
        if (plan.Grip is not { } grip || steel?.Density is not { } density) return null;
        var pivot = grip.Middle;
        var solid = last.Solid.Shifted(-pivot);
        var polar = solid.XxMm4 + solid.YyMm4;
        var r = solid.Centroid.Length;
        if (!(r > 1e-6)) return null;
        var q = polar / (solid.AreaMm2 * r);

        // mm⁵ × g/cm³ = 1e-6 kg/mm³ × mm⁵ = 1e-6 kg·mm² = 1e-12 kg·m²
        return new StrikingFigures(
            pivot,
            polar * density.Value.GramsPerCm3 * 1e-12,
            pivot + (solid.Centroid.Unit * q),
            Length.OfMm(r),
            Length.OfMm(q));
    }
}
