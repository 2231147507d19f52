using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Tests.Laws;

/// <summary>What must hold of pins and parts whatever their sizes.</summary>
public class AssemblyLaws
{
    private static Length Mm(double mm) => Length.OfMm(mm);

    [Fact]
    public void The_same_seed_gives_the_same_run_and_shares_are_even()
    {
        var (a, b, c) = (SeededChance.Of(9), SeededChance.Of(9), SeededChance.Of(10));
        var fill = new int[10];
        for (var i = 0; i < 100_000; i++)
        {
            var x = a.NextShare();
            Assert.Equal(x, b.NextShare());
            Assert.NotEqual(x, c.NextShare());
            fill[(int)(10 * x)]++;
        }

        // chi-squared of ten tenths, nine degrees of freedom, 1 in 10 000
        Assert.True(fill.Sum(n => (n - 10_000.0) * (n - 10_000.0) / 10_000) < ChiSquared.Value(0.9999, 9));
        Assert.Equal(SeededChance.OfTrial(3, 7).Next(), SeededChance.OfTrial(3, 7).Next());
        Assert.NotEqual(SeededChance.OfTrial(3, 7).Next(), SeededChance.OfTrial(3, 8).Next());
    }

    [Fact]
    public void Normal_deviates_have_their_moments_and_stand_apart()
    {
        const int many = 400_000;
        var chance = SeededChance.Of(4);
        var (sum, squares, fourth, beside, last) = (0.0, 0.0, 0.0, 0.0, 0.0);
        for (var i = 0; i < many; i++)
        {
            var x = NormalDeviate.Next(ref chance);
            sum += x;
            squares += x * x;
            fourth += x * x * x * x;
            beside += x * last;
            last = x;
        }

        var doubt = 4 / Math.Sqrt(many);
        Assert.Equal(0, sum / many, doubt);
        Assert.Equal(1, squares / many, doubt * Math.Sqrt(2));
        Assert.Equal(3, fourth / many, doubt * Math.Sqrt(96));
        Assert.Equal(0, beside / many, doubt);
    }

    [Fact]
    public void An_interval_holds_its_share_and_narrows()
    {
        for (var trials = 10; trials < 10_000; trials *= 3)
        {
            for (var hits = 0; hits <= trials; hits += Math.Max(1, trials / 7))
            {
                var (one, ten) = (WilsonInterval.Of(hits, trials), WilsonInterval.Of(10 * hits, 10 * trials));
                Assert.InRange((double)hits / trials, one.LowShare - 1e-12, one.HighShare + 1e-12);
                Assert.True(ten.HighShare - ten.LowShare < one.HighShare - one.LowShare);
            }
        }
    }

    [Fact]
    public void Larger_holes_never_make_it_worse_and_one_pin_always_goes()
    {
        for (var round = 0; round < 12; round++)
        {
            var parts = Any(2 + round % 6);
            var last = -1;
            foreach (var clearance in new[] { 0, 0.03, 0.1, 0.2, 0.4, 0.8 })
            {
                var now = PinChance.Of(parts.Opened(1, Mm(clearance)), 2, 400);
                Assert.True(now.Through + now.Undecided >= last);
                last = now.Through;
            }

            Assert.Equal(100, PinChance.Of(Any(1), 2, 100).Through);
        }
    }

    [Fact]
    public void Parts_laid_as_they_like_go_together_no_less_often_than_held_ones()
    {
        for (var round = 0; round < 12; round++)
        {
            var parts = Any(2 + round % 5);
            var (free, held) = (PinChance.Of(parts, 3, 400), PinChance.Of(parts with { IsFree = false }, 3, 400));
            Assert.True(free.Through + free.Undecided >= held.Through);
        }
    }

    [Fact]
    public void A_rod_too_thick_never_goes()
        => Assert.Equal(0, PinChance.Of(Any(3).Opened(0, Mm(-0.01)), 2, 50).Through);

