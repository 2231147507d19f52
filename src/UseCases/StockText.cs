using Tangwright.Core;
using Tangwright.Documents;
using Tangwright.Foundation;

namespace Tangwright.UseCases;

/// <summary>Bars in words, the same on the command line and the desk.</summary>
public static class StockText
{
    /// <summary>"14 starts give a 97 % chance of 12 good".</summary>
    public static string Answer(StockPlan s) => $"Start {s.Starts}: a chance of {StockWords.Percent(s.Chosen.ChanceShare)} of {s.Good} good{(s.Yield.IsPrior ? $" ({StockWords.Percent(s.Chosen.LowChanceShare)} to {StockWords.Percent(s.Chosen.HighChanceShare)} over the band of the assumed yield)" : "")}.";

    /// <summary>Where one more start costs no more steel; empty when it does.</summary>
    public static string Free(StockPlan s)
    {
        var before = s.Rows.FirstOrDefault(r => r.Starts == s.Starts - 1);
        var below = before is not null && s.Chosen.IsFree ? $"{s.Starts} costs no more steel than {before.Starts}: the chance is {StockWords.Percent(before.ChanceShare)} with {before.Starts}, {StockWords.Percent(s.Chosen.ChanceShare)} with {s.Starts}. " : "";
        var above = s.Free.Starts > s.Starts ? $"{s.Free.Starts} starts cost no more steel than {s.Starts} and give {StockWords.Percent(s.Free.ChanceShare)}; they cost the work." : "";
        return (below + above).TrimEnd();
    }

    /// <summary>"3 bars 76.2 x 1219.2 mm: 6 in each".</summary>
    public static string Bars(BarCut c, UnitsShown units)
        => $"{(c.Rack is { } rack ? $"{rack.Name} of the rack, " : c.Count == 1 ? "1 new bar, " : $"{c.Count} new bars alike, ")}{FigureText.Size(c.Width, units, brief: true)} x {FigureText.Size(c.Length, units, brief: true)}: {c.Places.Length} {(c.Places.Length == 1 ? "piece" : "pieces")}{(c.Count > 1 ? " in each" : "")}, drop {FigureText.Size(c.Drop, units, brief: true)}{(c.DropHoldsPiece ? ", holds another" : "")}";

    /// <summary>A length, ending zeros dropped.</summary>
    public static string Size(Length length, UnitsShown units) => FigureText.Size(length, units, brief: true);

    /// <summary>"97 %".</summary>
    public static string Percent(double share) => StockWords.Percent(share);

    /// <summary>A mass.</summary>
    public static string Weight(Mass mass, UnitsShown units) => StockWords.Weight(mass, units);
}
