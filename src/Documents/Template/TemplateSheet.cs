using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>Draws one sheet of a template: first what has its place at true scale, then words and bars where there is room.</summary>
internal sealed class TemplateSheet(SheetRequest request, TemplateOptions options, TilePlan plan, Tile tile, TemplatePiece piece)
{
    private readonly List<Mark> _trueScale = [];
    private readonly List<Mark> _words = [];
    private readonly FreeRoom _room = new(plan.Window);

    /// <summary>The sheet.</summary>
    /// <param name="packetNumber">Its number in the packet, in words; may be empty.</param>
    public Sheet Draw(string packetNumber)
    {
        var datums = DatumMarks.Lines(request.Results.Bench, plan, tile).ToImmutableArray();
        DrawPiece();
        foreach (var d in datums) DrawDatum(d);
        DrawJoins();
        foreach (var label in piece.Labels) PlaceLabel(label);
        foreach (var d in datums) PlaceAlong(d.A, d.B, 2.5, d.Words, d.ShortWords);
        foreach (var (a, b, words, keep) in JoinMarks.Lines(plan, tile)) PlaceAlong(a + (keep * ((plan.OverlapMm / 2) + 1)), b + (keep * ((plan.OverlapMm / 2) + 1)), 2.5, words);
        if (FarEdge() is var (from, to)) PlaceAlong(from, to, 2.5, "other long edge of the stock");
        PlaceBarsAndWords(packetNumber);
        var title = plan.Tiles.Length == 1 ? "Template" : $"Template {tile.Number} of {plan.Tiles.Length}";
        var sheet = new Sheet(
            options.DrillOnly ? TemplateSheets.DrillKind : TemplateSheets.Kind,
            options.DrillOnly ? "Drill " + title.ToLowerInvariant() : title,
            plan.WidthMm,
            plan.HeightMm,
            [new ClippedMarks(plan.Window, [.. _trueScale]), .. _words]);
        return plan.FeedIsLevel && options.Paper.Key == "roll" ? TurnedSheet.Of(sheet) : sheet;
    }

