using System.Text;
using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>One value of a row and where it stands.</summary>
/// <param name="Offset">Place in the text.</param>
/// <param name="Text">The value without quotes and blanks round it.</param>
internal readonly record struct RowValue(int Offset, string Text);

/// <summary>A row of values.</summary>
/// <param name="Offset">Where it begins.</param>
/// <param name="End">Where the row after it begins.</param>
/// <param name="Values">Its values.</param>
internal sealed record ValueRow(int Offset, int End, IReadOnlyList<RowValue> Values);

/// <summary>Rows of values with commas between them by RFC 4180; another separator where asked for. Empty lines are passed over.</summary>
internal static class CommaRows
{
    /// <summary>Reads the rows.</summary>
    public static IReadOnlyList<ValueRow> Read(SourceText source, List<Fault> faults, char separator = ',')
    {
        var rows = new List<ValueRow>();
        var (text, at) = (source.Text, 0);
        while (at < text.Length)
        {
            var start = at;
            var values = new List<RowValue>();
            do
            {
                if (values.Count > 0) at++;
                values.Add(Value(source, faults, separator, ref at));
            }
            while (at < text.Length && text[at] == separator);
            while (at < text.Length && text[at] is '\r' or '\n')
            {
                if (text[at++] == '\n') break;
            }

            if (values.Count > 1 || values[0].Text.Length > 0) rows.Add(new ValueRow(start, at, values));
        }

        return rows;
    }

    /// <summary>A value as it stands in a row.</summary>
    public static string Written(string value)
        => value.AsSpan().IndexOfAny(",\"\r\n") >= 0 ? "\"" + value.Replace("\"", "\"\"", StringComparison.Ordinal) + "\"" : value;

    private static RowValue Value(SourceText source, List<Fault> faults, char separator, ref int at)
    {
        var text = source.Text;
        while (at < text.Length && text[at] == ' ') at++;
        var start = at;
        if (at >= text.Length || text[at] != '"')
        {
            while (at < text.Length && text[at] != separator && text[at] is not ('\r' or '\n')) at++;
            return new RowValue(start, text[start..at].Trim());
        }

        var value = new StringBuilder();
        for (at++; at < text.Length; at++)
        {
            if (text[at] != '"') value.Append(text[at]);
            else if (at + 1 < text.Length && text[at + 1] == '"') value.Append(text[at++]);
            else break;
        }

        if (at >= text.Length)
        {
            faults.Add(source.Fault(start, "a quote that is not closed", "close it with \" before the next comma"));
            return new RowValue(start, value.ToString());
        }

        at++;
        var after = at;
        while (at < text.Length && text[at] != separator && text[at] is not ('\r' or '\n')) at++;
        if (text.AsSpan(after, at - after).Trim().Length > 0) faults.Add(source.Fault(after, "something behind a closing quote", "write a quote inside a value twice"));
        return new RowValue(start, value.ToString());
    }
}
