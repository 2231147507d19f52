using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Tests.Heat;

/// <summary>Ideal diameter, divisors and severity against ASTM A255 and the exact series.</summary>
public class HardenabilityPrinted
{
    /// <summary>ASTM A255, its own example SAE 4118 modified: factors and 1.95 in with rounded factors.</summary>
    [Fact]
    public void The_standard_s_example()
    {
        var x = new Chemistry { CarbonPercent = .22, ManganesePercent = .80, SiliconPercent = .18, NickelPercent = .10, ChromiumPercent = .43, MolybdenumPercent = .25, CopperPercent = .10, VanadiumPercent = .05 };
        double[] factors = [IdealDiameter.Carbon(.22), IdealDiameter.Manganese(.80), IdealDiameter.Silicon(.18), IdealDiameter.Nickel(.10), IdealDiameter.Chromium(.43), IdealDiameter.Molybdenum(.25), IdealDiameter.Copper(.10), IdealDiameter.Vanadium(.05)];
        double[] printed = [.119, 3.667, 1.126, 1.036, 1.929, 1.75, 1.04, 1.09];
        Assert.All(factors.Zip(printed), p => Assert.Equal(p.Second, p.First, 0.0036));
        Assert.Equal(1.95, printed.Aggregate(1.0, (a, b) => a * b), 0.006);
        Assert.Equal(1.9321, IdealDiameter.Of(x).Inches, 0.0001);
        Assert.True(IdealDiameter.IsInRange(x));
    }

    /// <summary>Where the pieces of the factors of ASTM A255 meet.</summary>
    [Theory]
    [InlineData(.39, .2106)]
    [InlineData(.55, .25171)]
    [InlineData(.5500001, .25091)]
    [InlineData(.65, .27315)]
    [InlineData(.6500001, .27300)]
    [InlineData(.75, .29300)]
    [InlineData(.7500001, .29281)]
    [InlineData(.90, .32075)]
    [InlineData(1.05, .32075)]
    public void Carbon_joints(double percent, double factor) => Assert.Equal(factor, IdealDiameter.Carbon(percent), 0.000006);

    [Fact]
    public void Manganese_and_nickel_joints()
    {
        Assert.Equal(5.000, IdealDiameter.Manganese(1.2), 0.001);
        Assert.Equal(5.000, IdealDiameter.Manganese(1.2000001), 0.001);
        Assert.Equal(1.5445, IdealDiameter.Nickel(1.5), 0.00006);
        Assert.Equal(1.5424, IdealDiameter.Nickel(1.5000001), 0.00006);
    }

    /// <summary>Ideal diameters of nominal compositions, worked from the standard's factors.</summary>
    [Theory]
    [InlineData("8670", 3.016)]
    [InlineData("1084", 1.238)]
    [InlineData("1095", 0.853)]
    [InlineData("5160", 3.305)]
    [InlineData("4340", 6.714)]
    [InlineData("52100g", 2.348)]
    public void Nominal(string steel, double inches) => Assert.Equal(inches, IdealDiameter.Of(CriticalPointsPrinted.Steel(steel)).Inches, 0.0016);

    /// <summary>Nine water-hardening heats measured in brine (Tool Steels, table 7-3): 0.70 of the standard's figure brings the mean to within 3 % and each within a quarter.</summary>
    [Fact]
    public void Carbon_steel_hardens_shallower_than_the_factors_say()
    {
        (double C, double Mn, double Si, double Cr, double Ni, double Seen)[] heats =
        [
            (1.07, .15, .09, .10, .05, .335), (1.07, .34, .22, .03, .10, .606), (1.00, .24, .17, .09, .07, .606), (1.04, .29, .16, .15, .14, .660), (1.00, .31, .28, .13, .07, .762),
            (.97, .46, .29, .17, .05, .970), (.99, .36, .31, .15, .17, .921), (.98, .50, .37, .23, .12, 1.075), (.94, .45, .36, .21, .16, 1.176),
        ];
        var ratios = heats.Select(h => h.Seen / CarbonSteelBias.Of(new Chemistry { CarbonPercent = h.C, ManganesePercent = h.Mn, SiliconPercent = h.Si, ChromiumPercent = h.Cr, NickelPercent = h.Ni }).Inches).ToArray();
        Assert.Equal(1, ratios.Average(), 0.03);
        Assert.All(ratios, r => Assert.InRange(r, CarbonSteelBias.LowFactor / CarbonSteelBias.UsualFactor - 0.01, CarbonSteelBias.HighFactor / CarbonSteelBias.UsualFactor + 0.01));
    }

