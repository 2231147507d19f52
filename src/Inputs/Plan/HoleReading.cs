using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>Reads the holes and rows of a plan, in the order written.</summary>
internal sealed class HoleReading(SourceText source, double unitMm, List<Fault> faults, bool hasGrip)
{
    private const int MostHoles = 5000;
    private const int MostInRow = 1000;
    private readonly Dictionary<string, (int Offset, string Entry)> _names = new(StringComparer.OrdinalIgnoreCase);

    public ImmutableArray<HoleEntry> Read(TomlTable root)
    {
        var holes = (root.Find("hole")?.Value as TomlTables)?.Items ?? [];
        var rows = (root.Find("hole_row")?.Value as TomlTables)?.Items ?? [];
        if (holes.Count > MostHoles)
        {
            faults.Add(source.Fault(holes[MostHoles].Offset, $"more than {MostHoles} holes", "leave some out"));
            return [];
        }

        var found = new List<(int Offset, HoleEntry? Entry)>();
        for (var i = 0; i < holes.Count; i++) found.Add((NameOffset(holes[i]), ReadHole(holes[i], i + 1)));
        for (var i = 0; i < rows.Count; i++) found.Add((NameOffset(rows[i]), ReadRow(rows[i], rows.Count == 1 ? "R" : $"R{i + 1}")));
        var total = found.Sum(e => e.Entry is HoleRow r ? r.Count : 1);
        if (total > MostHoles) faults.Add(source.Fault(rows[^1].Offset, $"{total} holes with those of the rows; at most {MostHoles} are read", "make the rows shorter"));
        else CheckNames(found);
        return [.. found.OrderBy(e => e.Offset).Select(e => e.Entry).OfType<HoleEntry>()];
    }

    private static int NameOffset(TomlTable table) => table.Find("name")?.Value.Offset ?? table.Offset;

    private Hole? ReadHole(TomlTable table, int place)
    {
        var f = new Fields(source, table, "hole", PlanKeys.Table, unitMm, faults);
        var name = f.Has("name") ? f.Text("name") : $"H{place}";
        var at = f.Point("at");
        var node = f.Node("diameter");
        var diameter = node is null ? null : f.Length(node, "diameter", positive: true, drills: true);
        var (use, make) = (f.Word("use"), f.Word("make"));
        var (pin, tube, drilled) = (f.Length("pin"), f.Length("tube"), f.Word("drilled"));
        if (tube is { } bore && (pin is null || bore >= pin)) f.Fault("tube", pin is null ? "a tube without its diameter" : "a tube whose bore is not smaller than its diameter", "write pin = the diameter over all, and tube = its bore");
        if (name is null || at is null || diameter is null) return null;
        var written = node is TomlText t ? t.Value.Trim() : source.Text.Substring(node!.Offset, node.Length);
        return new Hole(name, at.Value, diameter.Value.Length, written, (HoleUse)Math.Max(0, use), (HoleMake)Math.Max(0, make)) { Pin = pin, Tube = tube, IsDrilledHard = drilled == 1 };
    }

    private HoleRow? ReadRow(TomlTable table, string unnamed)
    {
        var f = new Fields(source, table, "hole_row", PlanKeys.Table, unitMm, faults);
        var name = f.Has("name") ? f.Text("name") : unnamed;
        var count = f.Whole("count", 2, MostInRow);
        var diameters = ReadDiameters(f, count);
        var (spacing, use, make) = (f.Word("spacing"), f.Word("use"), f.Word("make"));
        var midline = f.Node("along") is TomlText { Value: var word } && string.Equals(word.Trim(), "midline", StringComparison.OrdinalIgnoreCase);
        var (from, to) = (f.Point("from"), f.Point("to"));
        if (midline)
        {
            if (!hasGrip) f.Fault("along", "a row along the midline, but the plan has no [grip]", "add [grip] with from and to; the midline is that of the grip");
            if (from is { } a && to is { } b && a.To(b) <= 1e-6) f.Fault("to", "the row begins and ends in the same point", "write two points that are apart");
        }
        else if (f.Node("along") is { } along)
        {
            if (along is TomlText t)
            {
                f.Fault("along", $"along is '{NumberText.Clip(t.Value)}'", "write \"midline\", or two points as [[124, 18], [229, 18]]");
            }
            else if (f.TwoPoints(along, "along") is { } ends)
            {
                if (from is not null || to is not null) f.Fault(from is not null ? "from" : "to", "from and to beside two points in along", "they belong to a row along the midline; take them out");
                (from, to) = (ends.A, ends.B);
            }
        }

        if (name is null || count is null || diameters.IsEmpty) return null;
        return new HoleRow(name, from, to, midline, count.Value, diameters, (RowSpacing)Math.Max(0, spacing), (HoleUse)Math.Max(0, use), (HoleMake)Math.Max(0, make));
    }

    private static ImmutableArray<Length> ReadDiameters(Fields f, int? count)
    {
        var node = f.Node("diameters");
        if (node is null) return [];
        var items = node is TomlList list ? list.Items : [node];
        if (items.Count is 0 or > MostInRow)
        {
            f.Fault("diameters", items.Count == 0 ? "no diameter" : "too many diameters", "write one, two or as many as the row has holes");
            return [];
        }

        if (count is { } n && items.Count != 1 && items.Count != 2 && items.Count != n)
        {
            f.Fault("diameters", $"{items.Count} diameters for {n} holes", $"write one, two or {n} diameters");
            return [];
        }

        var read = items.Select(i => f.Length(i, "diameters", positive: true, drills: true)).ToArray();
        return read.All(d => d is not null) ? [.. read.Select(d => d!.Value.Length)] : [];
    }

    /// <summary>Every name once; the holes of a row count with theirs.</summary>
    private void CheckNames(List<(int Offset, HoleEntry? Entry)> found)
    {
        foreach (var (offset, entry) in found.OrderBy(e => e.Offset))
        {
            if (entry is null) continue;
            Claim(entry.Name, offset, entry.Name);
            if (entry is not HoleRow row) continue;
            for (var i = 1; i <= row.Count; i++) Claim($"{row.Name}{i}", offset, row.Name);
        }
    }

    private void Claim(string name, int offset, string entry)
    {
        if (_names.TryAdd(name, (offset, entry))) return;
        var other = _names[name];
        if (other.Offset == offset) return;
        var row = name != entry ? entry : name != other.Entry ? other.Entry : null;
        faults.Add(source.Fault(offset, $"two holes are named {name}{(row is null ? "" : $", one of them made by row {row}")}; the other one is at line {source.LineOf(other.Offset)}", "give one of them another name"));
        _names[name] = (offset, entry);
    }
}
