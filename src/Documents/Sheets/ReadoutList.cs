using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>The readout list of each machine with a readout: every tool's holes in the order they are visited, front face and back, with a tick for each.</summary>
internal static class ReadoutList
{
    /// <summary>Its key.</summary>
    public const string Key = "readout";

    private const string Title = "Readout list";
    private const double RowMm = 12;

    /// <summary>Draws its sheets; none without a machine with a readout.</summary>
    public static ImmutableArray<Sheet> Draw(SheetRequest request)
        => [.. request.Results.Drilling.ByMachine.Where(g => g.Machine is { HasReadout: true }).SelectMany(g => Face(request, g, 1).AddRange(Face(request, g, -1)))];

    private static ImmutableArray<Sheet> Face(SheetRequest request, HoleGroup group, int side)
    {
        var heading = $"Readout list, {(side > 0 ? "front" : "back")} face: {group.Machine!.Name}";
        var line = string.Join(" ", BenchView.Words(request)) + (side > 0 ? "" : " BACK FACE: turned over about its length, y counts the other way from the same edge. Check one hole first.")
            + " Come to every hole from the side of smaller x and y; when past it, go back well over the play and come again. " + HoleCard.Caution;
        var first = SheetTop.New(request, Key, Title, heading, line);
        var rows = ToolRounds.Of(group.Holes, request.Results.Bench).SelectMany(r => r.Holes.Select((h, i) => Row(request, h, i + 1, side)).Prepend(Tool(r)));
        return Flow.Over(first, () => SheetTop.New(request, Key, Title, heading, "Continued. " + BenchView.Words(request)[0]), null, rows, after: Notes.Draw);
    }

    private static FlowRow Tool(ToolRound round) => new(RowMm, (canvas, box) =>
    {
        canvas.Fitted($"{round.Tool}: {HoleStepText.Of(round.Work.Step)}", new Point(box.MinX, box.MinY + 3), box.Width, Canvas.LargeMm, bold: true);
        canvas.Line(new Point(box.MinX, box.MinY), new Point(box.MaxX, box.MinY), Pen.Wide);
    });

    private static FlowRow Row(SheetRequest request, PlacedHole hole, int number, int side) => new(RowMm, (canvas, box) =>
    {
        var at = request.Results.Bench.ToBench(hole.MadeAt);
        var third = (box.Width - 9) / 3;
        canvas.TickBox(box.MinX, (box.MinY + box.MaxY) / 2);
        canvas.Fitted($"{number}  {hole.Name}", new Point(box.MinX + 9, box.MaxY - 6.3), third - 2, Canvas.LargeMm, bold: true);
        Size(canvas, request, "x", at.X, box.MinX + 9 + third, third, box.MaxY);
        Size(canvas, request, "y", side * at.Y, box.MinX + 9 + (2 * third), third, box.MaxY);
        canvas.Line(new Point(box.MinX, box.MinY), new Point(box.MaxX, box.MinY), new Pen(0.18));
    });

    private static void Size(Canvas canvas, SheetRequest request, string axis, double mm, double x, double width, double top)
    {
        var inch = SizeBlock.InchFirst(request);
        string Written(bool inInch) => $"{FigureText.Figure(Length.OfMm(mm), inInch)} {(inInch ? "in" : "mm")}";
        canvas.Fitted($"{axis} {Written(inch)}", new Point(x, top - 6.3), width - 2, Canvas.LargeMm, bold: true);
        if (request.Units == UnitsShown.Both) canvas.Fitted(Written(!inch), new Point(x, top - 10.6), width - 2, 3);
    }
}
