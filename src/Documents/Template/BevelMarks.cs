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
        if (BladeMarks.Edge(plan) is { } edge)
        {
            Point[] along = [.. PathPoints.Of(edge)];
            var outward = Moments.Of(plan.Outline).AreaMm2 > 0 ? -1.0 : 1.0;
            if (PathPoints.Polyline([.. along.Select((p, i) => p + (Normal(along, i) * (outward * BesideMm)))]) is { } line) strokes.Add(new PlanStroke(line, Thin));
            foreach (var i in new[] { 0, along.Length - 1 })
            {
                var n = Normal(along, i) * outward;
                strokes.Add(new PlanStroke(new Path([new Line(along[i] + (n * 0.6), along[i] + (n * 4.5))], closed: false), Thin));
            }
        }

        foreach (var stretch in BladeMarks.GrindLine(plan))
        {
            if (PathPoints.Polyline(stretch) is { } line) strokes.Add(new PlanStroke(line, Light));
        }

        if (plan.Bevel?.Plunge is { } plunge && BladeMarks.AcrossFace(plan, plunge) is { } across) strokes.Add(new PlanStroke(new Path([new Line(across.A, across.B)], closed: false), Light));
    }

    /// <summary>Words for the lines.</summary>
    public static IEnumerable<PlanLabel> Labels(Plan plan)
    {
        if (BladeMarks.Edge(plan) is { } edge) yield return new PlanLabel("edge", edge.At(new PathSpot(edge.Segments.Length / 2, 0.5)), 3, 2.5);
        var stretches = BladeMarks.GrindLine(plan);
        if (stretches.Length > 0)
        {
            var longest = stretches.MaxBy(s => s.Length);
            yield return new PlanLabel("grind line", longest[longest.Length / 2], 1, 2.5);
        }

        if (plan.Bevel?.Plunge is { } plunge && BladeMarks.AcrossFace(plan, plunge) is { } across) yield return new PlanLabel("plunge line", across.A, 2, 2.5);
    }

    /// <summary>To the left of travel, length 1.</summary>
    private static Point Normal(Point[] along, int i)
        => (along[Math.Min(i + 1, along.Length - 1)] - along[Math.Max(i - 1, 0)]).Unit.Left;
}
