using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.UseCases;

/// <summary>The outline and the holes as a flat drawing for other programs, in the plan's axes.</summary>
internal static class PieceDrawing
{
    /// <summary>The drawing.</summary>
    public static FlatDrawing Of(Results r) => new(
        $"{r.Plan.Name} rev {r.Plan.Revision}",
        [new DrawnPath("OUTLINE", r.Plan.Outline)],
        [.. r.Holes.Select(h => new DrawnCircle("HOLES", h.Name, h.MadeAt, h.MadeDiameter.Mm))]);
}
