using CsCheck;
using Tangwright.Core;
using Tangwright.Foundation;
using Path = Tangwright.Foundation.Path;

namespace Tangwright.Tests;

public class GeometryLaws
{
    private static readonly Gen<Point> Step = Gen.Select(Gen.Double[-200, 200], Gen.Double[-200, 200], (x, y) => new Point(x, y));

    // a star-shaped loop of lines, arcs and Béziers round the origin, which cannot cross itself
    private static readonly Gen<Path> Loop = Gen.Select(Gen.Double[20, 60].Array[5, 9], Gen.Int[0, 1000], (radii, kinds) =>
    {
        var n = radii.Length;
        Point Corner(int i) => Point.Direction(2 * Math.PI * (i % n) / n) * radii[i % n];
        return new Path(
            [
                .. Enumerable.Range(0, n).Select<int, Segment>(i => ((kinds / (1 << i)) % 3) switch
                {
                    0 => new Line(Corner(i), Corner(i + 1)),
                    1 => Arc.Through(Corner(i), Corner(i + 1), 70, large: false, counterClockwise: true),
                    _ => new Bezier(Corner(i), Corner(i).Toward(Corner(i + 1), 0.3) * 1.1, Corner(i).Toward(Corner(i + 1), 0.7) * 0.9, Corner(i + 1)),
                }),
            ],
            closed: true);
    });

    private static bool Close(double a, double b, double size) => Math.Abs(a - b) <= 1e-11 * size;

    private static bool Same(Moments a, Moments b, double reach)
    {
        var area = Math.Abs(a.AreaMm2);
        return Close(a.AreaMm2, b.AreaMm2, area) && Close(a.SxMm3, b.SxMm3, area * reach) && Close(a.SyMm3, b.SyMm3, area * reach)
            && Close(a.XxMm4, b.XxMm4, area * reach * reach) && Close(a.XyMm4, b.XyMm4, area * reach * reach) && Close(a.YyMm4, b.YyMm4, area * reach * reach);
    }

    [Fact]
    public void Scaling_unevenly_scales_each_moment_by_its_own_power() => Gen.Select(Loop, Gen.Double[0.3, 3], Gen.Double[0.3, 3]).Sample(
        (loop, x, y) =>
        {
            var (a, b) = (Moments.Of(loop), Moments.Of(loop.Transformed(Transform.Scale(x, y))));
            return Same(new Moments(a.AreaMm2 * x * y, a.SxMm3 * x * x * y, a.SyMm3 * x * y * y, a.XxMm4 * x * x * x * y, a.XyMm4 * x * x * y * y, a.YyMm4 * x * y * y * y), b, 300);
        },
        iter: 300,
        seed: "0000000000000");

    [Fact]
    public void A_ray_leaves_and_enters_by_turns() => Gen.Select(Loop, Step, Gen.Double[0, 6.3]).Sample(
        (loop, p, angle) =>
        {
            // through a joint the count means nothing: whoever asks must look at the steel itself
            if (loop.Segments.Any(s => Math.Abs(Point.Direction(angle).Cross(s.Start - (p * 0.3))) < 1e-6)) return true;
            var rays = new RayHits(loop.Segments);
            var hits = new RayHit[rays.MostHits];
            var n = rays.Along(p * 0.3, Point.Direction(angle), -1000, 1000, hits);
            var steel = 0;
            foreach (var hit in hits.AsSpan(0, n))
            {
                steel += hit.Side;
                if (steel is not (0 or 1)) return false;
                if (rays[hit.Segment].At(hit.T).To((p * 0.3) + (Point.Direction(angle) * hit.Distance)) > 1e-8) return false;
            }

            return steel == 0;
        },
        iter: 1000,
        seed: "0000000000000");

    [Fact]
    public void Steel_found_by_rays_is_steel_found_by_winding() => Gen.Select(Loop, Step).Sample(
        (loop, step) =>
        {
            var p = step * 0.3;
            if (loop.Segments.Any(s => Math.Abs(Point.Direction(0.3).Cross(s.Start - p)) < 1e-6)) return true;
            var rays = new RayHits(loop.Segments);
            var hits = new RayHit[rays.MostHits];
            var n = rays.Along(p, Point.Direction(0.3), 0, 1000, hits);
            return Inside.Of(loop, p) == (n % 2 == 1);
        },
        iter: 1000,
        seed: "0000000000000");

    [Fact]
    public void Rays_that_stay_within_a_box_meet_the_same_when_only_the_box_is_looked_at() => Gen.Select(Loop, Step, Gen.Double[0, 6.3], Gen.Double[1, 60]).Sample(
        (loop, step, angle, far) =>
        {
            var (p, u) = (step * 0.3, Point.Direction(angle));
            var rays = new RayHits(loop.Segments);
            var (all, near) = (new RayHit[rays.MostHits], new RayHit[rays.MostHits]);
            var n = rays.Along(p, u, 0, far, all);
            return n == rays.Within(Box.Around(p, p + (u * far)).Grown(1e-6)).Along(p, u, 0, far, near) && all.AsSpan(0, n).SequenceEqual(near.AsSpan(0, n));
        },
        iter: 1000,
        seed: "0000000000000");

    [Fact]
    public void What_a_bevel_takes_moves_and_turns_with_the_piece() => Gen.Select(Loop, Step, Gen.Double[-3, 3], Gen.Double[3, 18]).Sample(
        (loop, by, angle, h) =>
        {
            var move = Transform.Turn(angle).Then(Transform.Shift(by));
            Moments Taken(Path outline)
            {
                var piece = new Region(outline, []);
                return BevelSolid.Removed(piece, EdgeSpan.Of(piece.Outer, outline.Segments[0].Start, outline.Segments[2].End), null, new GrindProfile(5, 0.5, h))[0];
            }

            var (a, b) = (Taken(loop), Taken(loop.Transformed(move)));
            var there = move.Map(a.Centroid);
            var part = 5 * Moments.Of(loop).AreaMm2;
            return Math.Abs(a.AreaMm2 - b.AreaMm2) < 1e-6 * part && Math.Abs((there - b.Centroid).X * a.AreaMm2) < 1e-5 * part * 60 && Math.Abs((there - b.Centroid).Y * a.AreaMm2) < 1e-5 * part * 60;
        },
        iter: 60,
        seed: "0000000000000");

    [Fact]
    public void Two_bevels_of_one_edge_take_as_much_as_told_apart() => Gen.Select(Loop, Gen.Double[3, 18]).Sample(
        (loop, h) =>
        {
            // the flat law is linear in T − te, so ratios of what is taken are known
            var piece = new Region(loop, []);
            var edge = EdgeSpan.Of(piece.Outer, loop.Segments[0].Start, loop.Segments[2].End);
            var both = BevelSolid.Removed(piece, edge, null, new GrindProfile(5, 0.5, h), new GrindProfile(5, 2, h));
            return Math.Abs((both[0].AreaMm2 / 4.5) - (both[1].AreaMm2 / 3)) < 1e-9 * both[0].AreaMm2;
        },
        iter: 30,
        seed: "0000000000000");
}
