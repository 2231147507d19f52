using CsCheck;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Tests.Laws;

/// <summary>What holds for hardness scales and mixtures whatever the numbers.</summary>
public class HardnessLaws
{
    [Fact]
    public void The_way_back_leads_back_and_harder_is_harder()
    {
        Gen.Select(Gen.Double[20, 68], Gen.Double[20, 68]).Sample((a, b) =>
        {
            Assert.Equal(a, RockwellTable.HrcOfHv(RockwellTable.Hv(a)!.Value)!.Value, 1e-9);
            Assert.True(RockwellTable.Hv(Math.Min(a, b)) <= RockwellTable.Hv(Math.Max(a, b)));
            Assert.True(IndentDepth.Of(a) >= IndentDepth.Of(b) == a <= b);
        });
    }

    [Fact]
    public void More_carbon_is_harder_and_half_martensite_softer_than_full()
    {
        Gen.Select(Gen.Double[0, 1.4], Gen.Double[0, 1.4]).Sample((a, b) =>
        {
            Assert.True(InitialHardness.Hrc(Math.Min(a, b)) <= InitialHardness.Hrc(Math.Max(a, b)) + 1e-9);
            Assert.True(HalfMartensiteHardness.Hrc(a) < InitialHardness.Hrc(a));
        });
    }

    [Fact]
    public void A_mixture_lies_between_its_parts_and_faster_cooling_never_softens_martensite()
    {
        Gen.Select(Gen.Double[0.2, 1.1], Gen.Double[0, 1], Gen.Double[0, 1], Gen.Double[0, 1], Gen.Double[3, 6]).Sample((c, m, p, b, log) =>
        {
            var a = new Chemistry { CarbonPercent = c, ManganesePercent = 0.7, SiliconPercent = 0.2, ChromiumPercent = 0.4 };
            var rate = Math.Pow(10, log);
            double[] parts = [MixedHardness.Hv(a, new SteelParts(1, 0, 0, 0), rate), MixedHardness.Hv(a, new SteelParts(0, 1, 0, 0), rate), MixedHardness.Hv(a, new SteelParts(0, 0, 1, 0), rate), MixedHardness.Hv(a, new SteelParts(0, 0, 0, 1), rate)];
            var mixed = MixedHardness.Hv(a, new SteelParts(m + 0.01, 0.1, p, b), rate);
            Assert.InRange(mixed, parts.Min() - 1e-9, parts.Max() + 1e-9);
            if (MaynierHardness.MartensiteHv(a, rate) is { } slow) Assert.True(MaynierHardness.MartensiteHv(a, 2 * rate) > slow);
        });
    }

    [Fact]
    public void Thicker_shorter_or_further_stretches_the_skin_more()
    {
        Gen.Select(Gen.Double[1, 8], Gen.Double[0.1, 5], Gen.Double[80, 400]).Sample((t, d, l) =>
        {
            var at = StraightenBend.StretchShare(Length.OfMm(t), Length.OfMm(d), Length.OfMm(l));
            Assert.True(StraightenBend.StretchShare(Length.OfMm(1.1 * t), Length.OfMm(d), Length.OfMm(l)) > at);
            Assert.True(StraightenBend.StretchShare(Length.OfMm(t), Length.OfMm(1.1 * d), Length.OfMm(l)) > at);
            Assert.True(StraightenBend.StretchShare(Length.OfMm(t), Length.OfMm(d), Length.OfMm(1.1 * l)) < at);
        });
    }
}
