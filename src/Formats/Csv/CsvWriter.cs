using System.Collections.Immutable;
using System.Text;

namespace Tangwright.Formats;

/// <summary>Rows as comma-separated text by RFC 4180: fields with a comma, a quote or a line end stand in quotes, quotes are doubled, every row ends with CR LF. UTF-8 without byte order mark.</summary>
public static class CsvWriter
{
    private static readonly System.Buffers.SearchValues<char> NeedsQuotes = System.Buffers.SearchValues.Create(",\"\r\n");

    /// <summary>Writes the rows, the heading first.</summary>
    public static byte[] Write(ImmutableArray<ImmutableArray<string>> rows)
    {
        var text = new StringBuilder();
        foreach (var row in rows)
        {
            for (var i = 0; i < row.Length; i++)
            {
                if (i > 0) text.Append(',');
                Field(text, row[i]);
            }

            text.Append("\r\n");
        }

        return Encoding.UTF8.GetBytes(text.ToString());
    }

    private static void Field(StringBuilder text, string field)
    {
        if (field.AsSpan().IndexOfAny(NeedsQuotes) < 0)
        {
            text.Append(field);
            return;
        }

        text.Append('"').Append(field.Replace("\"", "\"\"", StringComparison.Ordinal)).Append('"');
    }
}
