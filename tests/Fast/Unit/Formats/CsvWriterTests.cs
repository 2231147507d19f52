using System.Text;
using Tangwright.Formats;

namespace Tangwright.Tests;

/// <summary>RFC 4180, section 2: rules 1, 5, 6 and 7.</summary>
public sealed class CsvWriterTests
{
    [Fact]
    public void Fields_are_quoted_only_where_they_must_be()
        => Assert.Equal("name,x\r\n\"a,b\",\"say \"\"x\"\"\"\r\n\"two\nlines\",1.5\r\n", Encoding.UTF8.GetString(CsvWriter.Write([["name", "x"], ["a,b", "say \"x\""], ["two\nlines", "1.5"]])));

    [Fact]
    public void No_rows_no_text() => Assert.Empty(CsvWriter.Write([]));
}
