using System.Collections.Immutable;
using System.Globalization;

namespace Tangwright.Core;

/// <summary>A table by steps of size, from data/fits: each row holds for sizes over the row before, up to and with its own.</summary>
internal sealed class StepTable
{
    private readonly ImmutableArray<string> _columns;
    private readonly ImmutableArray<(double To, ImmutableArray<double> Values)> _rows;

    private StepTable(ImmutableArray<string> columns, ImmutableArray<(double To, ImmutableArray<double> Values)> rows) => (_columns, _rows) = (columns, rows);

    /// <summary>Greatest size it holds for, in the unit of its first column.</summary>
    public double Most => _rows[^1].To;

    /// <summary>Ends of its steps, ascending.</summary>
    public IEnumerable<double> Ends => _rows.Select(r => r.To);

    /// <summary>The value of a column for a size; null outside the table.</summary>
    public double? At(double size, string column)
    {
        var place = _columns.IndexOf(column);
        if (place < 0 || size <= 0) return null;
        foreach (var (to, values) in _rows)
        {
            // a size that comes from inches may miss its step by the last bit
            if (size <= to + 1e-9) return values[place];
        }

        return null;
    }

    /// <summary>Reads the table of a file.</summary>
    public static StepTable Read(string file)
    {
        var columns = DataRows.Lines(file)[0].Split(',')[1..];
        var rows = DataRows.Of(file).Select(r => r.Select(n => double.Parse(n, CultureInfo.InvariantCulture)).ToArray()).Select(n => (n[0], ImmutableArray.Create(n.AsSpan(1))));
        return new([.. columns], [.. rows]);
    }
}
