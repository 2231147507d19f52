using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Motions that run the tool into a clamp. The tool is held for a cylinder down to its tip.</summary>
internal static class ClampHits
{
    public static IEnumerable<ProgramTrouble> Of(IReadOnlyList<Motion> motions, ImmutableArray<ProgramTool> tools, ProgramSetUp setUp)
        => from clamp in setUp.Clamps
           let hit = motions.FirstOrDefault(m => Hits(m, SweptTool.Of(tools, m.Tool), clamp))
           where hit is not null
           select new ProgramTrouble("clamp", hit.Line, $"the tool runs into {clamp.Name}", $"go round it, or cross it higher than {Shown.Mm(Length.OfMm(clamp.TopZMm))}");

    private static bool Hits(Motion m, SweptTool tool, ClampBox clamp)
    {
        if (m.AtMost(clamp.TopZMm) is not { } low) return false;
        if (m.Flat() is not { } flat) return clamp.Box.DistanceTo(m.To.Flat) < tool.Radius;
        if (!flat.Bounds.Grown(tool.Radius).Touches(clamp.Box)) return false;
        var part = low is (0, 1) ? flat : low.To - low.From > 1e-12 ? flat.Part(low.From, low.To) : null;
        return part is null ? clamp.Box.DistanceTo(flat.At(low.From)) < tool.Radius : Distance(part, clamp.Box) < tool.Radius;
    }

    /// <summary>Distance between a piece and a box, mm: 0 when the piece enters it; else an end of the piece, or a side or corner of the box, is nearest.</summary>
    private static double Distance(Segment piece, Box box)
    {
        var least = Math.Min(box.DistanceTo(piece.Start), box.DistanceTo(piece.End));
        Point[] corners = [new(box.MinX, box.MinY), new(box.MaxX, box.MinY), new(box.MaxX, box.MaxY), new(box.MinX, box.MaxY)];
        if (!Crossings.Between(new Path([piece], closed: false), Path.Polygon(corners), 1).IsEmpty) return 0;
        foreach (var c in corners) least = Math.Min(least, Nearest.Distance(piece, c));

        // the farthest point of an arc to one side may be nearest to a side of the box
        if (piece is Arc { IsCircle: true } arc)
        {
            for (var quarter = 0; quarter < 4; quarter++)
            {
                var far = arc.Centre + (Point.Direction(quarter * Math.PI / 2) * arc.Radius);
                if (Nearest.Distance(arc, far) < 1e-9) least = Math.Min(least, box.DistanceTo(far));
            }
        }

        return least;
    }
}
