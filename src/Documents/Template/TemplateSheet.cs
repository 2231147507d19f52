using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>Draws one sheet of a template: piece, edges measured from, joins, then the words.</summary>
internal sealed class TemplateSheet(SheetRequest request, TemplateOptions options, TilePlan plan, Tile tile, TemplatePiece piece)
{
    private readonly TrueScalePage _page = new(options, plan, tile);

    /// <summary>The sheet.</summary>
    /// <param name="packetNumber">Its number in the packet, in words; may be empty.</param>
    public Sheet Draw(string packetNumber)
    {
        var datums = DatumMarks.Lines(request.Results.Bench, plan, tile).ToArray();
        foreach (var stroke in piece.FarSides.Concat(piece.Strokes)) _page.Draw(stroke);
        foreach (var hole in request.Results.Holes) _page.KeepClear(hole.MadeAt, PieceMarks.Reach(hole));
        foreach (var d in datums) _page.DrawOnSheet(new Path([new Line(d.A, d.B)], closed: false), d.IsEdge ? Pen.Wide : Pen.Centre);
        if (piece.CheckLine is { } line) _page.DrawJoins(line, piece.JoinMarks);
        foreach (var label in piece.Labels) _page.Place(label);
        foreach (var d in datums) _page.PlaceAlong(d.A, d.B, 2.5, d.Words, d.ShortWords);
        _page.WordsAtJoins();
        if (FarEdge() is var (from, to)) _page.PlaceAlong(from, to, 2.5, "other long edge of the stock");
        var outline = request.Results.Plan.Outline;
        var what = options.DrillOnly ? "Drill template" : "Template";
        var sheet = $"{what}, sheet {tile.Number} of {plan.Tiles.Length}{TemplateStrip.Place(plan, tile)}";
        _page.PlaceBarsAndStrip(outline.Bounds.Centre, (half, small, width) => TemplateStrip.Rows(request, options, sheet, packetNumber, half, small, width), [outline]);
        var title = plan.Tiles.Length == 1 ? "Template" : $"Template {tile.Number} of {plan.Tiles.Length}";
        return _page.Done(options.DrillOnly ? TemplateSheets.DrillKind : TemplateSheets.Kind, options.DrillOnly ? "Drill " + title.ToLowerInvariant() : title);
    }

    /// <summary>The stock's other long edge where it shows on this sheet.</summary>
    private (Point From, Point To)? FarEdge()
    {
        if (piece.FarSides.IsEmpty) return null;
        var path = piece.FarSides[0].Path.Transformed(tile.PlanToSheet);
        var w = plan.Window;
        var (x0, x1) = (Math.Max(path.Bounds.MinX, w.MinX), Math.Min(path.Bounds.MaxX, w.MaxX));
        return path.Start.Y < w.MinY || path.Start.Y > w.MaxY || x1 - x0 < 40 ? null : (new Point(x0, path.Start.Y), new Point(x1, path.Start.Y));
    }
}
