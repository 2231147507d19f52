using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>The stock on the table seen from above: clamps as hatched boxes, zero, holes, outline, tabs and pins.</summary>
internal static class SetUpDrawing
{
    private const double MostMm = 82;
    private const double AboveMm = 13;
    private const double BelowMm = 13;
    private const double TabMm = 1.6;

    /// <summary>Draws it at the top of a room; gives the room below it.</summary>
    public static Box Draw(Canvas canvas, SheetRequest request, MachineProgram program, Box room)
    {
        var s = program.SetUp;
        Box Plan(Box b) => new(b.MinX + s.ZeroAt.X, b.MinY + s.ZeroAt.Y, b.MaxX + s.ZeroAt.X, b.MaxY + s.ZeroAt.Y);
        var stock = Plan(s.Stock);
        var real = s.Clamps.Aggregate(stock, (all, c) => all.With(Plan(c.Box))).With(s.ZeroAt);
        var most = new Box(room.MinX + 8, room.MaxY - MostMm - AboveMm, room.MaxX - 8, room.MaxY - AboveMm);
        var view = PieceView.Fit(request.Results, real, most);
        var spare = (most.Height - (real.Height * view.Factor)) / 2;
        view = PieceView.Fit(request.Results, real, most with { MinY = most.MinY + (2 * spare) });
        canvas.Scale = view.ScaleName;
        var on = view.On(real);

        canvas.Frame4(view.On(stock), new Pen(0.5));
        if (program.Wanted.Outline is { } shape) canvas.Stroke(view.On(shape.Transformed(Transform.Shift(s.ZeroAt))), new Pen(0.5));
        else canvas.Stroke(view.Outline, new Pen(0.25, LineKind.Dashed));
        foreach (var h in program.Wanted.Holes) Hole(canvas, view, h, s.ZeroAt);
        foreach (var p in s.Pins) canvas.Fill(Path.Circle(view.On(p.At + s.ZeroAt), Math.Max(0.8, p.DiameterMm / 2 * view.Factor)));
        foreach (var c in s.Clamps)
        {
            var box = view.On(Plan(c.Box));
            canvas.Hatch([new(box.MinX, box.MinY), new(box.MaxX, box.MinY), new(box.MaxX, box.MaxY), new(box.MinX, box.MaxY)]);
            canvas.Frame4(box, new Pen(0.7));
        }

        foreach (var t in program.Tabs) canvas.Fill(Path.Circle(view.On(t + s.ZeroAt), TabMm));
        Zero(canvas, view.On(s.ZeroAt));

        LabelRail.Draw(canvas, s.Clamps.Where(c => !s.Pins.Any(p => c.Box.Holds(p.At))).Select(c => new Pointer(c.Name, view.On(Plan(c.Box).Centre))).Concat(program.Tabs.Take(1).Select(t => new Pointer(program.Tabs.Length == 1 ? "tab" : $"{program.Tabs.Length} tabs", view.On(t + s.ZeroAt)))), on.MaxY + 5, room.MinX, room.MaxX, Canvas.TextMm, bold: true);
        LabelRail.Draw(canvas, program.Wanted.Holes.Select(h => new Pointer(h.Name, view.On(h.At + s.ZeroAt))).Append(new Pointer("ZERO", view.On(s.ZeroAt))).Concat(s.Pins.Skip(s.Pins.Any(p => p.At.Length < 1e-6) ? 1 : 0).Select(p => new Pointer("pin " + p.Name, view.On(p.At + s.ZeroAt)))), on.MinY - 10, room.MinX, room.MaxX, Canvas.TextMm, bold: true);
        var y = on.MinY - BelowMm - 3;
        canvas.Fitted($"Scale {view.ScaleName}; do not measure from this drawing. x to the right, y up, z up from the upper face.", new Point(room.MinX, y), room.Width, 3);
        canvas.Line(new Point(room.MinX, y - 2.5), new Point(room.MaxX, y - 2.5), Pen.Wide);
        return room with { MaxY = y - 3 };
    }

    private static void Hole(Canvas canvas, PieceView view, WantedHole hole, Point zero)
    {
        var (centre, radius) = (view.On(hole.At + zero), hole.DiameterMm / 2 * view.Factor);
        canvas.Stroke(Path.Circle(centre, radius), new Pen(0.35));
        if (radius > 0.6) canvas.CentreCross(centre, radius);
    }

    /// <summary>A quartered circle with arrows along x and y.</summary>
    private static void Zero(Canvas canvas, Point at)
    {
        canvas.Fill(Path.Circle(at, 2.2), Ink.White);
        canvas.Stroke(Path.Circle(at, 2.2), new Pen(0.5));
        foreach (var start in (ReadOnlySpan<double>)[0, Math.PI])
        {
            var arc = Arc.OfCircle(at, 2.2, start, Math.PI / 2);
            canvas.Fill(new Path([new Line(at, arc.Start), arc, new Line(arc.End, at)], closed: true));
        }

        canvas.Leader(at + new Point(2.2, 0), at + new Point(11, 0));
        canvas.Leader(at + new Point(0, 2.2), at + new Point(0, 11));
    }
}
