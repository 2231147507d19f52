using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>The dimensioned drawing of the cover: outline, edge, bevel, holes by name, grip, balance and percussion points; sizes from the datum, never chained.</summary>
internal static class CoverDrawing
{
    private const double AboveMm = 12.5;
    private const double BelowMm = 36;
    private const double BesideMm = 23;

    /// <summary>Draws it; gives the y below it.</summary>
    public static double Draw(Canvas canvas, SheetRequest request, Box room)
    {
        var results = request.Results;
        var plan = results.Plan;
        var bounds = plan.Outline.Bounds;
        var place = new Box(room.MinX + 1.5, room.MinY + BelowMm, room.MaxX - BesideMm, room.MaxY - AboveMm);
        var view = PieceView.Fit(results, bounds, place);

        // up against the top of its room
        var spare = (place.Height - (bounds.Height * view.Factor)) / 2;
        view = PieceView.Fit(results, bounds, place with { MinY = place.MinY + (2 * spare) });
        canvas.Scale = view.ScaleName;
        var on = view.On(bounds);

        var pointers = Features(canvas, view);
        view.DrawPiece(canvas, Pen.Wide);
        DrawBalance(canvas, view);

        LabelRail.Draw(canvas, pointers.Where(p => p.Tip.Y >= on.Centre.Y), on.MaxY + 8, room.MinX, room.MaxX, 3);
        LabelRail.Draw(canvas, pointers.Where(p => p.Tip.Y < on.Centre.Y), on.MinY - 9, room.MinX, room.MaxX, 3);

        var units = request.Units;
        var y = on.MinY - (pointers.Any(p => p.Tip.Y < on.Centre.Y) ? 16 : 9);
        var finished = results.Stages.IsDefaultOrEmpty ? null : results.Stages[^1];
        var datum = FromDatum.Zero(plan);
        if (finished is not null)
        {
            var from = view.On(new Point(datum.X, bounds.MinY));
            var to = view.On(finished.Balance);
            canvas.DimensionAlong(from, to, y, "balance " + FigureText.Size(finished.BalanceFromDatum, units));
            canvas.Stroke(Path.Circle(new Point(from.X, y), 1.2), Pen.Narrow);
            y -= 8.5;
        }

        canvas.DimensionAlong(new Point(on.MinX, on.MinY), new Point(on.MaxX, on.MinY), y, FigureText.Size(results.Outline.Length, units));
        canvas.DimensionAcross(new Point(on.MaxX, on.MinY), new Point(on.MaxX, on.MaxY), on.MaxX + 4, Units(units).Select(u => FigureText.Size(results.Outline.Height, u)).ToArray());
        y -= 5;
        var holes = results.Holes.Length == 0 ? "" : request.SheetNumbers.TryGetValue(HolesSheet.Key, out var n) ? $"Holes: {n.InWords}. " : "Holes: see the hole table. ";
        canvas.Fitted($"{holes}Scale {view.ScaleName}; do not measure from this drawing. Open circle: datum.", new Point(room.MinX, y), room.Width, Canvas.SmallMm);
        return y - 3;
    }

    private static UnitsShown[] Units(UnitsShown units) => units == UnitsShown.Both ? [UnitsShown.Mm, UnitsShown.Inch] : [units];

    private static List<Pointer> Features(Canvas canvas, PieceView view)
    {
        var plan = view.Results.Plan;
        var pointers = new List<Pointer>();
        if (BladeMarks.Edge(plan) is { } edge)
        {
            canvas.Stroke(view.On(edge), new Pen(1.1));
            var middle = edge.At(new PathSpot(edge.Segments.Length / 2, 0.5));
            pointers.Add(new("edge", view.On(middle)));
            DrawBevel(canvas, view, pointers);
        }

        if (plan.Grip is { } grip)
        {
            var (a, b) = (view.On(grip.From), view.On(grip.To));
            var square = (b - a).Unit.Left * 3.5;
            foreach (var end in (ReadOnlySpan<Point>)[a, b]) canvas.Line(end + square, end - square, new Pen(0.35, LineKind.Dashed));
            canvas.Line(a, b, Pen.Centre);
            pointers.Add(new("grip", a.Toward(b, 0.75)));
        }

        if (view.Results.Striking is { } s)
        {
            var p = view.On(s.Percussion);
            canvas.Stroke(Path.Circle(p, 2), Pen.Narrow);
            canvas.Line(p + new Point(-1.4, -1.4), p + new Point(1.4, 1.4), Pen.Narrow);
            canvas.Line(p + new Point(-1.4, 1.4), p + new Point(1.4, -1.4), Pen.Narrow);
            pointers.Add(new("percussion point", p));
        }

        return pointers;
    }

    private static void DrawBevel(Canvas canvas, PieceView view, List<Pointer> pointers)
    {
        var plan = view.Results.Plan;
        var stretches = BladeMarks.GrindLine(plan);
        foreach (var stretch in stretches) canvas.Polyline([.. stretch.Select(view.On)], Pen.Narrow);
        if (stretches.Length > 0)
        {
            var longest = stretches.MaxBy(s => s.Length);
            pointers.Add(new("grind line", view.On(longest[longest.Length * 2 / 3])));
        }

        if (plan.Bevel?.Plunge is { } plunge && BladeMarks.AcrossFace(plan, plunge) is { } across)
        {
            canvas.Line(view.On(across.A), view.On(across.B), new Pen(0.35));
            pointers.Add(new("plunge line", view.On(across.A.Y > across.B.Y ? across.A : across.B)));
        }
    }

    /// <summary>The quartered circle of a centre of mass at the balance point of the finished steel.</summary>
    private static void DrawBalance(Canvas canvas, PieceView view)
    {
        if (view.Results.Stages.IsDefaultOrEmpty) return;
        var c = view.On(view.Results.Stages[^1].Balance);
        const double R = 2.4;
        canvas.Fill(Path.Circle(c, R), Ink.White);
        foreach (var start in (ReadOnlySpan<double>)[0, Math.PI])
        {
            var arc = Arc.OfCircle(c, R, start, Math.PI / 2);
            canvas.Fill(new Path([new Line(c, arc.Start), arc, new Line(arc.End, c)], closed: true));
        }

        canvas.Stroke(Path.Circle(c, R), Pen.Narrow);
    }
}
