using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>One scale as a solid: its outline, its thickness along the handle and how its outer face is shaped across.</summary>
/// <remarks>
/// Flat scales lose at their long edges what a round of the radius takes, eight-sided ones what a chamfer takes (see <see cref="BrokenEdgeSteel"/>). Across a bulged scale the face rises from the thickness at the edges
/// of the tang by a half ellipse: the area under it is π/4 of the rectangle, so its volume and first moments are those of a flat scale of side + π/4 (t − side), exactly, when cut along y.
/// </remarks>
public sealed class ScaleShape
{
    private readonly RayHits _rays;
    private readonly RayHit[] _hits;

    private ScaleShape(ScalesPlan plan, ScaleOutline outline, FaceThickness thickness, double tangMm)
    {
        (Plan, Outline, Thickness) = (plan, outline, thickness);
        SideMm = Math.Min(plan.Side?.Mm ?? ScalesPlan.UsualSideMm, thickness.LeastMm);
        _rays = new RayHits(outline.Path.Segments);
        _hits = new RayHit[_rays.MostHits];
        var height = LeastHeightMm();
        LegMm = plan.Section switch
        {
            HandleSection.Slab => Math.Min(Math.Min(plan.Round?.Mm ?? ScalesPlan.UsualRoundMm, thickness.LeastMm), 0.5 * height),
            HandleSection.Octagon => Math.Min(OctagonLeg.FromSquareMm(Math.Min(height, tangMm + (2 * (plan.LinerThickness.Mm + thickness.LeastMm)))), thickness.LeastMm),
            _ => 0,
        };
    }

    /// <summary>As planned.</summary>
    public ScalesPlan Plan { get; }

    /// <summary>Its outline.</summary>
    public ScaleOutline Outline { get; }

    /// <summary>Thickness along the handle at its thickest across.</summary>
    public FaceThickness Thickness { get; }

    /// <summary>Bulged scales: thickness at the edges of the tang, mm.</summary>
    public double SideMm { get; }

    /// <summary>Flat scales: radius of the long edges; eight-sided ones: leg of the chamfer, mm.</summary>
    public double LegMm { get; }

    /// <summary>The scale of a plan; null when it has none that can be drawn.</summary>
    public static ScaleShape? Of(Plan plan)
        => ScaleOutline.Of(plan) is { } outline ? new ScaleShape(plan.Scales!, outline, FaceThickness.Of(plan.Scales!), FaceThickness.Of(plan).LeastMm) : null;

    /// <summary>Thickness of the scale at a point of its face, mm; 0 outside.</summary>
    public double At(Point p)
    {
        if (!Inside.Of(Outline.Path, p)) return 0;
        var t = Thickness.At(p.X);
        switch (Plan.Section)
        {
            case HandleSection.Oval:
                if (Chord(p) is not var (low, high)) return t;
                var part = (2 * (p.Y - low) / (high - low)) - 1;
                return SideMm + ((t - SideMm) * Math.Sqrt(Math.Max(0, 1 - (part * part))));
            case HandleSection.Octagon:
                return t - Math.Max(0, LegMm - Off(p));
            default:
                var in0 = Math.Max(0, LegMm - Off(p));
                return t - (LegMm - Math.Sqrt((LegMm * LegMm) - (in0 * in0)));
        }
    }

    /// <summary>Volume and moments of one scale about the origin, mm³..mm⁵, holes through it left out.</summary>
    /// <param name="holes">Holes through it: centre and diameter.</param>
    public Moments Solid(IEnumerable<(Point At, Length Diameter)> holes)
    {
        var region = new Region(Outline.Path, [.. holes.Select(h => Path.Circle(h.At, h.Diameter.Mm / 2))]);
        if (Plan.Section == HandleSection.Oval) return TaperedPlate.Of(region, Thickness.Mapped(t => SideMm + (Math.PI / 4 * (t - SideMm))));
        var flat = TaperedPlate.Of(region, Thickness);
        return LegMm > 0 ? Outline.Sides.Aggregate(flat, (sum, side) => sum - BrokenEdgeSteel.OneFace(side, LegMm, Plan.Section == HandleSection.Slab)) : flat;
    }

    // the stretch of the outline above and below a point
    private (double Low, double High)? Chord(Point p)
    {
        var box = Outline.Path.Bounds;
        var n = _rays.Along(p, new Point(0, 1), -box.Height, box.Height, _hits);
        double? low = null, high = null;
        for (var i = 0; i < n; i++)
        {
            if (_hits[i].Distance <= 0) low = p.Y + _hits[i].Distance;
            else high ??= p.Y + _hits[i].Distance;
        }

        return low is { } a && high is { } b ? (a, b) : null;
    }

    private double Off(Point p) => Outline.Sides.Min(side => Nearest.Distance(side, p));

    // least height between a tenth and nine tenths of its length
    private double LeastHeightMm()
    {
        var box = Outline.Path.Bounds;
        var least = box.Height;
        for (var i = 1; i < 10; i++)
        {
            var x = box.MinX + (0.1 * i * box.Width);
            if (Chord(new Point(x, Middle(x))) is var (low, high)) least = Math.Min(least, high - low);
        }

        return least;
    }

    private double Middle(double x)
    {
        var box = Outline.Path.Bounds;
        var n = _rays.Along(new Point(x, box.MinY), new Point(0, 1), -1, box.Height + 1, _hits);
        return n >= 2 ? box.MinY + (0.5 * (_hits[0].Distance + _hits[1].Distance)) : box.Centre.Y;
    }
}
