using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>The guide-piece card of each drilling vise: which two holes take pins and why, the order of the holes, how far a drill can come out beside its place, and where the guide's holes lie as built.</summary>
internal static class GuideCard
{
    /// <summary>Its key.</summary>
    public const string Key = "guide";

    private const string Title = "Guide-piece card";
    private const string Caution = "Clamp guide and blank TOGETHER and both to the table, never hold them by hand: a drill that grabs spins the pair. A hardened guide chips drills and throws the chips: eyes covered. No gloves, sleeves or loose hair near the spindle; chuck key out. Ease off as the drill breaks through. Local rules and the machine's manual come first.";
    private const double TickColumn = 10;
    private const double NameColumn = 34;
    private const double DrillColumn = 31;
    private const double BesideColumn = 23;
    private const double RowMm = 16;

    /// <summary>Draws its sheets; none without a drilling vise, or without a hole it can drill.</summary>
    public static ImmutableArray<Sheet> Draw(SheetRequest request) => [.. GuidePiece.Of(request.Results).SelectMany(g => Sheets(request, g))];

    private static ImmutableArray<Sheet> Sheets(SheetRequest request, GuidePiece guide)
    {
        OpenSheet New() => SheetTop.New(request, Key, Title, $"Guide-piece card: {guide.Machine.Name}", Caution);
        var first = New();
        var width = first.Room.Width;
        var steps = GuideText.Steps(guide, request.Results, request.Units).Select(s => TickedLine.Of(s, width));
        var head = Head(request);
        var rows = guide.Holes.Select((h, i) => i == 0 ? TickedLine.Together(head, Row(request, h, i + 1)) : Row(request, h, i + 1));
        return Flow.Over(first with { Room = DrawPlaces(first, request, guide) }, New, null, steps.Concat(rows).Concat(Words(GuideText.Limits(guide, request.Units), width)), after: Notes.Draw);
    }

    private static IEnumerable<FlowRow> Words(IEnumerable<string> lines, double width)
        => lines.Select(l => new FlowRow(TextSpace.WrappedMm(l, width, 3) + 2, (canvas, box) => canvas.Wrapped(l, new Point(box.MinX, box.MaxY - 1), box.Width, 3)));

    /// <summary>The piece with its pins filled, the holes drilled through it numbered.</summary>
    private static Box DrawPlaces(OpenSheet sheet, SheetRequest request, GuidePiece guide)
    {
        var (canvas, room) = sheet;
        var view = PieceView.Fit(request.Results, request.Results.Plan.Outline.Bounds, new Box(room.MinX + 4, room.MaxY - 46, room.MaxX - 4, room.MaxY - 3));
        canvas.Scale = view.ScaleName;
        view.DrawPiece(canvas, new Pen(0.35));
        foreach (var pin in guide.Holes.Where(h => h.Turn != GuideTurn.Rest)) canvas.Fill(Path.Circle(view.On(pin.Hole.MadeAt), Math.Max(1, 0.35 * pin.Hole.MadeDiameter.Mm * view.Factor)));
        var under = view.On(request.Results.Plan.Outline.Bounds).MinY - 7;
        LabelRail.Draw(canvas, guide.Holes.Select((h, i) => new Pointer($"{i + 1} {h.Hole.Name}{(h.Turn == GuideTurn.Rest ? "" : " PIN")}", view.On(h.Hole.MadeAt))), under, room.MinX, room.MaxX, 3, bold: true);
        return room with { MaxY = under - 4 };
    }

    private static (double Drill, double Beside, double Built) Columns(Box box)
        => (box.MinX + TickColumn + NameColumn, box.MinX + TickColumn + NameColumn + DrillColumn, box.MinX + TickColumn + NameColumn + DrillColumn + BesideColumn);

