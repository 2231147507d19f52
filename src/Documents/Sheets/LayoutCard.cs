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
            Stations(request.Results).Select(s => Row(request, s)),
            request.Units == UnitsShown.Mm ? null : new FlowRow(7, (canvas, box) => canvas.Fitted(SizeBlock.Legend, new Point(box.MinX, box.MinY + 1), box.Width, Canvas.SmallMm)),
            Notes.Draw);
        return sheets.Add(Face(request, back: true).Canvas.Done());
    }

    private static OpenSheet Face(SheetRequest request, bool back)
    {
        var words = string.Join(" ", BenchView.Words(request));
        var line = back
            ? "BACK FACE. The work is turned over about its length: x still from the same end, y still from the same edge, which now lies on the other side. Check one hole against the front before punching."
            : $"FRONT FACE UP. {words} Measure every line from these two edges, never from the line before.";
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
        if (back) Notes.Draw(canvas, rest with { MaxY = rest.MaxY - 8 });
        return new OpenSheet(canvas, rest);
    }

    /// <summary>A line or a spot to lay out: its name and where it lies from the two edges, mm; null when it has no such line.</summary>
    private readonly record struct Station(string Name, double? X, double? Y, bool Punched);

    private static IEnumerable<Station> Stations(Results results)
    {
        var b = results.Plan.Outline.Bounds;
        var (p, q) = (results.Bench.ToBench(new Point(b.MinX, b.MinY)), results.Bench.ToBench(new Point(b.MaxX, b.MaxY)));
        yield return new("piece, near", Math.Min(p.X, q.X), Math.Min(p.Y, q.Y), false);
        foreach (var hole in results.Holes.OrderBy(h => results.Bench.ToBench(h.MadeAt).X))
        {
            var at = results.Bench.ToBench(hole.MadeAt);
            yield return new(hole.Name, at.X, at.Y, true);
        }

        yield return new("piece, far", Math.Max(p.X, q.X), Math.Max(p.Y, q.Y), false);
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

    private static FlowRow Row(SheetRequest request, Station station) => new(SizeBlock.HeightMm(request.Units), (canvas, box) =>
    {
        var (x, y, ticks) = Columns(box);
        var middle = (box.MinY + box.MaxY) / 2;
        canvas.Fitted(station.Name, new Point(box.MinX, middle - 2), NameColumn - 1, station.Punched ? Canvas.LargeMm : 3, bold: true);
        if (station.X is { } sx) SizeBlock.Draw(canvas, request, box with { MinX = x, MaxX = y }, Length.OfMm(sx));
        if (station.Y is { } sy) SizeBlock.Draw(canvas, request, box with { MinX = y, MaxX = ticks }, Length.OfMm(sy));
        for (var i = 0; i < (station.Punched ? 3 : 1); i++) canvas.TickBox(ticks + ((i + 0.5) * TickColumn) - (Canvas.TickMm / 2), middle);
        canvas.Line(new Point(box.MinX, box.MinY), new Point(box.MaxX, box.MinY), new Pen(0.18));
    });
}