    [Fact]
    public void Closed_forms_grow_with_room_and_fall_with_scatter()
    {
        for (var room = 0.01; room < 1; room *= 1.4)
        {
            Assert.True(PinsClosedForm.TwoPinsShare(1.1 * room, 0.1) >= PinsClosedForm.TwoPinsShare(room, 0.1));
            Assert.True(PinsClosedForm.HeldShare(3, room, 0.12) < PinsClosedForm.HeldShare(3, room, 0.1) + 1e-15);
            Assert.True(PinsClosedForm.HeldShare(2, room, 0.1) <= PinsClosedForm.TwoPinsShare(room, 0.1));
        }
    }

    [Fact]
    public void A_fixed_rod_with_no_error_in_its_part_is_a_floating_one()
    {
        for (var t = 0.0; t < 1; t += 0.07)
        {
            Assert.Equal(FastenerClearance.Floating(Mm(5), Mm(t)), FastenerClearance.Fixed(Mm(5), Length.Zero, Mm(t)));
            Assert.True(FastenerClearance.Fixed(Mm(5), Mm(t), Mm(t)) >= FastenerClearance.Floating(Mm(5), Mm(t)));
        }
    }

    [Fact]
    public void Zone_and_scatter_are_one_anothers_inverse()
    {
        for (var zone = 0.01; zone < 3; zone *= 1.7) Assert.Equal(zone, PlacingScatter.Zone(PlacingScatter.OfZone(Mm(zone))).Mm, 12);
        foreach (var way in Enum.GetValues<PlacingWay>())
        {
            var (low, high) = PlacingScatter.Band(way);
            Assert.True(low < 1 && high > 1);
        }
    }

    [Fact]
    public void The_smallest_clearance_gives_the_chance_and_a_little_less_does_not()
    {
        for (var round = 0; round < 6; round++)
        {
            var parts = Any(2 + round);
            foreach (var wanted in new[] { 0.8, 0.95 })
            {
                var least = SmallestClearance.Of(parts, null, wanted, 6, 500)!.Value;
                Assert.True(PinChance.Of(parts.Opened(null, least), 6, 500).Through >= wanted * 500);
                if (least.Mm > 0.04) Assert.True(PinChance.Of(parts.Opened(null, least - Mm(0.02)), 6, 500).Through < wanted * 500);
            }
        }

        // scales that leave no room hold the rods whatever the tang does
        Assert.Null(SmallestClearance.Of(Any(3).Opened(0, Mm(0.001)).Opened(2, Mm(0.001)), 1, 0.95, 6, 200));
    }

    [Fact]
    public void A_row_is_twice_as_crooked_with_twice_the_scatter()
    {
        for (var n = 3; n < 12; n++)
        {
            System.Collections.Immutable.ImmutableArray<Point> holes = [.. Enumerable.Range(0, n).Select(i => new Point(20 * i, 3 * i))];
            var (one, two) = (RowStraightness.Of("R", WayOfMaking.All[0], holes, Mm(0.1)), RowStraightness.Of("R", WayOfMaking.All[0], holes, Mm(0.2)));
            Assert.Equal(2 * one.WorstUsual.Mm, two.WorstUsual.Mm, 12);
            Assert.Equal(2 * one.Rms.Mm, two.Rms.Mm, 12);
            Assert.True(one.Rms < Mm(0.1) && one.WorstUsual <= one.WorstSeldom);
        }
    }

    private static PinnedParts Any(int pins)
    {
        var sizes = new Random(pins);
        return new([.. Enumerable.Range(0, pins).Select(k => new Point(20 * k, 6 * sizes.NextDouble()))], [.. Enumerable.Range(0, 3).Select(_ => PinnedPart.Alike(pins, Mm(0.02 + (0.1 * sizes.NextDouble())), 0.02 + (0.04 * sizes.NextDouble())))]);
    }
}
