using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Tests.Laws;

/// <summary>The speed set is one the machine has, never above the band, and no other speed in the band lies nearer under the target.</summary>
public class SpindleSpeedLaws
{
    [Fact]
    public void Agrees_with_trying_every_speed()
    {
        var chance = new Random(7);
        for (var round = 0; round < 2000; round++)
        {
            double[] speeds = [.. Enumerable.Range(0, chance.Next(1, 8)).Select(_ => Math.Round(50 + (3000 * chance.NextDouble()))).Distinct().Order()];
            var low = 5 + (20 * chance.NextDouble());
            var high = low * (1 + chance.NextDouble());
            var band = new Estimate<CuttingSpeed>(CuttingSpeed.OfMetresPerMin((low + high) / 2), CuttingSpeed.OfMetresPerMin(low), CuttingSpeed.OfMetresPerMin(high), "law");
            var machine = TestShop.Own.Machines[0] with { SpeedsRpm = [.. speeds] };
            var d = TestShop.Mm(1 + (20 * chance.NextDouble()));
            var choice = SpindleSpeed.Of(machine, band, d);
            var top = band.High.TurnsPerMin(d);
            Assert.Equal(speeds[0] > top, choice is null);
            Assert.Equal(speeds[0] > top, d > SpindleSpeed.Largest(machine, band));
            if (choice is null) continue;
            Assert.Contains(choice.SetRpm, speeds);
            Assert.True(choice.SetRpm <= top);
            var inBand = speeds.Where(s => s >= choice.LowRpm && s <= top).ToArray();
            var expected = inBand.Any(s => s <= choice.TargetRpm) ? inBand.Where(s => s <= choice.TargetRpm).Max()
                : inBand.Length > 0 ? inBand.Min()
                : speeds.Where(s => s <= top).Max();
            Assert.Equal(expected, choice.SetRpm);
            var stepless = SpindleSpeed.Of(machine with { SpeedIsStepless = true }, band, d)!;
            Assert.Equal(Math.Clamp(choice.TargetRpm, speeds[0], speeds[^1]), stepless.SetRpm);
        }
    }
}
