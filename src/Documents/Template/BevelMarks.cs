using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>The bevel, lightly: a line beside the sharpened part, the grind line where the bevel ends below the spine, the plunge line. Help lines to scribe by, not measured from.</summary>
internal static class BevelMarks
{
    private const double BesideMm = 1.8;
    private static readonly Pen Light = new(0.18, LineKind.Dashed);
    private static readonly Pen Thin = new(0.13);

    /// <summary>Adds the lines.</summary>
    public static void Add(ImmutableArray<PlanStroke>.Builder strokes, Plan plan)
    {
        var outline = Dense(plan.Outline);
        if (plan.Edge is { } edge)
        {
            var along = Between(outline, edge);
            var outward = Moments.Of(plan.Outline).AreaMm2 > 0 ? -1.0 : 1.0;
            var beside = along.Select((p, i) => p + (Normal(along, i) * (outward * BesideMm))).ToArray();
            if (PathPoints.Polyline(beside) is { } line) strokes.Add(new PlanStroke(line, Thin));
            foreach (var i in new[] { 0, along.Count - 1 })
            {
                var n = Normal(along, i) * outward;
                strokes.Add(new PlanStroke(new Path([new Line(along[i] + (n * 0.6), along[i] + (n * 4.5))], closed: false), Thin));
            }

            if (plan.Bevel is { Height: { } height } bevel) AddGrindLine(strokes, outline, along, -outward, height.Mm, bevel.Plunge);
        }

        if (plan.Bevel?.Plunge is not { } plunge || plunge.A == plunge.B) return;
        if (InsidePart(outline, plunge) is { } part) strokes.Add(new PlanStroke(part, Light));
    }

    /// <summary>Words for the lines.</summary>
    public static IEnumerable<PlanLabel> Labels(Plan plan)
    {
        if (plan.Edge is { } edge)
        {
            var along = Between(Dense(plan.Outline), edge);
            var middle = along.Count / 2;
            yield return new PlanLabel("edge", along[middle], 3, 2.5);
            var inward = Moments.Of(plan.Outline).AreaMm2 > 0 ? 1.0 : -1.0;
            if (plan.Bevel?.Height is { } height) yield return new PlanLabel("grind line", along[middle] + (Normal(along, middle) * (inward * height.Mm)), 1, 2.5);
        }

        if (plan.Bevel?.Plunge is { } plunge && plunge.A != plunge.B && InsidePart(Dense(plan.Outline), plunge) is { } part)
            yield return new PlanLabel("plunge line", part.Start, 2, 2.5);
    }

    /// <summary>The part of a plunge line that lies on the piece.</summary>
    private static Path? InsidePart(IReadOnlyList<Point> outline, PlungeLine plunge)
    {
        var cuts = PathPoints.Crossings(outline, plunge.A, plunge.B);
        for (var i = 0; i + 1 < cuts.Count; i += 2)
        {
            // the stretch the two given points stand on or span
            if (cuts[i] > 1 || cuts[i + 1] < 0) continue;
            var step = plunge.B - plunge.A;
            return new Path([new Line(plunge.A + (step * cuts[i]), plunge.A + (step * cuts[i + 1]))], closed: false);
        }

        return null;
    }

    private static void AddGrindLine(ImmutableArray<PlanStroke>.Builder strokes, IReadOnlyList<Point> outline, IReadOnlyList<Point> along, double inward, double height, PlungeLine? plunge)
    {
        var run = new List<Point>();
        for (var i = 0; i < along.Count; i++)
        {
            var p = along[i] + (Normal(along, i) * (inward * height));
            var keep = PathPoints.Inside(outline, p) && along.All(q => q.To(p) > height - 0.1) && OnBevelSide(p, along, plunge);
            if (keep) run.Add(p);
            if (keep && i < along.Count - 1) continue;
            if (PathPoints.Polyline(run) is { } line) strokes.Add(new PlanStroke(line, Light));
            run.Clear();
        }
    }

    private static bool OnBevelSide(Point p, IReadOnlyList<Point> along, PlungeLine? plunge)
    {
        if (plunge is null) return true;
        var step = plunge.B - plunge.A;
        return step.Cross(p - plunge.A) * step.Cross(along[along.Count / 2] - plunge.A) >= 0;
    }

    /// <summary>The outline's points, about every millimetre along lines too, at most a few thousand.</summary>
    private static List<Point> Dense(Path outline)
    {
        var pitch = Math.Max(1, outline.Length / 3000);
        var points = new List<Point>();
        foreach (var s in outline.Segments)
        {
            var steps = Math.Max(1, (int)(s.Length / pitch));
            for (var i = 0; i < steps; i++) points.Add(s.At((double)i / steps));
        }

        return points;
    }

    /// <summary>The points from one end of the edge to the other, in the outline's own direction.</summary>
    private static List<Point> Between(List<Point> outline, SharpenedPart edge)
    {
        var (from, to) = (Nearest(outline, edge.From), Nearest(outline, edge.To));
        var part = new List<Point> { edge.From };
        for (var i = (from + 1) % outline.Count; i != to && part.Count <= outline.Count; i = (i + 1) % outline.Count) part.Add(outline[i]);
        part.Add(edge.To);
        return part;
    }

    private static int Nearest(List<Point> points, Point p)
    {
        var best = 0;
        for (var i = 1; i < points.Count; i++)
        {
            if (points[i].To(p) < points[best].To(p)) best = i;
        }

        return best;
    }

    /// <summary>To the left of travel, length 1.</summary>
    private static Point Normal(IReadOnlyList<Point> along, int i)
        => (along[Math.Min(i + 1, along.Count - 1)] - along[Math.Max(i - 1, 0)]).Unit.Left;
}
