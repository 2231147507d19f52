using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>Starts a sheet: its heading and one line on what it is for.</summary>
internal static class SheetTop
{
    /// <summary>A new sheet with heading; the room below it.</summary>
    /// <param name="request">What it is drawn for.</param>
    /// <param name="kind">Kind of sheet.</param>
    /// <param name="title">Title for the title block.</param>
    /// <param name="heading">Heading.</param>
    /// <param name="line">What it is for; may be broken over lines.</param>
    public static OpenSheet New(SheetRequest request, string kind, string title, string heading, string line)
    {
        var canvas = new Canvas(kind, title, SheetFrame.For(request));
        var box = canvas.Frame.Content;
        var y = box.MaxY - Canvas.HeadingMm - 0.5;
        canvas.Fitted(heading, new Point(box.MinX, y), box.Width, Canvas.HeadingMm, bold: true);
        y -= 3;
        if (line.Length > 0) y = canvas.Wrapped(line, new Point(box.MinX, y), box.Width);
        y -= 1.5;
        canvas.Line(new Point(box.MinX, y), new Point(box.MaxX, y), Pen.Wide);
        return new OpenSheet(canvas, box with { MaxY = y - 3 });
    }
}
