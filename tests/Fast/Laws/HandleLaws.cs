using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.Tests.Laws;

/// <summary>What holds for handles, glue, blanks and cord whatever the numbers.</summary>
public class HandleLaws
{
    private static Length Mm(double mm) => Length.OfMm(mm);

    private static double Between(Random chance, double low, double high) => low + ((high - low) * chance.NextDouble());

    /// <summary>Dry air dries wood out; damper air wets it; from 5 °C on warmer air dries it (below, the fit itself turns by some thousandths); and the way back leads back.</summary>
    [Fact]
    public void Moisture_follows_the_air()
    {
        for (var celsius = -1.0; celsius <= 130; celsius += 3)
        {
            var air = Temperature.OfCelsius(celsius);
            Assert.Equal(0, EquilibriumMoisture.Of(air, 0).Value);
            for (var humidity = 1.0; humidity <= 95; humidity++)
            {
                var here = EquilibriumMoisture.Of(air, humidity);
                Assert.True(here.Value > EquilibriumMoisture.Of(air, humidity - 1).Value);
                Assert.True(here.Low >= 0 && here.Low < here.Value && here.Value < here.High);
                if (celsius >= 5 && celsius <= 127) Assert.True(EquilibriumMoisture.Of(Temperature.OfCelsius(celsius + 3), humidity).Value < here.Value);
                Assert.Equal(humidity, EquilibriumMoisture.HumidityPercent(air, here.Value)!.Value, 6);
            }
        }
    }

    /// <summary>Movement there and back is none, it grows with the width, shrinking wood goes under 0, and each kind moves more along its rings than across.</summary>
    [Fact]
    public void Wood_comes_back()
    {
        var chance = new Random(3);
        for (var k = 0; k < 200; k++)
        {
            var (a, b, mid, c) = (Between(chance, 6, 14), Between(chance, 6, 14), Between(chance, 6, 14), Between(chance, 0.001, 0.005));
            var there = WoodMovement.Of(Mm(30), c, a, b);
            Assert.Equal(-there.Value.Mm, WoodMovement.Of(Mm(30), c, b, a).Value.Mm, 12);
            Assert.Equal(there.Value.Mm, WoodMovement.Of(Mm(30), c, a, mid).Value.Mm + WoodMovement.Of(Mm(30), c, mid, b).Value.Mm, 12);
            Assert.Equal(2 * there.Value.Mm, WoodMovement.Of(Mm(60), c, a, b).Value.Mm, 12);
            Assert.Equal(b > a, there.Value.Mm > 0);
            Assert.True(there.Low <= there.Value && there.Value <= there.High);
        }

        var both = HandleList.BuiltIn.All.Where(m => m.Movement is { TangentialPerPercent: not null, RadialPerPercent: not null }).ToArray();
        Assert.True(both.Length >= 10);
        Assert.All(both, m => Assert.True(WoodMovement.Of(m, WoodCut.FlatSawn, Mm(24), 7, 11)!.Value > WoodMovement.Of(m, WoodCut.QuarterSawn, Mm(24), 7, 11)!.Value));
    }

    /// <summary>Every wood that gives both has the density of its specific gravity at 12 %, to the rounding of the two; wetter wood is heavier.</summary>
    [Fact]
    public void Density_and_specific_gravity_agree()
    {
        var both = HandleList.BuiltIn.All.Where(m => m.SpecificGravity is not null && m.Density is not null).ToArray();
        Assert.True(both.Length >= 10);
        Assert.All(both, m => Assert.Equal(m.Density!.Value.GramsPerCm3, WoodDensity.Of(m.SpecificGravity!.Value, 12).GramsPerCm3, 0.0011));
        for (var m = 1; m < 30; m++) Assert.True(WoodDensity.Of(0.6, m).GramsPerCm3 > WoodDensity.Of(0.6, m - 1).GramsPerCm3);
    }

    /// <summary>Twice the diameter holds four times as much; a tube and the pin that fills it hold what the rod does; a bond grows with its face.</summary>
    [Fact]
    public void Pins_and_bonds()
    {
        var chance = new Random(4);
        for (var k = 0; k < 100; k++)
        {
            var (d, tau) = (Between(chance, 1, 12), Between(chance, 50, 600));
            var bore = d * chance.NextDouble();
            var rod = PinDoubleShear.Of(Mm(d), tau).Newtons;
            Assert.Equal(4 * rod, PinDoubleShear.Of(Mm(2 * d), tau).Newtons, 1e-9 * rod);
            Assert.Equal(rod, PinDoubleShear.Tube(Mm(d), Mm(bore), tau).Newtons + PinDoubleShear.Of(Mm(bore), tau).Newtons, 1e-9 * rod);
            Assert.Equal(0, PinDoubleShear.Tube(Mm(d), Mm(d + 1), tau).Newtons);
            var (one, two) = (GlueBond.Of(Area.OfMm2(d * 100)), GlueBond.Of(Area.OfMm2(d * 200)));
            Assert.True(one.Low.Newtons < one.Value.Newtons && one.Value.Newtons < one.High.Newtons);
            Assert.Equal(2 * one.Value.Newtons, two.Value.Newtons, 1e-9 * two.Value.Newtons);
            Assert.Equal(one.Value.Newtons, GlueBond.Of(Area.OfMm2(d * 100), 5, 5).Value.Newtons, 1e-9 * one.Value.Newtons);
        }
    }

