using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>Changes that take the whole piece along: outline, sharpened part, plunge line, tapers, grip, datum, holes and rows, added masses, each number where it stands and in the unit that stands there.</summary>
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

    /// <summary>Scales the piece evenly until it is as long as asked; the datum stays where it is. Places of holes go along; diameters, bevel height and thicknesses stay.</summary>
    public static Checked<PlanFile> ScaleTo(PlanFile file, Length length)
    {
        var by = length.Mm / file.Plan.Outline.Bounds.Width;
        var stays = FromDatum.Zero(file.Plan);
        return Mapped(file, new Transform(by, 0, 0, by, stays.X * (1 - by), stays.Y * (1 - by)));
    }

    /// <summary>Lays the outline at a distance outside itself, inside when negative. Curves are followed to <see cref="OffsetLoop.FitMm"/>; all else stays, the ends of the sharpened part go to the new outline.</summary>
    public static Checked<PlanFile> Offset(PlanFile file, Length outward)
    {
        var offset = OffsetLoop.Of(file.Plan.Outline, outward.Mm);
        if (offset.Path is { } path)
        {
            var edge = file.Plan.Edge;
            return OutlineText.Whole(file, path, edge is null ? null : new SharpenedPart(Beside(edge.From, first: true), Beside(edge.To, first: false)));
        }

        var where = offset.At is { } at ? $" near x {Shown.Both(Length.OfMm(at.X))}, y {Shown.Both(Length.OfMm(at.Y))}" : "";
        return PlanEdit.Refused(file, $"the outline cannot be laid {Shown.Both(Length.OfMm(Math.Abs(outward.Mm)))} {(outward.Mm > 0 ? "outside" : "inside")}: {offset.Why}{where}", "take a smaller distance, or round or take away the point there first");

        // square off the sharpened side of an end of the edge, which may be a corner
        Point Beside(Point end, bool first)
        {
            var all = file.Plan.Outline.Segments;
            var (spot, at, _) = Nearest.On(file.Plan.Outline, end);
            if (first && spot.T > 1 - 1e-6) spot = new PathSpot((spot.Segment + 1) % all.Length, 0);
            if (!first && spot.T < 1e-6) spot = new PathSpot((spot.Segment + all.Length - 1) % all.Length, 1);
            var outside = Moments.Of(file.Plan.Outline).AreaMm2 > 0 ? -1 : 1;
            return at + (all[spot.Segment].Tangent(spot.T).Left * (outside * outward.Mm));
        }
    }

    private static Checked<PlanFile> Mapped(PlanFile file, Transform map)
    {
        if (OutlineText.Written(file) is not { } path || PathDataMap.Of(path.Value, file.UnitMm, map) is not { } text) return PlanEdit.Refused(file, "the outline cannot be changed", "change it by hand");
        List<Splice> splices = [OutlineText.Splice(file, path, text)];
        List<string> may = ["outline.path"];
        foreach (var (heading, keys) in new[] { ("edge", (string[])["from", "to"]), ("grip", ["from", "to"]), ("bevel", ["plunge"]), ("distal_taper", ["starts", "ends"]), ("tang_taper", ["starts", "ends"]), ("scales", ["front", "rear", "thickness_at"]), ("cord", ["from", "to"]), ("datum", ["x", "y"]) })
        {
            if (file.Root.Find(heading)?.Value is TomlTable table) Places(table, heading, keys);
        }

        foreach (var (heading, keys) in new[] { ("hole", (string[])["at"]), ("hole_row", ["along", "from", "to"]), ("added_mass", ["at", "over"]) })
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
            case TomlList list when key == "thickness_at":
                return PlaceEdit.Stations(file, list, x => map.Map(new Point(x, 0)).X);
            case TomlList { Items: [TomlList a, TomlList b] }:
                return PlaceEdit.Pair(file, node, map.Map(PointOf(file, a)), map.Map(PointOf(file, b)));
            case TomlList stretch when key == "over":
                var ends = PointOf(file, stretch);
                return PlanEdit.PointLike(file, node, new Point(map.Map(new Point(ends.X, 0)).X, map.Map(new Point(ends.Y, 0)).X));
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
            && Along(a.DistalTaper?.Starts, b.DistalTaper?.Starts) && Along(a.DistalTaper?.Ends, b.DistalTaper?.Ends)
            && Along(a.TangTaper?.Starts, b.TangTaper?.Starts) && Along(a.TangTaper?.Ends, b.TangTaper?.Ends)
            && a.AddedMasses.Length == b.AddedMasses.Length && a.AddedMasses.Zip(b.AddedMasses).All(m => Goes(m.First.At, m.Second.At))
            && Lies(a.Bevel?.Plunge, b.Bevel?.Plunge) && Lies(a.Scales?.Front, b.Scales?.Front) && Lies(a.Scales?.Rear, b.Scales?.Rear)
            && Goes(a.Cord?.From, b.Cord?.From) && Goes(a.Cord?.To, b.Cord?.To)
            && (a.Scales?.Stations ?? []).Select(s => s.Thickness.Mm).Order().SequenceEqual((b.Scales?.Stations ?? []).Select(s => s.Thickness.Mm).Order());

        bool Lies(PlungeLine? p, PlungeLine? q) => p is null || q is null ? p == q : OnLine(p, q.A) && OnLine(p, q.B);

        bool Goes(Point? from, Point? to) => from is { } x ? to is { } y && map.Map(x).To(y) < 1e-5 : to is null;

        bool Along(Length? from, Length? to) => from is { } x ? to is { } y && Math.Abs(map.Map(new Point(x.Mm, 0)).X - y.Mm) < 1e-5 : to is null;

        // a plunge line written as one x ends where the outline's box does: only its place along the piece is given
        bool OnLine(PlungeLine line, Point at) => Math.Abs((map.Map(line.B) - map.Map(line.A)).Unit.Cross(at - map.Map(line.A))) < 1e-5;
    }
}
