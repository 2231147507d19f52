using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Tests.Laws;

/// <summary>Drilling through a guide, against exact geometry: a cylinder leaning in a bore, a plate on two pins.</summary>
public class GuideLaws
{
    /// <summary>A cylinder of diameter d leans in a bore D x L until it touches at both ends: D cos a = d + L sin a, solved by halving. The model says the same to the second order of the lean, and never less.</summary>
    [Fact]
    public void A_leaning_drill_lies_where_exact_geometry_puts_it()
    {
        var chance = new Random(5);
        for (var i = 0; i < 300; i++)
        {
            var (d, length, c) = (2 + (14 * chance.NextDouble()), 4 + (16 * chance.NextDouble()), 0.005 + (0.2 * chance.NextDouble()));
            var (gap, depth) = (6 * chance.NextDouble(), 2 + (8 * chance.NextDouble()));
            var (low, high) = (0.0, 0.2);
            for (var k = 0; k < 80; k++)
            {
                var a = (low + high) / 2;
                if (((d + c) * Math.Cos(a)) - d - (length * Math.Sin(a)) > 0) low = a;
                else high = a;
            }

            // the axis crosses the middle of the bore half way down
            var exact = Math.Tan(low) * ((0.5 * length) + gap + depth);
            var model = BushingTilt.Of(TestShop.Mm(c), TestShop.Mm(length), TestShop.Mm(gap), TestShop.Mm(depth)).Mm;
            Assert.InRange(model / exact, 1, 1 + (1.5 * (d + c) * c / (2 * length * length)) + 1e-3);
        }
    }

    [Fact]
    public void Walk_grows_with_clearance_gap_and_depth_and_shrinks_with_a_longer_guide()
    {
        Length Walk(double c, double l, double g, double t) => BushingTilt.Of(TestShop.Mm(c), TestShop.Mm(l), TestShop.Mm(g), TestShop.Mm(t));
        Assert.True(Walk(0.1, 6, 0, 6) < Walk(0.11, 6, 0, 6));
        Assert.True(Walk(0.1, 6, 0, 6) < Walk(0.1, 6, 1, 6));
        Assert.True(Walk(0.1, 6, 0, 6) < Walk(0.1, 6, 0, 7));
        Assert.True(Walk(0.1, 7, 0, 6) < Walk(0.1, 6, 0, 6));
        Assert.Equal(2 * Walk(0.1, 6, 1, 6).Mm, Walk(0.2, 6, 1, 6).Mm, 1e-12);
    }

    /// <summary>The plate is tried in every lean its pins leave it: nothing lies farther off than the formula says, and something lies that far.</summary>
    [Fact]
    public void No_lean_that_the_pins_leave_shifts_a_place_farther()
    {
        var chance = new Random(6);
        for (var i = 0; i < 200; i++)
        {
            var (apart, a) = (20 + (200 * chance.NextDouble()), -50 + (300 * chance.NextDouble()));
            var (c1, c2) = (0.3 * chance.NextDouble(), 0.3 * chance.NextDouble());
            var most = 0.0;
            for (var p = -10; p <= 10; p++)
            {
                for (var q = -10; q <= 10; q++)
                {
                    var (one, two) = (p * c1 / 20, q * c2 / 20);
                    most = Math.Max(most, Math.Abs(one + ((two - one) * a / apart)));
                }
            }

            Assert.Equal(most, PinnedPlay.Of(default, new(apart, 0), TestShop.Mm(c1), TestShop.Mm(c2), new(a, 0)).Mm, 1e-9);
        }
    }

    [Fact]
    public void Larger_drills_are_over_no_less()
    {
        for (var d = 0.1; d < 50; d += 0.1) Assert.True(DrilledSize.MostOver(TestShop.Mm(d)) <= DrilledSize.MostOver(TestShop.Mm(d + 0.1)));
    }
}
