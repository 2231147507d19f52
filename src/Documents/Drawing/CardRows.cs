using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>Rows that cards for the bench are made of: headings, lines, large figures, boxes of caution, tables.</summary>
internal static class CardRows
{
    /// <summary>Lettering of running words, mm.</summary>
    public const double NoteMm = 3;

    /// <summary>A heading.</summary>
    public static FlowRow Said(string what) => new(10, (canvas, box) => canvas.Text(what, new Point(box.MinX, box.MinY + 2.2), Canvas.LargeMm, bold: true));

    /// <summary>A line of words with a dot.</summary>
    public static FlowRow Line(string text, double width, double size = Canvas.TextMm, bool bold = false) => new(TextSpace.WrappedMm(text, width - 5, size, bold) + 1.4, (canvas, box) =>
    {
        canvas.Fill(Path.Circle(new Point(box.MinX + 1.5, box.MaxY - 2.9), 0.7));
        canvas.Wrapped(text, new Point(box.MinX + 5, box.MaxY - 0.6), width - 5, size, bold);
    });

    /// <summary>A ticked row with a large figure and small words under it.</summary>
    public static FlowRow Big(string what, string figure, string more, double width) => new(Math.Max(15, 11.2 + TextSpace.WrappedMm(more, width - 12, NoteMm)), (canvas, box) =>
    {
        canvas.TickBox(box.MinX, box.MaxY - 7);
        var drawn = canvas.Text(what, new Point(box.MinX + 10, box.MaxY - 8.5), Canvas.TextMm);
        canvas.Fitted(figure, new Point(drawn.MaxX + 3, box.MaxY - 9.3), box.MaxX - drawn.MaxX - 3, Canvas.HeadingMm, bold: true);
        canvas.Wrapped(more, new Point(box.MinX + 10, box.MaxY - 11.3), width - 12, NoteMm);
        canvas.Line(new Point(box.MinX, box.MinY), new Point(box.MaxX, box.MinY), new Pen(0.18));
    });

    /// <summary>Words in a frame.</summary>
    /// <param name="text">The words.</param>
    /// <param name="width">Room across, mm.</param>
    /// <param name="gapMm">Room above and below the frame, mm.</param>
    public static FlowRow Boxed(string text, double width, double gapMm = 2)
    {
        var lines = TextSpace.Lines(text, width - 4, NoteMm, bold: false, mostLines: 14);
        var height = (lines.Length * TextSpace.LineMm(NoteMm)) + 3;
        return new FlowRow(height + (2 * gapMm), (canvas, box) =>
        {
            canvas.Frame4(new Box(box.MinX, box.MaxY - height - gapMm, box.MaxX, box.MaxY - gapMm), Pen.Wide);
            canvas.Wrapped(text, new Point(box.MinX + 2, box.MaxY - gapMm - 1), width - 4, NoteMm, mostLines: 14);
        });
    }

    /// <summary>A table.</summary>
    public static FlowRow Table(string title, ImmutableArray<Column> columns, IReadOnlyCollection<ImmutableArray<string>> rows, double width, double rowMm = 6.2) => new(TextTable.HeightMm(rows.Count, head: true, rowMm) + 5, (canvas, box) =>
        TextTable.Draw(canvas, new Point(box.MinX, box.MaxY - 3), width, title, columns, rows, rowMm));
}
