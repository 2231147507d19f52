using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>One sheet at true scale in the making: first what has its place, then words, bars and strip where there is room.</summary>
internal sealed class TrueScalePage(TemplateOptions options, TilePlan plan, Tile tile)
{
    private readonly List<Mark> _trueScale = [];
    private readonly List<Mark> _words = [];
    private readonly FreeRoom _room = new(plan.Window);

    /// <summary>How much bars and strip had to be laid over lines and words; 0 when they stand free.</summary>
    public int Covered { get; private set; }

    /// <summary>Draws a line given in the drawing's own axes; off this sheet it costs nothing.</summary>
    public void Draw(PlanStroke stroke)
    {
        var path = stroke.Path.Transformed(tile.PlanToSheet);
        if (!path.Bounds.Grown(1).Touches(plan.Window)) return;
        _trueScale.Add(new StrokeMark(path, stroke.Pen));
        _room.Take(path);
    }

    /// <summary>Draws a line given on the sheet.</summary>
    public void DrawOnSheet(Path path, Pen pen)
    {
        _trueScale.Add(new StrokeMark(path, pen));
        _room.Take(path, 1.2);
    }

    /// <summary>Keeps words off the surroundings of a spot, the drawing's own axes.</summary>
    public void KeepClear(Point at, double reach) => _room.Take(Box.Around(tile.PlanToSheet.Map(at)).Grown(reach), FreeRoom.Words);

