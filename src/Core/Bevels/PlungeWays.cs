using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Ways to bring the end of the edge and the plunge line together.</summary>
internal static class PlungeWays
{
    /// <summary>The plunge line moved, its direction kept, until it runs through a point.</summary>
    public static ImmutableArray<RemedyWay> LineThrough(Results r, PlungeLine plunge, Point through)
    {
        var across = (plunge.B - plunge.A).Unit.Left;
        return [LineMoved(r, plunge, across * (through - plunge.A).Dot(across))];
    }

    /// <summary>The plunge line moved by a step.</summary>
    public static RemedyWay LineMoved(Results r, PlungeLine plunge, Point step)
        => new($"move the plunge line {WebRemedy.StepInWords(PlanStep.Near(step, r.Plan.Units))}", [new PlungeSet(PlanStep.Near(plunge.A + step, r.Plan.Units), PlanStep.Near(plunge.B + step, r.Plan.Units))]);

    /// <summary>The end of the edge moved along the outline to where the plunge line crosses it; none when it crosses nowhere near.</summary>
    /// <param name="r">The results.</param>
    /// <param name="edge">The edge.</param>
    /// <param name="plunge">The plunge line.</param>
    /// <param name="end">The end that misses it.</param>
    /// <param name="shorter">Whether the edge is to become shorter.</param>
    public static ImmutableArray<RemedyWay> EdgeTo(Results r, EdgeSpan edge, PlungeLine plunge, Point end, bool shorter)
    {
        if (r.Plan.Edge is not { } part) return [];
        var rays = new RayHits(r.Piece.Outer.Segments);
        var hits = new RayHit[rays.MostHits];
        var (way, box) = ((plunge.B - plunge.A).Unit, r.Piece.Outer.Bounds);
        var reach = box.Width + box.Height + plunge.A.To(box.Centre);
        var met = hits.Take(rays.Along(plunge.A, way, -reach, reach, hits)).Select(h => plunge.A + (way * h.Distance)).ToArray();
        var there = met.Where(p => Nearest.Distance(edge.Path, p) < 1e-6 == shorter).OrderBy(p => p.To(end)).Select(p => (Point?)p).FirstOrDefault();
        if (there is not { } to) return [];
        var key = part.From.To(end) <= part.To.To(end) ? "from" : "to";
        return [new RemedyWay($"{(shorter ? "end the edge" : "lengthen the edge to end")} at the plunge line, x {Shown.Both(Length.OfMm(to.X))}, y {Shown.Both(Length.OfMm(to.Y))}", [new PointSet("edge", key, PlanStep.Near(to, r.Plan.Units))])];
    }

    /// <summary>The plunge line put through the end of the edge nearest to it, square to the piece when it has no direction; none without an edge.</summary>
    public static ImmutableArray<RemedyWay> ToEdge(Results r, PlungeLine plunge, bool hasDirection)
    {
        if (r.Plan.Edge is not { } part) return [];
        var end = part.From.To(plunge.A) <= part.To.To(plunge.A) ? part.From : part.To;
        if (hasDirection) return LineThrough(r, plunge, end);
        var box = r.Piece.Outer.Bounds;
        return [new RemedyWay($"put the plunge line at x {Shown.Both(Length.OfMm(end.X))}, the end of the edge", [new PlungeSet(new Point(end.X, box.MinY), new Point(end.X, box.MaxY))])];
    }

    /// <summary>The line moved off a hole, or the hole off the line, whichever way is shorter.</summary>
    public static ImmutableArray<RemedyWay> OffHole(Results r, WebRemedy remedy, PlungeLine plunge, PlacedHole hole, double byMm)
    {
        var across = (plunge.B - plunge.A).Unit.Left;
        var side = (hole.At - plunge.A).Dot(across) >= 0 ? across : -across;
        var step = PlanStep.MoveUp(byMm + (2 * PlanStep.FineMm(r.Plan.Units)), r.Plan.Units);
        return [LineMoved(r, plunge, -side * step), .. HoleWays.Moved(remedy.Along(hole, side, byMm))];
    }
}
