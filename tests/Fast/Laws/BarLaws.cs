using CsCheck;
using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Tests.Bars;
using Path = Tangwright.Foundation.Path;

namespace Tangwright.Tests.Laws;

/// <summary>What holds for any piece on any bar, and for any yield.</summary>
public class BarLaws
{
    // star-shaped outlines, longer than high, some corners in
    private static readonly Gen<Path> Outline =
        from radii in Gen.Double[0.4, 1].Array[9]
        from length in Gen.Double[40, 150]
        select Path.Polygon([.. radii.Select((r, i) => new Point(length * r * Math.Cos(2 * Math.PI * i / 9), 20 * r * Math.Sin(2 * Math.PI * i / 9)))]);

    private static readonly Gen<(Path Outline, double Slack, double Clearance, int Count)> Case = Gen.Select(Outline, Gen.Double[0, 12], Gen.Double[0.5, 6], Gen.Int[2, 6]);

    [Fact]
    public void No_two_pieces_are_closer_than_asked() => Case.Sample(
        c =>
        {
            var layout = Lay(c.Outline, c.Slack, c.Clearance, c.Count);
            Assert.True(BarCase.LeastGap(BarCase.Placed(c.Outline, layout)) >= c.Clearance - 1e-9);
        },
        iter: 60);

    [Fact]
    public void More_room_across_or_less_clearance_or_one_piece_less_is_never_longer() => Case.Sample(
        c =>
        {
            var length = Lay(c.Outline, c.Slack, c.Clearance, c.Count).AtLeastMm;
            Assert.True(Lay(c.Outline, c.Slack, c.Clearance * 0.7, c.Count).AtLeastMm <= length + 1e-6);
            Assert.True(Lay(c.Outline, c.Slack, c.Clearance, c.Count - 1).AtLeastMm <= length + 1e-6);

            // twice the room on a grid twice as wide holds every layout of the narrow bar
            Assert.True(Lay(c.Outline, 2 * Rounded(c.Slack), c.Clearance, c.Count).AtLeastMm <= Lay(c.Outline, Rounded(c.Slack), c.Clearance, c.Count).AtLeastMm + 1e-6);
        },
        iter: 40);

    [Fact]
    public void Turning_the_outline_or_its_size_changes_nothing_but_the_size() => Case.Sample(
        c =>
        {
            var length = Lay(c.Outline, 0, c.Clearance, c.Count).LengthMm;
            var turned = Lay(c.Outline.Transformed(Transform.Turn(Math.PI)), 0, c.Clearance, c.Count).LengthMm;
            var twice = Lay(c.Outline.Transformed(Transform.Scale(2, 2)), 0, 2 * c.Clearance, c.Count).LengthMm;
            Assert.Equal(length, turned, 1e-5);
            Assert.Equal(2 * length, twice, 1e-5);
        },
        iter: 40);

    [Fact]
    public void Never_longer_than_end_to_end() => Case.Sample(
        c => Assert.True(Lay(c.Outline, c.Slack, c.Clearance, c.Count).LengthMm <= (c.Count * c.Outline.Bounds.Width) + ((c.Count - 1) * (c.Clearance + 1e-6))),
        iter: 40);

    [Fact]
    public void The_step_is_the_least_that_keeps_the_clearance() => Case.Sample(
        c =>
        {
            var flanks = LanePiece.Of(c.Outline).Flanks;
            var up = c.Slack - 6;
            var step = LeastStep.Mm(flanks[0], flanks[1], up, c.Clearance);
            Polygons(step, out var at);
            Polygons(step - 0.01, out var closer);
            Assert.InRange(at, c.Clearance - 1e-9, c.Clearance + 1e-6);
            Assert.True(closer < c.Clearance);

            void Polygons(double along, out double gap)
                => gap = BarCase.LeastGap(BarCase.Placed(c.Outline, new LaneLayout([new(Lie.Plain, 0, 0), new(Lie.Turned, along, up)], 0, 0)));
        },
        iter: 100);

    [Fact]
    public void The_least_gap_is_that_of_another_library_and_never_more() => Gen.Select(Outline, Outline, Gen.Double[-40, 300], Gen.Double[-40, 40]).Sample(
        (a, b, x, y) =>
        {
            var moved = b.Transformed(Transform.Shift(new Point(x, y)));
            var other = Meets(a, moved);
            Assert.Equal(other, LeastGap.Of(a, moved), 1e-9);
            Assert.Equal(LeastGap.Of(a, moved), LeastGap.Of(moved, a), 1e-9);
        },
        iter: 200);

    [Fact]
    public void The_gap_of_two_discs_is_that_of_their_middles_less_both_radii() => Gen.Select(Gen.Double[1, 20], Gen.Double[1, 20], Gen.Double[-90, 90], Gen.Double[-90, 90]).Sample(
        (r, s, x, y) =>
        {
            var truth = Math.Sqrt((x * x) + (y * y)) - r - s;
            if (truth < 0.01) return;
            Assert.InRange(LeastGap.Of(Path.Circle(default, r), Path.Circle(new(x, y), s)), truth - LeastGap.WithinMm, truth + 1e-9);
        },
        iter: 200);

    [Fact]
    public void One_more_start_never_lowers_the_chance_and_a_better_yield_raises_it() => Gen.Select(Gen.Int[1, 60], Gen.Int[0, 30], Gen.Double[0.3, 0.99]).Sample(
        (good, more, yield) =>
        {
            var chance = GoodPieces.ChanceShare(good + more, good, yield);
            Assert.InRange(chance, 0, 1);
            Assert.True(GoodPieces.ChanceShare(good + more + 1, good, yield) >= chance - 1e-12);
            Assert.True(GoodPieces.ChanceShare(good + more, good, yield + 0.005) >= chance - 1e-12);
            Assert.Equal(ByCounting(good + more, good, yield), chance, 1e-10);
            var starts = GoodPieces.StartsFor(good, yield, 0.9);
            Assert.True(GoodPieces.ChanceShare(starts, good, yield) >= 0.9 - 1e-9);
            Assert.True(starts == good || GoodPieces.ChanceShare(starts - 1, good, yield) < 0.9 + 1e-9);
        },
        iter: 200);

    private static double Rounded(double slack) => 0.5 * Math.Ceiling(slack / 0.5);

    private static LaneLayout Lay(Path outline, double slack, double clearance, int count)
        => Lane.Of(LanePiece.Of(outline), outline.Bounds.Height + slack, clearance, count * (outline.Bounds.Width + clearance + 1))!.Lay(count);

    private static double Meets(Path a, Path b)
    {
        NetTopologySuite.Geometries.LinearRing Ring(Path p)
        {
            var corners = p.Segments.Select(s => new NetTopologySuite.Geometries.Coordinate(s.Start.X, s.Start.Y)).ToList();
            return new([.. corners, corners[0].Copy()]);
        }

        return Ring(a).Distance(Ring(b));
    }

    /// <summary>The binomial sum, one number of good pieces after the other: the chances of k good after one start more.</summary>
    private static double ByCounting(int started, int good, double yield)
    {
        var chance = new double[started + 1];
        chance[0] = 1;
        for (var s = 0; s < started; s++)
        {
            for (var k = s + 1; k > 0; k--) chance[k] = (chance[k] * (1 - yield)) + (chance[k - 1] * yield);
            chance[0] *= 1 - yield;
        }

        return chance[good..].Sum();
    }
}
