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

    [GeneratedRegex("""^\s*(?<key>[A-Za-z0-9_.\-]+)\s*=\s*"(?<value>[0-9/. ]+)"("|\s*,|\s*\])""", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex InchMark();

    /// <summary>What is wrong, what to write, where, and which characters are about it.</summary>
    /// <param name="source">The file.</param>
    /// <param name="offset">Where the parser stopped.</param>
    /// <param name="parserSays">Its words.</param>
    public static (string Message, string Remedy, int Offset, int From, int To) Explain(SourceText source, int offset, string parserSays)
    {
        var (start, line) = source.LineAt(offset);
        if (parserSays.Contains("closing `]`", StringComparison.Ordinal) && OpenList(source, offset) is { } open)
        {
            return ("a list without its closing ]", "close it, and put commas between its items", open, source.LineAt(open).Start, start);
        }

        var (message, remedy) = Explain(line, parserSays);
        return (message, remedy, offset, start, start + line.Length);
    }

    private static (string Message, string Remedy) Explain(string line, string parserSays)
    {
        bool Says(string words) => parserSays.Contains(words, StringComparison.Ordinal);
        if (Says("already defined")) return ("this stands twice", "keep one of the two");
        if (Says("surrogate") || Says("Unicode")) return ("a broken character", "save the file as UTF-8 text");
        if (line.Length <= 1000 && InchMark().Match(line) is { Success: true } inch) return ("an inch mark inside double quotes", $"write {inch.Groups["key"].Value} = '{inch.Groups["value"].Value}\"', in single quotes, or \"{inch.Groups["value"].Value} in\"");
        if (line.Length <= 1000 && Unquoted().Match(line) is { Success: true } m)
        {
            var (key, value) = (m.Groups["key"].Value, m.Groups["value"].Value);
            if (value is "True" or "TRUE" or "yes" or "Yes" or "on") return ($"'{value}' is not known here", $"write {key} = true");
            if (value is "False" or "FALSE" or "no" or "No" or "off") return ($"'{value}' is not known here", $"write {key} = false");
            if (DecimalComma().IsMatch(value)) return ("a decimal comma", $"write {key} = {value.Replace(',', '.')}");
            if (HalfNumber().IsMatch(value) && value.Any(char.IsAsciiDigit)) return ("a number needs a figure on both sides of its point", $"write {key} = {Whole(value)}");
            if (!value.Contains('=') && !value.Contains('"') && !value.All(char.IsAsciiDigit)) return ("a value that is not a plain number stands in quotes", $"write {key} = \"{value}\"");
        }

        if (Says("newline in a string") || Says("End-Of-File found on string")) return ("a text without its closing quote", "put \" at its end; an inch mark inside quotes is written \\\"");
        if (Says("closing `]`") || Says("closebracket")) return ("a heading or list without its closing ]", "close it with ]");
        if (Says("finding a value") || Says("expecting a value")) return ("the value is missing", "write it after the = sign, or take the line out");
        if (Says("Expecting `=`")) return ("a line that is neither key = value nor a [heading]", "write key = value; remarks begin with #");
        if (Says("leading zero")) return ("a number with a leading zero", "leave the zero out");
        if (Says("escape")) return ("a backslash inside quotes that means nothing", "write \\\\ for a backslash and \\\" for an inch mark");
        if (Says("Unable to parse")) return ("a number too large to read", "check the figures");
        return ("the line cannot be read", "write key = value, a [heading], or a remark that begins with #");
    }

    /// <summary>The line above, within 100 lines, on which the list was opened that a place is still in.</summary>
    private static int? OpenList(SourceText source, int offset)
    {
        var at = source.LineAt(offset).Start;
        for (var i = 0; i < 100 && at > 0; i++)
        {
            var (start, line) = source.LineAt(at - 1);
            if (line.Contains('=') && line.Count(c => c == '[') > line.Count(c => c == ']')) return start + line.IndexOf('[');
            at = start;
        }

        return null;
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
