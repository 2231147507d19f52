using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>Moves the places of a plan that are neither outline nor single holes: ends of the edge, the plunge line, the grip and the rows, and the datum. Written back where they stand, in the unit that stands there.</summary>
public static class PlaceEdit
{
    /// <summary>An end of a plunge line written as one x may be drawn this part of the piece's height off its side before the line is written as two points.</summary>
    private const double StaysSquare = 0.25;

    /// <summary>Moves an end of the sharpened part to the nearest point of the outline.</summary>
    /// <param name="file">The plan.</param>
    /// <param name="first">Its first end, else its last.</param>
    /// <param name="to">Where to.</param>
    public static Checked<PlanFile> MoveEdgeEnd(PlanFile file, bool first, Point to)
    {
        if (file.Plan.Edge is null) return No(file, "the plan has no sharpened part", "begin one: say from which point of the outline to which");
        var on = OnOutline(file.Plan, to);
        return PlanKeyEdit.Under(file, "edge", [At(file, first ? "from" : "to", on)], f => f.Plan.Edge is { } e && Same(first ? e.From : e.To, on));
    }

    /// <summary>Begins the sharpened part, or lays it elsewhere: from the point of the outline nearest to one place to that nearest to another, in the direction the outline is written.</summary>
    public static Checked<PlanFile> Sharpen(PlanFile file, Point from, Point to)
    {
        var (a, b) = (OnOutline(file.Plan, from), OnOutline(file.Plan, to));
        return PlanKeyEdit.Under(file, "edge", [At(file, "from", a), At(file, "to", b)], f => f.Plan.Edge is { } e && Same(e.From, a) && Same(e.To, b));
    }

    /// <summary>The same as a maker types it: <c>2, 68.78</c>.</summary>
    public static Checked<PlanFile> Sharpen(PlanFile file, string from, string to)
        => Typed(file, from) is { } a && Typed(file, to) is { } b
            ? Sharpen(file, a, b)
            : ValueEdit.Begin(file, "edge", [("from", from), ("to", to)]);

    /// <summary>Moves an end of the grip.</summary>
    /// <param name="file">The plan.</param>
    /// <param name="first">Its front end, else its rear.</param>
    /// <param name="to">Where to.</param>
    public static Checked<PlanFile> MoveGripEnd(PlanFile file, bool first, Point to)
        => file.Plan.Grip is null
            ? No(file, "the plan has no grip", "begin one: say where its front and its rear end are")
            : PlanKeyEdit.Under(file, "grip", [At(file, first ? "from" : "to", to)], f => f.Plan.Grip is { } g && Same(first ? g.From : g.To, to));

    /// <summary>Begins the grip, or lays it elsewhere.</summary>
    public static Checked<PlanFile> LayGrip(PlanFile file, Point from, Point to)
        => PlanKeyEdit.Under(file, "grip", [At(file, "from", from), At(file, "to", to)], f => f.Plan.Grip is { } g && Same(g.From, from) && Same(g.To, to));

    /// <summary>Moves an end of the plunge line. A line written as one x stays one while its ends are moved along the piece; drawn well across, it is written as two points.</summary>
    /// <param name="file">The plan.</param>
    /// <param name="first">Its first point, else its second.</param>
    /// <param name="to">Where to.</param>
    public static Checked<PlanFile> MovePlungeEnd(PlanFile file, bool first, Point to)
    {
        if (Plunge(file) is not var (line, written)) return No(file, "the plan has no plunge line", "write plunge under [bevel], the x where the bevel ends");
        var box = file.Plan.Outline.Bounds;
        var across = Math.Abs(to.Y - (first ? line.A.Y : line.B.Y));
        return written is not TomlList && across <= StaysSquare * (box.MaxY - box.MinY)
            ? SetPlungeX(file, to.X)
            : SetPlunge(file, first ? line with { A = to } : line with { B = to });
    }

    /// <summary>Writes the plunge line as two points, so that it can be tilted; or as one x, square to the piece, at its middle.</summary>
    /// <param name="file">The plan.</param>
    /// <param name="square">Square to the piece.</param>
    public static Checked<PlanFile> WritePlunge(PlanFile file, bool square)
    {
        if (Plunge(file) is not var (line, written)) return No(file, "the plan has no plunge line", "write plunge under [bevel], the x where the bevel ends");
        if (square == written is not TomlList) return Checked<PlanFile>.Good(file);
        return square ? SetPlungeX(file, line.A.Toward(line.B, 0.5).X) : SetPlunge(file, line);
    }

    /// <summary>Puts the datum at a place; a side it stays on keeps its word.</summary>
    public static Checked<PlanFile> MoveDatum(PlanFile file, Point to)
    {
        var at = FromDatum.Zero(file.Plan);
        var keys = new List<KeyWrite>();
        if (Math.Abs(at.X - to.X) > 1e-9) keys.Add(new("x", old => PlanEdit.LengthLike(file, old, Length.OfMm(to.X))));
        if (Math.Abs(at.Y - to.Y) > 1e-9) keys.Add(new("y", old => PlanEdit.LengthLike(file, old, Length.OfMm(to.Y))));
        return PlanKeyEdit.Under(file, "datum", keys, f => Same(FromDatum.Zero(f.Plan), to));
    }

