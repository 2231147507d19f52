using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>The readout list of each machine with a readout: how its zero is found, every tool's holes in the order they are visited with where to go past for the play, clamping anew where the table is short, the back face, and further pieces in the bar.</summary>
internal static class ReadoutList
{
    /// <summary>Its key.</summary>
    public const string Key = "readout";

    private const string Title = "Readout list";
    private const string BackTitle = "Readout list, back face";
    private const double RowMm = 13;
    private const double FigureMm = 7;
    private const double TickColumn = 10;
    private const double NameColumn = 44;
    private const int TicksAcross = 6;

    /// <summary>Draws its sheets; none without a machine with a readout.</summary>
    public static ImmutableArray<Sheet> Draw(SheetRequest request)
        =>
        [
            .. request.Results.Drilling.ByMachine.Where(g => g.Machine is { HasReadout: true })
                .Select(g => MachineWay.Of(g, request.Results.Bench)!)
                .SelectMany(w => Sheets(request, w, Title, $"Readout list: {w.Machine.Name}", Front).AddRange(Sheets(request, w, BackTitle, $"Readout list, back face: {w.Machine.Name}", Back))),
        ];

    private static ImmutableArray<Sheet> Sheets(SheetRequest request, MachineWay way, string title, string heading, Func<SheetRequest, MachineWay, double, IEnumerable<FlowRow>> rows)
    {
        OpenSheet New() => SheetTop.New(request, Key, title, heading, HoleCard.Caution);
        var first = New();
        return Flow.Over(first, New, Head(request), rows(request, way, first.Room.Width), after: Notes.Draw);
    }

    private static IEnumerable<FlowRow> Front(SheetRequest request, MachineWay way, double width)
    {
        foreach (var step in TouchOff.Steps(request.Results, request.Units)) yield return TickedLine.Of(step, width);
        yield return TickedLine.Of(ReadoutText.Play(way, request.Units), width);
        foreach (var clamping in way.Clampings)
        {
            if (clamping != way.Clampings[0])
            {
                var steps = ReadoutText.ClampAnew(clamping, request.Results.Bench, request.Units);
                yield return TickedLine.Together(TickedLine.Heading("Clamp anew"), TickedLine.Of(steps[0], width));
                foreach (var step in steps.Skip(1)) yield return TickedLine.Of(step, width);
            }

            foreach (var row in clamping.Tools.SelectMany(t => Tool(request, t))) yield return row;
        }

        foreach (var (line, i) in ReadoutText.MorePieces(request.Results, request.Units).Select((l, i) => (l, i)))
            yield return i == 0 ? TickedLine.Together(TickedLine.Heading("More pieces in the bar"), TickedLine.Of(line, width)) : TickedLine.Of(line, width);
    }

    private static IEnumerable<FlowRow> Back(SheetRequest request, MachineWay way, double width)
    {
        yield return TickedLine.Of("Turn the work over about its length: the same end, the same edge, which now lies on the other side, so y counts the other way. Zero again as on the front list.", width);
        yield return TickedLine.Of("Go to the first hole and look through it before anything is cut: the spindle must stand over its middle.", width);
        yield return TickedLine.Of(ReadoutText.Play(way, request.Units), width);
        foreach (var (stop, i) in way.Back(request.Results.Bench).Select((s, i) => (s, i + 1)))
            yield return Row(request, stop, i, "⌀" + FigureText.Size(stop.Hole.MadeDiameter, Single(request), brief: true));
    }

    private static IEnumerable<FlowRow> Tool(SheetRequest request, ToolWay tool)
    {
        var heading = TickedLine.Heading(ReadoutText.Tool(tool.Round.Work, Single(request)));
        var rows = tool.Round.Work.Speed is null ? ByHand(tool.Round.Holes) : tool.Stops.Select((s, i) => Row(request, s, i + 1, tool.Round.Tool));
        return rows.Select((row, i) => i == 0 ? TickedLine.Together(heading, row) : row);
    }

    private static IEnumerable<FlowRow> ByHand(ImmutableArray<PlacedHole> holes)
        => holes.Chunk(TicksAcross).Select(some => new FlowRow(10, (canvas, box) =>
        {
            for (var i = 0; i < some.Length; i++)
            {
                var left = box.MinX + (i * box.Width / TicksAcross);
                canvas.TickBox(left, box.MinY + 5);
                canvas.Fitted(some[i].Name, new Point(left + 9, box.MinY + 2.6), (box.Width / TicksAcross) - 10, Canvas.LargeMm, bold: true);
            }
        }));

    private static (double X, double Y) Columns(Box box) => (box.MinX + TickColumn + NameColumn, box.MinX + ((box.Width + TickColumn + NameColumn) / 2));

    private static FlowRow Head(SheetRequest request) => new(6.5, (canvas, box) =>
    {
        var (x, y) = Columns(box);
        var unit = SizeBlock.InchFirst(request) ? "in" : "mm";
        canvas.Text("Hole", new Point(box.MinX + TickColumn, box.MinY + 1.8), Canvas.TextMm, bold: true);
        canvas.Text($"x, {unit}", new Point(x, box.MinY + 1.8), Canvas.TextMm, bold: true);
        canvas.Text($"y, {unit}", new Point(y, box.MinY + 1.8), Canvas.TextMm, bold: true);
        canvas.Line(new Point(box.MinX, box.MinY), new Point(box.MaxX, box.MinY), Pen.Wide);
    });

    private static FlowRow Row(SheetRequest request, WayStop stop, int number, string under) => new(RowMm, (canvas, box) =>
    {
        var (x, y) = Columns(box);
        canvas.TickBox(box.MinX, (box.MinY + box.MaxY) / 2);
        canvas.Fitted($"{number}  {stop.Hole.Name}", new Point(box.MinX + TickColumn, box.MaxY - 6.4), NameColumn - 2, Canvas.LargeMm, bold: true);
        canvas.Fitted(under, new Point(box.MinX + TickColumn, box.MinY + 1.6), NameColumn - 2, 3);
        Size(canvas, request, stop.At.X, stop.PastXMm, box with { MinX = x, MaxX = y });
        Size(canvas, request, stop.At.Y, stop.PastYMm, box with { MinX = y });
        canvas.Line(new Point(box.MinX, box.MinY), new Point(box.MaxX, box.MinY), new Pen(0.18));
    });

    private static void Size(Canvas canvas, SheetRequest request, double mm, double? past, Box box)
    {
        var inch = SizeBlock.InchFirst(request);
        string Written(double value, bool inInch) => FigureText.Figure(Length.OfMm(value), inInch).Replace('-', '−');
        var figure = canvas.Fitted(Written(mm, inch), new Point(box.MinX, box.MinY + 3.2), box.Width - 2, FigureMm, bold: true);
        var (left, room) = (figure.MaxX + 2, box.MaxX - figure.MaxX - 3);
        if (request.Units == UnitsShown.Both) canvas.Fitted(Written(mm, !inch) + (inch ? " mm" : " in"), new Point(left, box.MinY + 7.4), room, 3);
        if (past is { } first) canvas.Fitted("first " + Written(first, inch), new Point(left, box.MinY + 2.6), room, 3, bold: true);
    }

    private static UnitsShown Single(SheetRequest request) => SizeBlock.InchFirst(request) ? UnitsShown.Inch : UnitsShown.Mm;
}
