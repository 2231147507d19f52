using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>The piece itself at true scale: outline, holes with punch crosses, edge, grind and plunge lines, grip.</summary>
internal static class PieceMarks
{
    private static readonly Pen Light = new(0.18, LineKind.Dashed);
    private static readonly Pen Thin = new(0.13);

    /// <summary>The lines.</summary>
    public static ImmutableArray<PlanStroke> Strokes(Results results, bool drillOnly)
    {
        var strokes = ImmutableArray.CreateBuilder<PlanStroke>();
        if (!drillOnly)
        {
            strokes.Add(new PlanStroke(results.Plan.Outline, Pen.Template));
            BevelMarks.Add(strokes, results.Plan);
            if (results.Plan.Grip is { } grip) AddGrip(strokes, results.Plan.Outline, grip);
        }

        foreach (var hole in results.Holes) AddHole(strokes, hole);
        return strokes.ToImmutable();
    }

    /// <summary>The words.</summary>
    public static ImmutableArray<PlanLabel> Labels(Results results, bool drillOnly, bool inInches)
    {
        var labels = ImmutableArray.CreateBuilder<PlanLabel>();
        foreach (var h in results.Holes) labels.Add(new PlanLabel($"{TemplateStrip.Cut(h.Name, 24)} Ø{(inInches ? Shown.Trimmed(h.MadeDiameter.Inches, 4) + " in" : Shown.Trimmed(h.MadeDiameter.Mm, 2))}", h.MadeAt, Reach(h) + 0.5, 3.5, h.MadeDiameter.Mm / 2));
        if (drillOnly) return labels.ToImmutable();
        if (results.Plan.Grip is { } grip)
        {
            foreach (var (words, at) in new[] { ("grip from", grip.From), ("grip to", grip.To) })
            {
                if (GripCuts(results.Plan.Outline, grip, at) is { } cuts) labels.Add(new PlanLabel(words, cuts.Above, 2.5, 2.5));
            }
        }

        labels.AddRange(BevelMarks.Labels(results.Plan));
        return labels.ToImmutable();
    }

    /// <summary>Diameter of the ring that is still seen when the centre has been punched: 10 mm, or 6 mm where 10 would run into the hole's own circle.</summary>
    public static double RingDiameterMm(double holeDiameterMm) => Math.Abs(holeDiameterMm - 10) < 2 ? 6 : 10;

    /// <summary>How far the cross reaches from the centre, mm: past the hole and the ring, so that its arms are left to measure by.</summary>
    public static double Reach(PlacedHole hole) => (Math.Max(hole.MadeDiameter.Mm, RingDiameterMm(hole.MadeDiameter.Mm)) / 2) + 2;

    private static void AddHole(ImmutableArray<PlanStroke>.Builder strokes, PlacedHole hole)
    {
        var reach = Reach(hole);
        strokes.Add(new PlanStroke(Path.Circle(hole.MadeAt, hole.MadeDiameter.Mm / 2), Pen.Template));
        strokes.Add(new PlanStroke(Path.Circle(hole.MadeAt, RingDiameterMm(hole.MadeDiameter.Mm) / 2), Light));
        strokes.Add(Straight(hole.MadeAt - new Point(reach, 0), hole.MadeAt + new Point(reach, 0), Pen.Template));
        strokes.Add(Straight(hole.MadeAt - new Point(0, reach), hole.MadeAt + new Point(0, reach), Pen.Template));
    }

    /// <summary>Short ticks outside the outline where the grip begins and ends.</summary>
    private static void AddGrip(ImmutableArray<PlanStroke>.Builder strokes, Path outline, Grip grip)
    {
        foreach (var at in new[] { grip.From, grip.To })
        {
            if (GripCuts(outline, grip, at) is not { } cuts) continue;
            var up = (cuts.Above - cuts.Below).Unit;
            strokes.Add(Straight(cuts.Above - (up * 1.85), cuts.Above + (up * 1.85), Thin));
            strokes.Add(Straight(cuts.Below - (up * 1.85), cuts.Below + (up * 1.85), Thin));
        }
    }

    /// <summary>Middles of the two ticks of one end of the grip, just outside the outline; null when the grip is a point.</summary>
    private static (Point Above, Point Below)? GripCuts(Path outline, Grip grip, Point at)
    {
        var axis = (grip.To - grip.From).Unit;
        if (axis.Length == 0) return null;
        var cuts = PathPoints.Crossings([.. PathPoints.Of(outline)], at, at + axis.Left);
        var above = cuts.Where(t => t > 0).DefaultIfEmpty(3).First() + 2.65;
        var below = cuts.Where(t => t < 0).DefaultIfEmpty(-3).Last() - 2.65;
        return (at + (axis.Left * above), at + (axis.Left * below));
    }

    private static PlanStroke Straight(Point a, Point b, Pen pen) => new(new Path([new Line(a, b)], closed: false), pen);
}
