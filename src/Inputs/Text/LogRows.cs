using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>Lines of a shop's log, comma-separated under a line that names the columns.</summary>
internal static class LogRows
{
    private const int EnoughFaults = 50;

    /// <summary>The lines under the heading with a value for each column; others become faults. None when the file is empty or its heading is another.</summary>
    /// <param name="source">The file.</param>
    /// <param name="heading">The columns as they must be named.</param>
    /// <param name="faults">Where faults go; read after the lines.</param>
    public static IEnumerable<ValueRow> Of(SourceText source, string heading, List<Fault> faults)
    {
        var rows = CommaRows.Read(source, faults);
        var columns = heading.Count(c => c == ',') + 1;
        if (rows.Count == 0)
        {
            faults.Clear();
            yield break;
        }

        if (!string.Equals(string.Join(',', rows[0].Values.Select(v => v.Text)), heading, StringComparison.OrdinalIgnoreCase))
        {
            faults.Clear();
            faults.Add(source.Fault(0, "the first line does not name the columns", "write " + heading));
            yield break;
        }

        foreach (var row in rows.Skip(1))
        {
            if (faults.Count > EnoughFaults) yield break;
            if (row.Values.Count == columns) yield return row;
            else faults.Add(source.Fault(row.Offset, $"{row.Values.Count} values where {columns} are wanted", "write one value for each column, empty ones too"));
        }
    }
}
