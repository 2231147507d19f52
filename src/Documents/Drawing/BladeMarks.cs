using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>What is drawn on the face of a blade besides its outline: where it is sharp, where the bevel ends, where the hand holds. Drawn to about 0.1 mm, for looking at, not for measuring.</summary>
internal static class BladeMarks
{
    /// <summary>The sharpened part of the outline, plan's axes; null when the plan has none.</summary>
    public static Path? Edge(Plan plan)
    {
        if (plan.Edge is not { } edge) return null;
        var (from, to) = (Nearest.On(plan.Outline, edge.From).Spot, Nearest.On(plan.Outline, edge.To).Spot);
        return from == to ? null : plan.Outline.Between(from, to);
    }

    /// <summary>The line on the face where the bevel ends towards the spine, plan's axes, in stretches; none for a full bevel.</summary>
    public static ImmutableArray<ImmutableArray<Point>> GrindLine(Plan plan)
    {
        if (plan.Bevel is not { Height: { } height } bevel || Edge(plan) is not { } edge) return [];
        ImmutableArray<Point> flat = [.. PathPoints.Of(plan.Outline)];
        ImmutableArray<Point> along = [.. PathPoints.Of(edge)];
        var inward = InwardSign(flat, along);
        var h = height.Mm;
        var middle = edge.At(new PathSpot(edge.Segments.Length / 2, 0.5));
        var stretches = ImmutableArray.CreateBuilder<ImmutableArray<Point>>();
        var current = ImmutableArray.CreateBuilder<Point>();
        foreach (var p in Beside(along, inward, h))
        {
            var onFace = PathPoints.Inside(flat, p) && Distance(along, p) > h - 0.02 && (bevel.Plunge is not { } line || SameSide(line, p, middle));
            if (onFace)
            {
                current.Add(p);
                continue;
            }

            if (current.Count > 1) stretches.Add(current.ToImmutable());
            current.Clear();
        }

        if (current.Count > 1) stretches.Add(current.ToImmutable());
        return stretches.ToImmutable();
    }

    /// <summary>The part of a plunge line that lies on the face: the stretch its two points stand on or span; null when it misses.</summary>
    public static (Point A, Point B)? AcrossFace(Plan plan, PlungeLine line)
    {
        if (line.A == line.B) return null;
        var cuts = PathPoints.Crossings([.. PathPoints.Of(plan.Outline)], line.A, line.B);
        for (var i = 0; i + 1 < cuts.Count; i += 2)
        {
            if (cuts[i] <= 1 && cuts[i + 1] >= 0) return (line.A.Toward(line.B, cuts[i]), line.A.Toward(line.B, cuts[i + 1]));
        }

        return null;
    }

    /// <summary>Points at a distance from the edge on its inner side, round its ends too.</summary>
    private static IEnumerable<Point> Beside(ImmutableArray<Point> edge, double inward, double h)
    {
        const int Fan = 32;
        var start = (edge[1] - edge[0]).Unit;
        for (var i = Fan; i > 0; i--) yield return edge[0] + (Transform.Turn(inward * Math.PI / 2 * i / Fan).MapStep(start.Left * inward) * h);
        for (var i = 0; i + 1 < edge.Length; i++)
        {
            var step = edge[i + 1] - edge[i];
            var normal = step.Unit.Left * inward;
            var pieces = Math.Clamp((int)step.Length, 1, 400);
            for (var k = 0; k <= pieces; k++) yield return edge[i].Toward(edge[i + 1], (double)k / pieces) + (normal * h);
        }

        var end = (edge[^1] - edge[^2]).Unit;
        for (var i = 1; i <= Fan; i++) yield return edge[^1] + (Transform.Turn(-inward * Math.PI / 2 * i / Fan).MapStep(end.Left * inward) * h);
    }

    private static double InwardSign(ImmutableArray<Point> outline, ImmutableArray<Point> edge)
    {
        var i = edge.Length / 2;
        var (a, b) = (edge[i - 1], edge[i]);
        return PathPoints.Inside(outline, a.Toward(b, 0.5) + ((b - a).Unit.Left * 0.01)) ? 1 : -1;
    }

    private static bool SameSide(PlungeLine line, Point p, Point q)
        => (line.B - line.A).Cross(p - line.A) >= 0 == (line.B - line.A).Cross(q - line.A) >= 0;

    private static double Distance(ImmutableArray<Point> line, Point p)
    {
        var least = double.PositiveInfinity;
        for (var i = 0; i + 1 < line.Length; i++)
        {
            var (a, step) = (line[i], line[i + 1] - line[i]);
            var t = step.Length == 0 ? 0 : Math.Clamp((p - a).Dot(step) / step.Dot(step), 0, 1);
            least = Math.Min(least, p.To(a + (step * t)));
        }

        return least;
    }
}
