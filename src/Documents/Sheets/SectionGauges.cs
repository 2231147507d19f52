using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>Half sections of the handle at true scale, to glue on card, cut out and hold against the handle while it is shaped.</summary>
public static class SectionGauges
{
    /// <summary>Its key.</summary>
    public const string Key = "gauges";

    private const double BesideMm = 14, OverMm = 34;

    /// <summary>Draws its sheets; none without scales.</summary>
    public static ImmutableArray<Sheet> Draw(SheetRequest request)
        => request.Handle is { Shape: not null } p ? TrueScaleSheets.Draw(request, Key, "Section gauges", Shapes(p, request.Units)) : [];

    /// <summary>One gauge for each cut.</summary>
    public static ImmutableArray<TrueScaleShape> Shapes(HandlePlan p, UnitsShown units) => [.. p.Cuts.Select((c, i) => One(c, i + 1, units))];

    private static TrueScaleShape One(HandleCut cut, int number, UnitsShown units)
    {
        var (a, b) = (0.5 * cut.Height.Mm, 0.5 * cut.Width.Mm);
        var half = cut.Outline.Between(Nearest.On(cut.Outline, new Point(a, 0)).Spot, Nearest.On(cut.Outline, new Point(-a, 0)).Spot);
        var card = new Path(
            [
                .. half.Segments,
                new Line(half.End, new Point(-a - BesideMm, 0)),
                new Line(new Point(-a - BesideMm, 0), new Point(-a - BesideMm, b + OverMm)),
                new Line(new Point(-a - BesideMm, b + OverMm), new Point(a + BesideMm, b + OverMm)),
                new Line(new Point(a + BesideMm, b + OverMm), new Point(a + BesideMm, 0)),
                new Line(new Point(a + BesideMm, 0), half.Start),
            ],
            closed: true);
        string Size(Length l) => units switch { UnitsShown.Mm => Shown.Number(l.Mm, 1) + " mm", UnitsShown.Inch => Shown.Number(l.Inches, 3) + " in", _ => $"{Shown.Number(l.Mm, 1)} mm ({Shown.Number(l.Inches, 3)} in)" };
        return new TrueScaleShape(
            $"gauge {number}",
            [new PlanStroke(card, Pen.Template)],
            [
                new PlanLabel($"at {Size(cut.Station)}", new Point(0, b + OverMm - 4), 0, 2.5),
                new PlanLabel($"high {Size(cut.Height)}", new Point(0, b + OverMm - 8), 0, 2.5),
                new PlanLabel($"wide {Size(cut.Width)}", new Point(0, b + OverMm - 12), 0, 2.5),
                new PlanLabel($"girth {Size(cut.Girth)}", new Point(0, b + OverMm - 16), 0, 2.5),
            ]);
    }
}
