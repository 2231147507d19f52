using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>A length to be read at the bench: the leading unit large, then the other unit, and the nearest 1/64 in with what it costs; a 1/64 more than 0.1 mm off is marked.</summary>
internal static class SizeBlock
{
    /// <summary>A 1/64 in further off than this is marked, mm: about what a scriber and a good rule can set (common practice).</summary>
    public const double MarkedErrorMm = 0.1;

    /// <summary>What the mark means; goes under every table that has it.</summary>
    public const string Legend = "1/64 in: nearest sixty-fourth and its error in mm. ▲ = more than 0.1 mm off: set the decimals or mm instead.";

    /// <summary>Whether a 1/64 in is further off than can be left.</summary>
    public static bool IsFlagged(SixtyFourths near) => Math.Abs(near.Error.Mm) > MarkedErrorMm;

    /// <summary>Height of the block, mm.</summary>
    public static double HeightMm(UnitsShown units) => units == UnitsShown.Mm ? 9.5 : 13;

    /// <summary>Whether inches lead.</summary>
    public static bool InchFirst(SheetRequest request)
        => request.Units == UnitsShown.Inch || (request.Units == UnitsShown.Both && request.Results.Plan.Units == LengthUnit.Inch);

    /// <summary>Heading of a column of such blocks.</summary>
    public static string Head(SheetRequest request) => request.Units switch
    {
        UnitsShown.Mm => "mm",
        UnitsShown.Inch => "in, 1/64 in and error",
        _ => InchFirst(request) ? "in, mm, 1/64 in and error" : "mm, in, 1/64 in and error",
    };

    /// <summary>Draws the block into a box.</summary>
    public static void Draw(Canvas canvas, SheetRequest request, Box box, Length length)
    {
        var inchFirst = InchFirst(request);
        var line = box.MaxY - 6.3;
        var leading = FigureText.Figure(length, inchFirst);
        var room = box.Width - 3.5;
        canvas.Fitted(leading, new Point(box.MinX + 24, line), 24, Canvas.LargeMm, bold: true, anchor: TextAnchor.Right);
        if (request.Units == UnitsShown.Mm) return;
        if (request.Units == UnitsShown.Both) canvas.Fitted(FigureText.Figure(length, !inchFirst), new Point(box.MinX + room, line), room - 25.5, anchor: TextAnchor.Right);
        var near = SixtyFourths.Nearest(length);
        line = box.MaxY - 11.7;
        var error = Math.Abs(near.Error.Mm) < 0.0005 ? "±0" : (near.Error.Mm > 0 ? "+" : "−") + Shown.Number(Math.Abs(near.Error.Mm), 3);
        canvas.Fitted(near.ToString(), new Point(box.MinX + 24, line), 24, anchor: TextAnchor.Right);
        canvas.Fitted(IsFlagged(near) ? "▲ " + error : error, new Point(box.MinX + room, line), room - 25.5, anchor: TextAnchor.Right);
    }
}
