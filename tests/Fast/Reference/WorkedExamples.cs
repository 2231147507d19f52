using Tangwright.Core;
using Tangwright.Foundation;
using static Tangwright.Tests.Worked;

namespace Tangwright.Tests;

// Check values of the worked examples: computed once, apart from this program, by polygon and raster sums of 0.25 mm step in plain Python. Bands: area 1 %, mass 2 %, balance 1.5 mm.
public class WorkedExamples
{
    private static void Within(double expected, double band, double actual) => Assert.True(Math.Abs(actual - expected) <= band, $"expected {expected} ± {band}, was {actual}");

    private static void Grams(double expected, StageFigures stage) => Within(expected, 0.02 * expected, stage.Mass!.Value.Grams);

    [Fact]
    public void Skeleton_hatchet()
    {
        var size = OutlineSize.Of(Hatchet, HolePlacement.Of(Hatchet));
        Within(11_010, 110, size.Area.Mm2);
        Within(668, 6.7, size.Perimeter.Mm);
        var stages = Stages(Hatchet, 7.85);
        Grams(549, stages[1]);
        Grams(499, stages[2]);
        Grams(459, stages[3]);
        Grams(455, stages[4]);
        Within(50, 1, stages[1].Mass!.Value.Grams - stages[2].Mass!.Value.Grams);
        Within(110.4, 1.5, stages[4].BalanceFromDatum.Mm);
        var unpierced = Stages(Hatchet with { Holes = [] }, 7.85);
        Within(4.8, 0.5, unpierced[4].BalanceFromDatum.Mm - stages[4].BalanceFromDatum.Mm);
        TestContext.Current.TestOutputHelper?.WriteLine(string.Join("; ", stages.Select(s => $"{s.Stage} {s.Mass!.Value.Grams:F2} g {s.BalanceFromDatum.Mm:F2}")) + $"; area {size.Area.Mm2:F2} perimeter {size.Perimeter.Mm:F3}; unpierced {unpierced[4].BalanceFromDatum.Mm:F2}, blank {unpierced[1].BalanceFromDatum.Mm:F2}");
    }

    [Fact]
    public void Kitchen_knife()
    {
        var size = OutlineSize.Of(Kitchen, HolePlacement.Of(Kitchen));
        Within(10_802, 108, size.Area.Mm2);
        var pinsOnly = Stages(Kitchen with { Holes = [.. Kitchen.Holes.Take(3)] }, 7.70);
        var stages = Stages(Kitchen, 7.70);
        Grams(207, pinsOnly[2]);
        Grams(202, stages[2]);
        var unsharpened = Stages(Kitchen with { Bevel = Kitchen.Bevel! with { SharpenPerSide = null } }, 7.70);
        Grams(137.5, unsharpened[4]);
        Grams(137.5, stages[4]);
        TestContext.Current.TestOutputHelper?.WriteLine(string.Join("; ", stages.Select(s => $"{s.Stage} {s.Mass!.Value.Grams:F2} g {s.BalanceFromDatum.Mm:F2}")) + $"; area {size.Area.Mm2:F2} perimeter {size.Perimeter.Mm:F3}; unsharpened {unsharpened[4].Mass!.Value.Grams:F2}; pins only {pinsOnly[2].Mass!.Value.Grams:F2}");
    }

    [Fact]
    public void Paring_knife()
    {
        var size = OutlineSize.Of(Paring, HolePlacement.Of(Paring));
        Within(2_965, 29.6, size.Area.Mm2);
        Within(390, 3.9, size.Perimeter.Mm);
        var stages = Stages(Paring, 7.70);
        Grams(36.5, stages[1]);
        Within(30, 0.9, Stages(Paring with { Bevel = Paring.Bevel! with { Wheel = Mm(254) } }, 7.70)[4].Mass!.Value.Grams);
        Assert.True(BevelSolid.IsFlatStandIn(Paring.Bevel!));
        TestContext.Current.TestOutputHelper?.WriteLine(string.Join("; ", stages.Select(s => $"{s.Stage} {s.Mass!.Value.Grams:F2} g")) + $"; area {size.Area.Mm2:F2} perimeter {size.Perimeter.Mm:F3}");
    }

    // with scales of 26 g and pins of 9.3 g; the tang tapered from x 206 to so much at the butt
    [Theory]
    [InlineData(2.5, 3.3, 173)]
    [InlineData(2.0, 6.5, 167.4)]
    [InlineData(1.5, 9.9, 161.9)]
    [InlineData(1.2, 12.0, 158.6)]
    public void Kitchen_knife_with_its_handle(double butt, double ahead, double grams)
    {
        var whole = Assembled(butt, 1);
        Within(ahead, 1.5, whole.BalanceFromDatum.Mm);
        Within(grams, 0.02 * grams, whole.Mass!.Value.Grams);

        // what the taper moves it by is less a matter of how the belly is ground
        Within(ahead - 3.3, 0.15, whole.BalanceFromDatum.Mm - Assembled(2.5, 1).BalanceFromDatum.Mm);
        TestContext.Current.TestOutputHelper?.WriteLine($"butt {butt}: {whole.Mass.Value.Grams:F2} g, {whole.BalanceFromDatum.Mm:F2} ahead of the heel");
    }

    [Fact]
    public void Kitchen_knife_holes_and_scales()
    {
        Within(1.8, 0.1, Assembled(2.5, 7.0 / 8).BalanceFromDatum.Mm - Assembled(2.5, 1).BalanceFromDatum.Mm);
        Within(1.9, 0.05, Assembled(2.5, 1).BalanceFromDatum.Mm - Assembled(2.5, 1, holes: 3).BalanceFromDatum.Mm);
    }

    private static StageFigures Assembled(double butt, double handle, int holes = 7)
        => Stages(
            Kitchen with
            {
                Holes = [.. Kitchen.Holes.Take(holes)],
                TangTaper = new Taper(Mm(206), Mm(330), Mm(butt)),
                AddedMasses =
                [
                    new("scales", Foundation.Mass.OfGrams(26 * handle), null, null, 2, null, (Mm(206), Mm(330))),
                    new("pins", Foundation.Mass.OfGrams(9.3 * handle), null, null, 2, new(266, 33.8), null),
                ],
            },
            7.70)[^1];
}
