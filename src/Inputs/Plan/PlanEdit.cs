using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>Writes changes back into a plan's text at the place of the value: remarks, order, quotes, line ends and the unit the maker wrote stay. The result is read again and compared before it is given; a change that changes nothing gives the same text byte for byte.</summary>
public static class PlanEdit
{
    /// <summary>Sets a length; written in the unit that stands there, a new one as a bare number.</summary>
    /// <param name="file">The plan.</param>
    /// <param name="heading">Heading, as "stock".</param>
    /// <param name="key">Key, as "thickness".</param>
    /// <param name="length">New length.</param>
    public static Checked<PlanFile> SetLength(PlanFile file, string heading, string key, Length length)
        => Set(file, heading, key, old => LengthLike(file, old, length), (f, n) => LengthOf(f, n) is { } l && Near(l, length));

    /// <summary>Sets a text.</summary>
    public static Checked<PlanFile> SetText(PlanFile file, string heading, string key, string text)
        => Set(file, heading, key, old => old is TomlText t && t.Value == text ? Raw(file, old) : Quoted(text, old, file), (_, n) => n is TomlText t && t.Value == text);

    /// <summary>Moves a point of the outline; only its own numbers change, and those of the next step where it counts from the moved point. An end of the edge that lies on it goes with it; one that would be off the outline goes to its nearest point.</summary>
    /// <param name="file">The plan.</param>
    /// <param name="from">Where the point is, to 0.001 mm.</param>
    /// <param name="to">Where it goes.</param>
    public static Checked<PlanFile> MoveOutlinePoint(PlanFile file, Point from, Point to)
    {
        if ((file.Root.Find("outline")?.Value as TomlTable)?.Find("path")?.Value is not TomlText path) return Refused(file, "the plan has no outline", "add [outline]");
        var steps = PathData.Read(path.Value, file.UnitMm).Steps;
        var nearest = -1;
        for (var i = 0; i < steps.Length; i++)
        {
            if (steps[i].Kind != 'Z' && steps[i].End.To(from) <= 1e-3 && (nearest < 0 || steps[i].End.To(from) < steps[nearest].End.To(from))) nearest = i;
        }

        if (nearest < 0) return Refused(file, $"the outline has no point at {Shown.Trimmed(from.X, 3)}, {Shown.Trimmed(from.Y, 3)} mm", "name one of its points");
        if (from == to) return Checked<PlanFile>.Good(file);
        var text = PathDataMove.Of(path.Value, file.UnitMm, nearest, to);
        if (text is null) return Refused(file, "the outline cannot be changed", "change it by hand");
        var splice = path.ContentOffset >= 0 ? new Splice(path.ContentOffset, path.Value.Length, text) : new Splice(path.Offset, path.Length, Quoted(text, path, file));
        var splices = new List<Splice> { splice };
        if (file.Root.Find("edge")?.Value is TomlTable edge && file.Plan.Edge is { } part)
        {
            var outline = PathData.Read(text, file.UnitMm).Paths.FirstOrDefault();
            foreach (var (key, at) in new[] { ("from", part.From), ("to", part.To) })
            {
                var stays = at.To(from) > 1e-3 && (outline is null || Nearest.Distance(outline, at) <= 0.05);
                if (stays || edge.Find(key)?.Value is not { } node) continue;
                splices.Add(new Splice(node.Offset, node.Length, PointLike(file, node, at.To(from) <= 1e-3 || outline is null ? to : PlaceEdit.OnOutline(outline, file.Plan.Units, at))));
            }
        }

        return PlanSplice.Apply(file, splices, f => f.Plan.Outline.Segments.Any(s => s.Start.To(to) < 1e-9 || s.End.To(to) < 1e-9), "outline.path", "edge.from", "edge.to");
    }

    /// <summary>Moves a hole.</summary>
    /// <param name="file">The plan.</param>
    /// <param name="name">Name of a single hole.</param>
    /// <param name="to">New centre.</param>
    public static Checked<PlanFile> MoveHole(PlanFile file, string name, Point to)
        => ChangeHole(file, name, "at", old => PointLike(file, old, to), h => h.At.To(to) < 1e-9);

