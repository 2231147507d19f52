using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>A step to tick off: a box and a few lines of words.</summary>
internal static class TickedLine
{
    private const double IndentMm = 10;
    private const double LeastMm = 9;
    private const int MostLines = 8;

    /// <summary>The row.</summary>
    /// <param name="text">What to do.</param>
    /// <param name="widthMm">Width of the sheet's room.</param>
    /// <param name="heightMm">Height of the lettering.</param>
    public static FlowRow Of(string text, double widthMm, double heightMm = Canvas.TextMm)
    {
        var lines = TextSpace.Lines(text, widthMm - IndentMm, heightMm, bold: false, MostLines).Length;
        var words = lines * TextSpace.LineMm(heightMm);
        return new FlowRow(Math.Max(LeastMm, words + 2.5), (canvas, box) =>
        {
            var middle = (box.MinY + box.MaxY) / 2;
            canvas.TickBox(box.MinX, middle);
            canvas.Wrapped(text, new Point(box.MinX + IndentMm, middle + (words / 2)), box.Width - IndentMm, heightMm, mostLines: MostLines);
        });
    }

    /// <summary>A heading over such steps.</summary>
    public static FlowRow Heading(string text) => new(11, (canvas, box) =>
    {
        canvas.Fitted(text, new Point(box.MinX, box.MinY + 3), box.Width, Canvas.LargeMm, bold: true);
        canvas.Line(new Point(box.MinX, box.MinY + 1), new Point(box.MaxX, box.MinY + 1), Pen.Narrow);
    });

    /// <summary>Two rows that stay on one sheet.</summary>
    public static FlowRow Together(FlowRow first, FlowRow second) => new(first.HeightMm + second.HeightMm, (canvas, box) =>
    {
        first.Draw(canvas, box with { MinY = box.MaxY - first.HeightMm });
        second.Draw(canvas, box with { MaxY = box.MaxY - first.HeightMm });
    });
}