    /// <summary>Never less is mixed than stays in the joint; two joints take what one joint of both takes.</summary>
    [Fact]
    public void Glue_adds_up()
    {
        var chance = new Random(5);
        for (var k = 0; k < 100; k++)
        {
            var (a, b, line, waste) = (Area.OfMm2(Between(chance, 100, 6000)), Area.OfMm2(Between(chance, 100, 6000)), Mm(Between(chance, 0.05, 0.4)), Between(chance, 0.2, 4));
            var (one, other, both) = (GlueAmount.Of(a, line, wasteFactor: waste), GlueAmount.Of(b, line, wasteFactor: waste), GlueAmount.Of(a + b, line, wasteFactor: waste));
            Assert.Equal(both.ToMix.Mm3, one.ToMix.Mm3 + other.ToMix.Mm3, 1e-9 * both.ToMix.Mm3);
            Assert.True(both.ToMix.Mm3 >= both.Net.Mm3 && both.MassToMix.Grams >= both.NetMass.Grams);
            Assert.Equal(GlueAmount.EpoxyGramsPerCm3 * both.Net.Mm3 / 1000, both.NetMass.Grams, 1e-9 * both.NetMass.Grams);
        }
    }

    /// <summary>Alike things do not part; heating and cooling undo each other; first against third is first against second and second against third.</summary>
    [Fact]
    public void Heat_parts_only_unlike_things()
    {
        var chance = new Random(6);
        for (var k = 0; k < 100; k++)
        {
            var (a, b, c, t) = (Between(chance, 2, 70), Between(chance, 2, 70), Between(chance, 2, 70), Between(chance, -60, 100));
            Assert.Equal(0, ThermalMismatch.Of(Mm(120), a, a, t).Mm);
            Assert.Equal(-ThermalMismatch.Of(Mm(120), a, b, t).Mm, ThermalMismatch.Of(Mm(120), a, b, -t).Mm, 12);
            Assert.Equal(ThermalMismatch.Of(Mm(120), a, c, t).Mm, ThermalMismatch.Of(Mm(120), a, b, t).Mm + ThermalMismatch.Of(Mm(120), b, c, t).Mm, 12);
        }
    }

    /// <summary>All handles are glued, none twice; no mix outlasts its share of the pot life or its clamps; one mix fewer would; the mixes are even.</summary>
    [Fact]
    public void Batches_are_even_and_fewest()
    {
        var chance = new Random(7);
        for (var k = 0; k < 3000; k++)
        {
            var (pieces, minutes, pot, each, owned) = (chance.Next(1, 40), Between(chance, 1, 15), Between(chance, 5, 90), chance.Next(0, 6), chance.Next(0, 40));
            var plan = GlueBatches.Of(pieces, minutes, pot, each, owned);
            bool Fits(int n) => n * minutes <= (GlueBatches.UsedShare * pot) + 1e-6 && n * each <= owned;
            Assert.Equal(Fits(1), plan.IsPossible);
            if (!plan.IsPossible)
            {
                Assert.Empty(plan.PiecesEach);
                continue;
            }

            Assert.Equal(pieces, plan.PiecesEach.Sum());
            Assert.True(plan.PiecesEach.All(Fits) && plan.PiecesEach.Max() - plan.PiecesEach.Min() <= 1);
            if (plan.Mixes > 1) Assert.False(Fits((pieces + plan.Mixes - 2) / (plan.Mixes - 1)));
            Assert.Equal(plan.Mixes == 1, plan.Limit == GlueLimit.None);
            Assert.InRange(plan.WaitsForClamps, 0, plan.Mixes - 1);
            if (pieces * each <= owned) Assert.Equal(0, plan.WaitsForClamps);
            else Assert.True((plan.WaitsForClamps + 1) * owned >= pieces * each);
        }
    }

