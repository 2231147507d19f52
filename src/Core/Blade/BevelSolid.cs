using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>The steel a bevel takes off the flat faces, exactly as its thickness law says: ∫ (T − t) over the piece with first and second moments about the origin, mm³..mm⁵.</summary>
/// <remarks>
/// t depends on the distance to the nearest point of the sharpened part, round fans beyond its ends and at its corners included, as far as the plunge line when there is one.
/// The plane is cut into the cells that belong to each spot of the sharpened part: dA = (1 − κ n) ds dn along its segments, dA = n dn dθ in the fans (parallel curves, do Carmo, Differential Geometry of
/// Curves and Surfaces, parallel curves; place in the book from memory). Along each ray the integral is exact; across the rays it is refined until the volume is good to about 1e-8 of T × area.
/// With no height ("full") the bevel runs from the edge to the first exit of the ray through the outline, to half of it when that is again through the sharpened part.
/// </remarks>
[Formula("Steel a bevel takes off, volume and moments, mm³..mm⁵", "do-carmo-1976", "Flat, hollow and convex bevels, straight, curved, cornered or double edges, with tapers, plunge line and holes; about 1e-7 of the piece")]
public static class BevelSolid
{
    private const double Tolerance = 1e-9;
    private const double CoarseTolerance = 1e-6;
    private const double Corner = 1e-6;

    /// <summary>Whether a bevel's mass is that of a flat one because the plan does not say the wheel it is hollowed on.</summary>
    public static bool IsFlatStandIn(Bevel bevel) => bevel is { Grind: Grind.Hollow, Wheel: null };

    /// <summary>Moments of what is taken off, one for each thickness law; all have a height of their own, or none has.</summary>
    /// <param name="piece">The flat piece, holes included.</param>
    /// <param name="edge">The sharpened part.</param>
    /// <param name="plunge">Where the bevel ends; null when it runs out.</param>
    /// <param name="profiles">Thickness laws.</param>
    public static ImmutableArray<Moments> Removed(Region piece, EdgeSpan edge, PlungeLine? plunge, params ImmutableArray<GrindProfile> profiles)
        => Removed(piece, edge, plunge, profiles, out _);

    /// <summary>The same, and how many rays it took.</summary>
    /// <param name="piece">The flat piece, holes included.</param>
    /// <param name="edge">The sharpened part.</param>
    /// <param name="plunge">Where the bevel ends; null when it runs out.</param>
    /// <param name="profiles">Thickness laws.</param>
    /// <param name="rays">Number of base points looked at.</param>
    public static ImmutableArray<Moments> Removed(Region piece, EdgeSpan edge, PlungeLine? plunge, ImmutableArray<GrindProfile> profiles, out int rays)
        => Removed(piece, edge, plunge, profiles, Tolerance, out rays);

    /// <summary>For the differences between laws that are nearly alike: the rays are the same for all, so that what is not followed to the last falls out; about 1e-5 of the difference.</summary>
    /// <param name="piece">The flat piece, holes included.</param>
    /// <param name="edge">The sharpened part.</param>
    /// <param name="plunge">Where the bevel ends; null when it runs out.</param>
    /// <param name="profiles">Thickness laws.</param>
    internal static ImmutableArray<Moments> Differing(Region piece, EdgeSpan edge, PlungeLine? plunge, ImmutableArray<GrindProfile> profiles)
        => Removed(piece, edge, plunge, profiles, CoarseTolerance, out _);

