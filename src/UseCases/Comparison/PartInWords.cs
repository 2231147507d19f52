using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Documents;
using Tangwright.Foundation;

namespace Tangwright.UseCases;

/// <summary>A part of the plan that changed, in words.</summary>
/// <param name="What">What it is: "hole L1", "outline", "bevel height".</param>
/// <param name="Was">As it was; a dash when it was not there.</param>
/// <param name="Now">As it is; a dash when it is gone.</param>
/// <param name="By">What was done: "moved 2 mm right", "added"; empty for values.</param>
public sealed record PartInWords(string What, string Was, string Now, string By)
{
    private const string None = "\u2013";

    /// <summary>Everything of the plan that differs, outline first, in a unit.</summary>
    public static ImmutableArray<PartInWords> Of(PlanDifference d, LengthUnit units)
        =>
        [
            .. d.Outline is { } o ? Outline(o, units) : [],
            .. d.Holes.Select(h => Hole(h, units)),
            .. d.Values.Select(v => new PartInWords(v.Name, v.Was.Length > 0 ? v.Was : None, v.Now.Length > 0 ? v.Now : None, v.Was.Length == 0 ? "added" : v.Now.Length == 0 ? "taken out" : "")),
        ];

    private static IEnumerable<PartInWords> Outline(OutlineDifference o, LengthUnit units)
    {
        var apart = o.Apart.Mm > FarthestApart.WithinMm ? $"at most {Size(o.Apart, units)} apart" : "the same line";
        yield return new("outline", $"{o.PointsWas} points", $"{o.PointsNow} points", apart);
        foreach (var p in o.Moved) yield return new($"point {p.Number} of the outline", Place(p.Was, units), Place(p.Now, units), Step(p.Now - p.Was, units));
    }

    private static PartInWords Hole(HoleDifference h, LengthUnit units)
    {
        var done = new List<string>();
        if (h.Was is null) done.Add("added");
        if (h.Now is null) done.Add("gone");
        if (h.Moved is { } step && step.Length > PlanDifference.SameMm) done.Add(Step(step, units));
        if (h is { Was: { } a, Now: { } b })
        {
            var change = (b.Diameter - a.Diameter).Mm;
            if (Math.Abs(change) > PlanDifference.SameMm) done.Add($"{Size(Length.OfMm(Math.Abs(change)), units)} {(change > 0 ? "larger" : "smaller")}");
            if (a.Use != b.Use) done.Add($"for {FigureText.Of(b.Use)} instead of {FigureText.Of(a.Use)}");
            if (a.Make != b.Make) done.Add($"{FigureText.Of(b.Make)} instead of {FigureText.Of(a.Make)}");
        }

        return new($"hole {h.Name}", Placed(h.Was, units), Placed(h.Now, units), string.Join(", ", done));
    }

    private static string Placed(PlacedHole? h, LengthUnit units) => h is null ? None : $"{Size(h.Diameter, units)} at {Place(h.At, units)}";

    private static string Place(Point p, LengthUnit units) => $"x {Size(Length.OfMm(p.X), units)}, y {Size(Length.OfMm(p.Y), units)}";

    private static string Step(Point step, LengthUnit units)
    {
        var ways = new List<string>();
        if (Math.Abs(step.X) > PlanDifference.SameMm) ways.Add($"{Size(Length.OfMm(Math.Abs(step.X)), units)} {(step.X > 0 ? "right" : "left")}");
        if (Math.Abs(step.Y) > PlanDifference.SameMm) ways.Add($"{Size(Length.OfMm(Math.Abs(step.Y)), units)} {(step.Y > 0 ? "up" : "down")}");
        return "moved " + string.Join(" and ", ways);
    }

    private static string Size(Length length, LengthUnit units) => units == LengthUnit.Inch ? Shown.Trimmed(length.Inches, 4) + " in" : Shown.Trimmed(length.Mm, 3) + " mm";
}
