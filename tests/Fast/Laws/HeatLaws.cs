using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.Tests.Laws;

/// <summary>What holds for heating, cooling and change whatever the numbers.</summary>
public class HeatLaws
{
    private static readonly Chemistry[] Steels = [.. SteelList.BuiltIn.All.Where(s => s.Chemistry is { IsLowAlloy: true }).Select(s => InSolution.Of(s)!.Value)];

    /// <summary>More of a hardening element never makes it harden less deep, nor its martensite begin hotter.</summary>
    [Fact]
    public void More_alloy_hardens_deeper_and_begins_colder()
    {
        foreach (var x in Steels)
        {
            foreach (var y in new[] { x with { ManganesePercent = x.ManganesePercent + 0.1 }, x with { NickelPercent = x.NickelPercent + 0.1 }, x with { MolybdenumPercent = x.MolybdenumPercent + 0.05 }, x with { ChromiumPercent = x.ChromiumPercent + 0.1 } })
            {
                Assert.True(IdealDiameter.Of(y).Mm >= IdealDiameter.Of(x).Mm - 0.08);
                Assert.True(MartensiteStart.Celsius(y) < MartensiteStart.Celsius(x));
                Assert.True(BainiteStart.LiCelsius(y) < BainiteStart.LiCelsius(x));
                Assert.True(TransformationTime.SteelFactor(Product.Pearlite, y) > TransformationTime.SteelFactor(Product.Pearlite, x));
            }
        }
    }

    /// <summary>Nickel and manganese lower the critical points in every print.</summary>
    [Fact]
    public void Nickel_lowers_the_critical_points()
    {
        foreach (var x in Steels)
        {
            var y = x with { NickelPercent = x.NickelPercent + 0.5 };
            Assert.True(AndrewsCritical.LowerCelsius(y) < AndrewsCritical.LowerCelsius(x) && AndrewsCritical.UpperCelsius(y) < AndrewsCritical.UpperCelsius(x));
            Assert.True(GrangeCritical.LowerCelsius(y) < GrangeCritical.LowerCelsius(x) && GrangeCritical.UpperCelsius(y) < GrangeCritical.UpperCelsius(x));
            Assert.True(EldisCritical.LowerCelsius(y) < EldisCritical.LowerCelsius(x) && EldisCritical.UpperCelsius(y) < EldisCritical.UpperCelsius(x));
            Assert.True(HougardyCritical.LowerCelsius(y) < HougardyCritical.LowerCelsius(x) && HougardyCritical.UpperCelsius(y) < HougardyCritical.UpperCelsius(x));
            Assert.True(TrzaskaCritical.LowerCelsius(y) < TrzaskaCritical.LowerCelsius(x) && TrzaskaCritical.UpperCelsius(y) < TrzaskaCritical.UpperCelsius(x));
        }

        for (var c = 0.8; c < 2; c += 0.1) Assert.True(AcmLine.Celsius(c + 0.05) > AcmLine.Celsius(c));
    }

    /// <summary>Colder leaves less austenite, never less than none; below the law's coldest nothing more is claimed.</summary>
    [Fact]
    public void Colder_leaves_less_austenite()
    {
        foreach (var x in Steels)
        {
            for (var t = 200; t > -80; t -= 10) Assert.True(RetainedAustenite.Share(x, t - 10) <= RetainedAustenite.Share(x, t) && RetainedAustenite.Share(x, t) is > 0 and <= 1);
            Assert.Equal(RetainedAustenite.Share(x, RetainedAustenite.ColdestCelsius), RetainedAustenite.Share(x, -196));
        }
    }

    /// <summary>A thicker plate and a milder quench need more; a plate needs more than a round of its thickness.</summary>
    [Fact]
    public void Thicker_and_milder_need_more()
    {
        for (var mm = 1.0; mm < 40; mm *= 1.3)
        {
            for (var h = 0.1; h < 8; h *= 1.4)
            {
                var (t, u) = (Length.OfMm(mm), Length.OfMm(1.1 * mm));
                Assert.True(GrossmannPlate.NeededBy(u, h).Mm > GrossmannPlate.NeededBy(t, h).Mm);
                Assert.True(GrossmannPlate.NeededBy(t, 1.1 * h).Mm < GrossmannPlate.NeededBy(t, h).Mm);
                Assert.True(GrossmannPlate.NeededBy(t, h).Mm > GrossmannPlate.NeededByRound(t, h).Mm);
            }
        }

        foreach (var s in SteelList.BuiltIn.All.Where(s => s.Chemistry is { IsLowAlloy: true })) Assert.True(CarbonSteelBias.Of(s.Chemistry!.Value).Mm <= IdealDiameter.Of(s.Chemistry.Value).Mm);
    }

    /// <summary>Hardness never rises away from the quenched end, and never passes the initial one.</summary>
    [Fact]
    public void Hardness_falls_along_the_end_quenched_bar()
    {
        for (var ideal = 25.0; ideal < 178; ideal += 4)
        {
            var along = JominyHardness.Along(60, ideal);
            Assert.All(along, h => Assert.True(h <= 60));
            for (var i = 1; i < along.Length; i++) Assert.True(along[i] <= along[i - 1] + 0.8);
        }
    }

