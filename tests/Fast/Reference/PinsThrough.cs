using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Tests.Reference;

/// <summary>Numbers of chance held against published runs and tables, pins held against what can be written down.</summary>
public class PinsThrough
{
    private const ulong Seed = 20261128;

    // the run of the reference implementation from the state 1, 2, 3, 4, as printed in the tests of the Rust library rand_xoshiro
    [Fact]
    public void A_published_run_of_xoshiro()
    {
        var chance = new SeededChance(1, 2, 3, 4);
        ulong[] run = [11520, 0, 1509978240, 1215971899390074240, 1216172134540287360, 607988272756665600, 16172922978634559625, 8476171486693032832, 10595114339597558777, 2904607092377533576];
        Assert.All(run, r => Assert.Equal(r, chance.Next()));
    }

    // Rosetta Code, Pseudo-random numbers/Splitmix64, seed 1234567
    [Fact]
    public void A_published_run_of_split_mix()
    {
        var state = 1234567UL;
        ulong[] run = [6457827717110365317, 3203168211198807973, 9817491932198370423, 4593380528125082431, 16408922859458223821];
        Assert.All(run, r => Assert.Equal(r, SeededChance.SplitMix(ref state)));
    }

    // NIST/SEMATECH e-Handbook, table 1.3.6.7.1, cumulative normal: 0.5 + 0.34134 below 1, ... ; counts within four of their own standard deviations
    [Theory]
    [InlineData(0.5, 0.69146)]
    [InlineData(1, 0.84134)]
    [InlineData(2, 0.97725)]
    [InlineData(3, 0.99865)]
    [InlineData(3.7, 0.99989)]
    public void Normal_deviates_fill_the_table(double below, double share)
    {
        const int many = 1_000_000;
        var chance = SeededChance.Of(Seed);
        var (over, under) = (0, 0);
        for (var i = 0; i < many; i++)
        {
            var x = NormalDeviate.Next(ref chance);
            over += x > below ? 1 : 0;
            under += x < -below ? 1 : 0;
        }

        var (expected, doubt) = ((1 - share) * many, (4 * Math.Sqrt((1 - share) * many)) + (0.5e-5 * many));
        Assert.InRange(over, expected - doubt, expected + doubt);
        Assert.InRange(under, expected - doubt, expected + doubt);
    }

    // R. G. Newcombe, Two-sided confidence intervals for the single proportion, Statistics in Medicine 17, 1998, table I, method 3 (Wilson's score)
    [Theory]
    [InlineData(81, 263, 0.2553, 0.3662)]
    [InlineData(15, 148, 0.0624, 0.1605)]
    [InlineData(0, 20, 0, 0.1611)]
    [InlineData(1, 29, 0.0061, 0.1718)]
    public void Intervals_of_a_published_table(int hits, int trials, double low, double high)
    {
        var interval = WilsonInterval.Of(hits, trials);
        Assert.Equal(low, interval.LowShare, 4);
        Assert.Equal(high, interval.HighShare, 4);
    }

    // NIST/SEMATECH e-Handbook, table 1.3.6.7.4: two degrees of freedom, 0.99 below 9.210
    [Fact]
    public void A_zone_of_99_in_100_is_twice_the_root_of_9_210_sigmas()
        => Assert.Equal(0.12, 2 * Math.Sqrt(9.210) * PlacingScatter.OfZone(Length.OfMm(0.12)).Mm, 5);

    // ASME Y14.5: 6.35 rod in 6.50 holes, floating 0.15 each, fixed 0.075 each; a rod of 4.97 and holes within 0.10 of their places: 5.17 and 5.37
    [Fact]
    public void Fasteners_of_the_drawing_standard()
    {
        Assert.Equal(6.50, FastenerClearance.Floating(Length.OfMm(6.35), Length.OfMm(0.15)).Mm, 12);
        Assert.Equal(6.50, FastenerClearance.Fixed(Length.OfMm(6.35), Length.OfMm(0.075), Length.OfMm(0.075)).Mm, 12);
        Assert.Equal(5.17, FastenerClearance.Floating(Length.OfMm(4.97), Length.OfMm(0.2)).Mm, 12);
        Assert.Equal(5.37, FastenerClearance.Fixed(Length.OfMm(4.97), Length.OfMm(0.2), Length.OfMm(0.2)).Mm, 12);
    }

    // Abramowitz and Stegun, table 7.1: erf 0.5 = 0.52049 98778, erf 1 = 0.84270 07929; 1 - exp(-1/2) = 0.39346 93403
    [Fact]
    public void Closed_forms_at_round_values()
    {
        Assert.Equal(0.5204998778, PinsClosedForm.TwoPinsShare(0.5, 1), 9);
        Assert.Equal(0.8427007929, PinsClosedForm.TwoPinsShare(0.2, 0.2), 9);
        Assert.Equal(0.3934693403, PinsClosedForm.HeldShare(1, 0.1, 0.1), 9);
        Assert.Equal(0.3934693403 * 0.3934693403, PinsClosedForm.HeldShare(2, 0.1, 0.1), 9);
    }

    [Theory]
    [InlineData(1, 0.2, 0.1, 0.05, 0.04)]
    [InlineData(3, 0.2, 0.2, 0.05, 0.04)]
    [InlineData(8, 0.4, 0.1, 0.06, 0.02)]
    public void Trials_of_held_holes_agree_with_the_closed_form(int pins, double first, double second, double sigma1, double sigma2)
        => Agrees(PinsClosedForm.HeldShare(pins, (first + second) / 2, Math.Sqrt((sigma1 * sigma1) + (sigma2 * sigma2))), new(Row(pins), [Part(pins, first, sigma1), Part(pins, second, sigma2)], IsFree: false));

