using System.Collections.Immutable;
using CsCheck;
using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Tests.Sawing;
using Path = Tangwright.Foundation.Path;

namespace Tangwright.Tests.Laws;

/// <summary>What holds for rough cuts of any piece in any blank.</summary>
public class RoughCutLaws
{
    private static readonly Gen<(ImmutableArray<Point> Blank, Path Piece)> Case =
        from radii in Gen.Double[0.35, 1].Array[9]
        from length in Gen.Double[40, 150]
        from left in Gen.Double[0, 12]
        from up in Gen.Double[0, 8]
        let piece = Path.Polygon([.. radii.Select((r, i) => new Point(length * r * Math.Cos(2 * Math.PI * i / 9), 25 * r * Math.Sin(2 * Math.PI * i / 9)))])
        let b = piece.Bounds
        select (CutCase.Rectangle(new Box(b.MinX - left, b.MinY - up, b.MaxX + 3, b.MaxY + 2)), piece);

    private static readonly Gen<double> Allowance = Gen.Double[0, 2];

    [Fact]
    public void The_program_finds_what_trying_every_set_finds() => Gen.Select(Case, Allowance).Sample(
        (c, allowance) =>
        {
            var hull = GrownHull.Of(c.Piece, allowance);
            var (best, _, cuts) = CutCase.Best(c.Blank, hull, 3, stepDegrees: 30);
            for (var k = 1; k <= 3; k++)
            {
                var all = CutCase.Exhaustive(c.Blank, cuts, k);
                Assert.Equal(all, best.Worth(k), 1e-9 * (1 + all));
                Assert.Equal(all, CutCase.Removed(c.Blank, best.Cuts(k).Select(i => cuts[i])), 1e-9 * (1 + all));
            }
        },
        iter: 40);

    [Fact]
    public void More_cuts_never_take_less_and_never_more_than_lies_outside_the_hull() => Gen.Select(Case, Allowance).Sample(
        (c, allowance) =>
        {
            var hull = GrownHull.Of(c.Piece, allowance);
            var cuts = hull.Candidates();
            var worth = CutWorth.Of(c.Blank, [], cuts);
            var best = BestCuts.Of(cuts, worth.One, worth.Both, 8);
            var limit = ConvexClip.AreaMm2(c.Blank.AsSpan()) - ConvexClip.AreaMm2(hull.Corners.AsSpan());
            for (var k = 1; k <= best.Most; k++)
            {
                Assert.True(k == 1 || best.Worth(k) >= best.Worth(k - 1) - 1e-9);
                Assert.True(best.Worth(k) <= limit + 1e-9);
            }
        },
        iter: 40);

    [Fact]
    public void Polishing_never_takes_less() => Case.Sample(
        c =>
        {
            var hull = GrownHull.Of(c.Piece, 1);
            var (best, _, cuts) = CutCase.Best(c.Blank, hull, 3, stepDegrees: 10);
            ImmutableArray<SupportCut> chosen = [.. best.Cuts(3).Select(i => cuts[i])];
            var polished = CutPolish.Of(hull, c.Blank, [], chosen);
            Assert.True(CutPolish.Left(c.Blank, [], polished.AsSpan()) <= CutPolish.Left(c.Blank, [], chosen.AsSpan()) + 1e-6);
            Assert.Equal(CutCase.Removed(c.Blank, polished), ConvexClip.AreaMm2(c.Blank.AsSpan()) - CutPolish.Left(c.Blank, [], polished.AsSpan()), 1e-6);
        },
        iter: 40);

    [Fact]
    public void Squaring_costs_next_to_nothing_and_keeps_off_the_piece() => Case.Sample(
        c =>
        {
            var hull = GrownHull.Of(c.Piece, 1);
            ImmutableArray<SupportCut> cuts = [.. new[] { 0.4, 89.2, 181, 271.3, 359.1 }.Select(d => hull.Cut(d * Math.PI / 180))];
            var squared = CutPolish.Squared(hull, c.Blank, [], cuts);
            Assert.True(CutCase.Removed(c.Blank, squared) >= CutCase.Removed(c.Blank, cuts) - (8 * cuts.Length) - 1e-6);
            Assert.All(squared, s => Assert.Equal(hull.Cut(s.AngleRadians).OffsetMm, s.OffsetMm, 1e-9));
        },
        iter: 40);

    [Fact]
    public void The_order_saws_least() => Case.Sample(
        c =>
        {
            var (best, _, cuts) = CutCase.Best(c.Blank, GrownHull.Of(c.Piece, 1), 4, stepDegrees: 15);
            SupportCut[] chosen = [.. best.Cuts(4).Select(i => cuts[i])];
            var least = Orders(chosen).Min(o => Sawn(c.Blank, o));
            var found = CutOrder.Of(c.Blank, [.. chosen]);
            Assert.Equal(least, found.SawnMm, 1e-9 * (1 + least));
            Assert.Equal(found.SawnMm, Sawn(c.Blank, found.Cuts), 1e-9 * (1 + least));
        },
        iter: 40);