    /// <summary>Divisors of ASTM A255 at 75 and 100 mm, and their clamps: the polynomial at 3 mm gives 2.4 at 75 mm and 411 at 150.</summary>
    [Theory]
    [InlineData(5, 75, 1.029)]
    [InlineData(7, 75, 1.109)]
    [InlineData(9, 75, 1.271)]
    [InlineData(13, 75, 1.464)]
    [InlineData(20, 75, 1.770)]
    [InlineData(30, 75, 2.040)]
    [InlineData(50, 75, 2.412)]
    [InlineData(9, 100, 1.089)]
    [InlineData(15, 100, 1.263)]
    [InlineData(25, 100, 1.541)]
    [InlineData(50, 100, 1.889)]
    [InlineData(3, 75, 1)]
    [InlineData(3, 150, 1)]
    [InlineData(5, 150, 1)]
    public void Divisors(double distance, double ideal, double divisor) => Assert.Equal(divisor, JominyHardness.DivisorRatio(JominyHardness.DistancesMm.IndexOf(distance), ideal), 0.0006);

    /// <summary>The standard's example along the bar: IH 45.6 at 49.5 mm.</summary>
    [Fact]
    public void Along_the_bar()
    {
        var along = JominyHardness.Along(45.6, 49.5);
        (double Mm, double Hrc)[] printed = [(3, 45.0), (5, 40.1), (7, 34.1), (9, 26.7), (13, 22.8), (20, 18.9), (50, 13.8)];
        Assert.All(printed, p => Assert.Equal(p.Hrc, along[JominyHardness.DistancesMm.IndexOf(p.Mm)], 0.15));
    }

    /// <summary>Ideal diameter needed, inch, from equal half-temperature times of the exact series of round and plate, worked apart from this program.</summary>
    [Theory]
    [InlineData(true, 0.25, 0.25, 1.340)]
    [InlineData(true, 0.5, 0.5, 1.412)]
    [InlineData(true, 1, 1, 1.669)]
    [InlineData(true, 2, 5, 2.186)]
    [InlineData(false, 0.0625, 0.25, 0.934)]
    [InlineData(false, 0.125, 0.35, 1.125)]
    [InlineData(false, 0.25, 0.25, 1.892)]
    [InlineData(false, 0.25, 0.5, 1.361)]
    [InlineData(false, 0.25, 5, 0.544)]
    [InlineData(false, 0.3125, 10, 0.546)]
    public void Needed(bool isRound, double inches, double severity, double needed)
    {
        var size = Length.OfInches(inches);
        Assert.Equal(needed, (isRound ? GrossmannPlate.NeededByRound(size, severity) : GrossmannPlate.NeededBy(size, severity)).Inches, 0.0013);
    }

    /// <summary>The same relation from the series this program has: a plate takes as long to half as the ideal round of that diameter (0.20052 of the radius squared).</summary>
    [Theory]
    [InlineData(3.0, 0.3)]
    [InlineData(6.35, 0.5)]
    [InlineData(8.0, 1.5)]
    public void Needed_by_the_series(double mm, double severity)
    {
        var biot = severity * mm / 25.4; // h L / k = (h / 2k) T
        var fourier = Bracket.Root(f => SlabSeries.Share(biot, f, 0) - 0.5, 0.01, 200, 1e-9);
        var ideal = 2 * Math.Sqrt(fourier * mm * mm / 4 / 0.20052);
        Assert.Equal(1, GrossmannPlate.NeededBy(Length.OfMm(mm), severity).Mm / ideal, 0.001);
    }
}
