using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>A text file as given: finds line and column of a place in it and makes faults that show the line.</summary>
internal sealed class SourceText
{
    private const int WidestLine = 200;
    private readonly int[] _lineStarts;

    public SourceText(string text, string fileName)
    {
        HasMark = text.StartsWith('\uFEFF');
        Text = HasMark ? text[1..] : text;
        FileName = fileName;
        var starts = new List<int> { 0 };
        for (var i = 0; i < Text.Length; i++)
        {
            if (Text[i] == '\n') starts.Add(i + 1);
        }

        _lineStarts = [.. starts];
    }

    /// <summary>The text without a leading byte-order mark.</summary>
    public string Text { get; }

    /// <summary>Whether there was a byte-order mark.</summary>
    public bool HasMark { get; }

    public string FileName { get; }

    /// <summary>Line number from 1.</summary>
    public int LineOf(int offset)
    {
        var i = Array.BinarySearch(_lineStarts, Math.Clamp(offset, 0, Text.Length));
        return i >= 0 ? i + 1 : ~i;
    }

    /// <summary>The line a place is on, without its end.</summary>
    public (int Start, string Line) LineAt(int offset)
    {
        var start = _lineStarts[LineOf(offset) - 1];
        var end = Text.IndexOf('\n', start);
        if (end < 0) end = Text.Length;
        return (start, Text[start..end].TrimEnd('\r'));
    }

    /// <summary>End of line the text uses.</summary>
    public string LineEnd => Text.Contains("\r\n", StringComparison.Ordinal) ? "\r\n" : "\n";

    /// <summary>Where the line after a place begins; the end of the text when there is none.</summary>
    public int AfterLine(int offset) => Text.IndexOf('\n', offset) is var n && n < 0 ? Text.Length : n + 1;

    /// <summary>The end of the last line with a value of a block, its remark included.</summary>
    public int EndOfBlock(TomlTable table) => AfterLine(table.Entries.Select(e => e.Value.Offset + e.Value.Length - 1).Append(table.Offset).Max());

    /// <summary>The whole text with some places changed; a byte-order mark stays.</summary>
    public string With(IEnumerable<Splice> splices)
    {
        var text = Text;
        foreach (var s in splices.OrderByDescending(s => s.Offset)) text = string.Concat(text.AsSpan(0, s.Offset), s.Text, text.AsSpan(s.Offset + s.Length));
        return HasMark ? "\uFEFF" + text : text;
    }

    public Fault Fault(int offset, string message, string remedy)
    {
        offset = Math.Clamp(offset, 0, Text.Length);
        var (start, line) = LineAt(offset);
        return new Fault(FileName, LineOf(offset), offset - start + 1, Shortened(line, offset - start), message, remedy);
    }

    /// <summary>A very long line is shown around the place only; control characters as dots.</summary>
    private static string Shortened(string line, int column)
    {
        if (line.Length > WidestLine)
        {
            var from = Math.Clamp(column - (WidestLine / 2), 0, line.Length - WidestLine);
            line = string.Concat(from > 0 ? "..." : "", line.AsSpan(from, WidestLine), from + WidestLine < line.Length ? "..." : "");
        }

        return string.Create(line.Length, line, static (span, s) =>
        {
            for (var i = 0; i < s.Length; i++) span[i] = char.IsControl(s[i]) && s[i] != '\t' ? '.' : char.IsSurrogate(s[i]) ? '?' : s[i];
        });
    }
}
