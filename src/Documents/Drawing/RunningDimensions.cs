using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>Running dimensions of ISO 129-1: one line from a common origin, marked by an open circle, with an arrow and the distance from the origin at every feature.</summary>
internal static class RunningDimensions
{
    private const double LabelMm = 3.5;
    private const double RailMm = 5;

    /// <summary>Features along and across the piece that get a running dimension, bench coordinates.</summary>
    private readonly record struct Feature(double Bench, double Sheet, double ToSheet, string Names);

    /// <summary>Draws both rows; gives the lowest y taken.</summary>
    public static double Draw(Canvas canvas, SheetRequest request, PieceView view, Box room)
    {
        var results = request.Results;
        var box = view.On(BenchView.Stock(results));
        var bounds = results.Plan.Outline.Bounds;
        var spots = results.Holes.Select(h => (h.Name, At: h.MadeAt)).ToList();
        ReadOnlySpan<(string, Point)> ends = [("", new(bounds.MinX, bounds.Centre.Y)), ("", new(bounds.MaxX, bounds.Centre.Y))];
        ReadOnlySpan<(string, Point)> sides = [("", new(bounds.Centre.X, bounds.MinY)), ("", new(bounds.Centre.X, bounds.MaxY))];
        var corner = view.On(results.Bench.Corner);

        var along = Features(results, view, [.. spots, .. ends], alongPiece: true);
        Along(canvas, request, along, corner.X, box.MaxY + RailMm, box.MaxY, room);
        canvas.Text("x", new Point(corner.X - (results.Bench.AlongSign * 4), box.MaxY + RailMm - 1.3), LabelMm, bold: true, TextAnchor.Middle);
        var across = Features(results, view, [.. spots, .. sides], alongPiece: false);
        var farX = results.Bench.AlongSign > 0 ? box.MaxX : box.MinX;
        var low = Across(canvas, request, across, corner.Y, farX, results.Bench.AlongSign, box);
        return Math.Min(low, box.MinY);
    }

    /// <summary>One feature for each distance that differs by 0.01 mm, ascending on the sheet.</summary>
    private static ImmutableArray<Feature> Features(Results results, PieceView view, IEnumerable<(string Name, Point At)> points, bool alongPiece)
    {
        var all = points
            .Select(p => (p.Name, Bench: results.Bench.ToBench(p.At), Sheet: view.On(p.At)))
            .Select(p => alongPiece ? new Feature(p.Bench.X, p.Sheet.X, p.Sheet.Y, p.Name) : new Feature(p.Bench.Y, p.Sheet.Y, p.Sheet.X, p.Name))
            .GroupBy(f => Math.Round(f.Bench, 2))
            .Select(g => g.First() with { Names = string.Join(" ", g.Select(f => f.Names).Where(n => n.Length > 0).Take(8)) })
            .OrderBy(f => f.Sheet)
            .ToImmutableArray();
        return all;
    }

    private static void Along(Canvas canvas, SheetRequest request, ImmutableArray<Feature> features, double origin, double rail, double boxTop, Box room)
    {
        if (Placed(features, room.MinX, room.MaxX) is not { } placed)
        {
            canvas.Fitted("Too many lines to draw: see the table.", new Point(room.MinX, rail + 5), room.Width, 3);
            return;
        }

        canvas.Stroke(Path.Circle(new Point(origin, rail), 1.2), Pen.Narrow);
        foreach (var (f, at) in placed)
        {
            canvas.Line(new Point(f.Sheet, f.ToSheet > boxTop ? boxTop : f.ToSheet), new Point(f.Sheet, rail), new Pen(0.18));
            if (Math.Abs(f.Sheet - origin) > 3) canvas.Arrow(new Point(f.Sheet, rail), new Point(f.Sheet - origin, 0));
            canvas.Polyline([new(f.Sheet, rail), new(at, rail + 4), new(at, rail + 5)], new Pen(0.18));
            canvas.Text(FigureText.Figure(Length.OfMm(f.Bench), SizeBlock.InchFirst(request)), new Point(at + (LabelMm / 2), rail + 6), LabelMm, bold: true, angleDegrees: 90);
        }

        var (first, last) = (Math.Min(origin, features[0].Sheet), Math.Max(origin, features[^1].Sheet));
        canvas.Line(new Point(first, rail), new Point(last, rail), Pen.Narrow);
    }

    private static double Across(Canvas canvas, SheetRequest request, ImmutableArray<Feature> features, double origin, double farX, int outward, Box box)
    {
        var rail = farX + (outward * RailMm);
        var low = box.MinY - 14;
        if (Placed(features, low, box.MaxY + 3) is not { } placed) return box.MinY;
        canvas.Stroke(Path.Circle(new Point(rail, origin), 1.2), Pen.Narrow);
        canvas.Text("y", new Point(rail, origin < box.Centre.Y ? origin - 5.2 : origin + 2.7), LabelMm, bold: true, TextAnchor.Middle);
        var least = box.MinY;
        foreach (var (f, at) in placed)
        {
            canvas.Line(new Point(farX + outward, f.Sheet), new Point(rail, f.Sheet), new Pen(0.13));
            if (Math.Abs(f.Sheet - origin) > 3) canvas.Arrow(new Point(rail, f.Sheet), new Point(0, f.Sheet - origin));
            canvas.Polyline([new(rail, f.Sheet), new(rail + (outward * 3), at), new(rail + (outward * 4), at)], new Pen(0.18));
            var text = canvas.Text(FigureText.Figure(Length.OfMm(f.Bench), SizeBlock.InchFirst(request)), new Point(rail + (outward * 5), at - (LabelMm / 2)), LabelMm, bold: true, outward > 0 ? TextAnchor.Left : TextAnchor.Right);
            least = Math.Min(least, text.MinY);
            var beside = outward > 0 ? canvas.Frame.Inside.MaxX - text.MaxX - 1.5 : text.MinX - 1.5 - canvas.Frame.Inside.MinX;
            if (f.Names.Length > 0 && beside > 4) canvas.Fitted(f.Names, new Point(outward > 0 ? text.MaxX + 1.5 : text.MinX - 1.5, at - 1.2), beside, Canvas.SmallMm, anchor: outward > 0 ? TextAnchor.Left : TextAnchor.Right);
        }

        var (first, last) = (Math.Min(origin, features[0].Sheet), Math.Max(origin, features[^1].Sheet));
        canvas.Line(new Point(rail, first), new Point(rail, last), Pen.Narrow);
        return least;
    }

    private static IEnumerable<(Feature Feature, double At)>? Placed(ImmutableArray<Feature> features, double low, double high)
    {
        var sizes = Enumerable.Repeat(LabelMm * 1.4, features.Length).ToImmutableArray();
        return Spread.Of([.. features.Select(f => f.Sheet)], sizes, 0.2, low, high) is { } places ? features.Select((f, i) => (f, places[i])) : null;
    }
}