    /// <summary>Sets the diameter of a hole.</summary>
    /// <param name="file">The plan.</param>
    /// <param name="name">Name of a single hole.</param>
    /// <param name="diameter">New diameter.</param>
    public static Checked<PlanFile> SetDiameter(PlanFile file, string name, Length diameter)
        => ChangeHole(file, name, "diameter", old => LengthLike(file, old, diameter), h => Near(h.Diameter, diameter));

    /// <summary>Sets the diameter of a hole to a drill's name, as "#30" or "1/4 in".</summary>
    public static Checked<PlanFile> SetDiameter(PlanFile file, string name, DrillSize drill)
        => ChangeHole(file, name, "diameter", old => Quoted(drill.Name, old, file), h => Near(h.Diameter, drill.Diameter));

    /// <summary>Adds a hole after the last <c>[[hole]]</c>, or at the end.</summary>
    public static Checked<PlanFile> AddHole(PlanFile file, Hole hole)
    {
        var unit = file.UnitMm;
        var diameter = hole.DiameterAsWritten.Length > 0 && LengthText.Read(hole.DiameterAsWritten, unit, drills: true) is { IsGood: true, Value: var w } && Math.Abs(w.Length.Mm - hole.Diameter.Mm) < 1e-9
            ? w.Writing == LengthWriting.Bare ? hole.DiameterAsWritten : Quoted(hole.DiameterAsWritten, null, file)
            : PathData.Number(hole.Diameter.Mm, unit);
        var lines = new List<string>
        {
            $"name = {Quoted(hole.Name, null, file)}",
            $"at = [{PathData.Number(hole.At.X, unit)}, {PathData.Number(hole.At.Y, unit)}]",
            $"diameter = {diameter}",
            $"use = \"{PlanKeys.Uses[(int)hole.Use]}\"",
        };
        if (hole.Make != HoleMake.Drill) lines.Add($"make = \"{PlanKeys.Makes[(int)hole.Make]}\"");
        return PlanBlock.Add(file, "hole", hole.Name, lines, IsThere);

        bool IsThere(PlanFile f) => f.Plan.Holes.OfType<Hole>().Any(h => h.Name == hole.Name && h.At.To(hole.At) < 1e-9 && Near(h.Diameter, hole.Diameter) && h.Use == hole.Use && h.Make == hole.Make);
    }

    /// <summary>Removes a single hole: its heading, its lines and the empty lines after them. Remarks above its heading stay.</summary>
    public static Checked<PlanFile> RemoveHole(PlanFile file, string name)
    {
        if (Hole(file, name) is not { } hole) return NoHole(file, name);
        if (hole.Find("name") is null) return Refused(file, $"hole {name} has no name of its own, and those after it would be named anew", "give the holes names first");
        return PlanBlock.Remove(file, hole, "hole", $"hole[{Label(hole)}]", f => f.Plan.Holes.Length == file.Plan.Holes.Length - 1);
    }

    internal static Checked<PlanFile> Set(PlanFile file, string heading, string key, Func<TomlNode?, string> write, Func<PlanFile, TomlNode, bool> isWanted)
    {
        var row = PlanKeys.Table.Find(heading, key);
        if (row is null || PlanKeys.Table.Headings.First(h => h.Name == heading).Repeats) return Refused(file, $"{heading}.{key} is no single key of a plan", "name a key of docs/plan-file.md");
        return PlanKeyEdit.Under(file, heading, [new KeyWrite(key, write)], Wanted);

        bool Wanted(PlanFile f) => (heading.Length == 0 ? f.Root : f.Root.Find(heading)?.Value as TomlTable)?.Find(key)?.Value is { } node && isWanted(f, node);
    }

