using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Steel taken off by breaking the sharp edges of holes and outline on both faces: volume and moments about the origin, mm³..mm⁵.</summary>
/// <remarks>
/// At distance d from the edge a face loses c − d (45° chamfer of leg c) or r − √(r² − (r − d)²) (round of radius r). A chamfered rim of radius R so loses π c² (R + c/3) a face, exactly.
/// Along the outline the strip is ∫∫ z(d) (1 − κ d) dd ds; at an outward corner of turn θ the two strips overlap by 2 tan(θ/2) d, at an inward one they gape by θ d (Steiner's formula for parallel bodies,
/// Santaló, Integral Geometry and Geometric Probability; place in the book from memory). Exact while the leg is smaller than the sides and radii it runs along; the corners' share is counted at the corner itself.
/// The face is taken as that of the full stock, also where a bevel has thinned it. Legs beyond half the thickness count as half.
/// </remarks>
[Formula("Steel taken off by breaking edges, volume and moments, mm³..mm⁵", "santalo-1976", "Legs smaller than the sides and radii they run along, up to half the thickness")]
public static class BrokenEdgeSteel
{
    // a needle point: beyond this the overlap is no longer that of two long sides
    private const double SharpestCorner = 10;

    /// <summary>What is taken off; nothing when the plan does not say.</summary>
    public static Moments Of(Plan plan, ImmutableArray<PlacedHole> holes, Region piece)
    {
        if (plan.BrokenEdges is not { } broken) return default;
        var sum = default(Moments);
        var half = 0.5 * plan.Stock.Thickness.Mm;
        if (broken.Rims is { } rims)
        {
            var cut = new Cut(Math.Min(rims.Mm, half), broken.Rounded);
            foreach (var hole in holes) sum += OfRim(hole, cut);
        }

        if (broken.Outline is { } leg)
        {
            var cut = new Cut(Math.Min(leg.Mm, half), broken.Rounded);
            var edge = EdgeSpan.Of(plan, piece);
            if (edge is null) sum += OfSide(piece.Outer, cut);
            else if (!edge.IsWholeLoop) sum += OfSide(piece.Outer.Between(edge.To, edge.From), cut);
        }

        return sum * 2;
    }

    /// <summary>What one face loses along an open run of the outline that has the solid to its left: volume and moments about the origin, mm³..mm⁵.</summary>
    /// <param name="side">The run.</param>
    /// <param name="legMm">Leg of the chamfer or radius of the round, mm.</param>
    /// <param name="rounded">Rounded instead of chamfered.</param>
    internal static Moments OneFace(Path side, double legMm, bool rounded) => OfSide(side, new Cut(legMm, rounded));

    private static Moments OfRim(PlacedHole hole, Cut cut)
    {
        var r = 0.5 * hole.Diameter.Mm;
        var volume = 2 * Math.PI * ((r * cut.Z0) + cut.Z1);
        var polar = 2 * Math.PI * ((r * r * r * cut.Z0) + (3 * r * r * cut.Z1) + (3 * r * cut.Z2) + cut.Z3);
        return new Moments(volume, 0, 0, polar / 2, 0, polar / 2).Shifted(hole.At);
    }

    private static Moments OfSide(Path side, Cut cut)
    {
        var sum = default(Moments);
        var segments = side.Segments;
        for (var i = 0; i < segments.Length; i++)
        {
            sum += OfSegment(segments[i], cut);
            if (i + 1 == segments.Length && !side.Closed) break;
            var (a, b) = (segments[i].Tangent(1), segments[(i + 1) % segments.Length].Tangent(0));
            var turn = Math.Atan2(a.Cross(b), a.Dot(b));
            var volume = cut.Z1 * (turn > 0 ? -2 * Math.Min(SharpestCorner, Math.Tan(turn / 2)) : -turn);
            sum += new Moments(volume, 0, 0, 0, 0, 0).Shifted(segments[i].End);
        }

        return sum;
    }

    private static Moments OfSegment(Segment s, Cut cut)
    {
        var panels = s is Arc a ? Math.Max(1, (int)Math.Ceiling(Math.Abs(a.Sweep) / (Math.PI / 2))) : 1;
        var sum = default(Moments);
        for (var k = 0; k < panels * 16; k++)
        {
            var t = ((k / 16) + 0.5 + (0.5 * Gauss.Nodes16[k % 16])) / panels;
            var d = s.Derivative(t);
            var speed = d.Length;
            if (speed == 0) continue;
            var (p, n) = (s.At(t), d.Left * (1 / speed));
            var bend = d.Cross(s.SecondDerivative(t)) / (speed * speed);
            var w = 0.5 * Gauss.Weights16[k % 16] / panels;
            var (z0, z1, z2) = ((cut.Z0 * speed) - (cut.Z1 * bend), (cut.Z1 * speed) - (cut.Z2 * bend), (cut.Z2 * speed) - (cut.Z3 * bend));
            sum += new Moments(
                z0,
                (p.X * z0) + (n.X * z1),
                (p.Y * z0) + (n.Y * z1),
                (p.X * p.X * z0) + (2 * p.X * n.X * z1) + (n.X * n.X * z2),
                (p.X * p.Y * z0) + (((p.X * n.Y) + (p.Y * n.X)) * z1) + (n.X * n.Y * z2),
                (p.Y * p.Y * z0) + (2 * p.Y * n.Y * z1) + (n.Y * n.Y * z2)) * w;
        }

        return sum;
    }

    // ∫ z(d) dᵏ dd of one face's cut
    private readonly record struct Cut(double Z0, double Z1, double Z2, double Z3)
    {
        public Cut(double leg, bool rounded)
            : this(
                leg * leg * (rounded ? 1 - (Math.PI / 4) : 1.0 / 2),
                leg * leg * leg * (rounded ? (5.0 / 6) - (Math.PI / 4) : 1.0 / 6),
                leg * leg * leg * leg * (rounded ? 1 - (5 * Math.PI / 16) : 1.0 / 12),
                leg * leg * leg * leg * leg * (rounded ? (83.0 / 60) - (7 * Math.PI / 16) : 1.0 / 20))
        {
        }
    }
}
