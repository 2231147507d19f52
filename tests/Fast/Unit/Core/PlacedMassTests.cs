using Tangwright.Core;
using Tangwright.Foundation;
using static Tangwright.Tests.Worked;
using Path = Tangwright.Foundation.Path;

namespace Tangwright.Tests;

public class PlacedMassTests
{
    private static readonly Plan Bar = Plan("bar", 5, Path.Polygon(new(0, 0), new(200, 0), new(200, 30), new(0, 30)));

    // 80 × 30 × 6 mm on both sides of 0.5 g/cm³: 14.4 g, its middle at x 160
    [Fact]
    public void Scales_by_density()
    {
        var m = Assert.Single(PlacedMass.Of(Bar with { AddedMasses = [new("scales", null, Density.OfGramsPerCm3(0.5), Mm(6), 2, null, (Mm(120), Mm(250)))] }));
        Assert.Equal(14.4, m.Weight.Grams, 9);
        Assert.Equal(160, m.At.X, 9);
        Assert.Equal(15, m.At.Y, 9);

        // I = m l²/12 about its own middle, along the bar
        Assert.Equal(14400 * 80 * 80 / 12.0, m.Water.Shifted(-m.At).XxMm4, 3);
    }

    // steel 200 × 30 × 5 × 7.85 = 235.5 g at x 100; 14.4 g at 160 and 10 g at 20
    [Fact]
    public void Balance_of_the_whole()
    {
        var stages = Stages(Bar with { AddedMasses = [new("scales", Mass.OfGrams(14.4), null, null, 2, null, (Mm(120), Mm(200))), new("bolster", Mass.OfGrams(10), null, null, 1, new(20, 15), null)] }, 7.85);
        Assert.Equal((Stage.Finished, Stage.Assembled), (stages[^2].Stage, stages[^1].Stage));
        Assert.Equal(259.9, stages[^1].Mass!.Value.Grams, 9);
        Assert.Equal(((235.5 * 100) + (14.4 * 160) + (10 * 20)) / 259.9, stages[^1].Balance.X, 9);
        Assert.Equal(stages[^2].Volume, stages[^1].Volume);
    }

    [Fact]
    public void Nothing_on_the_steel_is_no_stage() => Assert.Equal(5, Stages(Bar, 7.85).Length);
}
