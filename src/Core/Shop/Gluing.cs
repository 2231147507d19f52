using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>How a shop glues handles.</summary>
/// <param name="PotLifeMinutes">Time a mixed pot stays workable, min, by the glue maker's sheet.</param>
/// <param name="PieceMinutes">Time to glue and clamp one piece, min.</param>
/// <param name="Clamps">Clamps owned; null when not said.</param>
/// <param name="ClampsPerPiece">Clamps a piece takes.</param>
/// <param name="Line">Thickness of glue left between the parts.</param>
/// <param name="CureHours">Time until the handle may be shaped, h.</param>
public sealed record Gluing(double PotLifeMinutes, double PieceMinutes, int? Clamps, int ClampsPerPiece, Length Line, double CureHours)
{
    /// <summary>When the shop does not say: a slow two-part epoxy; common practice.</summary>
    public static Gluing Usual { get; } = new(60, 6, null, 4, Length.OfMm(0.15), 24);

    /// <summary>Whether the shop says it.</summary>
    public bool IsSaid { get; init; }
}
