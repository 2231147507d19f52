using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>One lettered mark across a join.</summary>
/// <param name="Letter">Its letter; every mark has its own.</param>
/// <param name="At">Its middle on the join, assembled template, true mm.</param>
/// <param name="Upright">Whether the join runs upright.</param>
internal sealed record JoinMark(string Letter, Point At, bool Upright);

/// <summary>What shows a wrong join: along the middle of each overlap a line to cut by, and on it lettered marks of which each sheet keeps one half, so that a sheet that is shifted, turned or the wrong one shows at once.</summary>
internal static class JoinMarks
{
    /// <summary>Radius of a mark, mm.</summary>
    public const double RadiusMm = 5;

    private static readonly Pen Thin = new(0.18);
    private static readonly Pen Cut = new(0.18, LineKind.Dashed);

    /// <summary>All marks of a template, two to a join and sheet, as far apart as the piece leaves room.</summary>
    /// <param name="plan">The sheets.</param>
    /// <param name="busy">Points of lines on the assembled template that the marks should stay clear of.</param>
    /// <param name="lettersTaken">How many letters other marks have.</param>
    public static ImmutableArray<JoinMark> All(TilePlan plan, IReadOnlyList<Point> busy, int lettersTaken = 0)
    {
        var marks = ImmutableArray.CreateBuilder<JoinMark>();
        foreach (var tile in plan.Tiles)
        {
            var box = plan.OnAssembled(tile);
            if (tile.Column + 1 < plan.Columns)
            {
                var x = box.MaxX - (plan.OverlapMm / 2);
                foreach (var y in TwoPlaces(box.MinY, box.MaxY, y => Clear(new Point(x, y)))) marks.Add(new JoinMark(Letter(lettersTaken + marks.Count), new Point(x, y), Upright: true));
            }

            if (tile.Row + 1 < plan.Rows)
            {
                var y = box.MinY + (plan.OverlapMm / 2);
                foreach (var x in TwoPlaces(box.MinX, box.MaxX, x => Clear(new Point(x, y)))) marks.Add(new JoinMark(Letter(lettersTaken + marks.Count), new Point(x, y), Upright: false));
            }
        }

        return marks.ToImmutable();

        bool Clear(Point p) => busy.All(b => b.To(p) > RadiusMm + 5);
    }

    /// <summary>The marks and cut lines of one sheet, sheet coordinates.</summary>
    public static IEnumerable<Mark> Draw(TilePlan plan, Tile tile, ImmutableArray<JoinMark> marks)
    {
        var map = plan.AssembledToSheet(tile);
        var box = plan.OnAssembled(tile);
        foreach (var line in Lines(plan, tile)) yield return new StrokeMark(new Path([new Line(line.A, line.B)], closed: false), Cut);
        foreach (var mark in marks.Where(m => box.Holds(m.At)))
        {
            var at = map.Map(mark.At);
            var across = mark.Upright ? new Point(1, 0) : new Point(0, 1);
            yield return new StrokeMark(Path.Circle(at, RadiusMm), Thin);
            yield return Stroke(at - (across * 7), at + (across * 7));
            foreach (var turn in new[] { Math.PI / 4, -Math.PI / 4 }) yield return Stroke(at - (Point.Direction(turn) * RadiusMm), at + (Point.Direction(turn) * RadiusMm));

            // the letter stands on the half this sheet keeps
            var kept = mark.Upright ? (mark.At.X > box.Centre.X ? -1 : 1) : (mark.At.Y > box.Centre.Y ? -1 : 1);
            var place = at + (across * (kept * (RadiusMm + 4.5)));
            yield return new TextMark(mark.Letter, place - new Point(0, 2.5), 5, Bold: true, Anchor: TextAnchor.Middle);
        }

        StrokeMark Stroke(Point a, Point b) => new(new Path([new Line(a, b)], closed: false), Thin);
    }

    /// <summary>The join lines of one sheet, and what to do at them.</summary>
    public static IEnumerable<(Point A, Point B, string Words, Point Keep)> Lines(TilePlan plan, Tile tile)
    {
        var w = plan.Window;
        var (dx, dy) = (plan.OverlapMm / 2 * plan.Stretch.X, plan.OverlapMm / 2 * plan.Stretch.Y);
        var n = tile.Number;
        if (tile.Column + 1 < plan.Columns) yield return (new(w.MaxX - dx, w.MinY), new(w.MaxX - dx, w.MaxY), $"sheet {n + 1} is laid on up to this line", new(-1, 0));
        if (tile.Column > 0) yield return (new(w.MinX + dx, w.MinY), new(w.MinX + dx, w.MaxY), $"cut off here and lay on sheet {n - 1}", new(1, 0));
        if (tile.Row + 1 < plan.Rows) yield return (new(w.MinX, w.MinY + dy), new(w.MaxX, w.MinY + dy), $"sheet {n + plan.Columns} is laid on up to this line", new(0, 1));
        if (tile.Row > 0) yield return (new(w.MinX, w.MaxY - dy), new(w.MaxX, w.MaxY - dy), $"cut off here and lay on sheet {n - plan.Columns}", new(0, -1));
    }

    private static IEnumerable<double> TwoPlaces(double from, double to, Func<double, bool> clear)
    {
        const double end = RadiusMm + 4;
        var places = new List<double>();
        for (var v = from + end; v <= to - end; v += 2) places.Add(v);
        var free = places.Where(clear).ToList();
        if (free.Count == 0 || free[^1] - free[0] < 20) free = places;
        if (free.Count == 0) yield break;
        yield return free[0];
        if (free[^1] - free[0] > 20) yield return free[^1];
    }

    private static string Letter(int index) => index < 26 ? ((char)('A' + index)).ToString() : Letter((index / 26) - 1) + Letter(index % 26);
}
