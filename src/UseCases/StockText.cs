using Tangwright.Core;
using Tangwright.Documents;
using Tangwright.Foundation;

namespace Tangwright.UseCases;

/// <summary>Bars in words, the same on the command line and the desk.</summary>
public static class StockText
{
    /// <summary>"14 starts give a 97 % chance of 12 good".</summary>
    public static string Answer(StockPlan s) => $"Start {s.Starts}: a chance of {StockWords.Percent(s.Chosen.ChanceShare)} of {s.Good} good{(s.Yield.IsPrior ? $" ({StockWords.Percent(s.Chosen.LowChanceShare)} to {StockWords.Percent(s.Chosen.HighChanceShare)} over the band of the assumed yield)" : "")}.";

    /// <summary>The same for one pattern of several: "hatchet: start 14: a chance of ...".</summary>
    public static string Answer(StockPattern p) => $"{p.Results.Plan.Name}, revision {p.Results.Plan.Revision}: start {p.Starts}, a chance of {StockWords.Percent(p.ChanceShare)} of {p.Good} good{(p.Yield.IsPrior ? $" ({StockWords.Percent(p.LowChanceShare)} to {StockWords.Percent(p.HighChanceShare)} over the band of the assumed yield)" : "")}";

    /// <summary>What the new steel costs, all of it and in one good piece of each pattern; empty without prices.</summary>
    public static string Price(StockPlan s) => s.Price is not { } price ? "" : price == 0 ? "The rack holds it: no new steel to pay." : $"New steel {StockWords.Money(price, s.Money)}: " + string.Join("; ", s.Patterns.Select(p => $"{StockWords.Money(p.SteelPrice!.Value, s.Money)} in each good {(s.Patterns.Length > 1 ? p.Results.Plan.Name : "piece")}")) + ".";

    /// <summary>What straight cuts cost against the shortest rows; empty when they were not asked for.</summary>
    public static string Straight(StockAnswer a, UnitsShown units)
    {
        if (a.Free is not { } free) return "";
        double Rows(StockPlan s) => s.Cuts.Sum(c => c.Count * c.Row.Mm);
        int New(StockPlan s) => s.Buy.Sum(b => b.Count);
        var more = Rows(a.Stock) - Rows(free);
        var bars = New(a.Stock) - New(free);
        if (more < 0.05) return "Straight cuts take no more of the bar than pieces laid as close as they go.";
        return $"Straight cuts take {Size(Length.OfMm(Math.Max(0, more)), units)} more of bar in all than pieces laid as close as they go ({StockWords.Tenths(100 * more / Rows(free))} %)"
            + (bars > 0 ? $", {bars} {(bars == 1 ? "bar" : "bars")} more to buy" : ", and no bar more")
            + (a.Stock.Price - free.Price is { } money and > 0 ? $", {StockWords.Money(money, a.Stock.Money)}" : "") + ".";
    }

    /// <summary>Where one more start costs no more steel; empty when it does.</summary>
    public static string Free(StockPlan s)
    {
        var before = s.Rows.FirstOrDefault(r => r.Starts == s.Starts - 1);
        var below = before is not null && s.Chosen.IsFree ? $"{s.Starts} costs no more steel than {before.Starts}: the chance is {StockWords.Percent(before.ChanceShare)} with {before.Starts}, {StockWords.Percent(s.Chosen.ChanceShare)} with {s.Starts}. " : "";
        var above = s.Free.Starts > s.Starts ? $"{s.Free.Starts} starts cost no more steel than {s.Starts} and give {StockWords.Percent(s.Free.ChanceShare)}; they cost the work." : "";
        return (below + above).TrimEnd();
    }

    /// <summary>"3 new bars alike, 76.2 x 1219.2 mm: 6 pieces in each, drop ...".</summary>
    public static string Bars(StockPlan s, BarCut c, UnitsShown units)
        => $"{(c.Rack is { } rack ? $"{rack.Name} of the rack, " : c.Count == 1 ? $"1 new {Word(s)}, " : $"{c.Count} new {Word(s)}s alike, ")}{(HasSeveral(s) ? $"{c.Steel} {Size(c.Thickness, units)} x " : "")}{Size(c.Width, units)} x {Size(c.Length, units)}: {StockWords.Pieces(s, c)}{(c.Count > 1 ? " in each" : "")}, drop {Size(c.Drop, units)}{(c.DropHoldsPiece ? ", holds another" : "")}";

    /// <summary>What to buy, a line a kind.</summary>
    public static string Buy(StockPlan s, BarsToBuy b, UnitsShown units, string times)
        => $"Buy {b.Count} {times} {(HasSeveral(s) ? $"{b.Steel} {Size(b.Thickness, units)} {times} " : "")}{Size(b.Width, units)} {times} {Size(b.Length, units)}: "
            + (s.Patterns.Length < 2 && b.StraightInBar > 0 ? $"{b.MostInBar} in a bar, {b.StraightInBar} end to end" : s.IsOnSheets ? $"{b.MostInBar} in the fullest" : $"up to {b.MostInBar} in one")
            + (b.Price is { } price ? $", {StockWords.Money(price, s.Money)} each" : "");

    /// <summary>Where a piece lies: "from 3 mm to 278 mm, 0.5 mm up, plain".</summary>
    public static string Place(StockPlan s, LanePlace p, UnitsShown units)
        => $"{(s.Patterns.Length > 1 ? s.Patterns[p.Pattern].Results.Plan.Name + ", " : "")}from {Size(Length.OfMm(p.AlongMm), units)} to {Size(Length.OfMm(p.AlongMm + Lies.Size(p.Lie, s.Patterns[p.Pattern].Results.Plan.Outline.Bounds).Along), units)}, {Size(Length.OfMm(p.UpMm), units)} up, {Lies.Words(p.Lie)}";

    /// <summary>A straight cut: "cut 2 from 350 mm on the lower edge to 362 mm on the upper".</summary>
    public static string Cut(SawLine l, Length kerf, UnitsShown units)
        => l.RoomMm < kerf.Mm - 1e-6 ? "no straight cut here: follow the gap" : $"from {Size(Length.OfMm(l.LowMm), units)} on the lower edge to {Size(Length.OfMm(l.HighMm), units)} on the upper";

    private static string Word(StockPlan s) => StockWords.Word(s);

    private static bool HasSeveral(StockPlan s) => s.Cuts.Select(c => (c.Steel, c.Thickness)).Distinct().Count() > 1;

    /// <summary>A length, ending zeros dropped.</summary>
    public static string Size(Length length, UnitsShown units) => FigureText.Size(length, units, brief: true);

    /// <summary>Cautions for sawing it oneself.</summary>
    public static string SawCaution => StockWords.Sawing;

    /// <summary>Cautions for cutting it.</summary>
    public static string Caution(StockPlan s) => StockWords.Caution(s);

    /// <summary>"97 %".</summary>
    public static string Percent(double share) => StockWords.Percent(share);

    /// <summary>A mass.</summary>
    public static string Weight(Mass mass, UnitsShown units) => StockWords.Weight(mass, units);
}
