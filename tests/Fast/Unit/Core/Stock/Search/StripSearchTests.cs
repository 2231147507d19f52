using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Tests.Bars;

/// <summary>Unlike pieces on a strip, sheets and bars: against published densities and proven lengths, judged by another library.</summary>
public class StripSearchTests
{
    // after little work already near the means of a good method of 2012 with 20 minutes (Leung, Lin and Zhang, Computers and
    // Operations Research 39:678, as quoted by Gardeyn, Vanden Berghe and Wauters 2025, table 2), less a margin for the short time
    [Theory]
    [InlineData("albano", 87.38, 2.5)]
    [InlineData("marques", 88.32, 2.5)]
    [InlineData("fu", 90.00, 3)]
    [InlineData("shirts", 87.20, 4)]
    public void Short_searches_come_near_published_densities(string name, double published, double marginPercent)
    {
        var c = SheetCase.Read("strip", name);
        var layout = c.Lay(6_000_000);
        Assert.InRange(100 * layout.Share, published - marginPercent, 100);
        Assert.Null(ExactOverlap.Of(c.Pieces, layout));
        Assert.InRange(c.Amiss(layout), 0, 1e-6 * c.WidthMm * c.WidthMm);
    }

    [Theory]
    [InlineData("dagli")]
    [InlineData("blaz1")]
    [InlineData("jakobs1")]
    [InlineData("shapes1")]
    [InlineData("swim")]
    [InlineData("trousers")]
    public void Every_layout_on_the_way_is_clear(string name)
    {
        var c = SheetCase.Read("strip", name);
        var before = double.PositiveInfinity;
        foreach (var layout in StripSearch.Run(c.Pieces, StripStock.Endless(c.WidthMm), new SearchEffort(1_000_000, 2, 7)))
        {
            Assert.Null(ExactOverlap.Of(c.Pieces, layout));
            Assert.InRange(c.Amiss(layout), 0, 1e-6 * c.WidthMm * c.WidthMm);
            Assert.True(layout.LengthMm < before);
            before = layout.LengthMm;
        }
    }

    [Fact]
    public void The_same_seed_and_work_give_the_same_layout()
    {
        var c = SheetCase.Read("strip", "albano");
        var (first, again, other) = (c.Lay(1_500_000, 5), c.Lay(1_500_000, 5), c.Lay(1_500_000, 6));
        Assert.Equal(first.Places, again.Places);
        Assert.NotEqual(first.Places, other.Places);
    }

    [Fact]
    public void It_can_be_stopped_and_keeps_the_best()
    {
        using var stop = new CancellationTokenSource();
        var c = SheetCase.Read("strip", "marques");
        var given = new List<StripLayout>();
        foreach (var layout in StripSearch.Run(c.Pieces, StripStock.Endless(c.WidthMm), new SearchEffort(long.MaxValue, 2, 1), stop.Token))
        {
            given.Add(layout);
            if (given.Count == 4) stop.Cancel();
        }

        Assert.Equal(4, given.Count);
        Assert.Null(ExactOverlap.Of(c.Pieces, given[^1]));
    }

    [Fact]
    public void Bars_are_filled_in_their_order_and_nothing_stands_out()
    {
        var c = SheetCase.Read("bar", "sheet_mix_w300");
        var layout = c.Lay(1_500_000, stock: new StripStock(300, [500, 420], 800));
        Assert.Null(ExactOverlap.Of(c.Pieces, layout));
        Assert.InRange(c.Amiss(layout), 0, 1e-3);
        Assert.Equal([500, 420], layout.UsedMm[..2]);
        Assert.All(layout.UsedMm[2..^1], l => Assert.Equal(800, l));

        // 1851 mm of one strip, measured with another program; ends of four bars cost a little more
        Assert.InRange(layout.LengthMm, 1800, 2150);
    }

    [Fact]
    public void A_layout_with_a_piece_pushed_is_refused()
    {
        var c = SheetCase.Read("strip", "albano");
        var layout = c.Lay(1_000_000);
        var pushed = 0;
        for (var i = 0; i < layout.Places.Length; i++)
        {
            foreach (var (dx, dy) in new[] { (40.0, 0.0), (-40, 0), (0, 40), (0, -40) })
            {
                var moved = layout with { Places = layout.Places.SetItem(i, layout.Places[i] with { AlongMm = layout.Places[i].AlongMm + dx, UpMm = layout.Places[i].UpMm + dy }) };
                var bad = ExactOverlap.Of(c.Pieces, moved);
                Assert.Equal(c.Amiss(moved) > 1e-6, bad is not null);
                if (bad is not null) pushed++;
            }
        }

        Assert.True(pushed > layout.Places.Length);
    }

    [Theory]
    [InlineData(10)]
    [InlineData(0.1)]
    public void All_sizes_times_a_factor_give_the_same_share(double factor)
    {
        var c = SheetCase.Read("strip", "fu");
        ImmutableArray<SheetPiece> scaled = [.. c.Pieces.Select(p => p with { Corners = [.. p.Corners.Select(q => q * factor)] })];
        var layout = StripSearch.Run(scaled, StripStock.Endless(c.WidthMm * factor), new SearchEffort(2_000_000, 2, 1)).Last();
        Assert.InRange(layout.Share, 0.86, 1);
        Assert.Null(ExactOverlap.Of(scaled, layout));
    }
}
