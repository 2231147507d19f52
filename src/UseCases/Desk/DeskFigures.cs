using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Documents;
using Tangwright.Foundation;

namespace Tangwright.UseCases;

/// <summary>A figure to be read from a step away: the number with its unit large, the other unit small, and where it comes from.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Number">The number, in the maker's unit.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="Also">The same in the other unit.</param>
/// <param name="From">Where it comes from, in a sentence.</param>
public sealed record LargeFigure(string Name, string Number, string Unit, string Also, string From);

/// <summary>The figures beside the drawing, in the maker's own units first.</summary>
public static class DeskFigures
{
    private const string FromStock = "exact for the outline and holes drawn, nominal stock thickness and the steel's density";

    /// <summary>Finished weight, balance, length and height.</summary>
    public static ImmutableArray<LargeFigure> Main(Results r)
    {
        var (last, inch) = (r.Stages[^1], r.Plan.Units == LengthUnit.Inch);
        var lines = ImmutableArray.CreateBuilder<LargeFigure>();
        var what = last.Stage == Stage.Assembled ? "Assembled" : "Finished steel";
        lines.Add(last.Mass is { } m ? Weight($"{what} weighs", m, inch, FromStock) : new("Finished steel weighs", "not known", "", "", $"no density: there is no file for the steel {r.Plan.Stock.Steel}"));
        lines.Add(Along("Balances, from datum", last.BalanceFromDatum, inch, $"balance point {(last.Stage == Stage.Assembled ? "with what is put on the steel" : "of the finished steel")}, measured along the piece from the datum"));
        if (r.Striking is { } s) lines.Add(Along("Percussion, from mid grip", s.PivotToPercussion, inch, "q = I / (m r) about the middle of the grip"));
        lines.Add(Along("Long", r.Outline.Length, inch, "from the outline's own extremes"));
        lines.Add(Along("High", r.Outline.Height, inch, "from the outline's own extremes"));
        return lines.ToImmutable();
    }

    /// <summary>Mass at each stage.</summary>
    public static ImmutableArray<LargeFigure> Stages(Results r)
    {
        var inch = r.Plan.Units == LengthUnit.Inch;
        return [.. r.Stages.Select(s => s.Mass is { } m ? Weight(FigureText.Of(s.Stage), m, inch, FromStock) : new(FigureText.Of(s.Stage), "not known", "", "", FromStock))];
    }

    /// <summary>What the maker wants beside what was found, a sentence each.</summary>
    public static ImmutableArray<string> Targets(Results r)
        => [.. FigureLine.OfTargets(r, r.Plan.Units == LengthUnit.Inch ? UnitsShown.Inch : UnitsShown.Mm).Select(Sentence)];

    /// <summary>The rest of the figures, a line each.</summary>
    public static ImmutableArray<(string Name, string Value)> Other(Results r)
        => [.. FigureLine.OfPiece(r, UnitsShown.Both).Skip(2).Select(l => (l.Name, l.Value))];

    /// <summary>A length in the maker's unit alone, as on a dimension line: "275" or "10.827".</summary>
    public static string Size(Length length, LengthUnit units) => units == LengthUnit.Inch ? Shown.Number(length.Inches, 3) : Shown.Trimmed(length.Mm, 2);

    /// <summary>A measure as it would be typed in, in the plan's unit.</summary>
    public static string Typed(Length length, LengthUnit units) => units == LengthUnit.Inch ? Shown.Trimmed(length.Inches, 5) : Shown.Trimmed(length.Mm, 4);

    /// <summary>What a hole is for and how it is made.</summary>
    public static string Purpose(PlacedHole hole) => $"{FigureText.Of(hole.Use)}, {FigureText.Of(hole.Make)}";

    private static string Sentence(TargetLine t)
        => $"{t.Name}: wanted {t.Wanted}" + (t.Found == FigureLine.MeasureIt ? "; measure it." : $", found {t.Found}{t.Within switch { true => ", as wanted", false => ", not as wanted", _ => "" }}.");

    private static LargeFigure Along(string name, Length l, bool inch, string from) => inch
        ? new(name, Shown.Number(l.Inches, 3), "in", Shown.Mm(l), from)
        : new(name, Shown.Number(l.Mm, 1), "mm", Shown.Inch(l), from);

    private static LargeFigure Weight(string name, Mass m, bool inch, string from)
    {
        var (grams, ounces) = (FigureText.Weight(m, UnitsShown.Mm), FigureText.Weight(m, UnitsShown.Inch));
        return inch ? new(name, ounces[..^3], "oz", grams, from) : new(name, grams[..^2], "g", ounces, from);
    }
}
