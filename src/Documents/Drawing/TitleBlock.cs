using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>The title block along the bottom of a sheet, with the fields of ISO 7200: title, revision, date, sheet number and number of sheets; and for the bench scale, units, steel and room for piece numbers.</summary>
internal static class TitleBlock
{
    /// <summary>Height, mm.</summary>
    public const double HeightMm = 20;

    private const double LabelMm = 1.8;

    /// <summary>Draws the block of sheet <paramref name="number"/> of <paramref name="count"/>.</summary>
    /// <param name="request">What the packet is drawn for.</param>
    /// <param name="sheet">The sheet.</param>
    /// <param name="number">From 1.</param>
    /// <param name="count">Sheets in the packet.</param>
    public static Sheet AddTo(SheetRequest request, Sheet sheet, int number, int count)
    {
        var frame = SheetFrame.Of(sheet.WidthMm, sheet.HeightMm, request.MarginMm);
        var canvas = new Canvas(sheet.Kind, sheet.Title, frame) { Scale = sheet.Scale };
        foreach (var mark in sheet.Marks) canvas.Add(mark);
        var plan = request.Results.Plan;
        var box = frame.Title;
        var middle = (box.MinY + box.MaxY) / 2;
        canvas.Shade(box, Ink.White);
        canvas.Frame4(box, Pen.Wide);
        canvas.Line(new Point(box.MinX, middle), new Point(box.MaxX, middle), Pen.Narrow);

        Row(canvas, box with { MinY = middle }, [
            (0.36, "Title", plan.Name, true),
            (0.24, "This sheet", sheet.Title, false),
            (0.11, "Revision", plan.Revision, true),
            (0.16, "Date", request.Date.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture), false),
            (0.13, "Sheet", $"{number} of {count}", true),
        ]);
        Row(canvas, box with { MaxY = middle }, [
            (0.36, "Steel and bar", SteelLine(plan, request.Units), false),
            (0.11, "Scale", sheet.Scale.Length == 0 ? "–" : sheet.Scale, false),
            (0.13, "Units", Units(request.Units), false),
            (0.40, "Piece numbers", "", false),
        ]);
        return canvas.Done();
    }

    private static void Row(Canvas canvas, Box row, ReadOnlySpan<(double Share, string Label, string Value, bool Bold)> cells)
    {
        var x = row.MinX;
        foreach (var (share, label, value, bold) in cells)
        {
            var width = row.Width * share;
            if (x > row.MinX) canvas.Line(new Point(x, row.MinY), new Point(x, row.MaxY), Pen.Narrow);
            canvas.Text(label, new Point(x + 1.2, row.MaxY - LabelMm - 1), LabelMm);
            if (value.Length > 0) canvas.Fitted(value, new Point(x + 1.2, row.MinY + 1.7), width - 2.4, Canvas.TextMm, bold);
            x += width;
        }
    }

    private static string Units(UnitsShown units) => units switch
    {
        UnitsShown.Mm => "mm",
        UnitsShown.Inch => "inch",
        _ => "mm and inch",
    };

    private static string SteelLine(Plan plan, UnitsShown units)
    {
        var sizes = new[] { plan.Stock.Thickness, plan.Stock.Width }.OfType<Length>();
        var bar = units == UnitsShown.Inch
            ? string.Join(" × ", sizes.Select(l => Shown.Trimmed(l.Inches, 3))) + " in"
            : string.Join(" × ", sizes.Select(l => Shown.Trimmed(l.Mm, 2))) + " mm";
        return $"{plan.Stock.Steel}, {bar}";
    }
}
