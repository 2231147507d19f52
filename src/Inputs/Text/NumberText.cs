using System.Globalization;

namespace Tangwright.Inputs;

/// <summary>Numbers as a maker writes them: 12.5, 1/4, 1 1/8.</summary>
internal static class NumberText
{
    /// <summary>Splits a text into its number and what follows it. The number is kept as written; a fraction may have a whole number before it, with a space.</summary>
    public static (string Number, string After) Split(string text)
    {
        var i = 0;
        while (i < text.Length && (char.IsAsciiDigit(text[i]) || text[i] is '+' or '-' or '.' or ',' or '/' || (text[i] == ' ' && i + 1 < text.Length && char.IsAsciiDigit(text[i + 1])))) i++;
        return (text[..i].Trim(), text[i..].Trim());
    }

    /// <summary>The value of a number.</summary>
    /// <param name="number">The number as split off.</param>
    /// <param name="unit">What stands behind it, for the remedy.</param>
    /// <param name="isFraction">Whether it was a fraction.</param>
    public static Reading<double> Read(string number, string unit, out bool isFraction)
    {
        isFraction = number.Contains('/');
        var tail = unit.Length == 0 ? "" : unit[0] is '"' or '°' ? unit : " " + unit;
        if (number.Length == 0) return Bad($"'{Clip(unit)}' is not a number", "write a number as 6.35");
        if (number.Contains(',')) return Bad("a decimal comma", $"write {number.Replace(',', '.')}{tail}");
        var body = number[0] is '+' or '-' ? number[1..] : number;
        var sign = number[0] == '-' ? -1 : 1;
        if (isFraction)
        {
            if (body.Contains('-'))
            {
                var dash = body.IndexOf('-');
                return Bad("a hyphen between whole number and fraction", $"write {number[..(dash + number.Length - body.Length)]} {body[(dash + 1)..]}{tail}");
            }

            var space = body.LastIndexOf(' ');
            var whole = 0.0;
            if (space >= 0 && !Plain(body[..space], out whole)) return Garbled();
            var parts = body[(space + 1)..].Split('/');
            if (parts.Length != 2 || !Plain(parts[0], out var top) || !Plain(parts[1], out var bottom) || parts[0].Contains('.') || parts[1].Contains('.')) return Garbled();
            if (bottom is < 1 or > 1024) return Bad("a fraction whose lower number is 0 or above 1024", "write a fraction as 3/16");
            if (space >= 0 && top >= bottom) return Bad("a whole number followed by a fraction of 1 or more", "write the whole inches first, as 1 1/8");
            return Reading<double>.Of(sign * (whole + (top / bottom)));
        }

        if (body.Contains(' ')) return Bad("two numbers where one is wanted", "write one number with its unit");
        return Plain(body, out var value) ? Reading<double>.Of(sign * value) : Garbled();

        Reading<double> Garbled() => Bad($"'{Clip(number)}' is not a number", "write a number as 6.35 or a fraction as 1 1/8");
        static Reading<double> Bad(string message, string remedy) => Reading<double>.Bad(message, remedy);
    }

    /// <summary>Whether a text is a plain number as TOML writes it, to stand bare in a file.</summary>
    public static bool IsBare(string typed)
    {
        var digits = typed.StartsWith('-') ? typed[1..] : typed;
        var point = digits.IndexOf('.', StringComparison.Ordinal);
        var (whole, rest) = point < 0 ? (digits, "0") : (digits[..point], digits[(point + 1)..]);
        return whole.Length is > 0 and < 16 && rest.Length is > 0 and < 16 && whole.All(char.IsAsciiDigit) && rest.All(char.IsAsciiDigit) && (whole.Length == 1 || whole[0] != '0');
    }

    /// <summary>A text short enough for a message.</summary>
    public static string Clip(string text) => text.Length <= 40 ? text : text[..40] + "...";

    private static bool Plain(string digits, out double value)
    {
        value = 0;
        return digits.Length is > 0 and <= 30 && char.IsAsciiDigit(digits[^1]) && digits.All(c => char.IsAsciiDigit(c) || c == '.')
            && double.TryParse(digits, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out value);
    }
}
