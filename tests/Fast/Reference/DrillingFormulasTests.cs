using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Tests;

/// <summary>Printed values of the drilling formulas, each with where it is printed.</summary>
public class DrillingFormulasTests
{
    /// <summary>Machinery's Handbook, 31st edition, pages 1152-1153: factors of the chisel edge. A at 0.15 is printed as 1.080, 2.3 % off the trend of its neighbours, and left out.</summary>
    [Theory]
    [InlineData(0.03, 1.000, 1.100, 0.001)]
    [InlineData(0.05, 1.005, 1.140, 0.003)]
    [InlineData(0.08, 1.015, 1.200, 0.006)]
    [InlineData(0.10, 1.020, 1.235, 0.010)]
    [InlineData(0.13, 1.040, 1.270, 0.017)]
    [InlineData(0.15, double.NaN, 1.310, 0.022)]
    [InlineData(0.18, 1.085, 1.355, 0.030)]
    [InlineData(0.20, 1.105, 1.380, 0.040)]
    [InlineData(0.25, 1.155, 1.445, 0.065)]
    [InlineData(0.30, 1.235, 1.500, 0.090)]
    [InlineData(0.35, 1.310, 1.575, 0.120)]
    [InlineData(0.40, 1.395, 1.620, 0.160)]
    public void Chisel_factors_as_printed(double share, double a, double b, double j)
    {
        var c = ChiselFactors.Of(share);
        if (!double.IsNaN(a)) Assert.InRange(c.AFactor / a, 0.99, 1.01);
        Assert.InRange(c.BFactor / b, 0.99, 1.01);
        Assert.Equal(j, c.JFactor, 0.003);
    }

    /// <summary>The same pages, worked example: 7/8 in standard drill, 200 HB, 0.008 in a turn, 350 rpm, wear 1.30: 10 298 N, 62.8 N·m, 2.30 kW with rounded factors.</summary>
    [Fact]
    public void Worked_example_of_the_handbook()
    {
        var (d, f) = (Length.OfInches(0.875), 0.008 * Length.MmPerInch);
        Assert.Equal(10298, DrillThrust.Of(24000, f, d, 0.18, 1.3).Newtons, 0.03 * 10298);
        var torque = DrillTorque.Of(24000, f, d, 0.18, 1.3);
        Assert.Equal(62.8, torque.NewtonMetres, 0.01 * 62.8);
        Assert.Equal(2300, Power.Of(torque, 350).Watts, 0.01 * 2300);
    }

    /// <summary>Recomputed bench sizes by the same formulas, Kd 24 000, sharp.</summary>
    [Theory]
    [InlineData(3.175, 0.06, 485, 351, 0.547)]
    [InlineData(6.00, 0.12, 1443, 1018, 2.996)]
    [InlineData(12.7, 0.20, 4296, 2800, 17.38)]
    public void Bench_sizes(double mm, double feed, double thrust, double split, double torque)
    {
        Assert.Equal(thrust, DrillThrust.Of(24000, feed, TestShop.Mm(mm), 0.18, 1).Newtons, 0.012 * thrust);
        Assert.Equal(split, DrillThrust.Of(24000, feed, TestShop.Mm(mm), 0.03, 1).Newtons, 0.012 * split);
        Assert.Equal(torque, DrillTorque.Of(24000, feed, TestShop.Mm(mm), 0.18, 1).NewtonMetres, 0.012 * torque);
    }

    /// <summary>A cutting-tool maker's catalogue, technical reference L068: 6 mm, 0.12 mm a turn, K 2.22.</summary>
    [Fact]
    public void The_second_model()
    {
        var (thrust, torque) = DrillThrustAlternative.Of(2.22, 0.12, TestShop.Mm(6));
        Assert.Equal(1252, thrust.Newtons, 1.0);
        Assert.Equal(2.12, torque.NewtonMetres, 0.01);
        Assert.Equal(2.22, DrillThrustAlternative.MaterialFactor(255), 1e-12);
        Assert.Equal(2.08, DrillThrustAlternative.MaterialFactor(150), 1e-12);
    }

    /// <summary>Handbook table from memory; the middle of two rows by a straight line.</summary>
    [Theory]
    [InlineData(180, 24000)]
    [InlineData(200, 24000)]
    [InlineData(250, 27500)]
    [InlineData(300, 31000)]
    [InlineData(450, 34000)]
    public void Work_factor(double hb, double kd) => Assert.Equal(kd, WorkFactor.Of(hb), 1e-9);

