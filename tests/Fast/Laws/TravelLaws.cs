using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;
using Xunit;

namespace Tangwright.Tests;

public sealed class TravelLaws
{
    [Theory]
    [InlineData(200, 1)]
    [InlineData(200, 2)]
    [InlineData(200, 3)]
    [InlineData(120, 4)]
    [InlineData(40, 5)]
    [InlineData(13, 6)]
    public void Many_holes_are_visited_within_two_hundredths_of_the_least_there_can_be(int count, int seed)
    {
        var places = Strewn(count, seed);
        var way = ShortestWay.LengthMm(default, places, ShortestWay.Over(default, places));
        var bound = HeldKarpBound.Of(default, places, way);
        Assert.InRange(way / bound, 1 - 1e-9, 1.02);
    }

    [Fact]
    public void The_bound_is_not_above_the_exact_way()
    {
        for (var seed = 1; seed <= 10; seed++)
        {
            var places = Strewn(11, seed);
            var exact = ShortestWay.LengthMm(default, places, ShortestWay.Over(default, places));
            Assert.InRange(HeldKarpBound.Of(default, places, exact), 0.8 * exact, exact + 1e-6);
        }
    }

    [Fact]
    public void Up_to_twelve_the_way_is_the_least_of_all_orders()
    {
        for (var seed = 1; seed <= 12; seed++)
        {
            var places = Strewn(7, seed);
            var best = Orders(7).Min(o => ShortestWay.LengthMm(default, places, o));
            Assert.Equal(best, ShortestWay.LengthMm(default, places, ShortestWay.Over(default, places)), 1e-9);
        }
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(12)]
    [InlineData(13)]
    [InlineData(14)]
    [InlineData(61)]
    public void Every_place_is_visited_once_and_always_in_the_same_order(int count)
    {
        var places = Strewn(count, 9);
        var order = ShortestWay.Over(default, places);
        Assert.Equal(Enumerable.Range(0, count), order.Order());
        Assert.Equal(order, ShortestWay.Over(default, places));
    }

    [Theory]
    [InlineData(5)]
    [InlineData(30)]
    public void A_row_is_drilled_from_the_near_end_to_the_far_one(int count)
    {
        ImmutableArray<Point> row = [.. Enumerable.Range(0, count).Select(i => new Point(10 + (9.0 * ((i * 7) % count)), 12))];
        Assert.Equal(row.Select(p => p.X).Order(), ShortestWay.Over(new Point(0, 12), row).Select(i => row[i].X));
    }

    [Fact]
    public void Holes_on_one_spot_are_no_trouble()
        => Assert.Equal(20, ShortestWay.Over(default, [.. Enumerable.Repeat(new Point(3, 4), 20)]).Distinct().Count());

    private static ImmutableArray<Point> Strewn(int count, int seed)
    {
        var chance = new Random(seed);
        return [.. Enumerable.Range(0, count).Select(_ => new Point(chance.NextDouble() * 300, chance.NextDouble() * 60))];
    }

    private static IEnumerable<ImmutableArray<int>> Orders(int count)
        => count == 0 ? [[]] : Orders(count - 1).SelectMany(o => Enumerable.Range(0, count).Select(k => o.Insert(k, count - 1)));
}
