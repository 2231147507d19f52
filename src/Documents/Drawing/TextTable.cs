using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>A column of a table of text.</summary>
/// <param name="Head">Its heading; empty for none.</param>
/// <param name="Share">Its share of the width.</param>
/// <param name="Anchor">Left or right.</param>
internal readonly record struct Column(string Head, double Share, TextAnchor Anchor = TextAnchor.Left);

/// <summary>A small table of one-line cells with a rule under every row.</summary>
internal static class TextTable
{
    /// <summary>Row heights to choose from, roomy first, mm.</summary>
    public static ImmutableArray<double> RowsMm { get; } = [6.2, 5.6, 5];

    /// <summary>Height of the table with a title and a head, mm.</summary>
    public static double HeightMm(int rows, bool head, double rowMm) => 7 + (head ? 4.6 : 0) + (rows * rowMm) + 1.5;

    /// <summary>Draws the table below a top left corner; gives the y below it.</summary>
    /// <param name="canvas">Where.</param>
    /// <param name="topLeft">Corner.</param>
    /// <param name="width">Width, mm.</param>
    /// <param name="title">Title over the table.</param>
    /// <param name="columns">Columns.</param>
    /// <param name="rows">Cells, row by row.</param>
    /// <param name="rowMm">Height of a row.</param>
    public static double Draw(Canvas canvas, Point topLeft, double width, string title, ImmutableArray<Column> columns, IEnumerable<ImmutableArray<string>> rows, double rowMm)
    {
        var y = topLeft.Y - 5;
        canvas.Fitted(title, new Point(topLeft.X, y), width, Canvas.TextMm, bold: true);
        y -= 2;
        var hasHead = columns.Any(c => c.Head.Length > 0);
        if (hasHead)
        {
            y -= 4.6;
            Cells(canvas, topLeft.X, y + 1.2, width, columns, [.. columns.Select(c => c.Head)], Canvas.SmallMm);
        }

        canvas.Line(new Point(topLeft.X, y), new Point(topLeft.X + width, y), Pen.Wide);
        foreach (var row in rows)
        {
            y -= rowMm;
            Cells(canvas, topLeft.X, y + ((rowMm - Canvas.TextMm) / 2) + 0.3, width, columns, row, Canvas.TextMm);
            canvas.Line(new Point(topLeft.X, y), new Point(topLeft.X + width, y), new Pen(0.18));
        }

        return y - 1.5;
    }

    private static void Cells(Canvas canvas, double x, double y, double width, ImmutableArray<Column> columns, ImmutableArray<string> cells, double heightMm)
    {
        for (var i = 0; i < columns.Length; i++)
        {
            var room = width * columns[i].Share;
            var right = columns[i].Anchor == TextAnchor.Right;
            canvas.Fitted(cells[i], new Point(right ? x + room - 1 : x + 0.5, y), room - 2, heightMm, anchor: columns[i].Anchor);
            x += room;
        }
    }
}
