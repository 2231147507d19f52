using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.Tests.Heat;

/// <summary>Cooling against the exact series of the plane wall and the lumped limit.</summary>
public class CoolingPrinted
{
    /// <summary>First roots and factors of the plane wall as the textbooks print them (Incropera and DeWitt, table 5.1).</summary>
    [Theory]
    [InlineData(.01, .09983, 1.00166)]
    [InlineData(.1, .31105, 1.01609)]
    [InlineData(1, .86033, 1.11913)]
    [InlineData(10, 1.42887, 1.26196)]
    [InlineData(100, 1.55525, 1.27309)]
    public void Roots(double biot, double root, double factor)
    {
        var z = SlabSeries.RootRadians(biot);
        Assert.Equal(root, z, 0.00001);
        Assert.Equal(factor, SlabSeries.Factor(z), 0.00001);
    }

    /// <summary>A 6.35 mm plate from 830 to 500 °C in the middle, bath 25 °C, k 27, cp 620, 7800 kg/m³: the series of the plane wall, and the lumped law beside it.</summary>
    [Theory]
    [InlineData(300, 27.617, 26.999)]
    [InlineData(1000, 8.717, 8.100)]
    [InlineData(2000, 4.666, 4.050)]
    [InlineData(5000, 2.233, 1.620)]
    public void Meets_the_series_in_two_parts_in_a_thousand(double h, double seconds, double lumped)
    {
        const double mm = 6.35, k = 27, cp = 620, rho = 7800;
        var run = SlabCooling.Of(mm, 830, 25, _ => h, null, 499, HeatProperties.Fixed(rho, k, cp));
        var half = 0.0005 * mm;
        var fourier = Bracket.Root(f => SlabSeries.Share(h * half / k, f, 0) - ((500.0 - 25) / (830 - 25)), 0.01, 500, 1e-10);
        Assert.Equal(1, seconds / (fourier * half * half * rho * cp / k), 0.0005);
        Assert.Equal(1, run.Seconds(500)!.Value / seconds, 0.002);
        Assert.Equal(lumped, rho * cp * half / h * Math.Log(805.0 / 475), 0.001);
    }

    /// <summary>At Bi 1e-3 the plate is as good as lumped.</summary>
    [Fact]
    public void Thin_and_slow_is_lumped()
    {
        var run = SlabCooling.Of(1, 830, 25, _ => 54, null, 499, HeatProperties.Fixed(7800, 27, 620));
        Assert.Equal(1, run.Seconds(500)!.Value / (7800 * 620 * 0.0005 / 54 * Math.Log(805.0 / 475)), 0.002);
    }

    /// <summary>Plates in fast oil at 50 °C from 830 °C with the properties of austenite, without the heat of changes: times and rates of another solver on the same figures.</summary>
    [Theory]
    [InlineData(1.5, 1.04, 228, 1.29, 805, 4.0)]
    [InlineData(3, 1.98, 130, 2.49, 345, 8.2)]
    [InlineData(6.35, 3.92, 82, 5.02, 122, 18.3)]
    [InlineData(8, 4.84, 78, 6.23, 86, 23.7)]
    public void Plates_in_fast_oil(double mm, double from800To500, double rateAt700, double to540, double rateAt550, double to200)
    {
        var oil = QuenchList.BuiltIn.Find("fast oil")!;
        var run = SlabCooling.Of(mm, 830, 50, t => oil.TransferWPerM2K(t, 50), null, 100);
        Assert.Equal(1, (run.Seconds(500)!.Value - run.Seconds(800)!.Value) / from800To500, 0.02);
        Assert.Equal(1, run.CPerSecond(700)!.Value / rateAt700, 0.03);
        Assert.Equal(1, run.Seconds(540)!.Value / to540, 0.02);
        Assert.Equal(1, run.CPerSecond(550)!.Value / rateAt550, 0.05);
        Assert.Equal(1, run.Seconds(200)!.Value / to200, 0.02);
    }

