using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>Tags to tie to the bars and to the drops worth keeping: what it is, out of which heat, where it lies.</summary>
public static class BarTags
{
    /// <summary>Its key.</summary>
    public const string Key = "tags";

    /// <summary>Shorter drops get no tag unless another piece comes out of them, mm; common practice.</summary>
    public const double ShortestDropMm = 150;

    /// <summary>Most tags printed at once.</summary>
    public const int MostTags = 60;

    private const string Title = "Bar and drop tags";
    private const double HeightMm = 69;
    private const double FoldMm = 13;

    /// <summary>Draws its sheets; none without a count of pieces.</summary>
    public static ImmutableArray<Sheet> Draw(SheetRequest request)
    {
        if (request.Stock is not { } s) return [];
        const string Line = "Cut along the dashed lines, fold the top over wire or string, tie to the bar. Write the heat number on the tag of the drop before the bar is sawn: afterwards nobody knows it.";
        var first = SheetTop.New(request, Key, Title, Title, Line);
        var tags = NumberedBar.Of(s).SelectMany(b => new Action<Canvas, Box>?[] { (c, box) => Bar(c, box, request, b), IsKept(b.Cut) ? (c, box) => Drop(c, box, request, b) : null }).OfType<Action<Canvas, Box>>().Take(MostTags + 1).ToArray();
        var shown = tags.Take(MostTags).Chunk(2).Select(pair => new FlowRow(HeightMm, (canvas, box) =>
        {
            var half = 0.5 * box.Width;
            for (var i = 0; i < pair.Length; i++) Tag(canvas, new Box(box.MinX + (i * half), box.MinY, box.MinX + ((i + 1) * half), box.MaxY), pair[i]);
        }));
        var more = new FlowRow(8, (canvas, box) => canvas.Fitted($"Only the first {MostTags} tags are printed; the rest of the bars is cut in the same ways.", new Point(box.MinX, box.MinY + 2), box.Width));
        return Flow.Over(first, () => SheetTop.New(request, Key, Title, Title, "Continued."), head: null, tags.Length > MostTags ? shown.Append(more) : shown);
    }

    /// <summary>Whether a drop is worth a tag.</summary>
    internal static bool IsKept(BarCut cut) => cut.DropHoldsPiece || cut.Drop.Mm >= ShortestDropMm;

    private static void Tag(Canvas canvas, Box box, Action<Canvas, Box> inside)
    {
        var cut = new Pen(0.25, LineKind.Dashed);
        canvas.Frame4(box, cut);
        var fold = box.MaxY - FoldMm;
        canvas.Line(new Point(box.MinX, fold), new Point(box.MaxX, fold), new Pen(0.18));
        canvas.Text("fold here", new Point(box.MinX + 3, fold + 1.2), Canvas.SmallMm, ink: Ink.Grey);
        inside(canvas, new Box(box.MinX + 3, box.MinY + 2, box.MaxX - 3, fold));
    }

    private static void Bar(Canvas canvas, Box box, SheetRequest request, NumberedBar bar)
    {
        var word = request.Stock!.IsOnSheets ? "Sheet" : "Bar";
        var name = bar.Cut.Rack is { } rack ? $"{word} {bar.Number}: {rack.Name}" : $"{word} {bar.Number}";
        var y = Head(canvas, box, request, name, bar.Cut, bar.Cut.Length);
        var isShort = bar.Pieces.Length > 2;
        foreach (var (p, first, last) in bar.Pieces.Take(3))
        {
            var numbers = first == last ? $"piece {first}" : $"pieces {first} to {last}";
            canvas.Fitted(isShort ? $"{p.Results.Plan.Name} {p.Results.Plan.Revision}, {numbers}" : $"{p.Results.Plan.Name}", new Point(box.MinX, y -= 5.4), box.Width, Canvas.TextMm, bold: true);
            if (!isShort) canvas.Fitted($"revision {p.Results.Plan.Revision}, {numbers}", new Point(box.MinX, y -= 5), box.Width, Canvas.TextMm);
        }

        if (bar.Pieces.Length > 3) canvas.Fitted($"and {bar.Pieces.Length - 3} more patterns: cut map, {StockWords.Word(request.Stock)} {bar.Number}", new Point(box.MinX, y - 4), box.Width, Canvas.SmallMm);
        Foot(canvas, box, request);
    }

    private static void Drop(Canvas canvas, Box box, SheetRequest request, NumberedBar bar)
    {
        var y = Head(canvas, box, request, $"Drop of {StockWords.Word(request.Stock!)} {bar.Number}", bar.Cut, bar.Cut.Drop);
        canvas.Fitted(bar.Cut.DropHoldsPiece ? "long enough for another piece of this order" : "too short for another piece of this order", new Point(box.MinX, y - 5), box.Width, Canvas.TextMm);
        canvas.Fitted("length as planned; measured: __________", new Point(box.MinX, y - 11), box.Width, Canvas.TextMm);
        Foot(canvas, box, request);
    }

    /// <summary>Name, steel, size and the line for the heat number; gives where it ends.</summary>
    private static double Head(Canvas canvas, Box box, SheetRequest request, string name, BarCut cut, Length length)
    {
        string Size(Length l) => FigureText.Size(l, request.Units, brief: true);
        var y = box.MaxY - 7;
        canvas.Fitted(name, new Point(box.MinX, y), 0.52 * box.Width, Canvas.LargeMm, bold: true);
        canvas.Fitted(cut.Steel, new Point(box.MaxX, y), 0.45 * box.Width, Canvas.LargeMm, bold: true, anchor: TextAnchor.Right);
        canvas.Fitted($"{Size(cut.Thickness)} × {Size(cut.Width)}", new Point(box.MinX, y -= 6), box.Width, Canvas.TextMm);
        canvas.Fitted($"× {Size(length)} long", new Point(box.MinX, y -= 5), box.Width, Canvas.TextMm);
        canvas.Text("heat number", new Point(box.MinX, y -= 8), Canvas.TextMm);
        canvas.Line(new Point(box.MinX + 29, y - 0.6), new Point(box.MaxX, y - 0.6), Pen.Narrow);
        return y;
    }

    private static void Foot(Canvas canvas, Box box, SheetRequest request)
    {
        canvas.Text(request.Date.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture), new Point(box.MaxX, box.MinY + 1), Canvas.TextMm, anchor: TextAnchor.Right);
        canvas.Text("rack place", new Point(box.MinX, box.MinY + 1), Canvas.TextMm);
        canvas.Line(new Point(box.MinX + 26, box.MinY + 0.4), new Point(box.MaxX - 27, box.MinY + 0.4), Pen.Narrow);
    }
}