    private static ImmutableArray<Moments> Removed(Region piece, EdgeSpan edge, PlungeLine? plunge, ImmutableArray<GrindProfile> profiles, double tolerance, out int rays)
    {
        var box = piece.Outer.Bounds;
        var ray = new BevelRay(piece, edge, plunge, [.. profiles], box.Centre);
        var volume = tolerance * profiles[0].StockMm * Moments.Of(piece).AreaMm2;
        var size = 0.5 * Math.Max(box.Width, box.Height);
        var scale = Enumerable.Repeat(new[] { volume, volume * size, volume * size, volume * size * size, volume * size * size, volume * size * size }, profiles.Length).SelectMany(s => s).ToArray();
        var marks = Marks(piece, edge.Path, ray);
        var spots = marks.Spots.ToLookup(m => m.Segment, m => m.T);
        var panels = new SplitPanels(scale);
        for (var i = 0; i < edge.Path.Segments.Length; i++) AlongSegment(panels, edge.Path.Segments[i], ray, spots[i]);
        foreach (var fan in Fans(piece.Outer, edge)) AlongFan(panels, fan, ray, marks.Points);
        rays = panels.Samples;
        var sums = panels.Sums;
        var removed = ImmutableArray.CreateBuilder<Moments>(profiles.Length);
        for (var k = 0; k < sums.Length; k += 6) removed.Add(new Moments(sums[k], sums[k + 1], sums[k + 2], sums[k + 3], sums[k + 4], sums[k + 5]).Shifted(box.Centre));
        return removed.MoveToImmutable();
    }

    private static void AlongSegment(SplitPanels panels, Segment s, BevelRay ray, IEnumerable<double> marks)
    {
        var across = s is Line ? s.Tangent(0).Left * ray.MostReach : default;
        ray.StayWithin(s is Line ? Box.Around(s.Start + across, s.Start - across, s.End + across, s.End - across) : s.Bounds.Grown(ray.MostReach));
        AddBetween(panels, Sample, 0, 1, s.Length / Math.Min(ray.MostReach, s.Length), marks);

        int Sample(double t, Span<double> values)
        {
            values.Clear();
            var p = s.At(t);
            var d = s.Derivative(t);
            var speed = d.Length;
            if (speed == 0) return 0;
            var left = d.Left * (1 / speed);
            var bend = d.Cross(s.SecondDerivative(t)) / (speed * speed);
            var story = ray.Add(p, left, speed, -bend, bend / speed, startsInSteel: true, values);
            return ray.IsFullHeight ? story : (story * 1009) + ray.Add(p, -left, speed, bend, -bend / speed, startsInSteel: false, values);
        }
    }

    private static void AlongFan(SplitPanels panels, Fan fan, BevelRay ray, List<Point> marks)
    {
        var (corner, a, b, seam, startsInSteel) = fan;

        // out to where the tangents of the arc meet, a narrow fan in one piece
        var (middle, half) = (0.5 * (a + b), 0.5 * (b - a));
        var box = half > 0.8 ? Box.Around(corner).Grown(ray.MostReach) : Box.Around(corner, Out(a), Out(middle - (0.5 * half)), Out(middle + (0.5 * half)), Out(b));
        ray.StayWithin(box);
        var directions = marks.Where(q => box.Holds(q) && q.To(corner) < ray.MostReach && q.To(corner) > Corner).Select(q => Math.Atan2(q.Y - corner.Y, q.X - corner.X));
        AddBetween(panels, Sample, a, b, (b - a) / (Math.PI / 4), directions.Prepend(seam).Select(angle => a + Turned(angle - a)));

        Point Out(double angle) => corner + (Point.Direction(angle) * (ray.MostReach / Math.Cos(half)));

        int Sample(double angle, Span<double> values)
        {
            values.Clear();
            return ray.Add(corner, Point.Direction(angle), 0, 1, 0, startsInSteel, values);
        }
    }

    // panels from a to b with ends at the marks and none longer than its share
    private static void AddBetween(SplitPanels panels, SplitPanels.Sample sample, double a, double b, double shares, IEnumerable<double> marks)
    {
        var ends = marks.Where(m => m > a && m < b).Append(b).Order().ToArray();
        var from = a;
        foreach (var to in ends)
        {
            if (to - from < 1e-9 * (b - a)) continue;
            var n = Math.Clamp((int)Math.Ceiling((to - from) / (b - a) * shares), 1, 1000);
            for (var i = 0; i < n; i++) panels.Add(sample, from + ((to - from) * i / n), from + ((to - from) * (i + 1) / n));
            from = to;
        }
    }