    /// <summary>The line over all sheets and the marks across the joins.</summary>
    public void DrawJoins(CheckLine line, ImmutableArray<JoinMark> marks)
    {
        var map = plan.AssembledToSheet(tile);
        foreach (var mark in line.Draw(map))
        {
            _trueScale.Add(mark);
            _room.Take(((StrokeMark)mark).Path);
        }

        _trueScale.AddRange(JoinMarks.Draw(plan, tile, marks));
        foreach (var mark in marks.Where(m => plan.OnAssembled(tile).Holds(m.At))) _room.Take(Box.Around(map.Map(mark.At)).Grown(JoinMarks.RadiusMm + 7), FreeRoom.Words);
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

    /// <summary>What to do at the joins, beside them.</summary>
    public void WordsAtJoins()
    {
        foreach (var (a, b, words, keep) in JoinMarks.Lines(plan, tile)) PlaceAlong(a + (keep * ((plan.OverlapMm / 2) + 1)), b + (keep * ((plan.OverlapMm / 2) + 1)), 2.5, words);
    }

    /// <summary>Words at a spot.</summary>
    public void Place(PlanLabel label)
    {
        var at = tile.PlanToSheet.Map(label.At);
        if (plan.Window.Holds(at)) PlaceNear(label.Text, at, label.ClearMm, label.HeightMm, label.RimMm);
    }

    /// <summary>Words in the middle of a box given in the drawing's own axes, level or upright, where they find free room; else beside it.</summary>
    public void PlaceInside(string text, Box box)
    {
        var centre = tile.PlanToSheet.Map(box.Centre);
        if (!plan.Window.Holds(centre)) return;
        var on = Box.Around(tile.PlanToSheet.Map(new Point(box.MinX, box.MinY)), tile.PlanToSheet.Map(new Point(box.MaxX, box.MaxY)));
        foreach (var (height, upright) in new[] { (3.5, false), (3.5, true), (2.5, false), (2.5, true) })
        {
            var (w, h) = (Lettering.Width(text, height) + 1.2, height * 1.45);
            if (upright) (w, h) = (h, w);
            if (w > on.Width || h > on.Height) continue;
            var (place, covers) = _room.Find(w, h, b => b.Centre.To(centre), on);
            if (covers > 0) continue;
            _room.Take(place.Grown(1), FreeRoom.Words);
            _words.Add(upright
                ? new TextMark(text, new Point(place.MaxX - (height * 0.3), place.MinY + 0.6), height, AngleDegrees: 90)
                : new TextMark(text, new Point(place.MinX + 0.6, place.MinY + (height * 0.3)), height));
            return;
        }

        PlaceNear(text, centre, 0, 3.5, null);
    }

    /// <summary>Words along a line, the first of the wordings that finds free room, else the last.</summary>
    public void PlaceAlong(Point a, Point b, double height, params ReadOnlySpan<string> wordings)
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

    /// <summary>Check bars, the strip of words, and on tiled sheets the picture of how they go together.</summary>
    /// <param name="middle">Middle of what is drawn, its own axes: bars and words go to the other side of the sheet.</param>
    /// <param name="strip">Rows of the strip: with half bars or not, small or not, broken to a width, mm.</param>
    /// <param name="outlines">What the picture shows, the drawing's own axes.</param>
    public void PlaceBarsAndStrip(Point middle, Func<bool, bool, double, ImmutableArray<TemplateStrip.Row>> strip, ImmutableArray<Path> outlines)
    {
        var w = plan.Window;
        var half = Math.Min(w.Width, w.Height) < CheckBars.Length(Math.Max(plan.Stretch.X, plan.Stretch.Y), half: false) + 2;
        var up = tile.PlanToSheet.Map(middle).Y < w.Centre.Y;

        // away from the piece: the side of the sheet it leaves free, upright bar to the right, words to the left
        double FromSide(Box b) => up ? w.MaxY - b.MaxY : b.MinY - w.MinY;
        var (levelWay, uprightWay) = plan.FeedIsLevel ? ("along the feed", "across the sheet") : ("across the sheet", "along the feed");
        var box = PlaceBar(CheckBars.Depth, CheckBars.Length(plan.Stretch.Y, half), b => (w.MaxX - b.MaxX) + FromSide(b));
        _words.AddRange(CheckBars.Draw(box, upright: true, plan.Stretch.Y, half, uprightWay));
        PlaceStrip((small, width) => strip(half, small, width), b => b.MinX - w.MinX + FromSide(b));
        box = PlaceBar(CheckBars.Length(plan.Stretch.X, half), CheckBars.Depth, b => ((b.MinX - w.MinX) * 0.5) + FromSide(b));
        _words.AddRange(CheckBars.Draw(box, upright: false, plan.Stretch.X, half, levelWay));
        if (plan.Tiles.Length > 1) PlaceMap(outlines, b => FromSide(b) + ((b.MinX - w.MinX) * 0.3));
    }

    /// <summary>The sheet; on a roll turned so that its width is the roll's.</summary>
    public Sheet Done(string kind, string title)
    {
        var sheet = new Sheet(kind, title, plan.WidthMm, plan.HeightMm, [new ClippedMarks(plan.Window, [.. _trueScale]), .. _words]);
        return plan.FeedIsLevel && options.Paper.Key == "roll" ? TurnedSheet.Of(sheet) : sheet;
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

    private Box PlaceBar(double width, double height, Func<Box, double> cost)
    {
        var (box, covers) = _room.Find(width, height, cost);
        Covered += covers;
        _room.Take(box.Grown(1), FreeRoom.Words);
        return box;
    }

    /// <summary>The assembly map in the first size that finds free room.</summary>
    private void PlaceMap(ImmutableArray<Path> outlines, Func<Box, double> cost)
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
        _words.AddRange(AssemblyMap.Draw(best.Box, best.Share, plan, tile, outlines));
    }

    /// <summary>The strip in the first shape that finds free room, the widest and largest first; else the one that covers least.</summary>
    private void PlaceStrip(Func<bool, double, ImmutableArray<TemplateStrip.Row>> strip, Func<Box, double> cost)
    {
        var tries = new List<(ImmutableArray<TemplateStrip.Row> Rows, Box Box, int Covers)>();
        foreach (var (wide, small) in new[] { (1.0, false), (0.6, false), (1.0, true), (0.6, true), (0.4, true) })
        {
            var rows = strip(small, Math.Max(60, plan.Window.Width * wide));
            var (width, height) = TemplateStrip.Size(rows);
            var (box, covers) = _room.Find(width, height, cost);
            tries.Add((rows, box, covers));
            if (covers == 0) break;
        }

        var best = tries.MinBy(t => t.Covers);
        Covered += best.Covers;
        _room.Take(best.Box.Grown(1.5), FreeRoom.Words);
        _words.AddRange(TemplateStrip.Draw(best.Box, best.Rows));
    }
}
