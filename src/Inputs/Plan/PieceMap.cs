using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>Mirrors and scales a whole piece in its text: outline, sharpened part, plunge line, grip, datum, holes and rows go along, each number where it stands and in the unit that stands there. Diameters, heights and thicknesses stay.</summary>
public static class PieceMap
{
    /// <summary>Mirrors the piece about the middle of its box; a datum on a side goes to the other side with it.</summary>
    /// <param name="file">The plan.</param>
    /// <param name="leftRight">Left and right change places; else top and bottom.</param>
    public static Checked<PlanFile> Mirrored(PlanFile file, bool leftRight)
    {
        var box = file.Plan.Outline.Bounds;
        var map = leftRight ? new Transform(-1, 0, 0, 1, box.MinX + box.MaxX, 0) : new Transform(1, 0, 0, -1, 0, box.MinY + box.MaxY);
        var (key, mark) = leftRight ? ("x", file.Plan.Datum.X) : ("y", file.Plan.Datum.Y);
        var other = mark.Side switch { DatumSide.Left => DatumSide.Right, DatumSide.Right => DatumSide.Left, DatumSide.Bottom => DatumSide.Top, DatumSide.Top => DatumSide.Bottom, _ => DatumSide.At };
        return Mapped(file, map).Then(mapped => other == DatumSide.At
            ? Checked<PlanFile>.Good(mapped)
            : PlanKeyEdit.Under(mapped, "datum", [new KeyWrite(key, old => PlanEdit.Quoted(other.ToString().ToLowerInvariant(), old, mapped))], f => (leftRight ? f.Plan.Datum.X : f.Plan.Datum.Y).Side == other));
    }

    /// <summary>Scales the piece evenly, so that the datum stays where it is.</summary>
    /// <param name="file">The plan.</param>
    /// <param name="factor">How much longer, above 0.</param>
    public static Checked<PlanFile> Scaled(PlanFile file, double factor)
    {
        var stays = FromDatum.Zero(file.Plan);
        return Mapped(file, new Transform(factor, 0, 0, factor, stays.X * (1 - factor), stays.Y * (1 - factor)));
    }

    private static Checked<PlanFile> Mapped(PlanFile file, Transform map)
    {
        if ((file.Root.Find("outline")?.Value as TomlTable)?.Find("path")?.Value is not TomlText path || PathDataMap.Of(path.Value, file.UnitMm, map) is not { } text)
            return PlanEdit.Refused(file, "the outline cannot be changed", "change it by hand");
        List<Splice> splices = [path.ContentOffset >= 0 ? new Splice(path.ContentOffset, path.Value.Length, text) : new Splice(path.Offset, path.Length, PlanEdit.Quoted(text, path, file))];
        List<string> may = ["outline.path"];
        foreach (var (heading, keys) in new[] { ("edge", (string[])["from", "to"]), ("grip", ["from", "to"]), ("bevel", ["plunge"]), ("datum", ["x", "y"]) })
        {
            if (file.Root.Find(heading)?.Value is TomlTable table) Places(table, heading, keys);
        }

        foreach (var (heading, keys) in new[] { ("hole", (string[])["at"]), ("hole_row", ["along", "from", "to"]) })
        {
            foreach (var table in (file.Root.Find(heading)?.Value as TomlTables)?.Items ?? []) Places(table, $"{heading}[{PlanEdit.Label(table)}]", keys);
        }

        return PlanSplice.Apply(file, splices, f => IsMapped(file.Plan, f.Plan, map), [.. may]);

        void Places(TomlTable table, string path, string[] keys)
        {
            foreach (var key in keys)
            {
                if (table.Find(key)?.Value is not { } node) continue;
                var now = Place(file, node, key, map);
                if (now == PlanEdit.Raw(file, node)) continue;
                splices.Add(new Splice(node.Offset, node.Length, now));
                may.Add($"{path}.{key}");
            }
        }
    }

    /// <summary>A value as it is written after the map: a list of two points, a point, or one coordinate; words stay.</summary>
    private static string Place(PlanFile file, TomlNode node, string key, Transform map)
    {
        switch (node)
        {
            case TomlList { Items: [TomlList a, TomlList b] }:
                return PlaceEdit.Pair(file, node, map.Map(PointOf(file, a)), map.Map(PointOf(file, b)));
            case TomlList point:
                return PlanEdit.PointLike(file, node, map.Map(PointOf(file, point)));
            default:
                if (PlanEdit.LengthOf(file, node) is not { } at) return PlanEdit.Raw(file, node);
                var mapped = map.Map(new Point(at.Mm, at.Mm));
                return PlanEdit.LengthLike(file, node, Length.OfMm(key == "y" ? mapped.Y : mapped.X));
        }
    }

    private static Point PointOf(PlanFile file, TomlList pair)
        => new(PlanEdit.LengthOf(file, pair.Items[0])?.Mm ?? 0, PlanEdit.LengthOf(file, pair.Items[1])?.Mm ?? 0);

    private static bool IsMapped(Plan a, Plan b, Transform map)
    {
        return a.Outline.Segments.Length == b.Outline.Segments.Length
            && a.Outline.Segments.Zip(b.Outline.Segments).All(s => Goes(s.First.Start, s.Second.Start) && Goes(s.First.At(0.3), s.Second.At(0.3)))
            && a.Holes.Length == b.Holes.Length
            && a.Holes.Zip(b.Holes).All(h => (h.First, h.Second) switch
            {
                (Hole x, Hole y) => Goes(x.At, y.At) && x.Diameter == y.Diameter,
                (HoleRow x, HoleRow y) => Goes(x.From, y.From) && Goes(x.To, y.To) && x.Diameters.SequenceEqual(y.Diameters),
                _ => false,
            })
            && Goes(a.Edge?.From, b.Edge?.From) && Goes(a.Edge?.To, b.Edge?.To)
            && Goes(a.Grip?.From, b.Grip?.From) && Goes(a.Grip?.To, b.Grip?.To)
            && (a.Bevel?.Plunge, b.Bevel?.Plunge) is var (p, q)
            && (p is null || q is null ? p == q : OnLine(p, q.A) && OnLine(p, q.B));

        bool Goes(Point? from, Point? to) => from is { } x ? to is { } y && map.Map(x).To(y) < 1e-5 : to is null;

        // a plunge line written as one x ends where the outline's box does: only its place along the piece is given
        bool OnLine(PlungeLine line, Point at) => Math.Abs((map.Map(line.B) - map.Map(line.A)).Unit.Cross(at - map.Map(line.A))) < 1e-5;
    }
}
