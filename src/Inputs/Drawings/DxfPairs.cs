using System.Buffers.Text;
using System.Globalization;
using System.Text;

namespace Tangwright.Inputs;

/// <summary>One group of a DXF file: a code and its value.</summary>
/// <param name="Code">Group code.</param>
/// <param name="Line">Line of the value, from 1.</param>
/// <param name="Value">The value's bytes, blanks around it cut off.</param>
internal readonly record struct DxfPair(int Code, int Line, ReadOnlyMemory<byte> Value)
{
    /// <summary>The value as text: UTF-8, or Latin-1 where it is not valid UTF-8 (files before 2007).</summary>
    public string Text
    {
        get
        {
            var s = Encoding.UTF8.GetString(Value.Span);
            return Unescaped(s.Contains('\uFFFD') ? Encoding.Latin1.GetString(Value.Span) : s);
        }
    }

    /// <summary>Letters beyond ASCII stand as \U+XXXX in older files.</summary>
    private static string Unescaped(string s)
    {
        for (var at = s.IndexOf("\\U+", StringComparison.Ordinal); at >= 0 && at + 7 <= s.Length; at = s.IndexOf("\\U+", at + 1, StringComparison.Ordinal))
        {
            if (ushort.TryParse(s.AsSpan(at + 3, 4), NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out var c)) s = string.Concat(s.AsSpan(0, at), ((char)c).ToString(), s.AsSpan(at + 7));
        }

        return s;
    }

    public bool Is(ReadOnlySpan<byte> word) => Value.Span.SequenceEqual(word);

    public bool TryNumber(out double number)
        => double.TryParse(Value.Span, NumberStyles.Float, CultureInfo.InvariantCulture, out number) && double.IsFinite(number);
}

/// <summary>Walks through the groups of an ASCII DXF file, two lines at a time.</summary>
internal sealed class DxfPairs(byte[] bytes)
{
    private int _at = bytes.AsSpan().StartsWith("\uFEFF"u8) ? 3 : 0;
    private int _line;

    /// <summary>Line of the last group read, from 1.</summary>
    public int Line => _line;

    /// <summary>Set when the file is not in pairs of lines.</summary>
    public string? Trouble { get; private set; }

    public bool Read(out DxfPair pair)
    {
        pair = default;
        if (Trouble is not null || !ReadLine(out var code)) return false;
        if (!Utf8Parser.TryParse(code.Span, out int number, out var used) || used != code.Length || number is < -5 or > 1071)
        {
            Trouble = "This line should be a group code, a whole number.";
            return false;
        }

        if (!ReadLine(out var value)) return false;
        pair = new DxfPair(number, _line, value);
        return true;
    }

    private bool ReadLine(out ReadOnlyMemory<byte> line)
    {
        line = default;
        if (_at >= bytes.Length) return false;
        var rest = bytes.AsSpan(_at);
        var n = rest.IndexOfAny((byte)'\n', (byte)'\r');
        var length = n < 0 ? rest.Length : n;
        var start = _at;
        _at += length;
        if (n >= 0) _at += rest[n] == '\r' && n + 1 < rest.Length && rest[n + 1] == '\n' ? 2 : 1;
        _line++;
        while (length > 0 && bytes[start] is (byte)' ' or (byte)'\t')
        {
            start++;
            length--;
        }

        while (length > 0 && bytes[start + length - 1] is (byte)' ' or (byte)'\t') length--;
        line = bytes.AsMemory(start, length);
        return true;
    }
}
