using Tangwright.Core;
using Tangwright.Inputs;

namespace Tangwright.Tests.Heat;

/// <summary>Critical points: each formula by hand on seven compositions, to a tenth of a degree, and against temperatures published for real grades.</summary>
public class CriticalPointsPrinted
{
    /// <summary>Compositions the figures were worked on, independent of the steel files.</summary>
    internal static Chemistry Steel(string name) => name switch
    {
        "8670" => new Chemistry { CarbonPercent = .70, ManganesePercent = .50, SiliconPercent = .25, NickelPercent = .90, ChromiumPercent = .45, MolybdenumPercent = .10 },
        "1084" => new Chemistry { CarbonPercent = .84, ManganesePercent = .75, SiliconPercent = .20 },
        "1095" => new Chemistry { CarbonPercent = .95, ManganesePercent = .40, SiliconPercent = .20 },
        "5160" => new Chemistry { CarbonPercent = .60, ManganesePercent = .88, SiliconPercent = .25, ChromiumPercent = .80 },
        "4340" => new Chemistry { CarbonPercent = .40, ManganesePercent = .70, SiliconPercent = .25, NickelPercent = 1.80, ChromiumPercent = .80, MolybdenumPercent = .25 },
        "52100g" => new Chemistry { CarbonPercent = .65, ManganesePercent = .35, SiliconPercent = .25, ChromiumPercent = 1.1 },
        _ => new Chemistry { CarbonPercent = .75, ManganesePercent = 1.15, SiliconPercent = .30, ChromiumPercent = .40 },
    };

    /// <summary>Ae1 and Ae3 of Andrews (JISI 203, 1965; chromium minus), Grange (Metal Progress 79, 1961), Ac1 and Ac3 of Hougardy (1984) and Trzaska (2016), worked by hand from the print.</summary>
    [Theory]
    [InlineData("8670", 717.3, 720.9, 718.9, 716.3, 716.5, 703.8, 708.3, 734.9)]
    [InlineData("1084", 720.8, 710.4, 716.8, 702.2, 715.7, 683.3, 709.7, 726.8)]
    [InlineData("1095", 724.5, 709.1, 721.7, 687.3, 715.7, 659.1, 711.5, 716.5)]
    [InlineData("5160", 734.4, 728.7, 734.8, 744.3, 731.3, 740.1, 728.3, 759.0)]
    [InlineData("4340", 705.9, 743.5, 711.3, 750.7, 716.9, 760.3, 702.0, 765.8)]
    [InlineData("52100g", 745.1, 734.9, 749.1, 742.2, 738.1, 731.6, 739.1, 755.7)]
    [InlineData("O1g", 726.2, 708.7, 722.8, 716.6, 720.7, 701.8, 714.4, 739.0)]
    public void Austenite(string name, double ae1, double ae3, double grange1, double grange3, double hougardy1, double hougardy3, double trzaska1, double trzaska3)
    {
        var x = Steel(name);
        Assert.Equal(ae1, AndrewsCritical.LowerCelsius(x), 0.06);
        Assert.Equal(ae3, AndrewsCritical.UpperCelsius(x), 0.06);
        Assert.Equal(grange1, GrangeCritical.LowerCelsius(x), 0.06);
        Assert.Equal(grange3, GrangeCritical.UpperCelsius(x), 0.06);
        Assert.Equal(hougardy1, HougardyCritical.LowerCelsius(x), 0.06);
        Assert.Equal(hougardy3, HougardyCritical.UpperCelsius(x), 0.06);
        Assert.Equal(trzaska1, TrzaskaCritical.LowerCelsius(x), 0.06);
        Assert.Equal(trzaska3, TrzaskaCritical.UpperCelsius(x), 0.06);
    }

    /// <summary>Eldis by hand: 4340, 712 − 17.8·0.7 − 19.1·1.8 + 20.1·0.25 + 11.9·0.8 + 9.8·0.25 and 871 − 254.4·0.4 − 14.2·1.8 + 51.7·0.25.</summary>
    [Fact]
    public void Eldis()
    {
        Assert.Equal(682.155, EldisCritical.LowerCelsius(Steel("4340")), 0.001);
        Assert.Equal(756.605, EldisCritical.UpperCelsius(Steel("4340")), 0.001);
    }

