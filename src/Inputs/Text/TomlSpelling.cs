using System.Text.RegularExpressions;

namespace Tangwright.Inputs;

/// <summary>Says in plain words what is misspelt in a TOML line and what to write.</summary>
internal static partial class TomlSpelling
{
    [GeneratedRegex("""^\s*(?<key>[A-Za-z0-9_.\-]+)\s*=\s*(?<value>[^"'\[{#\s][^#]*?)\s*(#.*)?$""", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Unquoted();

    [GeneratedRegex("""^[+-]?\d+,\d+$""", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex DecimalComma();

    [GeneratedRegex("""^[+-]?\d*\.\d*$""", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex HalfNumber();

    public static (string Message, string Remedy) Explain(SourceText source, int offset, string parserSays)
    {
        var (_, line) = source.LineAt(offset);
        if (parserSays.Contains("already defined", StringComparison.Ordinal)) return ("this stands twice", "keep one of the two");
        if (parserSays.Contains("surrogate", StringComparison.Ordinal) || parserSays.Contains("Unicode", StringComparison.Ordinal)) return ("a broken character", "save the file as UTF-8 text");
        if (line.Length <= 1000 && Unquoted().Match(line) is { Success: true } m)
        {
            var (key, value) = (m.Groups["key"].Value, m.Groups["value"].Value);
            if (value is "True" or "TRUE" or "yes" or "Yes" or "on") return ($"'{value}' is not known here", $"write {key} = true");
            if (value is "False" or "FALSE" or "no" or "No" or "off") return ($"'{value}' is not known here", $"write {key} = false");
            if (DecimalComma().IsMatch(value)) return ("a decimal comma", $"write {key} = {value.Replace(',', '.')}");
            if (HalfNumber().IsMatch(value) && value.Any(char.IsAsciiDigit)) return ("a number needs a figure on both sides of its point", $"write {key} = {Whole(value)}");
            if (!value.Contains('=') && !value.Contains('"')) return ("a value that is not a plain number stands in quotes", $"write {key} = \"{value}\"");
        }

        if (parserSays.Contains("newline in a string", StringComparison.Ordinal) || parserSays.Contains("End-Of-File found on string", StringComparison.Ordinal)) return ("a text without its closing quote", "put \" at its end; an inch mark inside quotes is written \\\"");
        if (parserSays.Contains("closing `]`", StringComparison.Ordinal) || parserSays.Contains("closebracket", StringComparison.Ordinal)) return ("a bracket without its closing ]", "close it, and put commas between the items");
        if (parserSays.Contains("finding a value", StringComparison.Ordinal) || parserSays.Contains("expecting a value", StringComparison.Ordinal)) return ("the value is missing", "write it after the = sign, or take the line out");
        if (parserSays.Contains("Expecting `=`", StringComparison.Ordinal)) return ("a line that is neither key = value nor a [heading]", "write key = value; remarks begin with #");
        if (parserSays.Contains("leading zero", StringComparison.Ordinal)) return ("a number with a leading zero", "leave the zero out");
        if (parserSays.Contains("escape", StringComparison.Ordinal)) return ("a backslash inside quotes that means nothing", "write \\\\ for a backslash and \\\" for an inch mark");
        if (parserSays.Contains("Unable to parse", StringComparison.Ordinal)) return ("a number too large to read", "check the figures");
        return ("the line cannot be read", "write key = value, a [heading], or a remark that begins with #");
    }

    private static string Whole(string value)
    {
        var sign = value[0] is '+' or '-' ? value[..1] : "";
        var rest = value[sign.Length..];
        if (rest.StartsWith('.')) rest = "0" + rest;
        if (rest.EndsWith('.')) rest += "0";
        return sign + rest;
    }
}