    /// <summary>Counted by taking one after another; blanks as sawn, dust and what is left over are the board, to the last splinter.</summary>
    [Fact]
    public void A_board_is_used_up()
    {
        var chance = new Random(8);
        for (var k = 0; k < 2000; k++)
        {
            var board = new BlockSize(Mm(Between(chance, 100, 900)), Mm(Between(chance, 20, 200)), Mm(Between(chance, 6, 60)));
            var blank = new BlockSize(Mm(Between(chance, 90, 150)), Mm(Between(chance, 20, 50)), Mm(Between(chance, 4, 12)));
            var (kerf, planing) = (Mm(Between(chance, 0, 3)), Mm(Between(chance, 0, 2)));
            var y = ScaleBlanks.Of(board, blank, kerf, planing, k % 2 == 0);
            var (along, across, through) = (Taken(board.Long, blank.Long, kerf), Taken(board.Wide, blank.Wide, kerf), Taken(board.Thick, blank.Thick + planing, kerf));
            Assert.Equal(along * across * through, y.Blanks);
            Assert.Equal(y.Blanks, (2 * y.Pairs) + y.Singles);
            Assert.Equal(k % 2 == 0 ? along * across * (through / 2) : y.Blanks / 2, y.Pairs);
            if (y.Blanks == 0) continue;
            var sawn = y.Blanks * (blank.Long * blank.Wide * (blank.Thick + planing)).Mm3;
            var left = new[] { 0.0, 0, 0 };
            foreach (var c in y.Cuts)
            {
                var section = c.Way switch { BlankCutWay.ToLength => board.Wide * board.Thick, BlankCutWay.ToWidth => blank.Long * board.Thick, _ => blank.Long * blank.Wide };
                left[(int)c.Way] = c.OnEachOf * (section * c.Left).Mm3;
                Assert.All(c.At, at => Assert.True(at.Mm >= c.Each.Mm - 1e-9));
            }

            Assert.Equal(board.Volume.Mm3, sawn + y.Kerf.Mm3 + left.Sum(), 1e-9 * board.Volume.Mm3);
            Assert.InRange(y.YieldShare, 0, 1);
        }

        static int Taken(Length from, Length each, Length kerf)
        {
            var (n, used) = (0, each.Mm);
            while (used <= from.Mm)
            {
                n++;
                used += kerf.Mm + each.Mm;
            }

            return n;
        }
    }

    /// <summary>Rings are the least a wrap can take and what it comes to when the cord is thin; a helix about a round bar is as long as its small chords; two strands take twice one.</summary>
    [Fact]
    public void A_wrap_is_longer_than_its_rings()
    {
        var chance = new Random(9);
        for (var k = 0; k < 200; k++)
        {
            var (along, radius, d, spacing) = (Between(chance, 50, 200), Between(chance, 6, 20), Between(chance, 1, 6), Between(chance, 1, 3));
            var girth = 2 * Math.PI * radius;
            var need = CordLength.Of(Mm(along), Mm(girth), Mm(d), spacing);
            var rings = need.Turns * (girth + (Math.PI * d));
            Assert.True(need.Wrapped.Mm > rings);
            var wide = 0.5 * girth * chance.NextDouble();
            Assert.Equal(CordTurn.LengthMm(wide, (0.5 * girth) - wide, d, d * spacing), need.PerTurn.Mm, 9);
            Assert.True(CordTurn.LengthMm(wide, 2, d, d) < CordTurn.LengthMm(wide, 2, d, 2 * d));
            Assert.Equal(along, need.Turns * d * spacing, 9);
            Assert.True(CordLength.ToCut(need.Wrapped) > need.Wrapped + CordLength.Tails);

            // the middle of the cord as a chain of small chords
            const int Chords = 50_000;
            var (run, r, angle) = (0.0, radius + (0.5 * d), 2 * Math.PI * need.Turns / Chords);
            for (var i = 0; i < Chords; i++)
            {
                var (dx, dy, dz) = (r * (Math.Cos(angle) - 1), r * Math.Sin(angle), along / Chords);
                run += Math.Sqrt((dx * dx) + (dy * dy) + (dz * dz));
            }

            Assert.Equal(run, need.Wrapped.Mm, 1e-4 * run);
            Assert.Equal(2 * need.Wrapped.Mm, CordLength.Crossed(Mm(along), Mm(girth), Mm(d), Mm(d * spacing)).Wrapped.Mm, 9);
        }

        var thin = CordLength.Of(Mm(100), Mm(80), Mm(0.01));
        Assert.Equal(80, thin.PerTurn.Mm, 0.04);
        Assert.Equal(0, CordLength.Of(Mm(100), Mm(80), Mm(0)).Wrapped.Mm);
    }
}
