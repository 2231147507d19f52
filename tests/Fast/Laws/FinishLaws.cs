using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Tests.Laws;

/// <summary>What holds for grits, ladders, heat and the log whatever the numbers.</summary>
public class FinishLaws
{
    [Fact]
    public void Finer_numbers_are_smaller_grains_and_the_way_back_leads_back()
    {
        foreach (var series in new[] { GritSeries.FepaP, GritSeries.Cami, GritSeries.Jis })
        {
            var rows = GritScale.Of(series);
            for (var i = 1; i < rows.Length; i++) Assert.True(rows[i].Micron < rows[i - 1].Micron);
            var chance = new Random(5);
            for (var k = 0; k < 200; k++)
            {
                var number = rows[0].Number + ((rows[^1].Number - rows[0].Number) * chance.NextDouble());
                var micron = GritScale.Micron(new Grit(series, number))!.Value;
                Assert.Equal(number, GritScale.Number(series, micron)!.Value, 1e-6 * number);
            }
        }
    }

    [Fact]
    public void Roughness_and_speed_are_ranges_and_a_hard_blade_never_wants_a_faster_belt()
    {
        foreach (var (_, um) in GritScale.Of(GritSeries.FepaP).Where(g => g.Number >= 36))
        {
            var (low, high) = GritRoughness.Ra(um)!.Value;
            Assert.True(low >= 0 && low < high);
            var (soft, hard) = (BeltSpeed.Of(null, um, isHard: false), BeltSpeed.Of(null, um, isHard: true));
            Assert.True(soft.Low.MetresPerMin < soft.High.MetresPerMin && hard.High.MetresPerMin <= soft.Low.MetresPerMin);
        }
    }

    /// <summary>No choice of fewer grits keeps the ratio: against trying every choice.</summary>
    [Fact]
    public void The_ladder_is_the_shortest()
    {
        var chance = new Random(11);
        for (var round = 0; round < 300; round++)
        {
            ImmutableArray<double> sizes = [.. Enumerable.Range(0, chance.Next(2, 11)).Select(_ => Math.Exp(1 + (5 * chance.NextDouble()))).OrderDescending()];
            var most = 1.4 + chance.NextDouble();
            var got = GritLadder.Of(sizes, most);
            Assert.Equal((0, sizes.Length - 1), (got[0], got[^1]));
            var allowed = Enumerable.Range(1, sizes.Length - 1).All(i => sizes[i - 1] / sizes[i] <= most);
            if (!allowed) continue;
            Assert.All(got.Zip(got.Skip(1)), p => Assert.True(sizes[p.First] / sizes[p.Second] <= most + 1e-9));
            var best = int.MaxValue;
            for (var set = 0; set < 1 << sizes.Length; set++)
            {
                var some = Enumerable.Range(0, sizes.Length).Where(i => (set & (1 << i)) != 0).ToArray();
                if (some.Length == 0 || some[0] != 0 || some[^1] != sizes.Length - 1) continue;
                if (some.Zip(some.Skip(1)).All(p => sizes[p.First] / sizes[p.Second] <= most)) best = Math.Min(best, some.Length);
            }

            Assert.Equal(best, got.Length);
        }
    }

    [Fact]
    public void Depths_grow_with_grain_thickness_and_temper_and_their_bands_hold_them()
    {
        var chance = new Random(3);
        for (var round = 0; round < 300; round++)
        {
            var (t, um, temper) = (0.1 + (5 * chance.NextDouble()), 5 + (500 * chance.NextDouble()), 120 + (400 * chance.NextDouble()));
            var d = ScratchDepth.Of(um);
            Assert.True(d.Low < d.Usual && d.Usual < d.High && d.High < ScratchDepth.Of(um * 4).Usual);
            var room = EdgeHeat.Between(t, um, temper, 7.85);
            Assert.True(room.LowUm < room.UsualUm && room.UsualUm < room.HighUm);
            Assert.Equal(2 * room.UsualUm, EdgeHeat.Between(2 * t, um, temper, 7.85).UsualUm, 1e-9 * room.UsualUm);
            Assert.True(EdgeHeat.Between(t, um, temper + 10, 7.85).UsualUm > room.UsualUm);
            Assert.True(SteelHeatCapacity.JPerKgK(temper + 10) > SteelHeatCapacity.JPerKgK(temper));
        }

        Assert.Equal(0, EdgeHeat.Between(1, 100, 40, 7.85).UsualUm);
    }

    /// <summary>Of 4000 next batches drawn like the three before, 80 in 100 fall into the range.</summary>
    [Fact]
    public void The_range_holds_the_next_batch_as_often_as_it_says()
    {
        var chance = new Random(19);
        double Normal() => 10 + Math.Sqrt(-2 * Math.Log(1 - chance.NextDouble())) * Math.Cos(2 * Math.PI * chance.NextDouble()) * 0.7;
        var within = 0;
        for (var k = 0; k < 4000; k++)
        {
            var range = GrindingLog.Range([Normal(), Normal(), Normal(), Normal()], 0.5, 2)!.Value;
            var next = Normal();
            if (next >= range.Low && next <= range.High) within++;
        }

        Assert.Equal(GrindingLog.Share, within / 4000.0, 0.025);
    }

    [Fact]
    public void T_grows_with_the_share_and_falls_towards_the_normal_one()
    {
        for (var n = 1; n < 200; n += 7)
        {
            Assert.True(StudentT.For(0.9, n) > StudentT.For(0.8, n));
            Assert.True(StudentT.For(0.8, n) > StudentT.For(0.8, n + 1));
            Assert.Equal(0.8, StudentT.Within(StudentT.For(0.8, n), n), 1e-9);
        }

        // 1.2816 of the normal distribution, Abramowitz and Stegun table 26.5
        Assert.Equal(1.2816, StudentT.For(0.8, 1000), 0.002);
    }
}
