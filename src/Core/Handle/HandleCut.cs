using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>The handle cut across at one station.</summary>
/// <param name="Station">Distance from the front end of the handle, along its axis.</param>
/// <param name="At">Middle of the steel there, plan's axes, mm.</param>
/// <param name="Height">Height of the handle there.</param>
/// <param name="Width">Width over all, from face to face.</param>
/// <param name="Tang">Thickness of the steel.</param>
/// <param name="Outline">The cut: across the handle along x, through its thickness along y, its middle at the origin, mm; upward on paper is the front face.</param>
public sealed record HandleCut(Length Station, Point At, Length Height, Length Width, Length Tang, Path Outline)
{
    /// <summary>Way round the handle there.</summary>
    public Length Girth => Length.OfMm(Outline.Length);

    /// <summary>Diameter of a round handle of the same girth.</summary>
    public Length Round => Length.OfMm(Outline.Length / Math.PI);
}

/// <summary>Cuts across the handle: with scales, with cord, or bare.</summary>
public static class HandleCuts
{
    /// <summary>Shares of the handle's length at which it is cut.</summary>
    public static ImmutableArray<double> Shares { get; } = [0.05, 0.275, 0.5, 0.725, 0.95];

    /// <summary>The cuts of a plan, front to rear; none when it is not known where the handle is.</summary>
    /// <param name="r">The plan worked up.</param>
    /// <param name="shape">Its scale; null without.</param>
    /// <param name="cord">Its cord; null without.</param>
    public static ImmutableArray<HandleCut> Of(Results r, ScaleShape? shape, CordWrap? cord)
    {
        if (Axis(r, shape) is not var (from, along, length)) return [];
        var loop = r.Piece.Outer;
        var rays = new RayHits(loop.Segments);
        var hits = new RayHit[rays.MostHits];
        var far = loop.Bounds.Width + loop.Bounds.Height;
        var tang = FaceThickness.Of(r.Plan);
        var cuts = ImmutableArray.CreateBuilder<HandleCut>();
        foreach (var share in Shares)
        {
            var at = from + (along * (share * length));
            if (Stretch(rays, hits, at, along.Left, far) is not var (low, high)) continue;
            var middle = at + (along.Left * (0.5 * (low + high)));
            var (h, t) = (high - low, tang.At(middle.X));
            var outline = shape is not null ? Scaled(shape, middle, h, t) : cord is not null ? Rounded(h + (2 * cord.Diameter.Mm), t + (2 * cord.Diameter.Mm), cord.Diameter.Mm) : Bare(r.Plan, h, t);
            cuts.Add(new HandleCut(Length.OfMm(share * length), middle, Length.OfMm(outline.Bounds.Width), Length.OfMm(outline.Bounds.Height), Length.OfMm(t), outline));
        }

        return cuts.ToImmutable();
    }

    /// <summary>Where the handle begins, which way it runs and how long it is, mm; null when not known.</summary>
    internal static (Point From, Point Along, double LengthMm)? Axis(Results r, ScaleShape? shape)
    {
        if (shape is not null)
        {
            var box = shape.Outline.Path.Bounds;
            if (r.Plan.Grip is { } g)
            {
                var u = (g.To - g.From).Unit;
                var places = shape.Outline.Path.Segments.SelectMany(s => new[] { s.Start, s.At(0.5) }).Select(p => (p - g.From).Dot(u)).ToArray();
                return (g.From + (u * places.Min()), u, places.Max() - places.Min());
            }

            var rearward = shape.Outline.Front.At(0.5).X < box.Centre.X ? 1 : -1;
            return (new Point(rearward > 0 ? box.MinX : box.MaxX, box.Centre.Y), new Point(rearward, 0), box.Width);
        }

        return r.Plan.Grip is { } grip ? (grip.From, (grip.To - grip.From).Unit, grip.From.To(grip.To)) : null;
    }

