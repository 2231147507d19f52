using System.Collections.Immutable;
using CsCheck;
using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Planners;
using Path = Tangwright.Foundation.Path;

namespace Tangwright.Tests.Laws;

/// <summary>What holds for any unlike pieces in one lane, and for any lengths cut end to end.</summary>
public class OrderLaws
{
    private static readonly Gen<Path> Outline =
        from radii in Gen.Double[0.5, 1].Array[8]
        from length in Gen.Double[40, 120]
        from height in Gen.Double[18, 24]
        select Path.Polygon([.. radii.Select((r, i) => new Point(length * r * Math.Cos(2 * Math.PI * i / 8), height * r * Math.Sin(2 * Math.PI * i / 8)))]);

    private static readonly Gen<(Path A, Path B, double Slack, double Clearance, int CountA, int CountB)> Case = Gen.Select(Outline, Outline, Gen.Double[0, 8], Gen.Double[0.5, 5], Gen.Int[1, 3], Gen.Int[1, 3]);

    [Fact]
    public void Unlike_pieces_keep_the_clearance_and_no_piece_more_is_shorter() => Case.Sample(
        c =>
        {
            var (a, b) = (LanePiece.Of(c.A), LanePiece.Of(c.B));
            var lane = MixedLane.Of([a, b], Math.Max(a.HeightMm, b.HeightMm) + c.Slack, c.Clearance)!;
            var layout = lane.Lay([c.CountA, c.CountB]);
            Assert.True(GapCheck.LeastMm([c.A, c.B], layout.Places, c.Clearance) >= c.Clearance);
            Assert.True(layout.LengthMm >= layout.AtLeastMm - 1e-9);
            Assert.True(lane.Lay([c.CountA + 1, c.CountB]).AtLeastMm >= layout.AtLeastMm - 1e-6);

            // the two kinds apart, one behind the other, are a layout too
            Assert.True(layout.AtLeastMm <= lane.Lay([c.CountA, 0]).LengthMm + lane.Lay([0, c.CountB]).LengthMm + c.Clearance + 1e-6);
        },
        iter: 25);

    [Fact]
    public void The_order_of_the_patterns_does_not_matter() => Case.Sample(
        c =>
        {
            var (a, b) = (LanePiece.Of(c.A), LanePiece.Of(c.B));
            var width = Math.Max(a.HeightMm, b.HeightMm) + c.Slack;
            Assert.Equal(MixedLane.Of([a, b], width, c.Clearance)!.Lay([c.CountA, c.CountB]).AtLeastMm, MixedLane.Of([b, a], width, c.Clearance)!.Lay([c.CountB, c.CountA]).AtLeastMm, 1e-6);
        },
        iter: 15);

    [Fact]
    public void Straight_sides_are_never_shorter_than_the_outlines_themselves() => Case.Sample(
        c =>
        {
            ImmutableArray<Path> outlines = [c.A, c.B];
            var width = outlines.Max(o => o.Bounds.Height) + c.Slack;
            var (free, straight) = (Lay(false), Lay(true));
            Assert.True(straight.AtLeastMm >= free.AtLeastMm - 1e-6);
            Assert.True(GapCheck.LeastMm(outlines, straight.Places, c.Clearance) >= c.Clearance);

            LaneLayout Lay(bool sides) => MixedLane.Of([.. outlines.Select(o => LanePiece.Of(o, straightSides: sides))], width, c.Clearance)!.Lay([c.CountA, c.CountB]);
        },
        iter: 20);

    [Fact]
    public void Bars_lie_between_the_steel_and_first_fit_and_one_piece_more_never_takes_fewer() => Gen.Select(Gen.Int[10, 90].Array[1, 5], Gen.Int[1, 6].Array[5]).Sample(
        (lengths, counts) =>
        {
            ImmutableArray<int> sizes = [.. lengths.Distinct()];
            ImmutableArray<int> wanted = [.. counts.Take(sizes.Length)];
            var answer = StraightCuts.Of(sizes, wanted, 100, new BarSolver())!;
            Assert.True(answer.Bars * 100 >= sizes.Zip(wanted, (s, w) => s * w).Sum());
            Assert.InRange(answer.AtLeast, 1, answer.Bars);
            Assert.All(answer.Fillings, f => Assert.True(f.Counts.Zip(sizes, (n, s) => n * s).Sum() <= 100));
            Assert.True(StraightCuts.Of(sizes, wanted.SetItem(0, wanted[0] + 1), 100, new BarSolver())!.Bars >= answer.AtLeast);
            Assert.Equal(ByTrying([.. sizes.SelectMany((s, i) => Enumerable.Repeat(s, Math.Min(2, wanted[i])))]), StraightCuts.Of(sizes, [.. wanted.Select(w => Math.Min(2, w))], 100, new BarSolver())!.Bars);
        },
        iter: 40);

    /// <summary>Every piece into every bar that is begun, or a new one.</summary>
    private static int ByTrying(int[] pieces)
    {
        var (best, left) = (pieces.Length, new List<int>());
        Place(0);
        return best;

        void Place(int at)
        {
            if (left.Count >= best) return;
            if (at == pieces.Length)
            {
                best = left.Count;
                return;
            }

            for (var b = 0; b < left.Count; b++)
            {
                if (left[b] < pieces[at]) continue;
                left[b] -= pieces[at];
                Place(at + 1);
                left[b] += pieces[at];
            }

            left.Add(100 - pieces[at]);
            Place(at + 1);
            left.RemoveAt(left.Count - 1);
        }
    }
}
