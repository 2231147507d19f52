using Tangwright.Core;

namespace Tangwright.Tests.Heat;

/// <summary>Changes of austenite against the paper of Li and others (1998) and figures worked from its equations.</summary>
public class KineticsPrinted
{
    private static readonly Chemistry Case = new() { CarbonPercent = .40, ManganesePercent = .80, SiliconPercent = .25, NickelPercent = .10, ChromiumPercent = 1.0, MolybdenumPercent = .20 };

    private static readonly Chemistry Eutectoid = new() { CarbonPercent = .79, ManganesePercent = .76, SiliconPercent = .20 };

    /// <summary>S(X) by quadrature; the paper says S(0.01)/S(0.001) is about 4 and S(1)/S(0.01) 19.9.</summary>
    [Theory]
    [InlineData(.001, .02639)]
    [InlineData(.01, .10434)]
    [InlineData(.5, 1.02588)]
    [InlineData(.99, 1.94742)]
    [InlineData(.999, 2.02538)]
    [InlineData(1, 2.05176)]
    public void Sums(double share, double sum) => Assert.Equal(sum, TransformationShare.Sum(share), 0.0001);

    [Fact]
    public void Factors_and_times()
    {
        Assert.Equal(5707.3, TransformationTime.SteelFactor(Product.Ferrite, Case), 0.1);
        Assert.Equal(914.19, TransformationTime.SteelFactor(Product.Pearlite, Case), 0.01);
        Assert.Equal(.011667, TransformationTime.SteelFactor(Product.Bainite, Case), 0.000001);
        Assert.Equal(73.8, Seconds(Product.Ferrite, 784.57, 620, .01), 0.1);
        Assert.Equal(48.2, Seconds(Product.Pearlite, 736.92, 600, .01), 0.1);
        Assert.Equal(900, Seconds(Product.Pearlite, 736.92, 600, .99), 1.0);
        Assert.Equal(5.71, Seconds(Product.Bainite, 542.10, 460, .01), 0.01);
        Assert.Equal(736.92, AndrewsCritical.LowerCelsius(Case), 0.01);
        Assert.Equal(542.10, BainiteStart.LiCelsius(Case), 0.01);

        static double Seconds(Product p, double top, double at, double share) => TransformationTime.UnitSeconds(p, TransformationTime.SteelFactor(p, Case), top, at, 8) * TransformationShare.Sum(share);
    }

    /// <summary>1080 of grain 6: 1.23 s at 550 °C, 2.81 at 650, 23.0 for 99 %.</summary>
    [Fact]
    public void Eutectoid_steel()
    {
        var decay = new AusteniteDecay(Eutectoid, 6);
        Assert.Equal(11.094, TransformationTime.SteelFactor(Product.Pearlite, Eutectoid), 0.001);
        Assert.Equal(1.23, decay.Seconds(Product.Pearlite, 550, .01), 0.01);
        Assert.Equal(2.81, decay.Seconds(Product.Pearlite, 650, .01), 0.01);
        Assert.Equal(23.0, decay.Seconds(Product.Pearlite, 550, .99), 0.1);
    }

    /// <summary>Critical rates of the paper's table II: 4140 24.8 and 4340 6.4 °C/s, both by bainite.</summary>
    [Fact]
    public void Critical_rates_of_the_paper()
    {
        var c4140 = new AusteniteDecay(new Chemistry { CarbonPercent = .38, ManganesePercent = .81, SiliconPercent = .28, NickelPercent = .11, ChromiumPercent = .98, MolybdenumPercent = .22 });
        var c4340 = new AusteniteDecay(new Chemistry { CarbonPercent = .41, ManganesePercent = .74, SiliconPercent = .25, NickelPercent = 1.72, ChromiumPercent = .77, MolybdenumPercent = .27 });
        Assert.Equal(1, c4140.CriticalCPerSecond(Product.Bainite) / 24.8, 0.08);
        Assert.Equal(1, c4340.CriticalCPerSecond(Product.Bainite) / 6.4, 0.08);
    }

    /// <summary>Noses worked from the equations at grain 8, beside what is drawn in the books: 1080 about 540 to 550 °C and 1 s; O1 10 to 20 s; 5160 4 to 5 s.</summary>
    [Theory]
    [InlineData(.79, .76, .20, 0, 0, 0, 567, .77)]
    [InlineData(.77, .75, .20, 0, 0, 0, 568, .68)]
    [InlineData(.75, .60, .20, 0, 0, 0, 569, .31)]
    [InlineData(.77, .40, .20, 0, 0, 0, 570, .14)]
    [InlineData(.60, .88, .25, 0, .80, 0, 577, 6.7)]
    [InlineData(.65, .35, .25, 0, 1.1, 0, 585, 1.8)]
    [InlineData(.75, 1.15, .30, 0, .4, 0, 572, 13)]
    [InlineData(.70, .50, .25, .90, .45, .10, 565, 20)]
    [InlineData(.70, .60, .25, 1.5, .8, .25, 561, 800)]
    public void Noses(double c, double mn, double si, double ni, double cr, double mo, double celsius, double seconds)
    {
        var nose = new AusteniteDecay(new Chemistry { CarbonPercent = c, ManganesePercent = mn, SiliconPercent = si, NickelPercent = ni, ChromiumPercent = cr, MolybdenumPercent = mo }).Nose(Product.Pearlite);
        Assert.Equal(celsius, nose.Celsius, 4.0);
        Assert.InRange(nose.Seconds / seconds, 0.87, 1.15);
    }

    /// <summary>Maynier's rates as Li prints them: 4140 27.6 °C/s, 4340 4.1; a soak at 845 °C of half an hour counts as 828 °C.</summary>
    [Fact]
    public void Maynier()
    {
        Assert.Equal(828, MaynierRates.SoakCelsius(845, 0.5), 1.0);
        Assert.Equal(27.6, MaynierRates.MartensiteCPerSecond(new Chemistry { CarbonPercent = .38, ManganesePercent = .81, NickelPercent = .11, ChromiumPercent = .98, MolybdenumPercent = .22 }, 826), 0.15);
        Assert.Equal(4.1, MaynierRates.MartensiteCPerSecond(new Chemistry { CarbonPercent = .41, ManganesePercent = .74, NickelPercent = 1.72, ChromiumPercent = .77, MolybdenumPercent = .27 }, 807), 0.05);
    }
}
