using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Tests;

public class BenchEdgesTests
{
    private static readonly Plan Plate = TestShop.Plate with { Holes = [TestShop.Hole("H", 30, 15, 8)] };

    [Fact]
    public void In_the_bar_the_piece_lies_in_the_middle_one_end_allowance_from_the_sawn_end()
    {
        var b = BenchEdges.Of(Plate, TestShop.Own);
        Assert.Equal(DrilledIn.Bar, b.State);
        Assert.Equal(new Point(35, 20), b.ToBench(new Point(30, 15))); // 5 mm end, (50 - 40) / 2 below
        Assert.Equal("sawn end at the left", b.AlongFrom);
        Assert.Equal("lower long edge of the bar", b.AcrossFrom);
        Assert.Equal(new Box(-5, -5, 205, 45), b.StockBox);
        Assert.Empty(b.Remark);
    }

    [Fact]
    public void Right_and_top_count_into_the_piece()
    {
        var b = BenchEdges.Of(Plate with { Datum = new Datum(new(DatumSide.Right, default), new(DatumSide.Top, default), "butt") }, TestShop.Own);
        Assert.Equal(new Point(175, 30), b.ToBench(new Point(30, 15)));
        Assert.Equal((-1, -1), (b.AlongSign, b.AcrossSign));
        Assert.Equal("sawn end at the right", b.AlongFrom);
    }

    [Fact]
    public void An_edge_margin_is_kept_at_the_datum_side()
    {
        var low = BenchEdges.Of(Plate with { Layout = new Layout(DrilledIn.Bar, TestShop.Mm(7), TestShop.Mm(2)) }, TestShop.Own);
        Assert.Equal(new Point(37, 17), low.ToBench(new Point(30, 15)));
        Assert.Equal(new Box(-7, -2, 207, 48), low.StockBox);
        var top = BenchEdges.Of(Plate with { Layout = new Layout(DrilledIn.Bar, null, TestShop.Mm(2)), Datum = new Datum(new(DatumSide.Left, default), new(DatumSide.Top, default), "") }, TestShop.Own);
        Assert.Equal(27, top.ToBench(new Point(30, 15)).Y);
    }

    [Fact]
    public void A_rectangle_has_the_shops_allowances_and_a_profile_none()
    {
        var r = BenchEdges.Of(Plate with { Layout = new Layout(DrilledIn.Rectangle, null, null) }, TestShop.Own);
        Assert.Equal(new Point(35, 18), r.ToBench(new Point(30, 15)));
        var p = BenchEdges.Of(Plate with { Layout = new Layout(DrilledIn.Profile, null, null), Datum = Datum.LowerLeft with { Name = "head end" } }, TestShop.Own);
        Assert.Equal(new Point(30, 15), p.ToBench(new Point(30, 15)));
        Assert.Contains("head end", p.AlongFrom);
    }

    [Fact]
    public void A_bar_of_unknown_width_is_a_rectangle_and_says_so()
    {
        var b = BenchEdges.Of(Plate with { Stock = Plate.Stock with { Width = null } }, TestShop.Own);
        Assert.Equal(DrilledIn.Rectangle, b.State);
        Assert.Contains("no bar width", b.Remark);
    }

    [Theory]
    [InlineData(60, 1, "left")]
    [InlineData(150, -1, "right")]
    public void A_datum_at_a_coordinate_falls_back_to_the_nearer_end_and_says_so(double x, int sign, string end)
    {
        var b = BenchEdges.Of(Plate with { Datum = Datum.LowerLeft with { X = new(DatumSide.At, TestShop.Mm(x)) } }, TestShop.Own);
        Assert.Equal(sign, b.AlongSign);
        Assert.Contains($"{end} end", b.Remark);
    }
}