    /// <summary>Specific heat and conductivity as EN 1993-1-2 gives them.</summary>
    [Theory]
    [InlineData(20, 439.8, 53.3)]
    [InlineData(200, 529.8, 47.3)]
    [InlineData(400, 605.9, 40.7)]
    [InlineData(600, 760.2, 34.0)]
    [InlineData(700, 1008.2, 30.7)]
    [InlineData(735, 5000, 29.5)]
    [InlineData(750, 1482.9, 29.0)]
    [InlineData(800, 803.3, 27.3)]
    [InlineData(900, 650, 27.3)]
    public void Steel_while_it_is_heated(double celsius, double heat, double conductivity)
    {
        Assert.Equal(heat, SteelHeatCapacity.JPerKgK(celsius), 0.06);
        Assert.Equal(conductivity, SteelConductivity.WPerMK(celsius), 0.06);
    }

    /// <summary>Minutes to 805 and to 750 °C in an oven at 815 °C, worked apart from this program on the same figures; in foil twice to three times as long.</summary>
    [Theory]
    [InlineData(1.5, 122, 79)]
    [InlineData(3, 245, 159)]
    [InlineData(4, 327, 212)]
    [InlineData(6.35, 518, 337)]
    [InlineData(8, 653, 424)]
    public void Coming_to_heat(double mm, double to805, double to750)
    {
        Assert.Equal(1, OvenHeating.Seconds(mm, 815, 805) / to805, 0.02);
        Assert.Equal(1, OvenHeating.Seconds(mm, 815, 750) / to750, 0.02);
        Assert.InRange(OvenHeating.Seconds(mm, 815, 805, AirCooling.BrightRatio) / to805, 2, 3);
    }

    /// <summary>Black body at 1000 K: 56.7 kW/m² (Stefan and Boltzmann); facing strips as far apart as they are high: view factor √2 − 1 (Hottel's strings, a textbook case).</summary>
    [Fact]
    public void Radiation()
    {
        Assert.Equal(56_704, (AirCooling.TransferWPerM2K(726.85, -273.15, 1) - AirCooling.ConvectionWPerM2K) * 1000, 1.0);
        Assert.Equal(1 - (Math.Sqrt(2) - 1), RackView.OpenShare(50, 50), 1e-12);
    }

    /// <summary>Stainless steel in still air from 1065 to 500 °C, lumped: 39, 79 and 131 s; between plates at 1000 W/m²K 2.9, 5.8 and 9.6 s.</summary>
    [Theory]
    [InlineData(1.5, 39, 2.9)]
    [InlineData(3, 79, 5.8)]
    [InlineData(5, 131, 9.6)]
    public void Air_and_plates(double mm, double air, double plates)
    {
        var (still, pressed) = (QuenchList.BuiltIn.Find("still air")!, QuenchList.BuiltIn.Find("plates")!);
        Assert.Equal(1, SlabCooling.Of(mm, 1065, 25, t => still.TransferWPerM2K(t, 25), null, 480).Seconds(500)!.Value / air, 0.06);
        Assert.Equal(1, SlabCooling.Of(mm, 1065, 25, t => pressed.TransferWPerM2K(t, 25), null, 480).Seconds(500)!.Value / plates, 0.09);
    }

