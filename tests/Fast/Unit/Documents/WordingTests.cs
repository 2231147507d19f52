using Tangwright.Core;
using Tangwright.Documents;
using Tangwright.Foundation;

namespace Tangwright.Tests;

public class WordingTests
{
    [Theory]
    [InlineData(UnitsShown.Mm, "275.00 mm")]
    [InlineData(UnitsShown.Inch, "10.827 in")]
    [InlineData(UnitsShown.Both, "275.00 mm (10.827 in)")]
    public void Sizes_in_the_units_asked_for(UnitsShown units, string expected)
        => Assert.Equal(expected, FigureText.Size(Length.OfMm(275), units));

    [Theory]
    [InlineData(UnitsShown.Mm, "549 g")]
    [InlineData(UnitsShown.Inch, "19.4 oz")]
    [InlineData(UnitsShown.Both, "36.5 g (1.29 oz)")]
    public void Weights_in_the_units_asked_for(UnitsShown units, string expected)
        => Assert.Equal(expected, FigureText.Weight(Mass.OfGrams(units == UnitsShown.Both ? 36.5 : 549), units));

    /// <summary>1 in = 25.4 mm exactly, so 1 in² = 645.16 mm².</summary>
    [Fact]
    public void Areas_have_their_thousands_apart()
        => Assert.Equal("1 234 567 mm² (1913.58 in²)", FigureText.Surface(Area.OfMm2(1234567), UnitsShown.Both));

    [Fact]
    public void A_drill_that_is_not_owned_names_its_neighbours()
    {
        var shop = ExamplePieces.Hatchet().Shop with { Drills = [new("14 mm", Length.OfMm(14)), new("9/16 in", Length.OfInches(0.5625)), new("16 mm", Length.OfMm(16))] };
        PlacedHole Hole(double d, HoleMake make = HoleMake.Drill) => new("H", default, Length.OfMm(d), "", HoleUse.Pin, make, null);
        Assert.Equal(("drill 14 mm", ""), DrillText.For(Hole(14), shop));
        Assert.Equal(("drill 9/16 in", ""), DrillText.For(Hole(14.29), shop));
        Assert.Equal(("NOT OWNED; near", "9/16 in, 16 mm"), DrillText.For(Hole(15), shop));
        Assert.Equal(("NOT OWNED; near", "16 mm"), DrillText.For(Hole(20), shop));
        Assert.Equal(("NO REAMER OWNED", ""), DrillText.For(Hole(5, HoleMake.Ream), shop with { Reamers = [] }));
    }

    [Fact]
    public void Wanted_beside_found_says_when_it_is_outside()
    {
        var results = ExamplePieces.Hatchet();
        var balance = FigureLine.OfTargets(results, UnitsShown.Mm).Single(l => l.Name == "Balance from datum");
        Assert.Equal(("110 ± 5 mm", true), (balance.Wanted, balance.Within));
        var strict = results with { Plan = results.Plan with { Target = results.Plan.Target with { BalanceFromDatum = Length.OfMm(90) } } };
        Assert.False(FigureLine.OfTargets(strict, UnitsShown.Mm).Single(l => l.Name == "Balance from datum").Within);
    }

    [Fact]
    public void Oil_is_spoken_of_only_where_there_is_oil()
    {
        static string Words(Results r) => string.Join(" ", Caution.For(r).SelectMany(c => c.Lines));
        var oil = ExamplePieces.Hatchet();
        Assert.Contains("flash point", Words(oil), StringComparison.Ordinal);
        Assert.DoesNotContain("flash point", Words(oil with { Shop = oil.Shop with { Quenchant = new Quenchant("plates", null) } }), StringComparison.Ordinal);
        Assert.DoesNotContain(Caution.For(oil with { Holes = [] }), c => c.Title == "Drilling");
    }
}
