using System.Collections.Immutable;
using CsCheck;
using Tangwright.Foundation;
using Path = Tangwright.Foundation.Path;

namespace Tangwright.Tests;

/// <summary>The search on true curves against a naive twin on fine chords.</summary>
public class CrossingsLaws
{
    private static readonly Gen<Point> AnyPoint = Gen.Int[-2000, 2000].Select(Gen.Int[-2000, 2000], (x, y) => new Point(x / 97.0, y / 97.0));

    private static readonly Gen<Segment> AnySegment = Gen.OneOf(
        AnyPoint.Select(AnyPoint, (a, b) => (Segment)new Line(a, b)),
        AnyPoint.Select(AnyPoint, AnyPoint, AnyPoint, (a, b, c, d) => (Segment)new Bezier(a, b, c, d)),
        AnyPoint.Select(Gen.Double[1, 15], Gen.Double[0, 6], Gen.Double[-6, 6], (c, r, s, w) => (Segment)Arc.OfCircle(c, r, s, Math.Abs(w) < 0.1 ? 1 : w)),
        AnyPoint.Select(Gen.Double[2, 15], Gen.Double[2, 9], Gen.Double[-6, 6], (c, u, v, w) => (Segment)Arc.OfEllipse(c, new Point(u, 1), new Point(-1, v), 0.4, Math.Abs(w) < 0.1 ? 1 : w)));

    private static int ChordCrossings(Segment a, Segment b, int n, out bool doubtful)
    {
        doubtful = false;
        var spots = new List<Point>();
        var (pa, pb) = (Points(a, n), Points(b, n));
        for (var i = 0; i < n; i++)
        {
            for (var j = 0; j < n; j++)
            {
                var (da, db) = (pa[i + 1] - pa[i], pb[j + 1] - pb[j]);
                var gap = pb[j] - pa[i];
                var det = da.Cross(db);
                if (Math.Abs(det) < 1e-12) continue;
                var (t, u) = (gap.Cross(db) / det, gap.Cross(da) / det);
                if (t is < -0.5 or > 1.5 || u is < -0.5 or > 1.5) continue;

                // grazing, or at an open end: the chords may be wrong there
                if (Math.Abs(det) < 0.05 * da.Length * db.Length) doubtful = true;
                if ((i == 0 && t < 0.5) || (i == n - 1 && t > 0.5) || (j == 0 && u < 0.5) || (j == n - 1 && u > 0.5)) doubtful = true;
                if (Math.Min(Math.Abs(t), Math.Abs(1 - t)) < 1e-9 || Math.Min(Math.Abs(u), Math.Abs(1 - u)) < 1e-9) doubtful = true;
                if (t is < 0 or >= 1 || u is < 0 or >= 1) continue;
                var spot = pa[i].Toward(pa[i + 1], t);
                if (spots.Any(s => s.To(spot) < 0.05)) doubtful = true; // twice through one point counts once
                spots.Add(spot);
            }
        }

        return spots.Count;
    }

    private static Point[] Points(Segment s, int n) => [.. Enumerable.Range(0, n + 1).Select(k => s.At((double)k / n))];

    [Fact]
    public void As_many_as_the_chords_show()
        => AnySegment.Select(AnySegment).Sample(
            (a, b) =>
            {
                var twin = ChordCrossings(a, b, 150, out var doubtful);
                var found = Crossings.Between(new Path([a], false), new Path([b], false));
                if (a.Bounds.Width + a.Bounds.Height < 0.5 || b.Bounds.Width + b.Bounds.Height < 0.5) return true;
                if (found.Any(m => a.At(m.First.T).To(b.At(m.Second.T)) > 1e-9)) return false;
                return doubtful || found.Any(m => m.Kind != MeetingKind.Crossing) || found.Length == twin;
            },
            iter: 1500);

    [Fact]
    public void The_order_of_the_two_does_not_matter()
        => AnySegment.Select(AnySegment).Sample(
            (a, b) =>
            {
                var (pa, pb) = (new Path([a], false), new Path([b], false));
                var ab = Crossings.Between(pa, pb);
                var ba = Crossings.Between(pb, pa);
                return ab.Length == ba.Length && ab.All(m => ba.Any(o => o.At.To(m.At) < 1e-7 || o.Until.To(m.At) < 1e-7));
            },
            iter: 1500);

    [Fact]
    public void A_star_shaped_outline_of_beziers_is_clean_and_a_pushed_point_is_not()
        => Gen.Double[0.7, 1.3].Array[12].Sample(
            radii =>
            {
                var outline = Star(radii, 1);
                if (Crossings.Of(outline).Length != 0) return false;
                return Crossings.Of(Star(radii, -1)).Length > 0;
            },
            iter: 300);

    [Fact]
    public void Turning_and_mirroring_keep_the_number()
        => Gen.Select(AnySegment.Array[3], Gen.Double[0, 6]).Sample(
            (segments, angle) =>
            {
                var path = Joined(segments);
                var met = Crossings.Of(path);
                if (met.Any(m => m.Kind != MeetingKind.Crossing)) return true; // a touch hangs on the last digit
                var plain = met.Length;
                var turned = path.Transformed(Transform.Scale(-1, 1).Then(Transform.Turn(angle)));
                return Crossings.Of(turned).Length == plain && Crossings.Of(path.Reversed()).Length == plain;
            },
            iter: 500);

    private static Path Joined(Segment[] segments)
    {
        var b = ImmutableArray.CreateBuilder<Segment>();
        foreach (var s in segments)
        {
            if (b.Count > 0) b.Add(new Line(b[^1].End, s.Start));
            b.Add(s);
        }

        b.Add(new Line(b[^1].End, b[0].Start));
        return new Path(b.ToImmutable(), closed: true);
    }

    /// <summary>Smooth through points on rays from the middle; with the seventh pushed through the other side when the factor is negative.</summary>
    private static Path Star(double[] radii, double seventh)
    {
        var n = radii.Length;
        var points = new Point[n];
        for (var i = 0; i < n; i++) points[i] = Point.Direction(2 * Math.PI * i / n) * (30 * radii[i] * (i == 6 ? 2.2 * seventh : 1));
        if (seventh > 0) points[6] *= 1 / 2.2;
        var b = ImmutableArray.CreateBuilder<Segment>(n);
        for (var i = 0; i < n; i++)
        {
            Point At(int k) => points[((k % n) + n) % n];
            b.Add(new Bezier(At(i), At(i) + ((At(i + 1) - At(i - 1)) * (1.0 / 6)), At(i + 1) - ((At(i + 2) - At(i)) * (1.0 / 6)), At(i + 1)));
        }

        return new Path(b.ToImmutable(), closed: true);
    }
}
