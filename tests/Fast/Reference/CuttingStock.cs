using Tangwright.Core;
using Tangwright.Planners;
using Tangwright.Tests.Bars;

namespace Tangwright.Tests.Reference;

/// <summary>Fewest bars against public sets (see the folder's page): the number known, or fewer, and proven.</summary>
public class CuttingStock
{
    // triplets: made so that n/3 bars are the fewest (E. Falkenauer 1996); u250: the set's own numbers, two of them are beaten by one bar
    [Theory]
    [InlineData("falkenauer-binpack5.txt", 0, 20)]
    [InlineData("falkenauer-binpack6.txt", 1, 1)]
    [InlineData("falkenauer-binpack2.txt", 0, 10)]
    public void No_more_bars_than_known(string file, int first, int count) => Assert.All(CuttingCase.Read(Folder, file).Skip(first).Take(count), c =>
    {
        var answer = Solved(c);
        Assert.InRange(answer.Bars, 1, c.Known);
        Assert.True(answer.IsFewest);
        if (c.Name.StartsWith('t')) Assert.Equal(c.Known, answer.Bars);
    });

    // the set gives no numbers: the bound of the linear program proves them
    [Theory]
    [InlineData("TEST0022", 15)]
    [InlineData("TEST0049", 11)]
    [InlineData("TEST0058", 20)]
    public void Hard_orders_come_out_at_their_bound(string name, int bars)
    {
        var answer = Solved(CuttingCase.Read(Folder, "wae_gau1.bpp").First(c => c.Name == name));
        Assert.Equal((bars, bars), (answer.Bars, answer.AtLeast));
    }

    [Fact]
    public void The_same_answer_twice()
    {
        var c = CuttingCase.Read(Folder, "falkenauer-binpack5.txt")[3];
        Assert.Equal(Solved(c).Fillings.Select(f => string.Join(',', f.Counts)), Solved(c).Fillings.Select(f => string.Join(',', f.Counts)));
    }

    [Fact]
    public void Lengths_that_cannot_be_cut_have_no_answer()
    {
        Assert.Null(StraightCuts.Of([101], [1], 100, new BarSolver()));
        Assert.Null(StraightCuts.Of([0], [1], 100, new BarSolver()));
        Assert.Null(StraightCuts.Of([10], [1], StraightCuts.MostUnits + 1, new BarSolver()));
    }

    private static string Folder => Repository.Path("tests", "fixtures", "cutting-stock");

    /// <summary>Solved, and counted again: nothing missing, no bar too full.</summary>
    private static StraightBars Solved(CuttingCase c)
    {
        var answer = StraightCuts.Of(c.Lengths, c.Wanted, c.Bar, new BarSolver())!;
        Assert.All(answer.Fillings, f => Assert.InRange(f.Counts.Select((n, i) => n * c.Lengths[i]).Sum(), 1, c.Bar));
        Assert.Equal(answer.Bars, answer.Fillings.Sum(f => f.Times));
        for (var i = 0; i < c.Lengths.Length; i++) Assert.True(answer.Fillings.Sum(f => f.Counts[i] * f.Times) >= c.Wanted[i]);
        return answer;
    }
}
