using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Whether a drill is drawn out on the way, and after how deep a bite.</summary>
[Formula("bite after which a drill is drawn out", SourceTag.CommonPractice, "up to three diameters in one go; then the lesser of a diameter and a third of the thickness")]
public static class PeckRule
{
    /// <summary>The bite; null: in one go.</summary>
    public static Length? For(Length thickness, Length drill)
        => thickness.Mm <= (3 * drill.Mm) + 1e-9 ? null : Length.OfMm(Math.Min(drill.Mm, thickness.Mm / 3));
}
