using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>Changes rows of holes in a plan's text.</summary>
public static class RowEdit
{
    /// <summary>Adds a row as a maker types it; empty values are left out.</summary>
    /// <param name="file">The plan.</param>
    /// <param name="values">Keys of a row with what was typed; name must be among them.</param>
    public static Checked<PlanFile> Add(PlanFile file, ImmutableArray<(string Key, string Typed)> values) => HoleBlock.Add(file, "hole_row", values);

    /// <summary>Removes a row: its heading, its lines and the empty lines after them. Remarks above its heading stay.</summary>
    public static Checked<PlanFile> Remove(PlanFile file, string name)
    {
        if (Find(file, name) is not var (row, table)) return NoRow(file, name);
        var others = Others(file, row);
        return NamesStay(file, table) is { } no ? no : PlanBlock.Remove(file, table, "hole_row", Path(table), f => Others(f, row).SequenceEqual(others, StringComparer.Ordinal) && f.Plan.Holes.Length == file.Plan.Holes.Length - 1);
    }

    /// <summary>Writes a row along the midline as a row along the straight line between its first and its last hole, to 0.001 mm or 0.0001 in.</summary>
    public static Checked<PlanFile> AsLine(PlanFile file, string name)
    {
        if (Find(file, name) is not var (row, table)) return NoRow(file, name);
        if (!row.OnMidline) return Checked<PlanFile>.Good(file);
        var holes = Placed(file, row);
        if (holes.Length < 2) return PlanEdit.Refused(file, $"row {name} has no place yet", "give the plan a grip first");
        var (a, b) = (Rounded(file, holes[0].At), Rounded(file, holes[^1].At));
        return Write(file, row, table, [new("along", _ => PlaceEdit.Pair(file, null, a, b)), new("from", null), new("to", null)], r => !r.OnMidline && r.From == a && r.To == b);
    }

    /// <summary>Writes every hole of a row by itself, under the names they have, in the row's place. Places and graded diameters to 0.001 mm or 0.0001 in.</summary>
    public static Checked<PlanFile> AsHoles(PlanFile file, string name)
    {
        if (Find(file, name) is not var (row, table)) return NoRow(file, name);
        if (!table.IsBlock) return PlanEdit.Refused(file, "the rows are written as a list in one line", "write each under its own [[hole_row]]");
        if (NamesStay(file, table) is { } no) return no;
        var holes = Placed(file, row);
        var others = Others(file, row);
        var end = file.Source.LineEnd;
        var (from, to) = PlanBlock.Lines(file, table);
        var text = string.Join(end, holes.Select((h, i) => PlanBlock.Text("hole", HoleBlock.Lines(file, h, AsWritten(file, row, table, i) ?? PathData.Number(Rounded(file, h.Diameter.Mm), file.UnitMm)), end)));
        if (to > 0 && file.Source.Text[to - 1] != '\n') text = text[..^end.Length];
        return PlanSplice.Apply(file, [new Splice(from, to - from, text)], Wanted, [Path(table), .. holes.Select(h => $"hole[{h.Name}]")]);

        bool Wanted(PlanFile f)
        {
            var now = HolePlacement.Of(f.Plan).Where(h => h.Row is null).ToDictionary(h => h.Name, StringComparer.Ordinal);
            return Others(f, row).SequenceEqual(others, StringComparer.Ordinal) && holes.All(h => now.TryGetValue(h.Name, out var n) && n.At.To(h.At) < 0.002 && Math.Abs(n.Diameter.Mm - h.Diameter.Mm) < 0.002);
        }
    }

    /// <summary>The row and the table it is written in; null when there is none of that name.</summary>
    internal static (HoleRow Row, TomlTable Table)? Find(PlanFile file, string name)
    {
        var items = (file.Root.Find("hole_row")?.Value as TomlTables)?.Items ?? [];
        for (var i = 0; i < items.Count; i++)
        {
            var own = (items[i].Find("name")?.Value as TomlText)?.Value.Trim() ?? (items.Count == 1 ? "R" : $"R{i + 1}");
            if (string.Equals(own, name, StringComparison.OrdinalIgnoreCase) && file.Plan.Holes.OfType<HoleRow>().FirstOrDefault(r => r.Name == own) is { } row) return (row, items[i]);
        }

        return null;
    }

    /// <summary>Changes keys of one row.</summary>
    internal static Checked<PlanFile> Write(PlanFile file, HoleRow row, TomlTable table, IReadOnlyList<KeyWrite> keys, Func<HoleRow, bool> isWanted)
        => PlanKeyEdit.Of(file, table, "hole_row", Path(table), keys, f => f.Plan.Holes.OfType<HoleRow>().Any(r => r.Name == row.Name && isWanted(r)));

    /// <summary>The diameter of one hole of a row as it stands in the file; null when it is graded between two.</summary>
    private static string? AsWritten(PlanFile file, HoleRow row, TomlTable table, int index)
    {
        if (table.Find("diameters")!.Value is not TomlList list) return PlanEdit.Raw(file, table.Find("diameters")!.Value);
        if (list.Items.Count == 2 && row.Count > 2) return index == 0 ? PlanEdit.Raw(file, list.Items[0]) : index == row.Count - 1 ? PlanEdit.Raw(file, list.Items[1]) : null;
        return PlanEdit.Raw(file, list.Items[Math.Min(index, list.Items.Count - 1)]);
    }

    /// <summary>Refuses where taking a row out of the lists would name others anew.</summary>
    private static Checked<PlanFile>? NamesStay(PlanFile file, TomlTable table)
    {
        var unnamed = ((file.Root.Find("hole")?.Value as TomlTables)?.Items ?? []).Concat((file.Root.Find("hole_row")?.Value as TomlTables)?.Items ?? []).Any(t => t != table && t.Find("name") is null);
        return unnamed ? PlanEdit.Refused(file, "some holes or rows have no name of their own, and would be named anew", "give them names first") : null;
    }

    private static ImmutableArray<PlacedHole> Placed(PlanFile file, HoleRow row) => [.. HolePlacement.Of(file.Plan).Where(h => h.Row == row.Name)];

    private static IEnumerable<string> Others(PlanFile file, HoleRow row) => [.. file.Plan.Holes.Select(h => h.Name).Where(n => n != row.Name && !n.StartsWith(row.Name, StringComparison.Ordinal))];

    /// <summary>A place to 0.001 mm or 0.0001 in, so that it is written short.</summary>
    internal static Point Rounded(PlanFile file, Point p) => new(Rounded(file, p.X), Rounded(file, p.Y));

    private static double Rounded(PlanFile file, double mm) => Math.Round(mm / file.UnitMm, file.Plan.Units == LengthUnit.Inch ? 4 : 3) * file.UnitMm;

    private static string Path(TomlTable table) => $"hole_row[{PlanEdit.Label(table)}]";

    internal static Checked<PlanFile> NoRow(PlanFile file, string name)
        => PlanEdit.Refused(file, $"the plan has no row named {NumberText.Clip(name)}", "choose one of its rows");
}