    /// <summary>From the model itself: a pilot as wide as the chisel edge leaves 47 to 52 % of the push before lips are shortened.</summary>
    [Fact]
    public void A_pilot_takes_about_half_of_the_push()
    {
        var whole = DrillThrust.Of(24000, 0.12, TestShop.Mm(6), 0.18, 1).Newtons;
        var c = ChiselFactors.Of(0.18);
        var terms = (0.05 * Math.Pow(0.12 * 6, 0.8) * c.BFactor, 0.007 * 36 * c.JFactor);
        Assert.Equal(732, whole * PilotRelief.ThrustShare(terms, 0.18, 0.18) / (1 - 0.18), 5.0);
        Assert.Equal(0.75, PilotRelief.TorqueShare(0.5), 1e-12);
    }

    /// <summary>Point lengths per diameter: 118, 135, 140 and 90 degrees; 1 in plate, 1/2 in drill of 118 degrees, 0.050 in through: 1.200 in.</summary>
    [Fact]
    public void Points_and_depths()
    {
        foreach (var (degrees, share) in new[] { (118, 0.3004), (135, 0.2071), (140, 0.1820), (90, 0.5) }) Assert.Equal(share, PointLength.Of(TestShop.Mm(1), Angle.OfDegrees(degrees)).Mm, 5e-5);
        Assert.Equal(1.200, ThroughDepth.Of(Length.OfInches(1), Length.OfInches(0.5), Angle.OfDegrees(118)).Inches, 5e-4);
        Assert.Equal(3.33, PointLength.Of(TestShop.Mm(1.05 * 6.35), Angle.OfDegrees(90)).Mm, 5e-3);
    }

    /// <summary>Common practice: up to three diameters in one go.</summary>
    [Fact]
    public void Pecks()
    {
        Assert.Null(PeckRule.For(TestShop.Mm(6), TestShop.Mm(2)));
        Assert.Equal(2, PeckRule.For(TestShop.Mm(6.35), TestShop.Mm(2))!.Value.Mm, 1e-9);
    }

    /// <summary>NAVEDTRA 14345, drill press: feeds 0.001 to 0.002 in up to 1/8 in, 0.004 to 0.007 in from 1/4 to 1/2 in. Tool steel 50 to 60 ft/min: common practice, inside the 50 to 70 taught there for alloy steel.</summary>
    [Fact]
    public void Speeds_and_feeds_as_taught()
    {
        Assert.Equal(0.001, DrillFeed.For(Length.OfInches(0.1)).Low / 25.4, 1e-12);
        Assert.Equal(0.007, DrillFeed.For(Length.OfInches(0.5)).High / 25.4, 1e-12);
        Assert.Equal(815, CuttingSpeed.OfFeetPerMin(80).TurnsPerMin(Length.OfInches(0.375)), 0.5);
        var steel = Rules.FindingExamples.SteelOf(TestShop.Hatchet)!;
        var band = CuttingSpeeds.For(steel, hardenedHb: null, DrillMetal.HighSpeedSteel);
        Assert.Equal((50, 55, 60), (Math.Round(band.Low.FeetPerMin, 6), Math.Round(band.Value.FeetPerMin, 6), Math.Round(band.High.FeetPerMin, 6)));
        var reamed = ReamingSpeeds.For(band);
        Assert.Equal(25, reamed.Low.FeetPerMin, 1e-9);
        Assert.Equal(40, reamed.High.FeetPerMin, 1e-9);
        Assert.Equal(150, CuttingSpeeds.For(steel, hardenedHb: null, DrillMetal.Carbide).High.FeetPerMin - 30, 1e-6);
    }

    /// <summary>ASTM E140 table 1: 45 HRC 421 HB, 50 HRC 481 HB, 55 HRC 560 HB, 58 HRC 615 HB. A maker's chart for carbide: 40 m/min at 380 to 440 HB, 30 m/min at 450 to 500 HB.</summary>
    [Theory]
    [InlineData(45, 421, 40)]
    [InlineData(50, 481, 30)]
    [InlineData(55, 560, 20)]
    [InlineData(58, 615, 20)]
    public void Carbide_in_hardened_steel(double hrc, double hb, double most)
    {
        Assert.Equal(hb, BrinellHardness.OfRockwellC(hrc), 1e-9);
        Assert.Equal(most, CuttingSpeeds.For(null, hb, DrillMetal.Carbide).High.MetresPerMin, 0.05);
    }

    /// <summary>A third of the drill, common practice; the chisel edge of a standard drill takes 0.18 of it.</summary>
    [Fact]
    public void Pilots()
    {
        var band = PilotSize.For(TestShop.Mm(12), isSplitPoint: false);
        Assert.Equal((2.16, 4, 6), (Math.Round(band.Low.Mm, 9), Math.Round(band.Value.Mm, 9), Math.Round(band.High.Mm, 9)));
    }
}
