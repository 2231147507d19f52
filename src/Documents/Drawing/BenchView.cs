using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>The piece in its bar as it lies on the bench, with the two edges measured from drawn heavy and their corner marked.</summary>
internal static class BenchView
{
    /// <summary>A view of the stock around the piece, pushed to the top of a room.</summary>
    public static PieceView Place(SheetRequest request, Box room, bool upsideDown = false)
    {
        var stock = Stock(request.Results);
        var view = PieceView.Fit(request.Results, stock, room, upsideDown);
        var spare = (room.Height - (stock.Height * view.Factor)) / 2;
        return PieceView.Fit(request.Results, stock, room with { MinY = room.MinY + (2 * spare) }, upsideDown);
    }

    /// <summary>The stock drawn, never less than the piece.</summary>
    public static Box Stock(Results results) => results.Bench.StockBox.With(results.Plan.Outline.Bounds).With(results.Bench.Corner);

    /// <summary>Draws stock, piece and datum edges.</summary>
    public static void Draw(Canvas canvas, PieceView view)
    {
        var bench = view.Results.Bench;
        var plan = Stock(view.Results);
        var box = view.On(plan);
        var farX = bench.AlongSign > 0 ? box.MaxX : box.MinX;
        var (x, y) = (view.On(bench.Corner).X, view.On(bench.Corner).Y);
        if (bench.State != DrilledIn.Profile)
        {
            var lines = new Pen(0.25);
            canvas.Line(new Point(box.MinX, box.MinY), new Point(box.MaxX, box.MinY), lines);
            canvas.Line(new Point(box.MinX, box.MaxY), new Point(box.MaxX, box.MaxY), lines);
            if (bench.State == DrilledIn.Bar) canvas.Break(new Point(farX, box.MinY - 1), new Point(farX, box.MaxY + 1));
            else canvas.Line(new Point(farX, box.MinY), new Point(farX, box.MaxY), lines);
        }

        view.DrawPiece(canvas, new Pen(0.35));

        // the datum edges, and where they meet
        canvas.Line(new Point(box.MinX, y), new Point(box.MaxX, y), new Pen(0.8));
        canvas.Line(new Point(x, box.MinY), new Point(x, box.MaxY), new Pen(0.8));
        canvas.Fill(Path.Circle(new Point(x, y), 1.6));
        canvas.Fill(Path.Circle(new Point(x, y), 0.7), Ink.White);
    }

    /// <summary>What is measured from, in words.</summary>
    public static ImmutableArray<string> Words(SheetRequest request)
    {
        var bench = request.Results.Bench;
        var lines = ImmutableArray.CreateBuilder<string>();
        lines.Add($"x from: {bench.AlongFrom}. y from: {bench.AcrossFrom}. Work {FigureText.Of(bench.State)}.");
        if (bench.Remark.Length > 0) lines.Add(bench.Remark);
        return lines.ToImmutable();
    }

    /// <summary>Arrows x and y just outside the corner.</summary>
    public static void DrawAxes(Canvas canvas, PieceView view)
    {
        var bench = view.Results.Bench;
        var box = view.On(Stock(view.Results));
        var corner = view.On(bench.Corner);
        var outX = bench.AlongSign > 0 ? -1 : 1;
        var up = view.On(bench.Corner + new Point(0, bench.AcrossSign)).Y > corner.Y ? 1 : -1;
        var y0 = (up > 0 ? box.MinY : box.MaxY) - (up * 4);
        var x0 = (outX < 0 ? box.MinX : box.MaxX) + (outX * 4);
        Arrow(canvas, new Point(corner.X, y0), new Point(-outX, 0), "x", new Point(-outX * 3, -1.7));
        Arrow(canvas, new Point(x0, corner.Y), new Point(0, up), "y", new Point(0, up > 0 ? 2 : -5.5));
    }

    private static void Arrow(Canvas canvas, Point from, Point direction, string name, Point nameOffset)
    {
        var tip = from + (direction * 12);
        canvas.Leader(from, tip);
        canvas.Text(name, tip + nameOffset, Canvas.TextMm, bold: true, TextAnchor.Middle);
    }
}
