using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>One record of a DXF file: what stands from a group 0 to the next.</summary>
internal sealed class DxfRecord(string type, int line)
{
    public string Type { get; } = type;

    public int Line { get; } = line;

    public List<DxfPair> Pairs { get; } = [];

    /// <summary>The first number that is missing or is none.</summary>
    public (int Line, string Message, string Text)? Trouble { get; private set; }

    public string Text(int code, string absent = "")
    {
        foreach (var p in Pairs)
        {
            if (p.Code == code) return p.Text;
        }

        return absent;
    }

    public bool Has(int code) => Pairs.Exists(p => p.Code == code);

    /// <summary>A number that may be absent.</summary>
    public double Number(int code, double absent)
    {
        foreach (var p in Pairs)
        {
            if (p.Code == code) return Number(p);
        }

        return absent;
    }

    /// <summary>A number that must be there.</summary>
    public double Needed(int code, string what)
    {
        if (!Has(code)) Spoil(Line, $"This {Type} lacks its {what} (group {code}).", Type);
        return Number(code, 0);
    }

    public double Number(DxfPair pair)
    {
        if (pair.TryNumber(out var n)) return n;
        Spoil(pair.Line, $"This should be a number, for group {pair.Code} of a {Type}.", pair.Text);
        return 0;
    }

    /// <summary>A whole number that may be absent; flags and counts.</summary>
    public int Whole(int code, int absent)
    {
        var n = Number(code, absent);
        return n is >= int.MinValue and <= int.MaxValue ? (int)n : absent;
    }

    public Point NeededPoint(int codeX, string what) => new(Needed(codeX, what), Needed(codeX + 10, what));

    public Point Point(int codeX) => new(Number(codeX, 0), Number(codeX + 10, 0));

    public void Spoil(int line, string message, string text = "") => Trouble ??= (line, message, text);
}