    /// <summary>The stretch of a loop under a line square to the way, nearest to a point, mm from it; null when there is none.</summary>
    internal static (double Low, double High)? Across(Path loop, Point at, Point along)
    {
        var rays = new RayHits(loop.Segments);
        return Stretch(rays, new RayHit[rays.MostHits], at, along.Left, loop.Bounds.Width + loop.Bounds.Height);
    }

    /// <summary>The same, for rays that are asked again and again.</summary>
    internal static (double Low, double High)? Stretch(RayHits rays, RayHit[] hits, Point at, Point across, double far)
    {
        var n = rays.Along(at, across, -far, far, hits);
        (double Low, double High)? best = null;
        for (var i = 0; i + 1 < n; i++)
        {
            if (hits[i].Side <= 0 || hits[i + 1].Side >= 0) continue;
            var (a, b) = (hits[i].Distance, hits[i + 1].Distance);
            if (best is not var (low, high) || Math.Abs(a + b) < Math.Abs(low + high)) best = (a, b);
        }

        return best;
    }

    private static Path Scaled(ScaleShape shape, Point middle, double h, double tang)
    {
        var thick = shape.Thickness.At(middle.X);
        var inner = (0.5 * tang) + shape.Plan.LinerThickness.Mm;
        return shape.Plan.Section switch
        {
            HandleSection.Oval => Bulged(h, inner + shape.SideMm, thick - shape.SideMm),
            HandleSection.Octagon => Chamfered(h, 2 * (inner + thick), shape.LegMm),
            _ => Rounded(h, 2 * (inner + thick), shape.LegMm),
        };
    }

    private static Path Bare(Plan plan, double h, double t)
    {
        var leg = Math.Min(plan.BrokenEdges?.Outline?.Mm ?? 0, 0.5 * t);
        return plan.BrokenEdges is { Rounded: true } ? Rounded(h, t, leg) : Chamfered(h, t, leg);
    }

    private static Path Bulged(double h, double side, double rise)
    {
        var a = 0.5 * h;
        if (rise < 1e-6) return Rounded(h, 2 * side, 0);
        var (u, v) = (new Point(a, 0), new Point(0, rise));
        return new Path(
            [
                new Line(new(a, -side), new(a, side)),
                Arc.Between(new(a, side), new(-a, side), new(0, side), u, v, 0, Math.PI),
                new Line(new(-a, side), new(-a, -side)),
                Arc.Between(new(-a, -side), new(a, -side), new(0, -side), u, v, Math.PI, Math.PI),
            ],
            closed: true);
    }

    private static Path Chamfered(double h, double w, double leg)
    {
        var (a, b) = (0.5 * h, 0.5 * w);
        return leg < 1e-6
            ? Path.Polygon(new(a, -b), new(a, b), new(-a, b), new(-a, -b))
            : Path.Polygon(new(a, -b + leg), new(a, b - leg), new(a - leg, b), new(-a + leg, b), new(-a, b - leg), new(-a, -b + leg), new(-a + leg, -b), new(a - leg, -b));
    }

    private static Path Rounded(double h, double w, double radius)
    {
        var (a, b) = (0.5 * h, 0.5 * w);
        var r = Math.Min(radius, Math.Min(a, b) - 1e-6);
        if (r < 1e-6) return Chamfered(h, w, 0);
        Arc Corner(double x, double y, double start) => Arc.OfCircle(new Point(x, y), r, start, Math.PI / 2);
        return new Path(
            [
                new Line(new(a, -b + r), new(a, b - r)), Corner(a - r, b - r, 0),
                new Line(new(a - r, b), new(-a + r, b)), Corner(-a + r, b - r, Math.PI / 2),
                new Line(new(-a, b - r), new(-a, -b + r)), Corner(-a + r, -b + r, Math.PI),
                new Line(new(-a + r, -b), new(a - r, -b)), Corner(a - r, -b + r, 1.5 * Math.PI),
            ],
            closed: true);
    }
}
