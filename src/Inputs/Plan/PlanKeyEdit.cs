using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>What becomes of one key.</summary>
/// <param name="Key">Name of the key.</param>
/// <param name="Text">Its new value as it stands in the file, from the old one, which is null when the key is new; null takes the key out.</param>
internal readonly record struct KeyWrite(string Key, Func<TomlNode?, string>? Text);

/// <summary>Sets and takes out keys under one heading. A value is changed where it stands, a new key goes after the last one there, a new heading to the end of the file.</summary>
internal static class PlanKeyEdit
{
    /// <summary>Changes keys under a heading that stands once; the heading is begun when it is not there.</summary>
    public static Checked<PlanFile> Under(PlanFile file, string heading, IReadOnlyList<KeyWrite> keys, Func<PlanFile, bool> isWanted)
    {
        var table = heading.Length == 0 ? file.Root : file.Root.Find(heading)?.Value as TomlTable;
        if (table is not null) return Of(file, table, heading, heading, keys, isWanted);
        var written = keys.Where(k => k.Text is not null).Select(k => Line(k, file)).ToArray();
        if (written.Length == 0) return Checked<PlanFile>.Good(file);
        var (text, end) = (file.Source.Text, file.Source.LineEnd);
        var before = text.Length == 0 || text.EndsWith('\n') ? end : end + end;
        return PlanSplice.Apply(file, [new Splice(text.Length, 0, $"{before}[{heading}]{end}{string.Concat(written)}")], isWanted, heading);
    }

    /// <summary>Changes keys of one table.</summary>
    /// <param name="file">The plan.</param>
    /// <param name="table">The table.</param>
    /// <param name="heading">Its heading, for messages.</param>
    /// <param name="path">Its name among the values of the plan: "stock", "hole[L1]", or empty at the top.</param>
    /// <param name="keys">What becomes of each key.</param>
    /// <param name="isWanted">What must hold afterwards.</param>
    /// <param name="may">What else may change.</param>
    public static Checked<PlanFile> Of(PlanFile file, TomlTable table, string heading, string path, IReadOnlyList<KeyWrite> keys, Func<PlanFile, bool> isWanted, params string[] may)
    {
        var splices = new List<Splice>();
        var added = "";
        foreach (var key in keys)
        {
            if (table.Find(key.Key) is { } entry)
            {
                if (key.Text is not null) splices.Add(new Splice(entry.Value.Offset, entry.Value.Length, key.Text(entry.Value)));
                else if (IsInOneLine(table)) return InOneLine();
                else splices.Add(WithoutLine(file, entry));
            }
            else if (key.Text is not null)
            {
                if (!table.IsBlock) return InOneLine();
                added += Line(key, file);
            }
        }

        if (added.Length > 0) splices.Add(NewLines(file, table, added, splices));
        var lead = path.Length == 0 ? "" : path + ".";
        return splices.Count == 0 ? Checked<PlanFile>.Good(file) : PlanSplice.Apply(file, splices, isWanted, [.. keys.Select(k => lead + k.Key), .. may]);

        Checked<PlanFile> InOneLine() => PlanEdit.Refused(file, $"{heading} is written in one line", $"write it under its own {(heading.StartsWith("hole", StringComparison.Ordinal) ? $"[[{heading}]]" : $"[{heading}]")}");
    }

    private static bool IsInOneLine(TomlTable table) => !table.IsBlock && table.Length > 0;

    private static string Line(KeyWrite key, PlanFile file) => $"{key.Key} = {key.Text!(null)}{file.Source.LineEnd}";

    private static Splice WithoutLine(PlanFile file, TomlEntry entry)
    {
        var from = file.Source.LineAt(entry.Start).Start;
        return new Splice(from, file.Source.AfterLine(entry.Value.Offset + entry.Value.Length - 1) - from, "");
    }

    /// <summary>New lines below the last value of the table itself; where that one is taken out they take its place.</summary>
    private static Splice NewLines(PlanFile file, TomlTable table, string added, List<Splice> others)
    {
        var own = table.Entries.Where(e => e.Value is not (TomlTables or TomlTable { IsBlock: true })).ToArray();
        var after = file.Source.AfterLine(own.Length > 0 ? own.Max(e => e.Value.Offset + e.Value.Length - 1) : table.Offset);
        var lead = after > 0 && file.Source.Text[after - 1] != '\n' ? file.Source.LineEnd : "";
        var last = others.FindIndex(s => s.Text.Length == 0 && s.Offset + s.Length == after);
        if (last < 0) return new Splice(after, 0, lead + added);
        var taken = others[last];
        others.RemoveAt(last);
        return taken with { Text = added };
    }
}
