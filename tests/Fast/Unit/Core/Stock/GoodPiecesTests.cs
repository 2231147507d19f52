using Tangwright.Core;

namespace Tangwright.Tests.Bars;

/// <summary>Chances worked out apart with a table of the binomial distribution.</summary>
public class GoodPiecesTests
{
    [Theory]
    [InlineData(13, 12, 0.95, 0.865)]
    [InlineData(14, 12, 0.95, 0.970)]
    [InlineData(6, 6, 0.88, 0.464)]
    [InlineData(7, 6, 0.88, 0.799)]
    [InlineData(8, 6, 0.88, 0.939)]
    [InlineData(25, 20, 0.90, 0.967)]
    [InlineData(24, 20, 0.90, 0.915)]
    [InlineData(5, 6, 0.9, 0)]
    [InlineData(7, 0, 0.9, 1)]
    public void Chance_is_that_of_the_table(int started, int good, double yield, double chance)
        => Assert.Equal(chance, GoodPieces.ChanceShare(started, good, yield), 0.0006);

    [Theory]
    [InlineData(12, 0.95, 0.9, 14)]
    [InlineData(6, 0.88, 0.9, 8)]
    [InlineData(20, 0.90, 0.9, 24)]
    [InlineData(20, 0.90, 0.95, 25)]
    [InlineData(1, 1, 0.999, 1)]
    public void Starts_are_the_fewest_that_give_the_chance(int good, double yield, double wanted, int starts)
        => Assert.Equal(starts, GoodPieces.StartsFor(good, yield, wanted));

    [Fact]
    public void Ten_thousand_at_the_least_yield_are_answered()
        => Assert.InRange(GoodPieces.StartsFor(GoodPieces.MostGood, GoodPieces.LeastYieldShare, 0.9), 200_000, 205_000);
}
