using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Hardness after a temper from the table printed for the grade, moved to other times by the figure of Hollomon and Jaffe.</summary>
/// <remarks>Rows of the same temperature and time are averaged; half of what lies between them goes into the band.</remarks>
[Formula("hardness after a temper from the printed table of the grade, HRC", "hollomon-jaffe-1945", "Between the rows of the table and up to 25 °C beyond them, never across a gap of more than 120 °C; ±1 HRC and half the spread of the rows")]
public static class TemperByTable
{
    /// <summary>How far a table may be off, HRC.</summary>
    public const double BandHrc = 1;

    /// <summary>How far beyond its rows a table is trusted, °C.</summary>
    public const double BeyondC = 25;

    /// <summary>Widest gap between rows that a line is drawn over, °C.</summary>
    public const double MostGapC = 120;

    /// <summary>Fewest temperatures that make a table.</summary>
    public const int FewestRows = 3;

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
        if (b.At.Celsius - a.At.Celsius > MostGapC) return null;

        // the temperature that would do the same in the time of the rows
        var same = HollomonJaffe.At(figure, figure < a.Figure ? a.Hours : b.Hours).Celsius;
        var beyond = Math.Max(Math.Max(rows[0].At.Celsius - same, same - rows[^1].At.Celsius), 0);
        if (beyond > BeyondC) return null;
        var share = (figure - a.Figure) / (b.Figure - a.Figure);
        var value = a.Hrc + (share * (b.Hrc - a.Hrc));
        var near = Math.Clamp(share, 0, 1);
        var band = BandHrc + (a.HalfSpreadHrc * (1 - near)) + (b.HalfSpreadHrc * near) + (beyond > 0 ? Math.Abs(value - (share < 0 ? a.Hrc : b.Hrc)) : 0);
        return new Estimate<double>(value, value - band, value + band, string.Join(", ", (near <= 0 ? a.Sources : near >= 1 ? b.Sources : a.Sources.Concat(b.Sources)).Distinct()), beyond > 0 ? $"{Shown.Number(beyond, 0)} °C beyond the table" : "");
    }

    /// <summary>Coldest and hottest steel the table speaks of for a time; null when it is no table.</summary>
    /// <param name="table">Rows of the grade.</param>
    /// <param name="hours">Time at heat in all, h.</param>
    public static (Temperature Coldest, Temperature Hottest)? Reach(ImmutableArray<TemperPoint> table, double hours)
    {
        var rows = Rows(table);
        return rows.Length < FewestRows ? null : (HollomonJaffe.At(rows[0].Figure, hours), HollomonJaffe.At(rows[^1].Figure, hours));
    }

    private static ImmutableArray<Row> Rows(ImmutableArray<TemperPoint> table)
        => [.. table
            .GroupBy(p => (Math.Round(p.At.Celsius), p.HeldHours))
            .Select(g => new Row(g.First().At, g.Key.HeldHours, HollomonJaffe.Of(g.First().At, g.Key.HeldHours), g.Average(p => p.HardnessHrc), 0.5 * (g.Max(p => p.HardnessHrc) - g.Min(p => p.HardnessHrc)), [.. g.Select(p => p.SourceKey).Distinct()]))
            .OrderBy(r => r.Figure)];

    private sealed record Row(Temperature At, double Hours, double Figure, double Hrc, double HalfSpreadHrc, ImmutableArray<string> Sources);
}
