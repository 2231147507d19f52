using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>The layout card: running dimensions from the two datum edges, never chained; a table of lines to scribe with ticks for scribing, pricking and punching; and the same seen from the back face.</summary>
internal static class LayoutCard
{
    /// <summary>Its key.</summary>
    public const string Key = "layout";

    private const string Title = "Layout card";
    private const double NameColumn = 26;
    private const double TickColumn = 17;

    /// <summary>Draws its sheets.</summary>
    public static ImmutableArray<Sheet> Draw(SheetRequest request)
    {
        var front = Face(request, back: false);
        var sheets = Flow.Over(
            front,
            () => SheetTop.New(request, Key, Title, Title, "Continued. " + BenchView.Words(request)[0]),
            Head(request),
            LayoutStation.Of(request.Results).Select(s => Row(request, s)),
            request.Units == UnitsShown.Mm ? null : new FlowRow(7, (canvas, box) => canvas.Fitted(SizeBlock.Legend, new Point(box.MinX, box.MinY + 1), box.Width, Canvas.SmallMm)),
            Notes.Draw);
        var back = Face(request, back: true);
        return sheets.AddRange(Flow.Over(
            back,
            () => SheetTop.New(request, Key, Title, Title, "Continued. " + BenchView.Words(request)[0]),
            null,
            [.. Flagged(request, back.Room.Width), .. ReadoutText.MorePieces(request.Results, request.Units).Select(l => TickedLine.Of(l, back.Room.Width))],
            after: Notes.Draw));
    }

    /// <summary>In words what must not be set by sixty-fourths.</summary>
    private static IEnumerable<FlowRow> Flagged(SheetRequest request, double width)
    {
        if (request.Units == UnitsShown.Mm) yield break;
        var all = LayoutStation.Of(request.Results);
        string Of(string axis, Func<LayoutStation, double> mm)
            => string.Join(", ", all.Where(s => SizeBlock.IsFlagged(SixtyFourths.Nearest(Length.OfMm(mm(s))))).Select(s => s.Name.Replace(",", "", StringComparison.Ordinal))) is { Length: > 0 } names ? $"{axis} of {names}" : "";
        var both = string.Join("; ", new[] { Of("x", s => s.X), Of("y", s => s.Y) }.Where(x => x.Length > 0));
        if (both.Length == 0) yield break;
        var text = $"On both faces: not by sixty-fourths, which miss by more than 0.1 mm (0.004 in): {both}. Set {(request.Units == UnitsShown.Inch ? "the decimals" : "mm or the decimals")}.";
        yield return new FlowRow(TextSpace.WrappedMm(text, width, 3) + 3, (canvas, box) => canvas.Wrapped(text, new Point(box.MinX, box.MaxY - 1), box.Width, 3));
    }

    private static OpenSheet Face(SheetRequest request, bool back)
    {
        var words = string.Join(" ", BenchView.Words(request));
        var line = back
            ? "BACK FACE. The work is turned over about its length: x still from the same end, y still from the same edge, which now lies on the other side. Check one hole against the front before punching."
            : $"FRONT FACE UP. {words} Measure every line from these two edges, never from the line before. Eyes covered when punching; the scriber is a needle: put it down point away.";
        var (canvas, room) = SheetTop.New(request, Key, back ? Title + ", back face" : Title, back ? "Layout card, back face" : "Layout card, front face", line);
        var fromLeft = request.Results.Bench.AlongSign > 0;
        const double Near = 9;
        const double Far = 32;
        var place = new Box(room.MinX + (fromLeft ? Near : Far), room.MaxY - (back ? 120 : 92), room.MaxX - (fromLeft ? Far : Near), room.MaxY - (back ? 36 : 30));
        var view = BenchView.Place(request, place, back);
        canvas.Scale = view.ScaleName;
        BenchView.Draw(canvas, view);
        var under = RunningDimensions.Draw(canvas, request, view, room);
        var box = view.On(BenchView.Stock(request.Results));
        LabelRail.Draw(canvas, request.Results.Holes.Select(h => new Pointer(h.Name, view.On(h.MadeAt))), box.MinY - 7, box.MinX, box.MaxX, 3, bold: true);
        var rest = room with { MaxY = Math.Min(under, box.MinY - 9) - 1.5 };
        return new OpenSheet(canvas, back ? rest with { MaxY = rest.MaxY - 6 } : rest);
    }

    private static (double X, double Y, double Ticks) Columns(Box box)
    {
        var block = (box.Width - NameColumn - (3 * TickColumn)) / 2;
        return (box.MinX + NameColumn, box.MinX + NameColumn + block, box.MaxX - (3 * TickColumn));
    }

    private static FlowRow Head(SheetRequest request) => new(10, (canvas, box) =>
    {
        var (x, y, ticks) = Columns(box);
        canvas.Text("Line", new Point(box.MinX, box.MinY + 5.6), 3, bold: true);
        canvas.Text("x", new Point(x, box.MinY + 5.6), 3, bold: true);
        canvas.Text("y", new Point(y, box.MinY + 5.6), 3, bold: true);
        canvas.Fitted(SizeBlock.Head(request), new Point(x, box.MinY + 1.6), y - x - 1, Canvas.SmallMm);
        canvas.Fitted(SizeBlock.Head(request), new Point(y, box.MinY + 1.6), ticks - y - 1, Canvas.SmallMm);
        foreach (var (name, i) in (ReadOnlySpan<(string, int)>)[("scribe", 0), ("prick", 1), ("punch", 2)])
        {
            canvas.Text(name, new Point(ticks + ((i + 0.5) * TickColumn), box.MinY + 1.6), 3, anchor: TextAnchor.Middle);
        }

        canvas.Line(new Point(box.MinX, box.MinY), new Point(box.MaxX, box.MinY), Pen.Wide);
    });

    private static FlowRow Row(SheetRequest request, LayoutStation station) => new(SizeBlock.HeightMm(request.Units), (canvas, box) =>
    {
        var (x, y, ticks) = Columns(box);
        var middle = (box.MinY + box.MaxY) / 2;
        canvas.Fitted(station.Name, new Point(box.MinX, middle - 2), NameColumn - 1, station.IsPunched ? Canvas.LargeMm : 3, bold: true);
        SizeBlock.Draw(canvas, request, box with { MinX = x, MaxX = y }, Length.OfMm(station.X));
        SizeBlock.Draw(canvas, request, box with { MinX = y, MaxX = ticks }, Length.OfMm(station.Y));
        for (var i = 0; i < (station.IsPunched ? 3 : 1); i++) canvas.TickBox(ticks + ((i + 0.5) * TickColumn) - (Canvas.TickMm / 2), middle);
        canvas.Line(new Point(box.MinX, box.MinY), new Point(box.MaxX, box.MinY), new Pen(0.18));
    });
}