    private static FlowRow Head(SheetRequest request) => new(12, (canvas, box) =>
    {
        var (drill, beside, built) = Columns(box);
        var unit = SizeBlock.InchFirst(request) ? "in" : "mm";
        void Two(double x, double width, string name, string under)
        {
            canvas.Fitted(name, new Point(x, box.MinY + 5.6), width - 2, Canvas.TextMm, bold: true);
            canvas.Fitted(under, new Point(x, box.MinY + 1.6), width - 2, Canvas.SmallMm);
        }

        Two(box.MinX + TickColumn, NameColumn, "Hole", "tick when drilled");
        Two(drill, DrillColumn, "Drill", "fits the guide");
        Two(beside, BesideColumn, "Beside", $"at most, {unit}");
        Two(built, box.MaxX - built, "Guide as built", $"x, y, diameter, {unit}, from the two edges");
        canvas.Line(new Point(box.MinX, box.MinY), new Point(box.MaxX, box.MinY), Pen.Wide);
    });

    private static FlowRow Row(SheetRequest request, GuideHole hole, int number) => new(RowMm, (canvas, box) =>
    {
        var inch = SizeBlock.InchFirst(request);
        var (drill, beside, built) = Columns(box);
        var (line, under) = (box.MaxY - 7, box.MinY + 2.4);
        canvas.TickBox(box.MinX, (box.MinY + box.MaxY) / 2);
        canvas.Fitted($"{number}  {hole.Hole.Name}", new Point(box.MinX + TickColumn, line), NameColumn - 2, Canvas.LargeMm, bold: true);
        canvas.Fitted(GuideText.Turn(hole), new Point(box.MinX + TickColumn, under), NameColumn - 2, 3);
        canvas.Fitted(hole.Drill?.Name ?? "punch", new Point(drill, line), DrillColumn - 2, Canvas.LargeMm, bold: true);
        canvas.Fitted(hole.Drill is null ? "no drill runs in it" : hole.Speed is { } s ? $"{Shown.Number(s.SetRpm, 0)} rpm" : "too fast a machine", new Point(drill, under), DrillColumn - 2, Canvas.TextMm);
        var most = Length.OfMm(Math.Ceiling((100 * hole.Walk.Mm) - 1e-6) / 100);
        canvas.Fitted(FigureText.Figure(most, inch), new Point(beside, line), BesideColumn - 2, Canvas.LargeMm, bold: true);
        canvas.Fitted(hole.IsMeasured ? "measured" : "not measured", new Point(beside, under), BesideColumn - 2, Canvas.SmallMm);
        DrawBuilt(canvas, request, hole, box with { MinX = built }, line, under);
        canvas.Line(new Point(box.MinX, box.MinY), new Point(box.MaxX, box.MinY), new Pen(0.18));
    });

    private static void DrawBuilt(Canvas canvas, SheetRequest request, GuideHole hole, Box box, double line, double under)
    {
        var (inch, third) = (SizeBlock.InchFirst(request), box.Width / 3);
        var (at, plan) = (request.Results.Bench.ToBench(hole.Hole.MadeAt), request.Results.Bench.ToBench(hole.Hole.At));
        Cell(0, "x", hole.Hole.AsBuilt is null ? null : at.X, plan.X);
        Cell(1, "y", hole.Hole.AsBuilt is null ? null : at.Y, plan.Y);
        Cell(2, "⌀", hole.Hole.AsBuilt?.Diameter?.Mm, hole.Hole.Diameter.Mm);

        void Cell(int i, string name, double? mm, double planned)
        {
            var x = box.MinX + (i * third);
            if (mm is { } built) canvas.Fitted(FigureText.Figure(Length.OfMm(built), inch), new Point(x, line), third - 1, Canvas.LargeMm, bold: true);
            else canvas.Line(new Point(x, line - 0.5), new Point(x + third - 3, line - 0.5), new Pen(0.25));
            canvas.Fitted($"{name} plan {FigureText.Figure(Length.OfMm(planned), inch)}", new Point(x, under), third - 2, Canvas.SmallMm);
        }
    }
}
