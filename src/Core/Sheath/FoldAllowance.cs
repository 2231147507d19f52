using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Material a fold about the spine takes: half a circle through the middle of the material, π/2 (T + s).</summary>
/// <remarks>
/// The inner faces lie T apart, so the inner radius is T/2 and that of the middle of a material of thickness s is (T + s)/2.
/// The line that keeps its length is taken in the middle. Wet leather is pressed together on the inside, which puts it a little further in: common practice cuts as here and trims the edges after gluing.
/// </remarks>
[Formula("Material a fold about the spine takes, mm", "circle-arc", "Round spine, inner radius half the plate; about a square spine it is looser than the tightest fold, T + πs/2, by 0.57 T; line of unchanged length in the middle of the material")]
public static class FoldAllowance
{
    /// <summary>π/2 (T + s).</summary>
    /// <param name="plate">T, thickness of what it is folded round.</param>
    /// <param name="material">s, thickness of the material.</param>
    public static Length Of(Length plate, Length material) => 0.5 * Math.PI * (plate + material);
}