    /// <summary>S and its way back lead back, and S rises.</summary>
    [Fact]
    public void Share_and_sum_lead_back()
    {
        for (var x = 0.001; x < 1; x += 0.013)
        {
            Assert.Equal(x, TransformationShare.Share(TransformationShare.Sum(x)), 2e-5);
            Assert.True(TransformationShare.Sum(x + 0.0005) > TransformationShare.Sum(x));
        }

        Assert.Equal((0, 1.0), (TransformationShare.Share(-1), TransformationShare.Share(5)));
    }

    /// <summary>Faster rates for martensite with less alloy.</summary>
    [Fact]
    public void Less_alloy_wants_a_faster_quench()
    {
        foreach (var x in Steels) Assert.True(MaynierRates.MartensiteCPerSecond(x with { ManganesePercent = 0.8 * x.ManganesePercent }, 830) > MaynierRates.MartensiteCPerSecond(x, 830));
    }

    /// <summary>Thicker cools slower, turns more of it soft; shares add up to one.</summary>
    [Fact]
    public void Thicker_cools_slower_and_shares_add_up()
    {
        foreach (var medium in QuenchList.BuiltIn.All)
        {
            var decay = new AusteniteDecay(Steels[1]);
            CoolingRun? thinner = null;
            foreach (var mm in (double[])[1, 2.5, 5, 8])
            {
                var run = SlabCooling.Of(mm, 815, 40, t => medium.TransferWPerM2K(t, 40), decay, 60);
                var c = run.Centre!.Value;
                Assert.Equal(1, c.PearliteShare + c.BainiteShare + c.FerriteShare + c.MartensiteShare + c.AusteniteShare, 1e-12);
                if (thinner is not null) Assert.True(run.Seconds(500) > thinner.Seconds(500));
                for (var i = 1; i < run.Curve.Length; i++) Assert.True(run.Curve[i].AtSeconds > run.Curve[i - 1].AtSeconds && run.Curve[i].FaceCelsius <= run.Curve[i].CentreCelsius + 1e-6);
                thinner = run;
            }
        }
    }

    /// <summary>The series falls with time and toward the face.</summary>
    [Fact]
    public void The_series_falls_with_time_and_toward_the_face()
    {
        foreach (var biot in (double[])[0.02, 0.3, 2, 30])
        {
            for (var fourier = 0.05; fourier < 3; fourier *= 1.7)
            {
                Assert.True(SlabSeries.Share(biot, 1.1 * fourier, 0) < SlabSeries.Share(biot, fourier, 0));
                Assert.True(SlabSeries.Share(biot, fourier, 1) < SlabSeries.Share(biot, fourier, 0.5));
            }
        }

        Assert.True(SectionCooling.Of([2, 2], 2, 800, 25, _ => 2000, new AusteniteDecay(Steels[0]), 60).All(s => s.MartensiteShare is >= 0 and <= 1));
    }

    /// <summary>Heat properties stay positive; the steel takes more heat about its change than beside it.</summary>
    [Fact]
    public void Heat_is_positive()
    {
        for (var t = 20.0; t < 1200; t += 7)
        {
            Assert.True(SteelHeatCapacity.JPerKgK(t) > 400 && SteelConductivity.WPerMK(t) > 20 && Austenite.ConductivityWPerMK(t) > 14 && Austenite.HeatJPerKgK(t) > 499);
            Assert.True(AirCooling.TransferWPerM2K(t, 20) >= AirCooling.ConvectionWPerM2K);
        }

        Assert.True(SteelHeatCapacity.JPerKg(700, 760) > SteelHeatCapacity.JPerKg(760, 820));
    }

    /// <summary>Twice the thickness takes twice as long to heat; a nearer neighbour and a brighter skin take longer.</summary>
    [Fact]
    public void Thicker_and_brighter_heat_slower()
    {
        Assert.Equal(2, OvenHeating.Seconds(6, 815, 800) / OvenHeating.Seconds(3, 815, 800), 1e-9);
        Assert.True(OvenHeating.Seconds(3, 815, 800, 0.3) > OvenHeating.Seconds(3, 815, 800, 0.8));
        for (var gap = 2.0; gap < 200; gap *= 1.5) Assert.True(RackView.OpenShare(1.1 * gap, 60) > RackView.OpenShare(gap, 60) && RackView.OpenShare(gap, 60) is > 0 and < 1);
    }

    /// <summary>Twice the oil rises half as much, and cools slower.</summary>
    [Fact]
    public void Twice_the_oil_rises_half_as_much()
    {
        Assert.Equal(2, OilBath.RuleRiseC(500, 10) / OilBath.RuleRiseC(500, 20), 1e-12);
        Assert.Equal(2, OilBath.HeatRiseC(500, 815, 60, 10, false) / OilBath.HeatRiseC(500, 815, 60, 20, false), 1e-12);
        var (low, high) = OilBath.CoolMinutes(15, 65, 50, isWater: false);
        Assert.True(low > 0 && high > low && OilBath.CoolMinutes(40, 65, 50, isWater: false).LowMinutes > low);
    }
}
