using CsCheck;
using Tangwright.Foundation;
using Path = Tangwright.Foundation.Path;

namespace Tangwright.Tests;

/// <summary>The largest ball that touches a path at a point, against a plain search: the ball is grown by halving as long as no point of the path is nearer to its centre.</summary>
public class RollingBallLaws
{
    private const double Most = 90;

    private static readonly Gen<Point[]> Corners = Gen.Double[20, 60].Array[5, 40].Select(radii => radii.Select((r, i) => Point.Direction(2 * Math.PI * i / radii.Length) * r).ToArray());

    private static readonly Gen<Path> Polygon = Corners.Select(c => Path.Polygon(c));

    // straight sides, arcs and Béziers by turns
    private static readonly Gen<Path> Mixed = Gen.Select(Corners, Gen.Int[0, 1 << 20]).Select((c, kinds) => new Path(
        [
            .. Enumerable.Range(0, c.Length).Select<int, Segment>(i => (c[i], c[(i + 1) % c.Length], (kinds / (1 << (i % 18))) % 3) switch
            {
                (var a, var b, 0) => new Line(a, b),
                (var a, var b, 1) => Arc.Through(a, b, 70, large: false, counterClockwise: true),
                var (a, b, _) => new Bezier(a, a.Toward(b, 0.3) * 1.1, a.Toward(b, 0.7) * 0.9, b),
            }),
        ],
        closed: true));

    private static double Grown(Path path, Point p, Point u, double slack)
    {
        var (least, most) = (0.0, Most);
        if (IsClear(Most)) return Most;
        for (var k = 0; k < 60; k++)
        {
            var n = 0.5 * (least + most);
            if (IsClear(n)) least = n;
            else most = n;
        }

        return least;

        bool IsClear(double n) => Nearest.Distance(path, p + (u * n)) >= n - slack;
    }

    // deep: how far into the path a ball may be let pass, as a share of its size
    private static bool Agrees(Path path, Point p, Point u, double curvature, double slack, double tolerance, double deep = 0)
    {
        var (found, grown) = (new RollingBall(path, Most).Reach(p, u, Most, curvature), Grown(path, p, u, slack));
        if (Math.Abs(found - grown) <= tolerance * (1 + grown)) return true;
        var intrudes = found - Nearest.Distance(path, p + (u * found));
        return found > grown && intrudes <= deep * found ? true : throw new InvalidOperationException($"at {p} towards {u}: {found:R}, by search {grown:R}, {intrudes} deep, curvature {curvature}");
    }

    [Fact]
    public void Beside_straight_sides_it_is_the_ball_a_search_finds() => Gen.Select(Polygon, Gen.Double[0.001, 0.999], Gen.Int[0, 1000], Gen.Bool).Sample(
        (path, t, at, left) =>
        {
            var s = path.Segments[at % path.Segments.Length];
            var side = s.Tangent(t).Left;
            return Agrees(path, s.At(t), left ? side : -side, 0, 1e-11, 1e-7);
        },
        iter: 2000,
        seed: "0000000000000");

    [Fact]
    public void In_the_fan_of_a_corner_too() => Gen.Select(Polygon, Gen.Double[0.01, 0.99], Gen.Int[0, 1000]).Sample(
        (path, share, at) =>
        {
            var n = path.Segments.Length;
            var (t, next) = (path.Segments[at % n].Tangent(1), path.Segments[(at + 1) % n].Tangent(0));
            var turn = Math.Atan2(t.Cross(next), t.Dot(next));
            var from = Math.Atan2(t.Y, t.X) - (Math.Sign(turn) * Math.PI / 2);
            return Agrees(path, path.Segments[at % n].End, Point.Direction(from + (share * turn)), 0, 1e-11, 1e-7);
        },
        iter: 2000,
        seed: "0000000000000");

    // where the ball just fits the bend it lies in, a search feels the bend late; a ball clear of the curves' sample points may lie a hair in them
    [Fact]
    public void Among_arcs_and_curves_too() => Gen.Select(Mixed, Gen.Double[0.001, 0.999], Gen.Int[0, 1000], Gen.Bool).Sample(
        (path, t, at, left) =>
        {
            var s = path.Segments[at % path.Segments.Length];
            var side = s.Tangent(t).Left;
            return Agrees(path, s.At(t), left ? side : -side, (left ? 1 : -1) * s.Curvature(t), 1e-10, 1e-3, deep: 1e-4);
        },
        iter: 2000,
        seed: "0000000000000");
}
