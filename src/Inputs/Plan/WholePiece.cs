using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>Changes that take the whole piece along: outline, sharpened part, plunge line, grip, datum, holes and rows.</summary>
public static class WholePiece
{
    /// <summary>Mirrors the piece about the middle of its box.</summary>
    /// <param name="file">The plan.</param>
    /// <param name="upsideDown">Upside down; else end for end.</param>
    public static Checked<PlanFile> Mirror(PlanFile file, bool upsideDown)
    {
        var middle = file.Plan.Outline.Bounds.Centre;
        var map = upsideDown ? new Transform(1, 0, 0, -1, 0, 2 * middle.Y) : new Transform(-1, 0, 0, 1, 2 * middle.X, 0);
        var datum = file.Plan.Datum;
        var (key, side) = upsideDown ? ("y", datum.Y.Side) : ("x", datum.X.Side);
        string? word = side switch { DatumSide.Left => "right", DatumSide.Right => "left", DatumSide.Bottom => "top", DatumSide.Top => "bottom", _ => null };
        return Mapped(file, map).Then(f => word is null
            ? Checked<PlanFile>.Good(f)
            : PlanKeyEdit.Under(f, "datum", [new(key, old => PlanEdit.Quoted(word, old, f))], g => (upsideDown ? g.Plan.Datum.Y : g.Plan.Datum.X).Side.ToString().Equals(word, StringComparison.OrdinalIgnoreCase)));
    }

    /// <summary>Scales the piece evenly about the left end of its lower side until it is as long as asked. Places of holes go along; diameters, bevel height and thicknesses stay.</summary>
    public static Checked<PlanFile> ScaleTo(PlanFile file, Length length)
    {
        var box = file.Plan.Outline.Bounds;
        var by = length.Mm / box.Width;
        var corner = new Point(box.MinX, box.MinY);
        return Mapped(file, new Transform(by, 0, 0, by, corner.X * (1 - by), corner.Y * (1 - by)));
    }

    /// <summary>Lays the outline at a distance outside itself, inside when negative. Curves are followed to <see cref="OffsetLoop.FitMm"/>; all else stays, the ends of the sharpened part go to the new outline.</summary>
    public static Checked<PlanFile> Offset(PlanFile file, Length outward)
    {
        var offset = OffsetLoop.Of(file.Plan.Outline, outward.Mm);
        if (offset.Path is { } path) return OutlineText.Whole(file, path);
        var where = offset.At is { } at ? $" near x {Shown.Both(Length.OfMm(at.X))}, y {Shown.Both(Length.OfMm(at.Y))}" : "";
        return PlanEdit.Refused(file, $"the outline cannot be laid {Shown.Both(Length.OfMm(Math.Abs(outward.Mm)))} {(outward.Mm > 0 ? "outside" : "inside")}: {offset.Why}{where}", "take a smaller distance, or round or take away the point there first");
    }

    private static Checked<PlanFile> Mapped(PlanFile file, Transform map)
    {
        if (OutlineText.Written(file) is not { } path) return PlanEdit.Refused(file, "the plan has no outline", "add [outline]");
        var unit = file.UnitMm;
        var outline = file.Plan.Outline.Transformed(map);
        var splices = new List<Splice> { OutlineText.Splice(file, path, PathData.Write(OutlineText.Rounded(outline, unit), unit)) };
        var (plan, root) = (file.Plan, file.Root);
        if (plan.Edge is { } edge) Ends("edge", edge.From, edge.To);
        if (plan.Grip is { } grip) Ends("grip", grip.From, grip.To);
        if (plan.Bevel?.Plunge is { } plunge && Table("bevel")?.Find("plunge")?.Value is { } written)
        {
            var (a, b) = (On(plunge.A), On(plunge.B));
            splices.Add(new Splice(written.Offset, written.Length, written is TomlList ? PlaceEdit.Pair(file, written, a, b) : PlanEdit.LengthLike(file, written, Length.OfMm(a.X))));
        }

        var zero = On(FromDatum.Zero(plan));
        if (plan.Datum.X.Side == DatumSide.At) Number("x", zero.X);
        if (plan.Datum.Y.Side == DatumSide.At) Number("y", zero.Y);
        foreach (var (name, table) in Named("hole"))
        {
            if (plan.Holes.OfType<Hole>().FirstOrDefault(h => h.Name == name) is { } hole) Place(table, "at", hole.At);
        }

        foreach (var row in plan.Holes.OfType<HoleRow>())
        {
            if (RowEdit.Find(file, row.Name) is not var (_, table)) continue;
            if (row.OnMidline)
            {
                if (row.From is { } f) Place(table, "from", f);
                if (row.To is { } t) Place(table, "to", t);
            }
            else if (row is { From: { } from, To: { } to } && table.Find("along")?.Value is { } along)
            {
                splices.Add(new Splice(along.Offset, along.Length, PlaceEdit.Pair(file, along, On(from), On(to))));
            }
        }

        return PlanSplice.Apply(
            file,
            splices,
            f => Math.Abs(Moments.Of(f.Plan.Outline).AreaMm2 - Moments.Of(outline).AreaMm2) < 1e-3,
            [.. new[] { "outline.path", "edge", "grip", "bevel.plunge", "datum" }, .. Labels("hole"), .. Labels("hole_row")]);

        Point On(Point p) => OutlineText.Near(map.Map(p), unit);
        TomlTable? Table(string heading) => root.Find(heading)?.Value as TomlTable;
        void Ends(string heading, Point from, Point to)
        {
            if (Table(heading) is not { } table) return;
            Place(table, "from", from);
            Place(table, "to", to);
        }

        void Place(TomlTable table, string key, Point at)
        {
            if (table.Find(key)?.Value is { } node) splices.Add(new Splice(node.Offset, node.Length, PlanEdit.PointLike(file, node, On(at))));
        }

        void Number(string key, double mm)
        {
            if (Table("datum")?.Find(key)?.Value is { } node) splices.Add(new Splice(node.Offset, node.Length, PlanEdit.LengthLike(file, node, Length.OfMm(mm))));
        }

        IEnumerable<(string Name, TomlTable Table)> Named(string heading)
            => ((root.Find(heading)?.Value as TomlTables)?.Items ?? []).Select((t, i) => ((t.Find("name")?.Value as TomlText)?.Value.Trim() ?? $"H{i + 1}", t));

        IEnumerable<string> Labels(string heading) => ((root.Find(heading)?.Value as TomlTables)?.Items ?? []).Select(t => $"{heading}[{PlanEdit.Label(t)}]");
    }
}
