using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>Sets and takes out any value of a plan as a maker types it. What the reader refuses is refused in its own words.</summary>
public static class ValueEdit
{
    /// <summary>A value as it would be typed in, points as <c>100, 18.2</c>; null when it does not stand in the file.</summary>
    /// <param name="file">The plan.</param>
    /// <param name="heading">Heading; empty for the top.</param>
    /// <param name="item">Name of the hole or row under a heading that repeats; else empty.</param>
    /// <param name="key">Key.</param>
    public static string? Written(PlanFile file, string heading, string item, string key)
        => Table(file, heading, item)?.Find(key)?.Value is { } node ? PlanValue.Typed(node, file.Source) : null;

    /// <summary>Whether a heading stands in the file.</summary>
    public static bool Has(PlanFile file, string heading) => heading.Length == 0 || file.Root.Find(heading) is not null;

    /// <summary>Sets a value; an empty one takes the key out.</summary>
    /// <param name="file">The plan.</param>
    /// <param name="heading">Heading; empty for the top.</param>
    /// <param name="item">Name of the hole or row under a heading that repeats; else empty.</param>
    /// <param name="key">Key.</param>
    /// <param name="typed">What was typed.</param>
    public static Checked<PlanFile> Set(PlanFile file, string heading, string item, string key, string typed)
    {
        if (PlanKeys.Table.Find(heading, key) is not { } row) return PlanEdit.Refused(file, $"{heading}.{key} is no key of a plan", "name a key of docs/plan-file.md");
        if (string.IsNullOrWhiteSpace(typed)) return TakeOut(file, row, item);
        if (heading.Length == 0 && key == "units") return PlanUnits.Set(file, typed.Trim().ToLowerInvariant());
        var value = PlanValue.Of(row, typed);
        return Write(file, row, item, new KeyWrite(key, old => value.InFile(file, old)), value.ToString());
    }

    /// <summary>Begins a heading that stands once, with its values; one that is there already is changed.</summary>
    public static Checked<PlanFile> Begin(PlanFile file, string heading, ImmutableArray<(string Key, string Typed)> values)
    {
        var keys = new List<KeyWrite>();
        foreach (var (key, typed) in values)
        {
            if (PlanKeys.Table.Find(heading, key) is not { } row) return PlanEdit.Refused(file, $"{heading}.{key} is no key of a plan", "name a key of docs/plan-file.md");
            if (string.IsNullOrWhiteSpace(typed)) continue;
            var value = PlanValue.Of(row, typed);
            keys.Add(new KeyWrite(key, old => value.InFile(file, old)));
        }

        return keys.Count == 0
            ? PlanEdit.Refused(file, "nothing was written", "fill in what must be there")
            : PlanKeyEdit.Under(file, heading, keys, f => keys.TrueForAll(k => (f.Root.Find(heading)?.Value as TomlTable)?.Find(k.Key) is not null));
    }

    /// <summary>Takes a heading out, with all its lines.</summary>
    public static Checked<PlanFile> TakeOutHeading(PlanFile file, string heading)
    {
        if (file.Root.Find(heading) is not { Value: TomlTable table } || heading.Length == 0) return Checked<PlanFile>.Good(file);
        return PlanBlock.Remove(file, table, heading, heading, f => f.Root.Find(heading) is null);
    }

    private static Checked<PlanFile> TakeOut(PlanFile file, KeyRow row, string item)
        => Written(file, row.Table, item, row.Key) is null
            ? Checked<PlanFile>.Good(file)
            : row.Table.Length == 0 && row.Key == "units" ? Missing(file, row) : Write(file, row, item, new KeyWrite(row.Key, null), null);

    private static Checked<PlanFile> Missing(PlanFile file, KeyRow row) => PlanEdit.Refused(file, $"{row.Key} is missing", $"write {string.Join(" or ", row.Words)}");

    private static Checked<PlanFile> Write(PlanFile file, KeyRow row, string item, KeyWrite key, string? wanted)
    {
        var repeats = PlanKeys.Table.Headings.First(h => h.Name == row.Table).Repeats;
        if (!repeats) return PlanKeyEdit.Under(file, row.Table, [key], f => Reads(f, row.Table.Length == 0 ? f.Root : f.Root.Find(row.Table)?.Value as TomlTable));
        if (Table(file, row.Table, item) is not { } table) return row.Table == "hole" ? PlanEdit.NoHole(file, item) : RowEdit.NoRow(file, item);
        var at = Items(file, row.Table).IndexOf(table);
        var may = row.Key == "name" ? new[] { $"{row.Table}[{PlanEdit.Label(table)}]", $"{row.Table}[{wanted}]" } : [];
        return PlanKeyEdit.Of(file, table, row.Table, $"{row.Table}[{PlanEdit.Label(table)}]", [key], f => Reads(f, Items(f, row.Table).ElementAtOrDefault(at)) && (row.Key != "name" || SameBut(f, at)), may);

        bool Reads(PlanFile f, TomlTable? t) => (t?.Find(row.Key)?.Value is { } node ? PlanValue.Typed(node, f.Source) : null) == wanted;

        bool SameBut(PlanFile f, int i) => Raws(file, table).SequenceEqual(Raws(f, Items(f, row.Table)[i]), StringComparer.Ordinal);
    }

    private static IEnumerable<string> Raws(PlanFile file, TomlTable table) => table.Entries.Where(e => e.Key != "name").Select(e => PlanEdit.Raw(file, e.Value));

    private static TomlTable? Table(PlanFile file, string heading, string item) => heading switch
    {
        "" => file.Root,
        "hole" => PlanEdit.Hole(file, item),
        "hole_row" => RowEdit.Find(file, item)?.Table,
        "added_mass" => Items(file, heading).Find(t => PlanEdit.Label(t).Equals(item, StringComparison.OrdinalIgnoreCase)),
        _ => file.Root.Find(heading)?.Value as TomlTable,
    };

    private static List<TomlTable> Items(PlanFile file, string heading) => (file.Root.Find(heading)?.Value as TomlTables)?.Items ?? [];
}