    private void DrawPiece()
    {
        foreach (var stroke in piece.FarSides.Concat(piece.Strokes))
        {
            var path = stroke.Path.Transformed(tile.PlanToSheet);
            if (!path.Bounds.Grown(1).Touches(plan.Window)) continue;
            _trueScale.Add(new StrokeMark(path, stroke.Pen));
            _room.Take(path);
        }

        foreach (var hole in request.Results.Holes)
        {
            var at = tile.PlanToSheet.Map(hole.MadeAt);
            _room.Take(Box.Around(at).Grown(PieceMarks.Reach(hole)), FreeRoom.Words);
        }
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

    private void DrawDatum(DatumLine line)
    {
        var path = new Path([new Line(line.A, line.B)], closed: false);
        _trueScale.Add(new StrokeMark(path, line.IsEdge ? Pen.Wide : Pen.Centre));
        _room.Take(path, 1.2);
    }

    private void DrawJoins()
    {
        if (piece.CheckLine is not { } line) return;
        var map = plan.AssembledToSheet(tile);
        foreach (var mark in line.Draw(map))
        {
            _trueScale.Add(mark);
            _room.Take(((StrokeMark)mark).Path);
        }

        _trueScale.AddRange(JoinMarks.Draw(plan, tile, piece.JoinMarks));
        foreach (var mark in piece.JoinMarks.Where(m => plan.OnAssembled(tile).Holds(m.At))) _room.Take(Box.Around(map.Map(mark.At)).Grown(JoinMarks.RadiusMm + 7), FreeRoom.Words);
        var w = plan.Window;
        var (dx, dy) = (plan.OverlapMm * plan.Stretch.X, plan.OverlapMm * plan.Stretch.Y);
        if (tile.Column + 1 < plan.Columns) _room.Take(w with { MinX = w.MaxX - dx });
        if (tile.Column > 0) _room.Take(w with { MaxX = w.MinX + dx });
        if (tile.Row + 1 < plan.Rows) _room.Take(w with { MaxY = w.MinY + dy });
        if (tile.Row > 0) _room.Take(w with { MinY = w.MaxY - dy });
        var words = line.Words;
        foreach (var end in new[] { line.From, line.To })
        {
            if (plan.OnAssembled(tile).Holds(end)) PlaceNear(words, map.Map(end), 3, 2.5, null);
        }
    }

    private void PlaceLabel(PlanLabel label)
    {
        var at = tile.PlanToSheet.Map(label.At);
        if (plan.Window.Holds(at)) PlaceNear(label.Text, at, label.ClearMm, label.HeightMm, label.RimMm);
    }

    private void PlaceNear(string text, Point at, double clear, double height, double? rim)
    {
        var (w, h) = (Lettering.Width(text, height) + 1.2, height * 1.45);
        var within = Box.Around(at).Grown(clear + 45 + Math.Min(w, 80));
        var box = _room.Place(w, h, b => Math.Abs(b.DistanceTo(at) - clear) + (0.02 * Math.Abs(b.Centre.X - at.X)) + (b.Centre.Y < at.Y ? 0.3 : 0), within);
        _words.Add(new TextMark(text, new Point(box.MinX + 0.6, box.MinY + (height * 0.3)), height));
        if (rim is not { } radius || box.DistanceTo(at) < clear + 1.2) return;

        // the leader meets the rim half way between two arms of the cross, so that it is not taken for one
        var side = new Point(box.Centre.X < at.X ? -1 : 1, box.Centre.Y < at.Y ? -1 : 1).Unit;
        var end = at + (side * (radius + 0.4));
        var start = new Point(Math.Clamp(end.X + (side.X * 2), box.MinX + 0.6, box.MaxX - 0.6), end.Y > box.MaxY ? box.MaxY : end.Y < box.MinY ? box.MinY : end.Y);
        var path = new Path([new Line(start, end)], closed: false);
        _words.Add(new StrokeMark(path, new Pen(0.13)));
        _room.Take(path);
    }

    /// <summary>Words along a line, the first of the wordings that finds free room, else the last.</summary>
    private void PlaceAlong(Point a, Point b, double height, params ReadOnlySpan<string> wordings)
    {
        var upright = a.X == b.X;
        var line = Box.Around(a, b);
        double Cost(Box box) => (upright ? Math.Abs(box.Centre.X - a.X) * 3 : Math.Abs(box.Centre.Y - a.Y) * 3) + (0.02 * box.Centre.To(line.Centre));
        foreach (var text in wordings)
        {
            var (w, h) = (Lettering.Width(text, height) + 1.5, height * 1.45);
            if (upright) (w, h) = (h, w);
            var (box, covers) = _room.Find(w, h, Cost, line.Grown(12));
            if (covers > 0 && text != wordings[^1]) continue;
            _room.Take(box.Grown(1), FreeRoom.Words);
            _words.Add(upright
                ? new TextMark(text, new Point(box.MaxX - (height * 0.3), box.MinY + 0.7), height, AngleDegrees: 90)
                : new TextMark(text, new Point(box.MinX + 0.7, box.MinY + (height * 0.3)), height));
            return;
        }
    }

    private void PlaceBarsAndWords(string packetNumber)
    {
        var w = plan.Window;
        var half = Math.Min(w.Width, w.Height) < CheckBars.Length(Math.Max(plan.Stretch.X, plan.Stretch.Y), half: false) + 2;
        var pieceBox = request.Results.Plan.Outline.Bounds;
        var middle = tile.PlanToSheet.Map(pieceBox.Centre);
        var up = middle.Y < w.Centre.Y;

        // away from the piece: the side of the sheet it leaves free, upright bar to the right, words to the left
        double FromSide(Box b) => up ? w.MaxY - b.MaxY : b.MinY - w.MinY;
        var (levelWay, uprightWay) = plan.FeedIsLevel ? ("along the feed", "across the sheet") : ("across the sheet", "along the feed");
        var box = _room.Place(CheckBars.Depth, CheckBars.Length(plan.Stretch.Y, half), b => (w.MaxX - b.MaxX) + FromSide(b));
        _words.AddRange(CheckBars.Draw(box, upright: true, plan.Stretch.Y, half, uprightWay));
        PlaceStrip(packetNumber, half, b => b.MinX - w.MinX + FromSide(b));
        box = _room.Place(CheckBars.Length(plan.Stretch.X, half), CheckBars.Depth, b => ((b.MinX - w.MinX) * 0.5) + FromSide(b));
        _words.AddRange(CheckBars.Draw(box, upright: false, plan.Stretch.X, half, levelWay));
        if (plan.Tiles.Length == 1) return;
        PlaceMap(b => FromSide(b) + ((b.MinX - w.MinX) * 0.3));
    }

    /// <summary>The assembly map in the first size that finds free room.</summary>
    private void PlaceMap(Func<Box, double> cost)
    {
        var tries = new List<(double Share, Box Box, int Covers)>();
        foreach (var share in new[] { 1, 0.75, 0.55 })
        {
            var (width, height) = AssemblyMap.Size(plan, share);
            var (box, covers) = _room.Find(width, height, cost);
            tries.Add((share, box, covers));
            if (covers == 0) break;
        }

        var best = tries.MinBy(t => t.Covers);
        _room.Take(best.Box.Grown(1), FreeRoom.Words);
        _words.AddRange(AssemblyMap.Draw(best.Box, best.Share, plan, tile, request.Results.Plan.Outline));
    }

    /// <summary>The strip in the first shape that finds free room, the widest and largest first; else the one that covers least.</summary>
    private void PlaceStrip(string packetNumber, bool half, Func<Box, double> cost)
    {
        var tries = new List<(ImmutableArray<TemplateStrip.Row> Rows, Box Box, int Covers)>();
        foreach (var (wide, small) in new[] { (1.0, false), (0.6, false), (1.0, true), (0.6, true), (0.4, true) })
        {
            var rows = TemplateStrip.Rows(request, options, plan, tile, packetNumber, half, small, Math.Max(60, plan.Window.Width * wide));
            var (width, height) = TemplateStrip.Size(rows);
            var (box, covers) = _room.Find(width, height, cost);
            tries.Add((rows, box, covers));
            if (covers == 0) break;
        }

        var best = tries.MinBy(t => t.Covers);
        _room.Take(best.Box.Grown(1.5), FreeRoom.Words);
        _words.AddRange(TemplateStrip.Draw(best.Box, best.Rows));
    }
}
