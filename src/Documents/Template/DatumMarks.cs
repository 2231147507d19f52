using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>One of the two edges measured from, as it stands on a sheet.</summary>
/// <param name="A">One end, at the border of what is printed.</param>
/// <param name="B">The other.</param>
/// <param name="Words">What it is and what to do.</param>
/// <param name="ShortWords">What it is, where there is little room.</param>
/// <param name="IsEdge">The edge itself; else a line parallel to it, a stated distance in.</param>
internal sealed record DatumLine(Point A, Point B, string Words, string ShortWords, bool IsEdge);

/// <summary>The edges the sheet is laid against: heavier than all else, from border to border of the sheet.</summary>
internal static class DatumMarks
{
    /// <summary>How far inside the edge the stand-in runs when the edge itself falls off the paper, mm.</summary>
    public const double StandInMm = 10;

    /// <summary>The lines of one sheet.</summary>
    public static IEnumerable<DatumLine> Lines(BenchDatum bench, TilePlan plan, Tile tile)
    {
        var w = plan.Window;
        var onSheets = plan.Tiles.Select(t => t.PlanToSheet.Map(bench.Corner)).ToArray();
        var seenX = onSheets.Any(p => p.X >= w.MinX && p.X <= w.MaxX);
        var seenY = onSheets.Any(p => p.Y >= w.MinY && p.Y <= w.MaxY);
        var from = bench.Corner + new Point(seenX ? 0 : bench.AlongSign * StandInMm, seenY ? 0 : bench.AcrossSign * StandInMm);
        var at = tile.PlanToSheet.Map(from);
        if (at.X >= w.MinX && at.X <= w.MaxX) yield return new(new(at.X, w.MinY), new(at.X, w.MaxY), Words(seenX, Named(bench.AlongFrom)), ShortWords(seenX, Named(bench.AlongFrom)), seenX);
        if (at.Y >= w.MinY && at.Y <= w.MaxY) yield return new(new(w.MinX, at.Y), new(w.MaxX, at.Y), Words(seenY, Named(bench.AcrossFrom)), ShortWords(seenY, Named(bench.AcrossFrom)), seenY);
    }

    /// <summary>The other sides of the stock that show on the sheet, light.</summary>
    public static IEnumerable<PlanStroke> FarSides(BenchDatum bench)
    {
        if (bench.State == DrilledIn.Profile) yield break;
        var b = bench.StockBox;
        var light = new Pen(0.18, LineKind.LongDashDot);
        var farY = bench.AcrossSign > 0 ? b.MaxY : b.MinY;
        yield return new(new Path([new Line(new(b.MinX, farY), new(b.MaxX, farY))], closed: false), light);
        if (bench.State != DrilledIn.Rectangle) yield break;
        var farX = bench.AlongSign > 0 ? b.MaxX : b.MinX;
        yield return new(new Path([new Line(new(farX, b.MinY), new(farX, b.MaxY))], closed: false), light);
    }

    private static string Words(bool isEdge, string edge)
        => isEdge ? $"{Capital(edge)}: lay this line on it, or fold the sheet here" : $"{Shown.Number(StandInMm, 0)} mm in from the {edge}: scribe it and lay this line on it";

    private static string ShortWords(bool isEdge, string edge)
        => isEdge ? Capital(edge) : $"{Shown.Number(StandInMm, 0)} mm in from the {edge}";

    private static string Named(string edge) => edge.Length > 0 ? edge : "edge measured from";

    private static string Capital(string edge) => char.ToUpperInvariant(edge[0]) + edge[1..];
}
