using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Documents;
using Tangwright.Foundation;

namespace Tangwright.UseCases;

/// <summary>A number that changed, in words and in the maker's unit.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Was">As it was.</param>
/// <param name="Now">As it is.</param>
/// <param name="By">By how much as the two are written, with its sign; empty when one of them is not known.</param>
/// <param name="FromTo">Both together: "455.3 → 456.5 g".</param>
public sealed record NumberInWords(string Name, string Was, string Now, string By, string FromTo)
{
    private const string NotKnown = "not known";

    /// <summary>Numbers that changed so much that it shows.</summary>
    public static ImmutableArray<NumberInWords> Of(IEnumerable<FigureDifference> figures, LengthUnit units)
        => [.. figures.Select(f => Of(f, units)).Where(n => n.Was != n.Now)];

    private static NumberInWords Of(FigureDifference f, LengthUnit units)
    {
        var (decimals, unit, scale) = Written(f, units);
        var (was, now) = (Number(f.Was), Number(f.Now));
        var by = f is { Was: { } a, Now: { } b } ? Math.Round(b * scale, decimals) - Math.Round(a * scale, decimals) : (double?)null;
        return new(
            Named(f.Key),
            was,
            now,
            by is { } step ? (step > 0 ? "+" : "\u2212") + Shown.Number(Math.Abs(step), decimals) + unit : "",
            $"{(by is null || unit.Length == 0 ? was : was[..^unit.Length])} \u2192 {now}");

        string Number(double? value) => value is { } v ? Shown.Number(v * scale, decimals) + unit : NotKnown;
    }

    private static (int Decimals, string Unit, double Scale) Written(FigureDifference f, LengthUnit units)
    {
        var inch = units == LengthUnit.Inch;
        return f.Kind switch
        {
            FigureKind.Length => inch ? (3, " in", 1 / Length.MmPerInch) : (2, " mm", 1),
            FigureKind.Mass => inch ? (2, " oz", Mass.OfGrams(1).Ounces) : (1, " g", 1),
            FigureKind.Area => inch ? (3, " in²", 1 / (Length.MmPerInch * Length.MmPerInch)) : (0, " mm²", 1),
            FigureKind.Volume => inch ? (3, " in³", 1 / (Length.MmPerInch * Length.MmPerInch * Length.MmPerInch)) : (2, " cm³", 1e-3),
            FigureKind.Inertia => (2, " kg·cm²", 1e4),
            _ => (0, "", 1),
        };
    }

    private static string Named(string key) => key switch
    {
        "blank.mass_g" => "Weight as sawn",
        "profiled.mass_g" => "Weight profiled",
        "drilled.mass_g" => "Weight drilled",
        "before_hardening.mass_g" => "Weight before hardening",
        "assembled.mass_g" => "Assembled weighs",
        "assembled.balance_from_datum_mm" => "Assembled balances, from datum",
        "finished.mass_g" => "Finished steel weighs",
        "finished.balance_from_datum_mm" => "Balances, from datum",
        "finished.balance_across_from_datum_mm" => "Balances, across from datum",
        "striking.pivot_to_percussion_mm" => "Percussion, from mid grip",
        "striking.inertia_kg_m2" => "Inertia, mid grip",
        "outline.length_mm" => "Long",
        "outline.height_mm" => "High",
        "outline.perimeter_mm" => "Outline, run round",
        "outline.area_mm2" => "Outline, area",
        "holes.count" => "Holes",
        "holes.area_mm2" => "Holes, area",
        "holes.least_web_mm" => "Least steel beside a hole",
        "finished.volume_mm3" => "Steel left",
        _ => key,
    };
}