    /// <summary>Moves an end of a row of holes. Of a row along the midline the place is written beside it: its first or last hole goes to the nearest point of the midline.</summary>
    /// <param name="file">The plan.</param>
    /// <param name="row">Name of the row.</param>
    /// <param name="first">Its first hole, else its last.</param>
    /// <param name="to">Where to.</param>
    public static Checked<PlanFile> MoveRowEnd(PlanFile file, string row, bool first, Point to)
    {
        if (RowEdit.Find(file, row) is not var (entry, table)) return RowEdit.NoRow(file, row);
        if (entry.OnMidline) to = RowEdit.Rounded(file, to);
        if (entry.OnMidline) return RowEdit.Write(file, entry, table, [At(file, first ? "from" : "to", to)], r => (first ? r.From : r.To) is { } p && Same(p, to));
        if (entry is not { From: { } from, To: { } rear }) return No(file, $"row {row} has no ends", "write along as two points");
        return RowEdit.Write(file, entry, table, [new("along", old => Pair(file, old, first ? to : from, first ? rear : to))], r => (first ? r.From : r.To) is { } p && Same(p, to));
    }

    /// <summary>The point of the outline nearest to a place, to 0.001 mm or 0.00001 in: far inside what a span may lie off the outline.</summary>
    internal static Point OnOutline(Plan plan, Point to) => OnOutline(plan.Outline, plan.Units, to);

    /// <summary>The same for an outline.</summary>
    internal static Point OnOutline(Path outline, LengthUnit units, Point to)
    {
        var at = Nearest.On(outline, to).At;
        var corner = outline.Segments.Select(s => s.Start).MinBy(p => p.To(at));
        if (corner.To(at) < 0.002) return corner;
        var unit = units == LengthUnit.Inch ? (Mm: Length.MmPerInch, Decimals: 5) : (Mm: 1, Decimals: 3);
        return new Point(Math.Round(at.X / unit.Mm, unit.Decimals) * unit.Mm, Math.Round(at.Y / unit.Mm, unit.Decimals) * unit.Mm);
    }

    private static Point? Typed(PlanFile file, string point)
        => point.Split(',') is [var x, var y] && LengthText.Read(x, file.UnitMm) is { IsGood: true, Value: var a } && LengthText.Read(y, file.UnitMm) is { IsGood: true, Value: var b }
            ? new Point(a.Length.Mm, b.Length.Mm)
            : null;

    private static (PlungeLine Line, TomlNode Written)? Plunge(PlanFile file)
        => file.Plan.Bevel?.Plunge is { } line && (file.Root.Find("bevel")?.Value as TomlTable)?.Find("plunge")?.Value is { } written ? (line, written) : null;

    private static Checked<PlanFile> SetPlungeX(PlanFile file, double x)
        => PlanKeyEdit.Under(file, "bevel", [new("plunge", old => PlanEdit.LengthLike(file, old, Length.OfMm(x)))], f => f.Plan.Bevel?.Plunge is { } p && Math.Abs(p.A.X - x) < 1e-9 && Math.Abs(p.B.X - x) < 1e-9);

    private static Checked<PlanFile> SetPlunge(PlanFile file, PlungeLine line)
        => PlanKeyEdit.Under(file, "bevel", [new("plunge", old => Pair(file, old, line.A, line.B))], f => f.Plan.Bevel?.Plunge is { } p && Same(p.A, line.A) && Same(p.B, line.B));

    /// <summary>Two points in a list, written the way the old ones are.</summary>
    internal static string Pair(PlanFile file, TomlNode? old, Point a, Point b)
    {
        if (old is not TomlList { Items: { Count: 2 } ends }) return $"[{PlanEdit.PointLike(file, null, a)}, {PlanEdit.PointLike(file, null, b)}]";
        var text = PlanEdit.Raw(file, old);
        return string.Concat(
            string.Concat(text.AsSpan(0, ends[0].Offset - old.Offset), PlanEdit.PointLike(file, ends[0], a)),
            text.AsSpan(ends[0].Offset + ends[0].Length - old.Offset, ends[1].Offset - ends[0].Offset - ends[0].Length),
            PlanEdit.PointLike(file, ends[1], b),
            text.AsSpan(ends[1].Offset + ends[1].Length - old.Offset));
    }

    /// <summary>A list of places along the piece, each with a value that stays; written with x growing.</summary>
    internal static string Stations(PlanFile file, TomlList list, Func<double, double> map)
    {
        var moved = list.Items.OfType<TomlList>().Where(i => i.Items.Count == 2).Select(i => (X: map(PlanEdit.LengthOf(file, i.Items[0])?.Mm ?? 0), Item: i)).OrderBy(m => m.X);
        return $"[{string.Join(", ", moved.Select(m => $"[{PlanEdit.LengthLike(file, m.Item.Items[0], Length.OfMm(m.X))}, {PlanEdit.Raw(file, m.Item.Items[1])}]"))}]";
    }

    private static KeyWrite At(PlanFile file, string key, Point to) => new(key, old => PlanEdit.PointLike(file, old, to));

    private static bool Same(Point a, Point b) => a.To(b) < 1e-9;

    private static Checked<PlanFile> No(PlanFile file, string message, string remedy) => PlanEdit.Refused(file, message, remedy);
}
