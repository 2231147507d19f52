using CsCheck;
using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Tests.Reference;

namespace Tangwright.Tests.Laws;

/// <summary>What holds for tempers whatever the numbers.</summary>
public class TemperLaws
{
    private static readonly Gen<Chemistry> Bars = Gen.Select(Gen.Double[0.3, 1.1], Gen.Double[0.3, 1.5], Gen.Double[0.1, 0.5], Gen.Double[0, 1]).Select((c, mn, si, cr) => new Chemistry { CarbonPercent = c, ManganesePercent = mn, SiliconPercent = si, ChromiumPercent = cr });

    [Fact]
    public void Hotter_or_longer_is_never_harder()
    {
        Gen.Select(Bars, Gen.Double[140, 350], Gen.Double[140, 350], Gen.Double[0.2, 20]).Sample((bar, a, b, hours) =>
        {
            var (cool, hot) = (Temperature.OfCelsius(Math.Min(a, b)), Temperature.OfCelsius(Math.Max(a, b)));
            Assert.True(TemperRegression.Hrc(bar, cool, hours) >= TemperRegression.Hrc(bar, hot, hours));
            Assert.True(TemperRegression.Hrc(bar, cool, hours) >= TemperRegression.Hrc(bar, cool, 1.1 * hours));
            Assert.True(FullTemperRegression.Hrc(bar, cool, 4) >= FullTemperRegression.Hrc(bar, Temperature.OfCelsius(hot.Celsius + 250), 4));
        });
    }

    [Fact]
    public void What_does_as_much_comes_to_the_same_figure()
    {
        Gen.Select(Gen.Double[140, 600], Gen.Double[140, 600], Gen.Double[0.1, 24]).Sample((a, b, hours) =>
        {
            var (here, there) = (Temperature.OfCelsius(a), Temperature.OfCelsius(b));
            var same = HollomonJaffe.HoursFor(HollomonJaffe.Of(here, hours), there);
            Assert.Equal(HollomonJaffe.Of(here, hours), HollomonJaffe.Of(there, same), 1e-9);
            Assert.Equal(hours, HollomonJaffe.HoursAt([new TemperHold(here, 0.25 * hours), new TemperHold(here, 0.75 * hours)], here), 1e-9 * hours);
        });
    }

    /// <summary>A table gives its own rows back, and between two rows nothing outside them.</summary>
    [Fact]
    public void A_table_stays_between_its_rows()
    {
        var table = TemperingData.Steel("W2").Heat.TemperTable;
        Gen.Double[150, 315].Sample(c =>
        {
            var got = TemperByTable.Hrc(table, Temperature.OfCelsius(c), table[0].HeldHours)!;
            Assert.InRange(got.Value, table.Min(p => p.HardnessHrc) - 1e-9, table.Max(p => p.HardnessHrc) + 1e-9);
            Assert.True(got.Low < got.Value && got.Value < got.High);
        });
        Assert.All(table, p => Assert.Equal(p.HardnessHrc, TemperByTable.Hrc(table, p.At, p.HeldHours)!.Value, 1e-9));
    }

    /// <summary>A set-point gives a hardness inside the band, at a temperature that is not avoided.</summary>
    [Fact]
    public void A_set_point_keeps_band_and_limits()
    {
        string[] names = ["O1", "L6", "A2", "8670", "80CrV2", "1084", "5160", "75Ni8", "440C"];
        var steels = names.ToDictionary(n => n, TemperingData.Steel);
        Gen.Select(Gen.Int[0, names.Length - 1], Gen.Double[48, 64], Gen.Double[0.5, 2], Gen.Double[-20, 20], Gen.Double[0, 15]).Sample(
            (which, low, width, high, swing) =>
            {
                var steel = steels[names[which]];
                var set = TemperSetPoint.For(steel, 64.5, new HardnessBand(low, low + width), new TemperCycle(2, 2), new OvenHolds(high, swing), HardnessBias.Prior);
                if (set.Steel is { } at)
                {
                    Assert.InRange(set.Gives!.Value, low - 0.1, low + width + 0.1);
                    Assert.DoesNotContain(steel.Heat.Avoided, a => at.Celsius + swing > a.From.Celsius + 1e-9 && at.Celsius - swing < a.To.Celsius - 1e-9);
                    Assert.Equal(at.Celsius + high, set.Set!.Value.Celsius, 1e-9);
                }

                foreach (var i in set.Instead)
                {
                    var again = TemperSetPoint.For(steel, 64.5, i.Band, new TemperCycle(2, 2), new OvenHolds(high, swing), HardnessBias.Prior);
                    Assert.True(again.Verdict is TemperVerdict.Good or TemperVerdict.Moved, $"{names[which]} {i.Band}: {again.Verdict}");
                }
            },
            iter: 60);
    }

    [Fact]
    public void More_readings_make_surer_and_the_mean_stays_between_nothing_and_them()
    {
        Gen.Double[-5, 5].Array[1, 12].Sample(offs =>
        {
            var (few, all) = (HardnessBias.Of(offs.AsSpan(0, offs.Length - 1)), HardnessBias.Of(offs));
            Assert.True(all.SdHrc < few.SdHrc);
            Assert.True(Math.Abs(all.MeanHrc) <= Math.Abs(offs.Average()) + 1e-12);
        });
    }
}
