using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>A place on the face to test hardness at.</summary>
/// <param name="At">Its middle, plan's axes, mm.</param>
/// <param name="Where">In words: "handle", "blade".</param>
/// <param name="Clear">Distance from the nearest rim or bevel.</param>
/// <param name="Thickness">Thickness there.</param>
/// <param name="IsHidden">Whether a scale hides it later.</param>
public sealed record TestSpot(Point At, string Where, Length Clear, Length Thickness, bool IsHidden);

/// <summary>Flat places of full thickness, far enough from edges, holes and bevel for a Rockwell test.</summary>
public static class TestSpots
{
    /// <summary>Thinnest steel that is tested on a blade; common practice.</summary>
    public static Length LeastThickness => Length.OfMm(1);

    /// <summary>Least distance from a rim whatever the dent: a finger's care; common practice.</summary>
    public static Length LeastClear => Length.OfMm(2.5);

    private const int Across = 24;
    private const int MostAlong = 160;
    private const int Around = 8;

    /// <summary>The best place on the handle and on the blade, and one between when they lie far apart; empty when there is none.</summary>
    /// <param name="r">The plan worked up.</param>
    /// <param name="hrc">Hardness expected, HRC.</param>
    public static ImmutableArray<TestSpot> Of(Results r, double hrc)
    {
        var edge = EdgeSpan.Of(r.Plan, r.Piece);
        var ground = edge is null || r.Plan.Bevel is not { } bevel ? null : new SteelThickness(r.Piece, edge, bevel.Plunge, GrindProfile.Finished(r.Plan));
        var clear = Math.Max(LeastClear.Mm, IndentDepth.FromEdge(hrc).Mm);
        var thick = Math.Max(LeastThickness.Mm, IndentDepth.LeastThickness(hrc).Mm);
        var box = r.Plan.Outline.Bounds;
        var step = Math.Max(box.Height / Across, box.Width / MostAlong);
        var rays = new RayHits(r.Plan.Outline.Segments);
        var hits = new RayHit[rays.MostHits];
        var found = new List<TestSpot>();
        for (var x = box.MinX + (0.5 * step); x < box.MaxX; x += step)
        {
            // inside between the first and second crossing, the third and fourth, ...
            var n = rays.Along(new Point(x, box.MinY - 1), new Point(0, 1), 1e-6, box.Height + 2, hits);
            for (var y = box.MinY + (0.5 * step); y < box.MaxY; y += step)
            {
                var below = 0;
                for (var i = 0; i < n; i++) below += hits[i].Distance < y - (box.MinY - 1) ? 1 : 0;
                if (below % 2 == 0) continue;
                var p = new Point(x, y);
                if (r.Holes.Any(h => h.At.To(p) < (0.5 * h.Diameter.Mm) + clear)) continue;
                var rim = Math.Min(Nearest.Distance(r.Plan.Outline, p), r.Holes.Select(h => h.At.To(p) - (0.5 * h.Diameter.Mm)).DefaultIfEmpty(double.PositiveInfinity).Min());
                if (rim < clear) continue;
                var at = ground?.At(p) ?? r.Plan.Stock.Thickness.Mm;
                if (at < thick || (ground is not null && !IsFlatAround(ground, p, clear))) continue;
                found.Add(new TestSpot(p, IsBlade(r, edge, p.X) ? "blade" : "handle", Length.OfMm(rim), Length.OfMm(at), IsHidden(r, p.X)));
            }
        }

        // of places with room enough the one nearest the middle of its part
        return [.. found.GroupBy(s => s.Where).Select(g =>
        {
            var most = g.Max(s => s.Clear.Mm);
            var roomy = g.Where(s => s.Clear.Mm >= Math.Min(0.8 * most, 3 * clear)).ToArray();
            var middle = 0.5 * (roomy.Min(s => s.At.X) + roomy.Max(s => s.At.X));
            return roomy.OrderBy(s => !s.IsHidden).ThenBy(s => Math.Abs(s.At.X - middle)).ThenByDescending(s => s.Clear.Mm).ThenBy(s => s.At.Y).First();
        }).OrderBy(s => s.At.X)];
    }

    private static bool IsFlatAround(SteelThickness ground, Point p, double clear)
    {
        if (Math.Abs(ground.At(p) - ground.Flat(p)) > 1e-6) return false;
        for (var i = 0; i < Around; i++)
        {
            var q = p + (Point.Direction(2 * Math.PI * i / Around) * clear);
            if (Math.Abs(ground.At(q) - ground.Flat(q)) > 1e-6) return false;
        }

        return true;
    }

    private static bool IsBlade(Results r, EdgeSpan? edge, double x) => edge is null ? !IsHandle(r, x) : x >= edge.Path.Bounds.MinX && x <= edge.Path.Bounds.MaxX;

    private static bool IsHandle(Results r, double x) => r.Plan.Grip is { } g && x >= Math.Min(g.From.X, g.To.X) && x <= Math.Max(g.From.X, g.To.X);

    private static bool IsHidden(Results r, double x)
        => (r.Plan.Scales is not null && IsHandle(r, x)) || r.Plan.AddedMasses.Any(m => m.Over is { } over && x > Math.Min(over.From.Mm, over.To.Mm) && x < Math.Max(over.From.Mm, over.To.Mm));
}
