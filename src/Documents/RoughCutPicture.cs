using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>A blank with its rough cuts as a picture by itself.</summary>
public static class RoughCutPicture
{
    private const double WidthMm = 240;

    /// <summary>Draws it.</summary>
    public static Sheet Of(Results results, RoughCutPlan plan)
    {
        var blank = plan.Blank.Box;
        var inner = WidthMm - (2 * RoughCutView.RimMm);
        var height = (blank.Height * inner / blank.Width) + (2 * RoughCutView.RimMm);
        var canvas = new Canvas("rough-cuts", "Rough cuts", new SheetFrame(WidthMm, height, new Box(0, 0, WidthMm, height)));
        RoughCutView.Draw(canvas, plan, PieceView.Filling(results, blank, new Box(RoughCutView.RimMm, RoughCutView.RimMm, WidthMm - RoughCutView.RimMm, height - RoughCutView.RimMm)));
        return canvas.Done();
    }
}
