using System.Globalization;
using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>Numbers, lengths and transforms as SVG 1.1 writes them (W3C Recommendation, 2011; §4.2, §7.6, §7.10).</summary>
internal static class SvgNumbers
{
    /// <summary>mm in a CSS pixel: 96 to the inch.</summary>
    public const double MmPerPx = 25.4 / 96;

    /// <summary>mm in a named unit; null for none, percent, em and ex.</summary>
    public static double? MmPer(string unit) => unit switch
    {
        "mm" => 1,
        "cm" => 10,
        "in" => 25.4,
        "pt" => 25.4 / 72,
        "pc" => 25.4 / 6,
        "px" => MmPerPx,
        "Q" or "q" => 0.25,
        _ => null,
    };

    /// <summary>A number and the letters behind it.</summary>
    public static bool TryLength(string text, out double number, out string unit)
    {
        var s = text.AsSpan().Trim();
        var n = s.Length;
        while (n > 0 && (char.IsAsciiLetter(s[n - 1]) || s[n - 1] == '%')) n--;
        unit = s[n..].ToString();
        return double.TryParse(s[..n], NumberStyles.Float, CultureInfo.InvariantCulture, out number) && double.IsFinite(number);
    }

    /// <summary>Numbers apart by blanks, commas or their own signs; null when there is anything else.</summary>
    public static List<double>? Numbers(ReadOnlySpan<char> text)
    {
        var list = new List<double>();
        var i = 0;
        while (true)
        {
            while (i < text.Length && (char.IsWhiteSpace(text[i]) || text[i] == ',')) i++;
            if (i == text.Length) return list;
            var start = i;
            if (text[i] is '+' or '-') i++;
            var point = false;
            while (i < text.Length && (char.IsAsciiDigit(text[i]) || (text[i] == '.' && !point)))
            {
                point |= text[i] == '.';
                i++;
            }

            if (i + 1 < text.Length && text[i] is 'e' or 'E' && (char.IsAsciiDigit(text[i + 1]) || (i + 2 < text.Length && text[i + 1] is '+' or '-' && char.IsAsciiDigit(text[i + 2]))))
            {
                i += 2;
                while (i < text.Length && char.IsAsciiDigit(text[i])) i++;
            }

            if (!double.TryParse(text[start..i], NumberStyles.Float, CultureInfo.InvariantCulture, out var n) || !double.IsFinite(n)) return null;
            list.Add(n);
        }
    }

    /// <summary>A list of transforms; null when it cannot be read. The last one written works first.</summary>
    public static Transform? Transforms(string text)
    {
        var map = Transform.None;
        var rest = text.AsSpan().Trim(" \t\r\n,");
        while (rest.Length > 0)
        {
            var open = rest.IndexOf('(');
            var close = rest.IndexOf(')');
            if (open < 0 || close < open || Numbers(rest[(open + 1)..close]) is not { } n || One(rest[..open].Trim(), n) is not { } one) return null;
            map = one.Then(map);
            rest = rest[(close + 1)..].TrimStart(" \t\r\n,");
        }

        return map;
    }

    private static Transform? One(ReadOnlySpan<char> name, List<double> n)
    {
        const double degree = Math.PI / 180;
        return name switch
        {
            "matrix" when n.Count == 6 => new Transform(n[0], n[2], n[1], n[3], n[4], n[5]),
            "translate" when n.Count is 1 or 2 => Transform.Shift(new Point(n[0], n.Count > 1 ? n[1] : 0)),
            "scale" when n.Count is 1 or 2 => Transform.Scale(n[0], n[^1]),
            "rotate" when n.Count == 1 => Turn(n[0]),
            "rotate" when n.Count == 3 => Transform.Shift(new Point(-n[1], -n[2])).Then(Turn(n[0])).Then(Transform.Shift(new Point(n[1], n[2]))),
            "skewX" when n.Count == 1 => new Transform(1, Math.Tan(n[0] * degree), 0, 1, 0, 0),
            "skewY" when n.Count == 1 => new Transform(1, 0, Math.Tan(n[0] * degree), 1, 0, 0),
            _ => null,
        };
    }

    private static Transform Turn(double degrees) => degrees == 90 ? Transform.QuarterTurn : Transform.Turn(degrees * Math.PI / 180);
}