    [Theory]
    [InlineData(0.1, 0.05, 0.05, 0.04)]
    [InlineData(0.03, 0.13, 0.02, 0.02)]
    [InlineData(0.4, 0.03, 0.1, 0.1)]
    public void Trials_of_two_pins_agree_with_the_closed_form(double first, double second, double sigma1, double sigma2)
        => Agrees(PinsClosedForm.TwoPinsShare((first + second) / 2, Math.Sqrt((sigma1 * sigma1) + (sigma2 * sigma2))), new(Row(2), [Part(2, first, sigma1), Part(2, second, sigma2)]));

    /// <summary>Two pins through three parts: their spacings, N(0, 2 σ²) each, must pair by pair be within twice what both parts leave. Integrated apart on a grid.</summary>
    [Theory]
    [InlineData(0.03, 0.13, 0.0198, 0.0198)]
    [InlineData(0.1, 0.1, 0.05, 0.03)]
    [InlineData(0.4, 0.1, 0.1, 0.1)]
    public void Trials_of_two_pins_and_three_parts_agree_with_an_integral(double scale, double tang, double sigmaScale, double sigmaTang)
    {
        const int grid = 600;
        var (s, t) = (Math.Sqrt(2) * sigmaScale, Math.Sqrt(2) * sigmaTang);
        var (near, both) = (scale + tang, 2 * scale);
        var (sum, step) = (0.0, 14.0 * s / grid);
        for (var i = 0; i < grid; i++)
        {
            for (var k = 0; k < grid; k++)
            {
                var (left, right) = (((i + 0.5) * step) - (7 * s), ((k + 0.5) * step) - (7 * s));
                if (Math.Abs(left - right) > both) continue;
                sum += Bell(left / s) * Bell(right / s) * Math.Max(0, Below((Math.Min(left, right) + near) / t) - Below((Math.Max(left, right) - near) / t));
            }
        }

        var share = sum * step * step / (s * s);
        var chance = PinChance.Of(new(Row(2), [Part(2, scale, sigmaScale), Part(2, tang, sigmaTang), Part(2, scale, sigmaScale)]), Seed, 40_000);
        Within(chance, share);

        static double Bell(double x) => Math.Exp(-0.5 * x * x) / Math.Sqrt(2 * Math.PI);
        static double Below(double x) => 0.5 * (1 + (Math.Sign(x) * ChiSquared.ShareBelow(x * x, 1)));
    }

    /// <summary>Two parts go together when the least worst fit of one's centres on the other's leaves no more than both clearances: the fit of measured holes, made apart, decides the same trials.</summary>
    [Theory]
    [InlineData(3)]
    [InlineData(8)]
    public void Two_parts_are_decided_as_by_the_least_worst_fit(int pins)
    {
        var parts = new PinnedParts(Row(pins), [Part(pins, 0.13, 0.05), Part(pins, 0.03, 0.02)]);
        var through = 0;
        for (var i = 0UL; i < 1500; i++)
        {
            var chance = SeededChance.OfTrial(i, 0);
            var at = parts.Parts.Select(p => parts.Pins.Select((pin, k) => pin + new Point(p.SigmasMm[k] * NormalDeviate.Next(ref chance), p.SigmasMm[k] * NormalDeviate.Next(ref chance))).ToArray()).ToArray();
            var share = MinimaxFit.Of([.. at[0]], [.. at[1]], [.. Enumerable.Repeat(Length.OfMm(0.08), pins)]).MostMm / 0.08;
            if (Math.Abs(share - 1) < 0.001) continue;
            var goes = PinChance.Of(parts, i, 1);
            Assert.Equal(0, goes.Undecided);
            Assert.Equal(share < 1, goes.Through == 1);
            through += goes.Through;
        }

        Assert.InRange(through, 100, 1400);
    }

    /// <summary>Three holes evenly apart leave one error, (1, -2, 1)/√6 N(0, σ): the middle hole is worst and off by 2/√6 of it; half of all rows are under 0.6745 σ of that, 95 in 100 under 1.9600 σ.</summary>
    [Fact]
    public void A_row_of_three_by_hand()
    {
        var row = RowStraightness.Of("R", WayOfMaking.All[0], Row(3, bent: false), Length.OfMm(0.1));
        Assert.Equal(0.1 / Math.Sqrt(3), row.Rms.Mm, 12);
        Assert.Equal(0.1 * 2 / Math.Sqrt(6) * 0.6745, row.WorstUsual.Mm, 0.002);
        Assert.Equal(0.1 * 2 / Math.Sqrt(6) * 1.9600, row.WorstSeldom.Mm, 0.006);
    }

    private static void Agrees(double share, PinnedParts parts)
    {
        var chance = PinChance.Of(parts, Seed, 100_000);
        Assert.Equal(0, chance.Undecided);
        Within(chance, share);
    }

    // twice its interval of 95 in 100: four standard deviations, so that of a dozen cases none is out by chance
    private static void Within(PinChance chance, double share)
        => Assert.InRange(share, chance.Share - (2 * (chance.Share - chance.Interval.LowShare)), chance.Share + (2 * (chance.Interval.HighShare - chance.Share)));

    private static PinnedPart Part(int pins, double clearance, double sigma) => PinnedPart.Alike(pins, Length.OfMm(clearance), sigma);

    private static System.Collections.Immutable.ImmutableArray<Point> Row(int pins, bool bent = true) => [.. Enumerable.Range(0, pins).Select(k => new Point(200 + (22 * k), bent ? 34 + (0.5 * (k % 3)) : 34))];
}