    [Fact]
    public void A_wedge_keeps_off_the_piece_and_inside_the_blank() => Gen.Select(Case, Gen.Double[0.5, 2]).Sample(
        (c, grow) =>
        {
            var hull = GrownHull.Of(c.Piece, grow);
            foreach (var pocket in Pocket.Of(c.Piece, hull))
            {
                if (PocketWedge.Best(pocket, c.Blank, grow, 1) is not { } wedge) continue;
                var waste = Path.Polygon([.. wedge.Waste]);
                Assert.True(LeastGap.Of(waste, c.Piece) >= grow - 1e-6);
                Assert.False(Inside.Of(waste, c.Piece.Start) || Inside.Of(c.Piece, waste.Start));
                Assert.All(wedge.Waste, p => Assert.True(Box.Around([.. c.Blank]).Grown(1e-6).Holds(p)));
                Assert.True(wedge.AreaMm2 > 0);
            }
        },
        iter: 30);

    [Fact]
    public void More_thickness_longer_cut_or_slower_saw_takes_longer() => Gen.Select(Gen.Double[1, 500], Gen.Double[1, 12], Gen.Double[1, 60], Gen.Double[0, 5]).Sample(
        (cut, thickness, rate, setUp) =>
        {
            var t = SawTime.Minutes(cut, thickness, rate, setUp);
            Assert.Equal(2 * (t - setUp), SawTime.Minutes(2 * cut, thickness, rate, setUp) - setUp, 1e-9 * t);
            Assert.Equal(2 * (t - setUp), SawTime.Minutes(cut, thickness, 0.5 * rate, setUp) - setUp, 1e-9 * t);
            Assert.True(t >= setUp);
        });

    [Fact]
    public void Power_and_steel_ground_off_grow_together() => Gen.Select(Gen.Double[100, 5000], Gen.Double[0.2, 0.9], Gen.Double[5, 50], Gen.Double[7, 9]).Sample(
        (power, share, energy, density) =>
        {
            var grams = GrindingRate.GramsPerMinute(power, share, energy, density);
            Assert.Equal(3 * grams, GrindingRate.GramsPerMinute(3 * power, share, energy, density), 1e-9 * grams);
            Assert.Equal(0.5 * grams, GrindingRate.GramsPerMinute(power, share, 2 * energy, density), 1e-9 * grams);

            // energy of the grams in a minute is the power at the belt
            Assert.Equal(power * share * 60, grams / density * 1000 * energy, 1e-6 * power);
        });

    [Fact]
    public void A_thicker_plate_and_a_larger_disc_run_out_further() => Gen.Select(Gen.Double[30, 120], Gen.Double[1, 8], Gen.Double[1, 12]).Sample(
        (radius, through, thickness) =>
        {
            var run = DiscRunOut.Mm(radius, through, thickness);
            Assert.True(run > 0);
            Assert.True(DiscRunOut.Mm(radius, through, thickness + 1) > run);
            Assert.True(DiscRunOut.Mm(radius + 10, through, thickness) > run);

            // the same read off the circle: half chords at the two faces
            double Half(double depth) => Math.Sqrt((radius * radius) - ((radius - depth) * (radius - depth)));
            Assert.Equal(Half(through + thickness), run + Half(through), 1e-9);
        });

    [Fact]
    public void A_chain_has_no_bridge_wider_than_asked() => Gen.Select(Gen.Double[3, 12], Gen.Double[1, 400]).Sample(
        (diameter, path) =>
        {
            var chain = ChainDrilling.Of(new DrillSize("d", Length.OfMm(diameter)), Length.OfMm(path));
            Assert.True(chain.Pitch.Mm <= diameter + ChainDrilling.BridgeMm + 1e-9);
            Assert.Equal(path, chain.Pitch.Mm * (chain.Holes - 1), 1e-9 * path);
            Assert.True((chain.Holes - 2) * (diameter + ChainDrilling.BridgeMm) < path);
        });

    [Fact]
    public void The_blade_mounted_has_three_to_twenty_four_teeth_in_the_steel() => Gen.Select(Gen.Double[0.5, 30], Gen.Double[4, 36].Array[4]).Sample(
        (thickness, owned) =>
        {
            var t = Length.OfMm(thickness);
            Assert.Equal(6, TeethInWork.PerInch(6, t) * thickness / 25.4, 1e-9);
            if (TeethInWork.Of([.. owned], t) is { } mount) Assert.InRange(mount * t.Inches, TeethInWork.Least - 1e-6, TeethInWork.Most + 1e-6);
            else Assert.All(owned, o => Assert.False(o * t.Inches is > TeethInWork.Least and < TeethInWork.Most));
        });

    private static double Sawn(ImmutableArray<Point> blank, IEnumerable<SupportCut> order)
    {
        var (piece, sum) = (blank, 0.0);
        foreach (var c in order)
        {
            sum += ConvexClip.Chord(piece, c.Normal, c.OffsetMm) is { } chord ? chord.From.To(chord.To) : 0;
            piece = ConvexClip.Beyond(piece, -c.Normal, -c.OffsetMm);
        }

        return sum;
    }

    private static IEnumerable<SupportCut[]> Orders(SupportCut[] cuts)
        => cuts.Length <= 1 ? [cuts] : cuts.SelectMany((c, i) => Orders([.. cuts.Where((_, j) => j != i)]).Select(rest => (SupportCut[])[c, .. rest]));
}