    /// <summary>Changes one key of a single hole.</summary>
    private static Checked<PlanFile> ChangeHole(PlanFile file, string name, string key, Func<TomlNode, string> write, Func<Hole, bool> isWanted)
    {
        if (Hole(file, name) is not { } hole) return NoHole(file, name);
        var old = hole.Find(key)!.Value;
        return PlanSplice.Apply(
            file,
            [new Splice(old.Offset, old.Length, write(old))],
            f => f.Plan.Holes.OfType<Hole>().Any(h => string.Equals(h.Name, name, StringComparison.OrdinalIgnoreCase) && isWanted(h)),
            $"hole[{Label(hole)}].{key}");
    }

    internal static bool Near(Length a, Length b) => Math.Abs(a.Mm - b.Mm) < 1e-9;

    internal static Length? LengthOf(PlanFile file, TomlNode node) => node switch
    {
        TomlText t when LengthText.Read(t.Value, file.UnitMm, drills: true) is { IsGood: true, Value: var w } => w.Length,
        TomlNumber n => Length.OfMm(n.Value * file.UnitMm),
        _ => null,
    };

    internal static TomlTable? Hole(PlanFile file, string name)
    {
        var items = (file.Root.Find("hole")?.Value as TomlTables)?.Items ?? [];
        for (var i = 0; i < items.Count; i++)
        {
            var own = (items[i].Find("name")?.Value as TomlText)?.Value.Trim() ?? $"H{i + 1}";
            if (string.Equals(own, name, StringComparison.OrdinalIgnoreCase)) return items[i];
        }

        return null;
    }

    internal static string Label(TomlTable hole) => (hole.Find("name")?.Value as TomlText)?.Value ?? "";

    internal static string Raw(PlanFile file, TomlNode node) => file.Source.Text.Substring(node.Offset, node.Length);

    internal static string LengthLike(PlanFile file, TomlNode? old, Length length)
    {
        switch (old)
        {
            case TomlText t when LengthText.Read(t.Value, file.UnitMm, drills: true) is { IsGood: true, Value: var w }:
                if (Math.Abs(w.Length.Mm - length.Mm) < 1e-12) return Raw(file, t);
                return Quoted(LengthText.Write(length, w.Writing, file.UnitMm, t.Value), t, file);
            case TomlNumber n when Math.Abs((n.Value * file.UnitMm) - length.Mm) < 1e-12:
                return Raw(file, n);
            default:
                return PathData.Number(length.Mm, file.UnitMm);
        }
    }

    internal static string PointLike(PlanFile file, TomlNode? old, Point point)
    {
        if (old is not TomlList { Items: { Count: 2 } pair }) return $"[{PathData.Number(point.X, file.UnitMm)}, {PathData.Number(point.Y, file.UnitMm)}]";
        var text = file.Source.Text;
        var (x, y) = (pair[0], pair[1]);
        return string.Concat(
            text.AsSpan(old.Offset, x.Offset - old.Offset),
            LengthLike(file, x, Length.OfMm(point.X)),
            text.AsSpan(x.Offset + x.Length, y.Offset - x.Offset - x.Length),
            string.Concat(LengthLike(file, y, Length.OfMm(point.Y)), text.AsSpan(y.Offset + y.Length, old.Offset + old.Length - y.Offset - y.Length)));
    }

    /// <summary>A text in the quotes of the old one, or in double quotes.</summary>
    internal static string Quoted(string text, TomlNode? old, PlanFile file)
    {
        var single = old is TomlText && file.Source.Text[old.Offset] == '\'';
        if (single && !text.Contains('\'') && !text.Any(char.IsControl)) return $"'{text}'";
        return "\"" + text.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal).ReplaceLineEndings("\\n").Replace("\t", "\\t", StringComparison.Ordinal) + "\"";
    }

    internal static Checked<PlanFile> NoHole(PlanFile file, string name)
        => Refused(file, $"the plan has no single hole named {NumberText.Clip(name)}", "holes of a row are changed in their [[hole_row]]");

    internal static Checked<PlanFile> Refused(PlanFile file, string message, string remedy) => Checked<PlanFile>.Bad(Fault.OfFile(file.FileName, message, remedy));
}