    /// <summary>Thickness with 1 and 10 % pearlite in the middle, worked by another solver without the heat of the change, which this one counts: within a tenth, a quarter where much has turned. Practice: 1095 in oil only below 3/16 in.</summary>
    [Theory]
    [InlineData(.75, .60, .20, 0, 815, "mineral oil", 1.2, 4.4)]
    [InlineData(.75, .60, .20, 0, 815, "fast oil", 1.5, 5.1)]
    [InlineData(.77, .75, .20, 0, 815, "mineral oil", 2.6, 8.2)]
    [InlineData(.77, .75, .20, 0, 815, "fast oil", 3.2, 8.8)]
    [InlineData(.77, .40, .20, 0, 800, "fast oil", double.NaN, 2.5)]
    [InlineData(.75, .50, .30, .50, 840, "fast oil", 3.9, double.NaN)]
    public void Limit_thickness(double c, double mn, double si, double cr, double from, string medium, double onePercent, double tenPercent)
    {
        var decay = new AusteniteDecay(new Chemistry { CarbonPercent = c, ManganesePercent = mn, SiliconPercent = si, ChromiumPercent = cr });
        var oil = QuenchList.BuiltIn.Find(medium)!;
        double Soft(double mm) => SlabCooling.Of(mm, from, 50, t => oil.TransferWPerM2K(t, 50), decay, 60).Centre!.Value.PearliteShare;
        if (double.IsFinite(onePercent)) Assert.Equal(1, Bracket.Root(mm => Soft(mm) - 0.01, 0.5, 12, 0.01) / onePercent, 0.1);
        if (double.IsFinite(tenPercent)) Assert.Equal(1, Bracket.Root(mm => Soft(mm) - 0.10, 0.5, 12, 0.01) / tenPercent, 0.1);
    }

    /// <summary>A section of one thickness is the plate; a thin edge before a thick spine is kept warm by it.</summary>
    [Fact]
    public void A_section_of_one_thickness_is_the_plate()
    {
        var decay = new AusteniteDecay(new Chemistry { CarbonPercent = .77, ManganesePercent = .40, SiliconPercent = .20 });
        var oil = QuenchList.BuiltIn.Find("fast oil")!;
        double Transfer(double t) => oil.TransferWPerM2K(t, 50);
        var plate = SlabCooling.Of(3, 800, 50, Transfer, decay, 60).Centre!.Value.PearliteShare;
        Assert.All(SectionCooling.Of([3, 3, 3, 3], 2, 800, 50, Transfer, decay, 60), c => Assert.Equal(1, c.PearliteShare / plate, 0.03));
        var wedge = SectionCooling.Of([1, 2, 3, 4, 5], 2, 800, 50, Transfer, decay, 60);
        Assert.True(wedge[0].PearliteShare > SlabCooling.Of(1, 800, 50, Transfer, decay, 60).Centre!.Value.PearliteShare);
        Assert.True(wedge[^1].PearliteShare < SlabCooling.Of(5, 800, 50, Transfer, decay, 60).Centre!.Value.PearliteShare);
    }

    /// <summary>One hatchet of 459 g in 15 L: 10 °C by the rule of a gallon a pound (38 °C, common practice), 8 to 9 by its heat; a kilogram in 8 L of oil about 33 °C.</summary>
    [Fact]
    public void Bath()
    {
        Assert.Equal(9.7, OilBath.RuleRiseC(459, 15), 0.05);
        Assert.Equal(38, OilBath.RuleRiseC(453.59237, 3.785411784), 1e-9);
        Assert.InRange(OilBath.HeatRiseC(459, 815, 60, 15, isWater: false), 7.5, 9.5);
        Assert.Equal(33, OilBath.HeatRiseC(1000, 815, 60, 8, isWater: false), 4.0);
    }

    /// <summary>Skin: depth with nine tenths of the carbon 63, 54, 77, 95 and 353 µm, worked from the diffusion law; scale on iron 52 µm at 815 °C in 10 min, of which 29 was steel.</summary>
    [Theory]
    [InlineData(790, 10, 63)]
    [InlineData(815, 5, 54)]
    [InlineData(815, 10, 77)]
    [InlineData(845, 10, 95)]
    [InlineData(1065, 10, 353)]
    public void Skin(double celsius, double minutes, double um)
    {
        Assert.Equal(um, 1000 * SurfaceLoss.CarbonMm(Temperature.OfCelsius(celsius), minutes), 1.0);
        Assert.Equal(29, 1000 * SurfaceLoss.ScaleMm(Temperature.OfCelsius(815), 10), 0.6);
    }
}
