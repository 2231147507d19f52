using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>One bar with its pieces as a picture by itself.</summary>
public static class BarPicture
{
    private const double WidthMm = 260;

    /// <summary>Draws it.</summary>
    public static Sheet Of(StockPlan stock, BarCut cut)
    {
        var scale = cut.Length.Mm / (WidthMm - 2);
        var height = (cut.Width.Mm / scale) + 2;
        var canvas = new Canvas("bar", "Bar", new SheetFrame(WidthMm, height, new Box(0, 0, WidthMm, height)));
        BarView.Draw(canvas, stock, cut, new Point(1, 1), scale);
        return canvas.Done();
    }
}
