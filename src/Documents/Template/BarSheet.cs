using System.Collections.Immutable;
using System.Globalization;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>The sheet a printer is set up with: two bars at right angles, across the sheet and along the feed, stretched by the correction so far, and room to write what they measured.</summary>
public static class BarSheet
{
    /// <summary>Kind of the sheet.</summary>
    public const string Kind = "bars";

    /// <summary>How much of a roll it takes, mm.</summary>
    private const double OfRollMm = 230;

    /// <summary>Whether the paper is too narrow for bars of 100 mm, so that they are of 50 mm.</summary>
    public static bool IsHalf(PaperSize paper, double marginMm, PrintScale scale) => Frame(paper, marginMm).Inside.Width < CheckBars.Length(scale.Across, half: false);

    /// <summary>Draws it.</summary>
    /// <param name="printer">What the maker calls the printer.</param>
    /// <param name="paper">Paper.</param>
    /// <param name="marginMm">Margin the printer cannot print, mm.</param>
    /// <param name="scale">Correction so far.</param>
    /// <param name="date">Date printed on it.</param>
    public static Sheet Draw(string printer, PaperSize paper, double marginMm, PrintScale scale, DateOnly date)
    {
        var canvas = new Canvas(Kind, "Bar sheet", Frame(paper, marginMm));
        var box = canvas.Frame.Inside;
        var half = IsHalf(paper, marginMm, scale);
        var y = box.MaxY - Canvas.HeadingMm - 0.5;
        canvas.Fitted("Bar sheet: " + printer, new Point(box.MinX, y), box.Width, Canvas.HeadingMm, bold: true);
        y = canvas.Wrapped($"{(paper.Key == "roll" ? $"{Shown.Trimmed(paper.WidthMm, 1)} mm roll" : paper.Name)}, {date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)}. {Correction(scale)}", new Point(box.MinX, y - 3), box.Width);
        y = canvas.Wrapped("Print at 100 % / actual size, never \"fit to page\".", new Point(box.MinX, y - 1), box.Width, Canvas.LargeMm, bold: true);
        canvas.Line(new Point(box.MinX, y - 2), new Point(box.MaxX, y - 2), Pen.Wide);

        y -= 8;
        var level = new Box(box.MinX, y - CheckBars.Depth, box.MinX + CheckBars.Length(scale.Across, half), y);
        Add(canvas, CheckBars.Draw(level, upright: false, scale.Across, half, "across the sheet"));
        y = level.MinY - 6;
        var upright = new Box(box.MinX, y - CheckBars.Length(scale.Along, half), box.MinX + CheckBars.Depth, y);
        Add(canvas, CheckBars.Draw(upright, upright: true, scale.Along, half, "along the feed"));

        var left = upright.MaxX + 8;
        var width = box.MaxX - left;
        y = canvas.Wrapped("Measure from the middle of one end tick to the middle of the other, with calipers or a good steel rule.", new Point(left, y), width, mostLines: 9);
        foreach (var way in new[] { "Across measured", "Along measured" })
        {
            y -= 12;
            var words = canvas.Text(way, new Point(left, y), Canvas.TextMm, bold: true);
            canvas.Line(new Point(words.MaxX + 2, y - 1), new Point(Math.Max(words.MaxX + 4, Math.Min(box.MaxX, words.MaxX + 32)), y - 1), Pen.Narrow);
        }

        var meant = half ? "50 mm ones. Enter twice what they measure" : "100 mm ones. Enter what they measure";
        canvas.Wrapped($"The bars that count are the {meant} on the printer page of the desk, or write it under this printer in the shop file.", new Point(left, y - 7), width, mostLines: 9);
        return canvas.Done();
    }

    private static SheetFrame Frame(PaperSize paper, double marginMm) => SheetFrame.Of(paper.WidthMm, paper.Key == "roll" ? OfRollMm : paper.HeightMm, marginMm);

    private static string Correction(PrintScale scale) => scale == PrintScale.True
        ? "Not corrected."
        : $"Corrected: across × {Shown.Number(scale.Across, 4)}, along × {Shown.Number(scale.Along, 4)}.";

    private static void Add(Canvas canvas, IEnumerable<Mark> marks)
    {
        foreach (var m in marks) canvas.Add(m);
    }
}
