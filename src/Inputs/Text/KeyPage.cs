using System.Text;

namespace Tangwright.Inputs;

/// <summary>Writes the manual page of a kind of file from its key table.</summary>
internal static class KeyPage
{
    public static string Markdown(string title, string introduction, KeyTable table)
    {
        var s = new StringBuilder();
        s.Append("# ").Append(title).Append("\n\n").Append(introduction.Trim()).Append('\n');
        foreach (var h in table.Headings)
        {
            s.Append("\n## ").Append(h.Name.Length == 0 ? "At the top" : $"`{KeyTable.Shown(h)}`").Append("\n\n");
            s.Append(h.Meaning).Append(h.Required ? " Must be there.\n\n" : "\n\n");
            s.Append("| key | value | meaning | when absent | example |\n| --- | --- | --- | --- | --- |\n");
            foreach (var k in table.Under(h.Name))
            {
                s.Append("| `").Append(k.Key).Append("` | ").Append(Cell(k.Words.IsEmpty ? k.Kind : $"{k.Kind}: {string.Join(", ", k.Words.Select(w => $"`\"{w}\"`"))}"));
                s.Append(" | ").Append(Cell(k.Meaning)).Append(" | ").Append(k.Required ? "must be there" : Cell(k.Default.Length == 0 ? "left out" : k.Default));
                s.Append(" | `").Append(k.Example.Replace("|", "\\|", StringComparison.Ordinal)).Append("` |\n");
            }
        }

        return s.ToString();
    }

    private static string Cell(string text) => text.Replace("|", "\\|", StringComparison.Ordinal);
}
