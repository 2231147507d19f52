using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.UseCases;

/// <summary>Mirrors the whole piece about its middle: outline, edge, plunge line, grip, datum, holes and rows. A bevel on one face is then on the other hand.</summary>
/// <param name="LeftRight">Left and right change places; else top and bottom.</param>
public sealed record MirrorPiece(bool LeftRight) : PlanChange
{
    /// <inheritdoc/>
    internal override Checked<PlanFile> Of(PlanFile file) => PieceMap.Mirrored(file, LeftRight);
}
