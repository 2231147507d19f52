using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>How chances are worded.</summary>
public static class StockWords
{
    /// <summary>"97 %"; never 100 % unless it is certain.</summary>
    public static string Percent(double share) => share switch
    {
        >= 1 => "100 %",
        > 0.999 => "over 99.9 %",
        > 0.99 => Shown.Number(Math.Floor(share * 1000) / 10, 1) + " %",
        < 0.01 and > 0 => "under 1 %",
        _ => Shown.Number(share * 100, 0) + " %",
    };

    /// <summary>"126.00 EUR"; without a name of the money just the number.</summary>
    public static string Money(decimal amount, string money) => $"{Shown.Number((double)amount, 2)} {money}".TrimEnd();

    /// <summary>"sheet" or "bar".</summary>
    public static string Word(StockPlan s) => s.IsOnSheets ? "sheet" : "bar";

    /// <summary>Cautions for cutting bars or sheets, by who cuts.</summary>
    public static string Caution(StockPlan s) => s.Service switch { null => Sawing, { IsHot: true } => Heat + " " + Handling, _ => Jet + " " + Handling };

    /// <summary>Cautions for sawing bars.</summary>
    public const string Sawing = "Glasses and face shield, ears covered, no gloves near a turning blade. Bar clamped on both sides of the cut, both hands on a hand-held saw. Guard on; a cut-off disc of at least the spindle's speed, undamaged, never pressed from the side. Sparks fly far: clear what burns. Offcuts and sawn ends are hot and sharp. Local rules and the machine's manual come first.";
    private const string Heat = "Plasma arc, flame or beam: shade for the eyes by the process, all skin covered, dry gloves, nobody else in sight of the arc. Fume drawn off at the cut: that of stainless and of coated steel is poisonous. Nothing that burns within 10 m, a fire watch after. The cut edge stays hot, and is hard: it dulls files and drills.";
    private const string Jet = "A waterjet cuts flesh like steel and drives grit into it: hands stay out; any wound by the jet goes to hospital at once.";
    private const string Handling = "Parts you saw, grind or carry after it: glasses, ears and breath covered, guard on, work clamped. Offcuts and cut edges are hot and sharp. The service's rules, local rules and the machine's manual come first.";

    /// <summary>"10.3".</summary>
    public static string Tenths(double number) => Shown.Number(number, 1);

    /// <summary>"6 pieces", or with several patterns "4 hatchet, 2 knife".</summary>
    public static string Pieces(StockPlan s, BarCut c)
        => s.Patterns.Length < 2 ? $"{c.Places.Length} {(c.Places.Length == 1 ? "piece" : "pieces")}" : string.Join(", ", c.Places.GroupBy(p => p.Pattern).OrderBy(g => g.Key).Select(g => $"{g.Count()} {s.Patterns[g.Key].Results.Plan.Name}"));

    /// <summary>A mass of bars: "13.9 kg (30.6 lb)".</summary>
    public static string Weight(Mass mass, UnitsShown units)
    {
        var (kg, lb) = (Shown.Number(mass.Grams / 1000, 1) + " kg", Shown.Number(mass.Ounces / 16, 1) + " lb");
        return units switch { UnitsShown.Mm => kg, UnitsShown.Inch => lb, _ => $"{kg} ({lb})" };
    }
}
