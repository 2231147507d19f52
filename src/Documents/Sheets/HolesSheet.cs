using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>The hole table: where each hole lies from two edges that exist at the bench, its size and drill, room to write down what was measured, and a tick.</summary>
internal static class HolesSheet
{
    /// <summary>Its key.</summary>
    public const string Key = "holes";

    private const string Title = "Hole table";

    private const double TickColumn = 9;
    private const double NameColumn = 24;
    private const double SizeColumn = 32;
    private const double BuiltColumn = 15;

    /// <summary>Draws its sheets; none without holes.</summary>
    public static ImmutableArray<Sheet> Draw(SheetRequest request)
    {
        var holes = request.Results.Holes;
        if (holes.IsDefaultOrEmpty) return [];
        var first = SheetTop.New(request, Key, Title, Title, string.Join(" ", BenchView.Words(request)));
        var room = DrawPlaces(first, request);
        return Flow.Over(
            first with { Room = room },
            () => SheetTop.New(request, Key, Title, Title, "Continued. " + BenchView.Words(request)[0]),
            Head(request),
            holes.Select(h => Row(request, h)),
            request.Units == UnitsShown.Mm ? null : new FlowRow(7, (canvas, box) => canvas.Fitted(SizeBlock.Legend, new Point(box.MinX, box.MinY + 1), box.Width, Canvas.SmallMm)),
            Notes.Draw);
    }

    private static Box DrawPlaces(OpenSheet sheet, SheetRequest request)
    {
        var (canvas, room) = sheet;
        var view = BenchView.Place(request, new Box(room.MinX + 10, room.MaxY - 64, room.MaxX - 4, room.MaxY - 9));
        canvas.Scale = view.ScaleName;
        BenchView.Draw(canvas, view);
        BenchView.DrawAxes(canvas, view);
        var box = view.On(BenchView.Stock(request.Results));
        var cornerBelow = view.On(request.Results.Bench.Corner).Y < box.Centre.Y;
        LabelRail.Draw(canvas, request.Results.Holes.Select(h => new Pointer(h.Name, view.On(h.MadeAt))), cornerBelow ? box.MaxY + 5 : box.MinY - 8, room.MinX, room.MaxX, 3, bold: true);
        return room with { MaxY = box.MinY - 11 };
    }

    private static (double X, double Y, double Size, double Built) Columns(Box box)
    {
        var block = (box.Width - TickColumn - NameColumn - SizeColumn - (2 * BuiltColumn)) / 2;
        var x = box.MinX + TickColumn + NameColumn;
        return (x, x + block, x + (2 * block), x + (2 * block) + SizeColumn);
    }

    private static FlowRow Head(SheetRequest request) => new(10, (canvas, box) =>
    {
        var (x, y, size, built) = Columns(box);
        var top = box.MinY + 5.6;
        var low = box.MinY + 1.6;
        void Two(double at, double width, string one, string two)
        {
            canvas.Fitted(one, new Point(at, top), width - 1, 3, bold: true);
            canvas.Fitted(two, new Point(at, low), width - 1, Canvas.SmallMm);
        }

        Two(box.MinX + TickColumn, NameColumn, "Hole", "use");
        Two(x, y - x, "x", SizeBlock.Head(request));
        Two(y, size - y, "y", SizeBlock.Head(request));
        Two(size, SizeColumn, request.Units == UnitsShown.Inch ? "⌀ in" : "⌀ mm", "drill owned");
        Two(built, BuiltColumn, "x", "as built");
        Two(built + BuiltColumn, BuiltColumn, "y", "as built");
        canvas.Line(new Point(box.MinX, box.MinY), new Point(box.MaxX, box.MinY), Pen.Wide);
    });

    private static void DrawDrill(Canvas canvas, (string Drill, string Nearest) drill, Box box)
    {
        var second = drill.Nearest.Length > 0;
        canvas.Fitted(drill.Drill, new Point(box.MinX, box.MaxY - (second ? 3.4 : 4.4)), box.Width, second ? Canvas.SmallMm : Canvas.TextMm);
        if (second) canvas.Fitted(drill.Nearest, new Point(box.MinX, box.MaxY - 6.9), box.Width, Canvas.SmallMm);
    }

    /// <summary>How far a hole as built lies from its plan, along x and y.</summary>
    private static void DrawOff(Canvas canvas, SheetRequest request, Point built, Point planned, Point at)
    {
        var off = request.Results.Bench.ToBench(built) - request.Results.Bench.ToBench(planned);
        foreach (var (mm, i) in (ReadOnlySpan<(double, int)>)[(off.X, 0), (off.Y, 1)])
        {
            var x = at.X + (i * BuiltColumn);
            canvas.Fitted("off plan", new Point(x, at.Y + 4.5), BuiltColumn - 1.5, Canvas.SmallMm);
            canvas.Fitted(FigureText.Off(Length.OfMm(mm), request.Units == UnitsShown.Inch), new Point(x, at.Y), BuiltColumn - 1.5, 3);
        }
    }

    private static FlowRow Row(SheetRequest request, PlacedHole hole)
    {
        var drill = DrillText.For(hole, request.Results.Shop);
        var height = drill.Nearest.Length > 0 ? 15.2 : 14;
        return new FlowRow(height, (canvas, box) =>
        {
            var (x, y, size, built) = Columns(box);
            var at = request.Results.Bench.ToBench(hole.MadeAt);
            var (line1, line2) = (box.MaxY - 6.3, box.MaxY - 11.7);
            canvas.TickBox(box.MinX, (box.MinY + box.MaxY) / 2);
            canvas.Fitted(hole.Name, new Point(box.MinX + TickColumn, line1), NameColumn - 1, Canvas.LargeMm, bold: true);
            canvas.Fitted(DrillText.Purpose(hole), new Point(box.MinX + TickColumn, line2), NameColumn - 1, 3);
            SizeBlock.Draw(canvas, request, box with { MinX = x, MaxX = y }, Length.OfMm(at.X));
            SizeBlock.Draw(canvas, request, box with { MinX = y, MaxX = size }, Length.OfMm(at.Y));
            canvas.Fitted("⌀" + FigureText.Figure(hole.MadeDiameter, request.Units == UnitsShown.Inch), new Point(size, line1), SizeColumn - 1, Canvas.LargeMm, bold: true);
            DrawDrill(canvas, drill, new Box(size, box.MinY, size + SizeColumn - 1, line1 - 1));
            if (hole.AsBuilt is not null) DrawOff(canvas, request, hole.MadeAt, hole.At, new Point(built + 0.5, line2));
            for (var i = 0; i < 3; i++) canvas.Line(new Point(built + (i * BuiltColumn) - 0.5, box.MinY), new Point(built + (i * BuiltColumn) - 0.5, box.MaxY), new Pen(0.18));
            canvas.Line(new Point(box.MinX, box.MinY), new Point(box.MaxX, box.MinY), new Pen(0.18));
        });
    }
}
