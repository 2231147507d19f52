using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Hardness after a temper from the table printed for the grade, moved to other times by the figure of Hollomon and Jaffe.</summary>
/// <remarks>Rows of the same temperature and time are averaged; half of what lies between them goes into the band.</remarks>
[Formula("hardness after a temper from the printed table of the grade, HRC", "hollomon-jaffe-1945", "Between the rows of the table and up to 25 °C beyond them, never across a gap of more than 120 °C; ±1 HRC and half the spread of the rows; of two rows alone a straight line across up to 200 °C, ±2.5 HRC (common practice)")]
public static class TemperByTable
{
    /// <summary>How far a table may be off, HRC.</summary>
    public const double BandHrc = 1;

    /// <summary>How far beyond its rows a table is trusted, °C.</summary>
    public const double BeyondC = 25;

    /// <summary>Widest gap between rows that a line is drawn over, °C.</summary>
    public const double MostGapC = 120;

    /// <summary>Fewest temperatures that make a table.</summary>
    public const int FewestRows = 2;

    /// <summary>How far a line between two rows alone may be off, HRC, and how wide it goes, °C.</summary>
    public const double TwoRowsBandHrc = 2.5, TwoRowsGapC = 200;

    /// <summary>Hardness with its band; null where the table says nothing.</summary>
    /// <param name="table">Rows of the grade.</param>
    /// <param name="at">Temperature of the steel.</param>
    /// <param name="hours">Time at heat in all, h.</param>
    public static Estimate<double>? Hrc(ImmutableArray<TemperPoint> table, Temperature at, double hours)
    {
        var rows = Rows(table);
        if (rows.Length < FewestRows) return null;
        var figure = HollomonJaffe.Of(at, hours);
        var i = 1;
        while (i < rows.Length - 1 && figure > rows[i].Figure) i++;
        var (a, b) = (rows[i - 1], rows[i]);
        var isLine = rows.Length == 2;
        if (b.At.Celsius - a.At.Celsius > (isLine ? TwoRowsGapC : MostGapC)) return null;

        // the temperature that would do the same in the time of the rows
        var same = HollomonJaffe.At(figure, figure < a.Figure ? a.Hours : b.Hours).Celsius;
        var beyond = Math.Max(Math.Max(rows[0].At.Celsius - same, same - rows[^1].At.Celsius), 0);
        if (beyond > BeyondC) return null;
        var share = (figure - a.Figure) / (b.Figure - a.Figure);
        var value = a.Hrc + (share * (b.Hrc - a.Hrc));
        var near = Math.Clamp(share, 0, 1);
        var band = (isLine ? TwoRowsBandHrc : BandHrc) + (a.HalfSpreadHrc * (1 - near)) + (b.HalfSpreadHrc * near) + (beyond > 0 ? Math.Abs(value - (share < 0 ? a.Hrc : b.Hrc)) : 0);
        return new Estimate<double>(value, value - band, value + band, near >= 1 ? b.SourceKeys : near <= 0 || a.SourceKeys == b.SourceKeys ? a.SourceKeys : string.Join(", ", a.SourceKeys.Split(", ").Union(b.SourceKeys.Split(", "))), string.Join("; ", new[] { isLine ? "a straight line between the only two printed points" : "", beyond > 0 ? $"{Shown.Number(beyond, 0)} °C beyond the table" : "" }.Where(t => t.Length > 0)));
    }

    /// <summary>Whether there are temperatures enough to make a table.</summary>
    /// <param name="table">Rows of the grade.</param>
    public static bool IsTable(ImmutableArray<TemperPoint> table)
    {
        var count = 0;
        for (var i = 0; i < table.Length; i++)
        {
            var isFirst = true;
            for (var k = 0; k < i; k++) isFirst &= Math.Abs(table[k].At.Celsius - table[i].At.Celsius) > 0.5;
            if (isFirst) count++;
        }

        return count >= FewestRows;
    }

    // rows of one temperature and time made one, in the order of their figures
    private static ReadOnlySpan<Row> Rows(ImmutableArray<TemperPoint> table)
    {
        var rows = new Row[table.Length];
        var count = 0;
        foreach (var p in table)
        {
            var i = 0;
            while (i < count && (Math.Abs(rows[i].At.Celsius - p.At.Celsius) > 0.5 || rows[i].Hours != p.HeldHours)) i++;
            rows[i] = i < count
                ? rows[i] with { SumHrc = rows[i].SumHrc + p.HardnessHrc, Count = rows[i].Count + 1, LowHrc = Math.Min(rows[i].LowHrc, p.HardnessHrc), HighHrc = Math.Max(rows[i].HighHrc, p.HardnessHrc), SourceKeys = rows[i].SourceKeys == p.SourceKey ? p.SourceKey : rows[i].SourceKeys + ", " + p.SourceKey }
                : new Row(p.At, p.HeldHours, HollomonJaffe.Of(p.At, p.HeldHours), p.HardnessHrc, 1, p.HardnessHrc, p.HardnessHrc, p.SourceKey);
            if (i == count) count++;
        }

        var merged = rows.AsSpan(0, count);
        merged.Sort((a, b) => a.Figure.CompareTo(b.Figure));
        return merged;
    }

    private readonly record struct Row(Temperature At, double Hours, double Figure, double SumHrc, int Count, double LowHrc, double HighHrc, string SourceKeys)
    {
        public double Hrc => SumHrc / Count;

        public double HalfSpreadHrc => 0.5 * (HighHrc - LowHrc);
    }
}
