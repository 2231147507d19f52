using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Does the plunge line end the bevel where the edge ends?</summary>
public static class PlungeFindings
{
    /// <summary>Edge and plunge line may miss one another by this, mm; common practice: half a millimetre is seen by every buyer.</summary>
    public const double MissMm = 0.5;

    /// <summary>Edge short of or past the plunge line.</summary>
    public static IEnumerable<Finding> Edge(Results r, EdgeSpan? edge)
    {
        if (edge is null || r.Plan.Bevel?.Plunge is not { } plunge || !Lines(plunge, out var way)) yield break;
        var toBevel = Math.Sign((edge.Middle - plunge.A).Cross(way));
        if (toBevel == 0) yield break;
        double Ahead(Point p) => (p - plunge.A).Cross(way) * toBevel;
        var (from, to) = (Ahead(edge.Path.Start), Ahead(edge.Path.End));
        var (end, ahead) = from <= to ? (edge.Path.Start, from) : (edge.Path.End, to);
        var off = Length.OfMm(Math.Abs(ahead));
        if (ahead > MissMm)
        {
            yield return new Finding(
                FindingCodes.EdgeShortOfPlunge,
                Severity.Warning,
                "edge",
                end,
                $"The sharpened part ends {Shown.Both(off)} short of the plunge line: that stretch is ground but not sharpened.",
                Shown.Both(off),
                Shown.Both(Length.OfMm(MissMm)),
                SourceTag.CommonPractice,
                $"lengthen the edge by {Shown.Both(off)}, or move the plunge line as far towards it")
            {
                Ways = [.. PlungeWays.LineThrough(r, plunge, end), .. PlungeWays.EdgeTo(r, edge, plunge, end, shorter: false)],
            };
        }
        else if (ahead < -MissMm)
        {
            yield return new Finding(
                FindingCodes.EdgePastPlunge,
                Severity.Note,
                "edge",
                end,
                $"The sharpened part runs {Shown.Both(off)} past the plunge line, where the steel keeps its full thickness.",
                Shown.Both(off),
                Shown.Both(Length.OfMm(MissMm)),
                SourceTag.CommonPractice,
                $"end the edge {Shown.Both(off)} sooner, or move the plunge line as far back")
            {
                Ways = [.. PlungeWays.EdgeTo(r, edge, plunge, end, shorter: true), .. PlungeWays.LineThrough(r, plunge, end)],
            };
        }
    }

    /// <summary>A plunge line that misses the piece or runs through a hole.</summary>
    public static IEnumerable<Finding> Line(Results r)
    {
        if (r.Plan.Bevel?.Plunge is not { } plunge) yield break;
        var box = r.Piece.Outer.Bounds;
        var good = Lines(plunge, out var way);
        if (!good || !CutsPiece(r, plunge, way))
        {
            var nearest = good ? Nearest.On(r.Piece.Outer, plunge.A).At : box.Centre;
            yield return new Finding(
                FindingCodes.PlungeMissesPiece,
                Severity.Error,
                "plunge line",
                plunge.A,
                good ? "The plunge line does not cross the piece." : "The plunge line has no direction: its two points are the same.",
                good ? $"{Shown.Both(Length.OfMm(Math.Abs((nearest - plunge.A).Cross(way))))} off the nearest point of the outline" : "one point twice",
                $"between x {Shown.Both(Length.OfMm(box.MinX))} and {Shown.Both(Length.OfMm(box.MaxX))}",
                "geometry",
                "move the plunge line to the end of the edge")
            {
                Ways = PlungeWays.ToEdge(r, plunge, good),
            };
            yield break;
        }

        var remedy = new WebRemedy(r);
        foreach (var h in r.Holes)
        {
            var off = Math.Abs((h.At - plunge.A).Cross(way));
            var radius = 0.5 * h.Diameter.Mm;
            if (off >= radius || !BevelReaches(r, h)) continue;
            yield return new Finding(
                FindingCodes.PlungeThroughHole,
                Severity.Warning,
                $"hole {h.Name}",
                h.At,
                $"The plunge line runs through hole {h.Name}.",
                $"{Shown.Both(Length.OfMm(off))} from its centre",
                $"{Shown.Both(h.Diameter / 2)}, its radius",
                "geometry",
                $"move the plunge line or the hole {Shown.Both(Length.OfMm(radius - off))}")
            {
                Ways = PlungeWays.OffHole(r, remedy, plunge, h, radius - off),
            };
        }
    }

    private static bool Lines(PlungeLine plunge, out Point way)
    {
        way = (plunge.B - plunge.A).Unit;
        return plunge.A.To(plunge.B) > 1e-6;
    }

    private static bool CutsPiece(Results r, PlungeLine plunge, Point way)
    {
        var rays = new RayHits(r.Piece.Outer.Segments);
        var reach = r.Piece.Outer.Bounds.Width + r.Piece.Outer.Bounds.Height + plunge.A.To(r.Piece.Outer.Bounds.Centre);
        return rays.Along(plunge.A, way, -reach, reach, new RayHit[rays.MostHits]) > 0;
    }

    /// <summary>Whether the hole lies within the bevel's height of the edge; always for a full bevel and one of constant angle.</summary>
    private static bool BevelReaches(Results r, PlacedHole hole)
        => EdgeSpan.Of(r.Plan, r.Piece) is not { } edge || r.Plan.Bevel!.Height is not { } height
            || Nearest.Distance(edge.Path, hole.At) - (0.5 * hole.Diameter.Mm) < height.Mm;
}
