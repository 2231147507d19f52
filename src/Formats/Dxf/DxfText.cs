using System.Globalization;
using System.Text;
using Tangwright.Foundation;

namespace Tangwright.Formats;

/// <summary>Puts together the groups of an ASCII DXF file: a code on one line, its value on the next. Handles are counted up, so the same drawing gives the same file.</summary>
internal sealed class DxfText
{
    private readonly StringBuilder _s = new();
    private int _handle = 0x20;

    /// <summary>The first handle not used yet.</summary>
    public string NextFree => _handle.ToString("X", CultureInfo.InvariantCulture);

    public string NewHandle() => (_handle++).ToString("X", CultureInfo.InvariantCulture);

    public DxfText Put(int code, string value)
    {
        // a value is one line of plain ASCII; the rest is escaped as \U+XXXX (DXF reference)
        _s.Append(code).Append('\n');
        foreach (var c in value)
        {
            if (c is >= ' ' and < '\x7F') _s.Append(c);
            else if (char.IsControl(c)) _s.Append(' ');
            else _s.Append(CultureInfo.InvariantCulture, $"\\U+{(int)c:X4}");
        }

        _s.Append('\n');
        return this;
    }

    public DxfText Put(int code, int value) => Put(code, value.ToString(CultureInfo.InvariantCulture));

    /// <summary>A number in the fewest digits that give it back exactly, never with an exponent small enough to be misread.</summary>
    public DxfText Put(int code, double value)
    {
        if (Math.Abs(value) < 1e-14) value = 0;
        var text = value.ToString("R", CultureInfo.InvariantCulture);
        return Put(code, text.AsSpan().IndexOfAny('.', 'E') >= 0 ? text : text + ".0");
    }

    public DxfText PutPoint(int codeX, Point p) => Put(codeX, p.X).Put(codeX + 10, p.Y).Put(codeX + 20, 0.0);

    public override string ToString() => _s.ToString();
}
