using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Tests.Laws;

/// <summary>What holds for every pattern of measured holes.</summary>
public class FittedHolesLaws
{
    public static TheoryData<int> Seeds => [.. Enumerable.Range(1, 12)];

    [Theory]
    [MemberData(nameof(Seeds))]
    public void A_moved_pattern_is_found_again(int seed)
    {
        var (planned, random) = Pattern(seed);
        var (turn, shift) = ((random.NextDouble() - 0.5) * 6, new Point(random.NextDouble() * 100, -random.NextDouble() * 10));
        var fit = RigidFit.Of(planned, [.. planned.Select(p => Transform.Turn(turn).Map(p) + shift)]);
        Assert.True(fit.MostMm < 1e-10);
        Assert.Equal(Math.Sin(turn), Math.Sin(fit.Turn.Radians), 12);
        Assert.True(fit.Shift.To(shift) < 1e-9);
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void A_pattern_turned_over_is_not_taken_for_one_turned(int seed)
    {
        var (planned, _) = Pattern(seed);
        var fit = RigidFit.Of(planned, [.. planned.Select(p => new Point(p.X, -p.Y))]);
        Assert.True(fit.MostMm > 0.1);
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void No_move_nearby_has_a_smaller_sum_of_squares(int seed)
    {
        var (planned, found, _) = Measured(seed);
        var fit = RigidFit.Of(planned, found);
        var best = SumOfSquares(planned, found, fit.Turn.Radians, fit.Shift);
        foreach (var step in new[] { 1e-3, 1e-5 })
        {
            for (var i = 0; i < 27; i++)
            {
                var (a, b, c) = ((i % 3) - 1, (i / 3 % 3) - 1, (i / 9) - 1);
                Assert.True(SumOfSquares(planned, found, fit.Turn.Radians + (0.01 * a * step), fit.Shift + new Point(b * step, c * step)) >= best - 1e-14);
            }
        }
    }

    /// <summary>A naive twin: turns by small steps, and for each the smallest circle round what is left over, by trying every pair and every three.</summary>
    [Theory]
    [MemberData(nameof(Seeds))]
    public void The_worst_hole_comes_off_as_well_as_by_trying_everything(int seed)
    {
        var (planned, found, _) = Measured(seed);
        var fit = MinimaxFit.Of(planned, found, [.. planned.Select(_ => Length.OfMm(1))]);
        var tried = double.PositiveInfinity;
        for (var (centre, step) = (RigidFit.Of(planned, found).Turn.Radians, 2e-4); step > 1e-9; step /= 10)
        {
            var at = Enumerable.Range(-20, 41).Select(i => centre + (i * step)).MinBy(turn => SmallestCircle(planned, found, turn));
            (centre, tried) = (at, Math.Min(tried, SmallestCircle(planned, found, at)));
        }

        Assert.Equal(tried, fit.MostMm, 6);
        Assert.True(fit.MostMm <= RigidFit.Of(planned, found).MostMm + 1e-9);
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void The_tightest_holes_share_the_worst(int seed)
    {
        var (planned, found, random) = Measured(seed);
        ImmutableArray<Length> allowed = [.. planned.Select(_ => Length.OfMm(0.05 + random.NextDouble()))];
        var fit = MinimaxFit.Of(planned, found, allowed);
        var shares = fit.Rest.Select((r, i) => r.Length / allowed[i].Mm).OrderDescending().ToArray();
        Assert.True(shares[1] > shares[0] * (1 - 1e-6), string.Join(" ", shares));
        for (var tries = 0; tries < 3000; tries++)
        {
            var size = Math.Pow(10, -1 - (5 * random.NextDouble()));
            var turn = Transform.Turn(fit.Turn.Radians + (0.01 * size * Normal(random)));
            var pivot = planned[tries % planned.Length];
            var shift = fit.Shift + Transform.Turn(fit.Turn.Radians).Map(pivot) - turn.Map(pivot) + (size * new Point(Normal(random), Normal(random)));
            Assert.True(planned.Select((p, i) => found[i].To(turn.Map(p) + shift) / allowed[i].Mm).Max() >= shares[0] - 1e-7);
        }
    }

    [Fact]
    public void Position_does_not_mind_where_the_error_points()
        => Assert.All(Enumerable.Range(0, 36), i => Assert.Equal(0.5, TruePosition.Of(0.25 * Point.Direction(i * 0.2)).Mm, 12));

    [Fact]
    public void What_is_allowed_grows_as_the_hole_does()
        => Assert.Equal(0.07, (AllowedPosition.ForPin(Length.OfMm(5.1), Length.OfMm(5), Length.OfMm(5.18)) - AllowedPosition.ForPin(Length.OfMm(5.1), Length.OfMm(5), Length.OfMm(5.11))).Mm, 12);

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(7)]
    [InlineData(200)]
    [InlineData(5000)]
    public void Chi_squared_comes_back(int freedom)
    {
        foreach (var share in new[] { 1e-4, 0.05, 0.5, 0.95, 0.9999 }) Assert.Equal(share, ChiSquared.ShareBelow(ChiSquared.Value(share, freedom), freedom), 9);

        // two degrees: 1 - exp(-x/2)
        Assert.Equal(1 - Math.Exp(-1.7), ChiSquared.ShareBelow(3.4, 2), 12);
    }

    /// <summary>Of many shops that measure five holes each, 95 in 100 scatter less than the bound says.</summary>
    [Fact]
    public void The_bound_holds_as_often_as_it_says()
    {
        var random = new Random(5);
        const int Shops = 4000;
        const double Sigma = 0.04;
        var (kept, sum) = (0, 0.0);
        for (var shop = 0; shop < Shops; shop++)
        {
            ImmutableArray<Point> planned = [.. Enumerable.Range(0, 5).Select(i => new Point(25 * i, 18 + (i % 2)))];
            ImmutableArray<Point> found = [.. planned.Select(p => Transform.Turn(0.002).Map(p) + new Point(0.3 + (Sigma * Normal(random)), Sigma * Normal(random)))];
            var learnt = MachineScatter.Of([RigidFit.Of(planned, found)])!;
            if (learnt.Bound.Mm >= Sigma) kept++;
            sum += learnt.Sigma.Mm * learnt.Sigma.Mm;
        }

        // within four standard deviations of a share of 0.95 and of a mean square of sigma squared
        Assert.InRange(kept / (double)Shops, 0.95 - 0.014, 0.95 + 0.014);
        Assert.InRange(sum / Shops / (Sigma * Sigma), 0.966, 1.034);
    }

    private static double Normal(Random random) => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());

    private static (ImmutableArray<Point> Planned, Random Random) Pattern(int seed)
    {
        var random = new Random(seed);
        return ([.. Enumerable.Range(0, 3 + (seed % 6)).Select(_ => new Point(200 * random.NextDouble(), 40 * random.NextDouble()))], random);
    }

    private static (ImmutableArray<Point> Planned, ImmutableArray<Point> Found, Random Random) Measured(int seed)
    {
        var (planned, random) = Pattern(seed);
        return (planned, [.. planned.Select(p => Transform.Turn(0.004).Map(p) + new Point(0.2 + (0.1 * Normal(random)), 0.1 * Normal(random)))], random);
    }

    private static double SumOfSquares(ImmutableArray<Point> planned, ImmutableArray<Point> found, double turn, Point shift)
        => planned.Zip(found, (p, q) => (q - (Transform.Turn(turn).Map(p) + shift)) is var r ? r.Dot(r) : 0).Sum();

    private static double SmallestCircle(ImmutableArray<Point> planned, ImmutableArray<Point> found, double turn)
    {
        Point[] d = [.. planned.Zip(found, (p, q) => q - Transform.Turn(turn).Map(p))];
        var least = double.PositiveInfinity;
        for (var i = 0; i < d.Length; i++)
        {
            for (var j = 0; j < i; j++)
            {
                Try(0.5 * (d[i] + d[j]));
                for (var k = 0; k < j; k++)
                {
                    var (b, c) = (d[j] - d[i], d[k] - d[i]);
                    var twice = 2 * b.Cross(c);
                    if (twice != 0) Try(d[i] + new Point(((c.Y * b.Dot(b)) - (b.Y * c.Dot(c))) / twice, ((b.X * c.Dot(c)) - (c.X * b.Dot(b))) / twice));
                }
            }
        }

        return least;

        void Try(Point centre) => least = Math.Min(least, d.Max(p => p.To(centre)));
    }
}
