using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>Adds and removes whole blocks of a plan: a heading with its lines.</summary>
internal static class PlanBlock
{
    /// <summary>Adds one more under a heading that repeats: after the last of them, or at the end of the file.</summary>
    /// <param name="file">The plan.</param>
    /// <param name="heading">hole or hole_row.</param>
    /// <param name="name">Name of the new one.</param>
    /// <param name="lines">Its lines below the heading.</param>
    /// <param name="isWanted">What must hold afterwards.</param>
    public static Checked<PlanFile> Add(PlanFile file, string heading, string name, IEnumerable<string> lines, Func<PlanFile, bool> isWanted)
    {
        var (text, end) = (file.Source.Text, file.Source.LineEnd);
        var block = Text(heading, lines, end);
        var at = text.Length;
        if (file.Root.Find(heading)?.Value is TomlTables { Items: { Count: > 0 } items })
        {
            if (!items[^1].IsBlock) return PlanEdit.Refused(file, $"the {Many(heading)} are written as a list in one line", $"write each under its own [[{heading}]]");
            at = file.Source.EndOfBlock(items[^1]);
        }

        var gap = at > 0 && text[at - 1] != '\n' ? end + end : end;
        return PlanSplice.Apply(file, [new Splice(at, 0, gap + block)], isWanted, $"{heading}[{name}]");
    }

    /// <summary>A heading that repeats with its lines.</summary>
    public static string Text(string heading, IEnumerable<string> lines, string end) => string.Join(end, lines.Prepend($"[[{heading}]]")) + end;

    /// <summary>Removes a block: its heading, its lines and the empty lines after them. Remarks above its heading stay.</summary>
    /// <param name="file">The plan.</param>
    /// <param name="table">The block.</param>
    /// <param name="heading">Its heading.</param>
    /// <param name="path">Its name among the values of the plan.</param>
    /// <param name="isWanted">What must hold afterwards.</param>
    public static Checked<PlanFile> Remove(PlanFile file, TomlTable table, string heading, string path, Func<PlanFile, bool> isWanted)
    {
        if (!table.IsBlock) return PlanEdit.Refused(file, $"the {Many(heading)} is written in one line", "change it by hand");
        var (from, to) = Lines(file, table);
        var text = file.Source.Text;
        while (to < text.Length && file.Source.LineAt(to) is var (_, blank) && blank.Trim().Length == 0) to = Math.Min(text.Length, text.IndexOf('\n', to) is var n && n < 0 ? text.Length : n + 1);
        return PlanSplice.Apply(file, [new Splice(from, to - from, "")], isWanted, path);
    }

    /// <summary>Where a block begins and ends.</summary>
    public static (int From, int To) Lines(PlanFile file, TomlTable table) => (file.Source.LineAt(table.Offset).Start, file.Source.EndOfBlock(table));

    private static string Many(string heading) => heading switch { "hole" => "holes", "hole_row" => "rows", _ => heading };
}
