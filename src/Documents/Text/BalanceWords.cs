using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>Levers of weight and balance in words, the same on sheet, command line and desk.</summary>
public static class BalanceWords
{
    /// <summary>1/64 in, mm.</summary>
    public const double SixtyFourthMm = Length.MmPerInch / 64;

    /// <summary>What every figure here stands on.</summary>
    public const string Ground = "Each value is found on the true solid, holes, bevel and tapers included, as if nothing else changed. Weigh and balance the finished piece all the same: steel and wood differ from bar to bar.";

    /// <summary>Caution for grinding thin.</summary>
    public const string Caution = "A thinned tang or tip heats at once on the belt and lets go of its magnet or jig: hold it as the grinder's manual says, fingers clear of the belt. The manual and local rules come first.";

    /// <summary>A value of a lever.</summary>
    public static string Value(BalanceLever lever, double value, UnitsShown units)
        => lever.IsWeight ? FigureText.Weight(Mass.OfGrams(value), units) : FigureText.Size(Length.OfMm(value), units);

    /// <summary>Weight and balance.</summary>
    public static string Weighed(Weighed w, UnitsShown units) => $"{FigureText.Weight(Mass.OfGrams(w.Grams), units)}, balance {FigureText.Size(Length.OfMm(w.FromDatumMm), units)}";

    /// <summary>What a mm more of a lever, or a gram, does.</summary>
    public static string PerMm(LeverAnswer a) => a.Lever.IsWeight ? $"1 g more: balance {Signed(a.MmPerUnit, 2)} mm" : $"1 mm more: {Signed(a.GramsPerUnit, 1)} g, balance {Signed(a.MmPerUnit, 2)} mm";

    /// <summary>What 1/64 in more of a lever does, or an ounce.</summary>
    public static string PerSixtyFourth(LeverAnswer a) => a.Lever.IsWeight
        ? $"0.1 oz more: balance {Signed(a.MmPerUnit * Mass.GramsPerOunce / 10 / Length.MmPerInch, 3)} in"
        : $"1/64 in more: {Signed(a.GramsPerUnit * SixtyFourthMm / Mass.GramsPerOunce, 2)} oz, balance {Signed(a.MmPerUnit / 64, 3)} in";

    /// <summary>What a lever alone comes to; empty when nothing is wanted.</summary>
    public static string Alone(LeverAnswer a, UnitsShown units) => a.Reaches switch
    {
        null => "",
        true => Value(a.Lever, a.Value!.Value, units),
        _ when a.Value!.Value == a.Lever.Now => "not this way: within its limits it only moves the balance off",
        _ => $"not enough: at {Value(a.Lever, a.Value!.Value, units)}, its limit",
    };

    /// <summary>What is wanted; empty when nothing is.</summary>
    public static string Wanted(BalanceAnswer b, UnitsShown units)
        => string.Join(", ", new[] { b.Weight is { } w ? FigureText.Weight(w, units) : "", b.To is { } to ? $"balance {FigureText.Size(to, units)} from the datum" : "" }.Where(s => s.Length > 0));

    /// <summary>Whether a lever of a joint change is moved so far that it can be seen at the bench.</summary>
    public static bool IsMoved((BalanceLever Lever, double Value) move) => Math.Abs(move.Value - move.Lever.Now) >= 0.005;

    private static string Signed(double value, int decimals)
    {
        var s = Shown.Number(Math.Abs(value), decimals);
        return (s.AsSpan().IndexOfAnyExcept('0', '.') < 0 ? "±" : value < 0 ? "−" : "+") + s;
    }
}
