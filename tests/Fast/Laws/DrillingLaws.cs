using CsCheck;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Tests.Laws;

/// <summary>What must hold for every drill: more feed, size or hardness is more push and torque; a pilot or a split point less; bands are bands.</summary>
public class DrillingLaws
{
    [Fact]
    public void Push_and_torque_grow_with_feed_size_and_hardness()
    {
        var chance = new Random(11);
        for (var i = 0; i < 500; i++)
        {
            var (d, f, hb) = (TestShop.Mm(1 + (20 * chance.NextDouble())), 0.02 + (0.3 * chance.NextDouble()), 180 + (200 * chance.NextDouble()));
            var load = DrillLoad.Of(hb, d, null, f, false);
            Less(load, DrillLoad.Of(hb, d, null, 1.05 * f, false));
            Less(load, DrillLoad.Of(hb, 1.05 * d, null, f, false));
            Assert.True(DrillLoad.Of(hb + 20, d, null, f, false).Thrust.High.Newtons >= load.Thrust.High.Newtons);
            var pilot = d * (0.2 + (0.3 * chance.NextDouble()));
            Less(DrillLoad.Of(hb, d, pilot, f, false), load);
            Less(DrillLoad.Of(hb, d, pilot * 1.1, f, false), DrillLoad.Of(hb, d, pilot, f, false));
            Assert.True(DrillThrust.Of(24000, f, d, ChiselFactors.SplitShare, 1).Newtons < DrillThrust.Of(24000, f, d, ChiselFactors.StandardShare, 1).Newtons);
            Assert.Equal(2 * DrillTorque.Of(10000, f, d, 0.18, 1).NewtonMetres, DrillTorque.Of(20000, f, d, 0.18, 1).NewtonMetres, 1e-9);
            Assert.InRange(PilotRelief.TorqueShare(pilot / d), 0.7, 1);
            Assert.True(WorkFactor.Of(hb + 1) >= WorkFactor.Of(hb));
            var (thrust, _) = DrillThrustAlternative.Of(2, f, d);
            Assert.Equal(2 * thrust.Newtons, DrillThrustAlternative.Of(4, f, d).Thrust.Newtons, 1e-9);
        }
    }

    [Fact]
    public void Bands_are_bands_whatever_the_drill()
    {
        foreach (var mm in Enumerable.Range(1, 50))
        {
            var d = TestShop.Mm(mm);
            var (feed, pilot) = (DrillFeed.For(d), PilotSize.For(d, isSplitPoint: mm % 2 == 0));
            Assert.True(feed.Low < feed.Value && feed.Value < feed.High);
            Assert.True(pilot.Low < pilot.Value && pilot.Value < pilot.High && pilot.High < d);
            Assert.Equal(mm, 2 * PointLength.Of(d, Angle.OfDegrees(90)).Mm, 1e-9);
            Assert.True(ThroughDepth.Of(TestShop.Mm(5), d, Angle.OfDegrees(118)) > TestShop.Mm(5) + PointLength.Of(d, Angle.OfDegrees(118)));
            Assert.True(PeckRule.For(TestShop.Mm(20), d) is not { } bite || bite <= d);
        }

        foreach (var metal in Enum.GetValues<DrillMetal>())
        {
            var v = CuttingSpeeds.For(null, hardenedHb: null, metal);
            Assert.True(v.Low.MetresPerMin < v.Value.MetresPerMin && v.Value.MetresPerMin < v.High.MetresPerMin);
            Assert.NotEmpty(v.OutsideRange);
            Assert.True(ReamingSpeeds.For(v).High.MetresPerMin < v.High.MetresPerMin);
        }
    }

    private static void Less(DrillLoad a, DrillLoad b)
    {
        Assert.True(a.Thrust.Value.Newtons < b.Thrust.Value.Newtons);
        Assert.True(a.Torque.Value.NewtonMetres < b.Torque.Value.NewtonMetres);
    }

    /// <summary>Harder on one scale is harder on the other, and a harder steel is never cut faster.</summary>
    [Fact]
    public void Harder_is_harder_and_slower()
    {
        Gen.Select(Gen.Double[40, 67], Gen.Double[40, 67]).Sample((a, b) =>
        {
            var (soft, hard) = (BrinellHardness.OfRockwellC(Math.Min(a, b)), BrinellHardness.OfRockwellC(Math.Max(a, b)));
            Assert.True(soft <= hard);
            Assert.True(CuttingSpeeds.For(null, soft, DrillMetal.Carbide).High.MetresPerMin >= CuttingSpeeds.For(null, hard, DrillMetal.Carbide).High.MetresPerMin);
        });
    }
}