    /// <summary>Bainite and martensite starts: Steven and Haynes (JISI 183, 1956), Li (1998), Trzaska (2016), Andrews, Kung and Rayment, van Bohemen (2012), Barbier (2014), Ingber and Kunert (2022).</summary>
    [Theory]
    [InlineData("8670", 522.9, 546.0, 482.1, 205.6, 245.5, 203.7, 187.7, 215.5, 230.8, 229.4, 245.0, 0.01379)]
    [InlineData("1084", 535.7, 562.0, 502.9, 160.9, 239.6, 159.4, 138.1, 175.1, 207.0, 205.2, 216.8, 0.01259)]
    [InlineData("1095", 537.5, 567.9, 513.6, 125.0, 250.3, 123.5, 97.5, 143.6, 191.0, 190.9, 194.0, 0.01180)]
    [InlineData("5160", 532.8, 544.2, 480.8, 248.8, 260.1, 246.9, 234.0, 254.9, 263.8, 259.9, 273.6, 0.01490)]
    [InlineData("4340", 515.6, 524.8, 463.6, 305.1, 303.1, 303.2, 298.8, 304.9, 305.3, 298.8, 313.4, 0.01761)]
    [InlineData("52100g", 546.0, 549.6, 493.3, 240.1, 261.1, 238.2, 222.6, 249.7, 261.4, 260.2, 269.7, 0.01436)]
    [InlineData("O1g", 496.0, 539.6, 462.3, 182.0, 218.4, 179.7, 160.8, 190.1, 213.5, 210.0, 222.8, 0.01328)]
    public void Bainite_and_martensite(string name, double bsSteven, double bsLi, double bsTrzaska, double andrews, double product, double kung, double steven, double trzaska, double bohemen, double barbier, double ingber, double alpha)
    {
        var x = Steel(name);
        Assert.Equal(bsSteven, BainiteStart.StevenHaynesCelsius(x), 0.06);
        Assert.Equal(bsLi, BainiteStart.LiCelsius(x), 0.06);
        Assert.Equal(bsTrzaska, BainiteStart.TrzaskaCelsius(x), 0.06);
        Assert.Equal(andrews, MartensiteStart.AndrewsCelsius(x), 0.06);
        Assert.Equal(product, MartensiteStart.AndrewsProductCelsius(x), 0.06);
        Assert.Equal(kung, MartensiteStart.KungRaymentCelsius(x), 0.06);
        Assert.Equal(steven, MartensiteStart.StevenHaynesCelsius(x), 0.06);
        Assert.Equal(trzaska, MartensiteStart.TrzaskaCelsius(x), 0.06);
        Assert.Equal(bohemen, MartensiteStart.Celsius(x), 0.06);
        Assert.Equal(barbier, MartensiteStart.BarbierCelsius(x), 0.06);
        Assert.Equal(ingber, MartensiteStart.IngberCelsius(x), 0.06);
        Assert.Equal(alpha, RetainedAustenite.Alpha(x), 0.000006);
    }

    /// <summary>Austenite left at room temperature, after a freezer and after dry ice: the law with 0.011 on Andrews' start (Koistinen and Marburger 1959) and van Bohemen's.</summary>
    [Theory]
    [InlineData("8670", 0.137, 0.084, 0.046, 0.059, 0.031, 0.015)]
    [InlineData("1084", 0.224, 0.137, 0.075, 0.101, 0.057, 0.029)]
    [InlineData("1095", 0.333, 0.203, 0.111, 0.141, 0.083, 0.043)]
    [InlineData("5160", 0.085, 0.052, 0.028, 0.028, 0.015, 0.006)]
    [InlineData("4340", 0.046, 0.028, 0.015, 0.007, 0.003, 0.001)]
    [InlineData("52100g", 0.094, 0.057, 0.031, 0.034, 0.018, 0.008)]
    [InlineData("O1g", 0.178, 0.108, 0.059, 0.082, 0.045, 0.022)]
    public void Austenite_left(string name, double km25, double kmFreezer, double kmIce, double at25, double freezer, double ice)
    {
        var x = Steel(name);
        double Old(double t) => RetainedAustenite.Share(RetainedAustenite.KoistinenMarburgerRatio, MartensiteStart.AndrewsCelsius(x), t);
        Assert.Equal((km25, kmFreezer, kmIce), (Math.Round(Old(25), 3), Math.Round(Old(-20), 3), Math.Round(Old(-75), 3)));
        Assert.Equal(at25, RetainedAustenite.Share(x, 25), 0.0006);
        Assert.Equal(freezer, RetainedAustenite.Share(x, -20), 0.0006);
        Assert.Equal(ice, RetainedAustenite.Share(x, -75), 0.0006);
    }

    /// <summary>The classic eutectoid curve (0.79 C, 0.76 Mn) shows Ms at about 220 °C; the straight formula says 182.</summary>
    [Fact]
    public void The_bent_formula_meets_the_eutectoid_steel()
    {
        var x = new Chemistry { CarbonPercent = .79, ManganesePercent = .76 };
        Assert.Equal(220, MartensiteStart.Celsius(x), 5.0);
        Assert.True(MartensiteStart.AndrewsCelsius(x) < 190);
    }

    /// <summary>The iron-carbon diagram: 0.77 % at 727 °C, 2.11 % at 1148 °C.</summary>
    [Fact]
    public void Full_solution()
    {
        Assert.Equal(727, AcmLine.Celsius(0.77), 1e-9);
        Assert.Equal(1148, AcmLine.Celsius(2.11), 1e-9);
        Assert.Equal(1.0, AcmLine.CarbonPercent(AcmLine.Celsius(1.0)), 1e-12);
    }

    /// <summary>Published sheets: D2 788 and 845 °C, A2 793 °C. They stand in the steel files; the formulas for low-alloy steel are not used for them.</summary>
    [Fact]
    public void High_alloy_steel_has_its_own()
    {
        Assert.Equal((788, 845.0), (SteelList.BuiltIn.Find("D2")!.Heat.Critical!.Ac1.Celsius, SteelList.BuiltIn.Find("D2")!.Heat.Critical!.Ac3!.Value.Celsius));
        Assert.False(SteelList.BuiltIn.Find("A2")!.Chemistry!.Value.IsLowAlloy);
    }
}