    // places where something small might hide between the rays: middles of holes, corners, ends of the plunge line
    private static (List<Point> Points, List<PathSpot> Spots) Marks(Region piece, Path edge, BevelRay ray)
    {
        var reach = ray.MostReach;
        var box = edge.Bounds.Grown(reach);
        var points = new List<Point>(ray.PlungeEnds().Concat(piece.Holes.Select(h => h.Bounds.Centre)).Where(box.Holds));
        foreach (var loop in piece.Loops)
        {
            for (var i = 0; i < loop.Segments.Length; i++)
            {
                var s = loop.Segments[i];
                if (box.Holds(s.End) && Math.Abs(s.Tangent(1).Cross(loop.Segments[(i + 1) % loop.Segments.Length].Tangent(0))) > 0.01) points.Add(s.End);
            }
        }

        var spots = new List<PathSpot>();
        var joints = edge.Segments.Select(s => s.End).ToHashSet();
        foreach (var q in points)
        {
            if (joints.Contains(q)) continue;
            var (spot, _, distance) = Nearest.On(edge, q, reach);
            if (distance < reach && distance > Corner && spot.T is > 0 and < 1) spots.Add(spot);
        }

        // beside an outward corner the rays of the two sides meet on its bisector before the bevel ends, over a stretch too short to be seen from afar
        for (var i = 0; i + 1 < edge.Segments.Length; i++)
        {
            var (s, next) = (edge.Segments[i], edge.Segments[i + 1]);
            var (t, u) = (s.Tangent(1), next.Tangent(0));
            var stretch = reach * Math.Tan(0.5 * Math.Atan2(t.Cross(u), t.Dot(u)));
            if (stretch < 1e-6) continue;
            spots.Add(new PathSpot(i, 1 - (stretch / s.Length)));
            spots.Add(new PathSpot(i + 1, stretch / next.Length));
        }

        return (points, spots);
    }

    private static IEnumerable<Fan> Fans(Path outline, EdgeSpan edge)
    {
        var segments = edge.Path.Segments;
        for (var i = 1; i <= segments.Length; i++)
        {
            if (i == segments.Length && !edge.IsWholeLoop) break;
            var (t, next) = (segments[i - 1].Tangent(1), segments[i % segments.Length].Tangent(0));
            var turn = Math.Atan2(t.Cross(next), t.Dot(next));
            if (Math.Abs(turn) < Corner) continue;
            var a = Math.Atan2(t.Y, t.X);
            yield return turn < 0
                ? new Fan(segments[i - 1].End, a + turn + (Math.PI / 2), a + (Math.PI / 2), a, true)
                : new Fan(segments[i - 1].End, a - (Math.PI / 2), a + turn - (Math.PI / 2), a, false);
        }

        if (edge.IsWholeLoop) yield break;
        var n = outline.Segments.Length;
        var first = segments[0].Tangent(0);
        var start = Math.Atan2(first.Y, first.X);
        var before = edge.From.T > 0 ? -outline.Segments[edge.From.Segment].Tangent(edge.From.T) : -outline.Segments[(edge.From.Segment + n - 1) % n].Tangent(1);
        yield return new Fan(edge.Path.Start, start + (Math.PI / 2), start + (3 * Math.PI / 2), Math.Atan2(before.Y, before.X), null);

        var last = segments[^1].Tangent(1);
        var end = Math.Atan2(last.Y, last.X);
        var after = outline.Segments[edge.To.Segment].Tangent(edge.To.T);
        yield return new Fan(edge.Path.End, end - (Math.PI / 2), end + (Math.PI / 2), Math.Atan2(after.Y, after.X), null);
    }

    // an angle brought into 0 up to a full turn
    private static double Turned(double angle) => angle - (Math.Floor(angle / (2 * Math.PI)) * 2 * Math.PI);

    // a corner, first and last direction, the direction in which the next side of the outline leaves, and whether its rays start in steel, when that is known
    private readonly record struct Fan(Point Corner, double From, double To, double Seam, bool? StartsInSteel);
}
