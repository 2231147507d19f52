namespace Tangwright.Inputs;

/// <summary>Puts items into a list of a text and takes them out; the others, their order, remarks and lines stay.</summary>
internal static class ListSplice
{
    /// <summary>The text without one item of a list.</summary>
    public static string Without(string text, TomlList list, int index)
    {
        var item = list.Items[index];
        var (from, to) = (item.Offset, item.Offset + item.Length);
        var comma = Comma(text, to);
        if (comma >= 0) to = comma + 1;

        // alone on its line: the line goes, with its remark
        var start = text.LastIndexOf('\n', Math.Max(0, from - 1)) + 1;
        var end = text.IndexOf('\n', to) is var n && n < 0 ? text.Length : n + 1;
        var after = text[to..end].Trim();
        if (start > list.Offset && text[start..from].Trim().Length == 0 && (after.Length == 0 || after[0] == '#')) return text.Remove(start, end - start);

        if (comma >= 0) while (to < text.Length && text[to] == ' ') to++;
        else if (index > 0) from = list.Items[index - 1].Offset + list.Items[index - 1].Length;
        return text.Remove(from, to - from);
    }

    /// <summary>The text with one item more at the end of a list.</summary>
    public static string With(string text, TomlList list, string item, string lineEnd)
    {
        if (list.Items.Count == 0) return text.Insert(list.Offset + 1, item);
        var last = list.Items[^1];
        var end = last.Offset + last.Length;
        var start = text.LastIndexOf('\n', Math.Max(0, last.Offset - 1)) + 1;
        var indent = text[start..last.Offset];
        if (start <= list.Offset || indent.Trim().Length > 0) return text.Insert(end, ", " + item);

        // one item a line
        var comma = Comma(text, end);
        if (comma < 0)
        {
            text = text.Insert(end, ",");
            comma = end;
        }

        var line = text.IndexOf('\n', comma);
        var rest = text[(comma + 1)..(line < 0 ? text.Length : line)].Trim();
        return line >= 0 && (rest.Length == 0 || rest[0] == '#') ? text.Insert(line + 1, $"{indent}{item},{lineEnd}") : text.Insert(comma + 1, $"{lineEnd}{indent}{item},");
    }

    /// <summary>The comma after an item, remarks between skipped; -1 when the list ends there.</summary>
    private static int Comma(string text, int from)
    {
        for (var i = from; i < text.Length; i++)
        {
            if (text[i] == ',') return i;
            if (text[i] == ']') return -1;
            if (text[i] != '#') continue;
            i = text.IndexOf('\n', i);
            if (i < 0) return -1;
        }

        return -1;
    }
}
