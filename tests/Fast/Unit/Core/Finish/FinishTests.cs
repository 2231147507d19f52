using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Inputs;
using Tangwright.UseCases;

namespace Tangwright.Tests.Finishing;

/// <summary>Grits, heat and log against figures from outside, and the ladders of the examples.</summary>
public class FinishTests
{
    private static Results Of(string example) => OpenWork.Of(Repository.Path("examples", example + ".plan.toml"), null).Value.WorkUp();

    private static Checked<FinishPlan> Finished(Results r) => FinishSteps.Of(r, new FinishWanted(null, null), RoughCuts.Of(r, new RoughCutWanted(null, null)));

    /// <summary>The plan's own last grit and last temper hold unless something else is asked.</summary>
    [Fact]
    public void The_plan_says_grit_and_temper()
    {
        var r = Of("skeleton-hatchet");
        var said = r with { Plan = r.Plan with { Finish = new FinishWish(new Grit(GritSeries.Cami, 220)), Heat = new HeatWish { Temper = Temperature.OfFahrenheit(400) } } };
        var (plain, own, asked) = (Finished(r).Value, Finished(said).Value, FinishSteps.Of(said, new FinishWanted(new Grit(GritSeries.FepaP, 120), Temperature.OfCelsius(300)), RoughCuts.Of(r, new RoughCutWanted(null, null))).Value);
        Assert.True(plain.IsTemperAssumed);
        Assert.Equal(("CAMI 220", false, 204.44), (own.Last.Words, own.IsTemperAssumed, Math.Round(own.Tempered.Celsius, 2)));
        Assert.True(own.Heat[0].Room.UsualUm > plain.Heat[0].Room.UsualUm);
        Assert.Equal(("P120", 300), (asked.Last.Words, asked.Tempered.Celsius));
    }

    /// <summary>A second print of the FEPA sizes, an abrasive maker's comparison chart of P grades: within 5 % of the list of the standard.</summary>
    [Theory]
    [InlineData(50, 326)]
    [InlineData(60, 260)]
    [InlineData(80, 197)]
    [InlineData(100, 156)]
    [InlineData(120, 127)]
    [InlineData(150, 97)]
    [InlineData(180, 78)]
    [InlineData(220, 65)]
    [InlineData(240, 58.5)]
    [InlineData(320, 46.2)]
    [InlineData(400, 35.0)]
    [InlineData(600, 25.75)]
    [InlineData(1000, 18.3)]
    [InlineData(2000, 10.3)]
    public void Sizes_of_P_grades(double number, double micron) => Assert.Equal(1, GritScale.Micron(new Grit(GritSeries.FepaP, number))!.Value / micron, 0.055);

    /// <summary>ISO 6344-3 lets the middle of the microgrits be off by so much (its table, from memory).</summary>
    [Theory]
    [InlineData(240, 58.5, 2)]
    [InlineData(360, 40.5, 1.5)]
    [InlineData(800, 21.8, 1)]
    [InlineData(1200, 15.3, 1)]
    [InlineData(2500, 8.4, 0.5)]
    public void Microgrits_of_the_standard(double number, double micron, double off) => Assert.Equal(micron, GritScale.Micron(new Grit(GritSeries.FepaP, number))!.Value, off);

    /// <summary>The trap of the trade: P400 is near CAMI 320, P800 near CAMI 400, P1200 near CAMI 600 (an abrasive maker's chart).</summary>
    [Theory]
    [InlineData(400, 320)]
    [InlineData(800, 400)]
    [InlineData(1200, 600)]
    public void Crossovers(double p, double cami)
    {
        var near = GritScale.Nearest(GritSeries.Cami, GritScale.Micron(new Grit(GritSeries.FepaP, p))!.Value);
        Assert.Equal(new Grit(GritSeries.Cami, cami), near);
    }

    /// <summary>P60 27 to 81 µm, P120 12 to 38, P400 3.5 to 10.5: 0.1 to 0.3 of the grain, common practice.</summary>
    [Fact]
    public void Depth_of_scratches()
    {
        Assert.Equal((26.9, 53.8, 80.7), Rounded(ScratchDepth.Of(269)));
        Assert.Equal((3.5, 7, 10.5), Rounded(ScratchDepth.Of(35)));

        static (double, double, double) Rounded((double Low, double Usual, double High) d) => (Math.Round(d.Low, 1), Math.Round(d.Usual, 1), Math.Round(d.High, 1));
    }

    /// <summary>The usual ladder P36, P60, P120, P220, P400, P800 is one of ratio 2.2; with more grits owned none is needed.</summary>
    [Fact]
    public void The_usual_ladder()
    {
        ImmutableArray<double> all = [.. new double[] { 36, 40, 60, 80, 120, 180, 220, 320, 400, 600, 800 }.Select(p => GritScale.Micron(new Grit(GritSeries.FepaP, p))!.Value)];
        Assert.Equal([0, 2, 4, 6, 8, 10], GritLadder.Of(all, GritLadder.SatinRatio));
        Assert.True(GritLadder.Of(all, GritLadder.MirrorRatio).Length > 6);
    }

    /// <summary>Printed roughness lies in the range: a table of stainless finishes (P120 3, P180 2, P240 1.50 and 0.45, P320 0.75, P500 0.40 µm; CAMI 80 1.65, 180 0.62, 320 0.25) and charts of two suppliers.</summary>
    [Theory]
    [InlineData(GritSeries.FepaP, 120, 3)]
    [InlineData(GritSeries.FepaP, 180, 2)]
    [InlineData(GritSeries.FepaP, 240, 1.5)]
    [InlineData(GritSeries.FepaP, 240, 0.45)]
    [InlineData(GritSeries.FepaP, 320, 0.75)]
    [InlineData(GritSeries.FepaP, 500, 0.4)]
    [InlineData(GritSeries.Cami, 80, 1.65)]
    [InlineData(GritSeries.Cami, 180, 0.62)]
    [InlineData(GritSeries.Cami, 320, 0.25)]
    [InlineData(GritSeries.FepaP, 36, 6)]
    [InlineData(GritSeries.FepaP, 80, 1.8)]
    [InlineData(GritSeries.FepaP, 220, 0.8)]
    [InlineData(GritSeries.FepaP, 1000, 0.2)]
    [InlineData(GritSeries.FepaP, 2000, 0.1)]
    public void Roughness_as_printed(GritSeries series, double number, double ra)
    {
        var (low, high) = GritRoughness.Ra(GritScale.Micron(new Grit(series, number))!.Value)!.Value;
        Assert.InRange(ra, low, high);
    }

    /// <summary>Machinery's Handbook, 31st ed., abrasive belts: steel P24 to P60 4000 to 6500 ft/min, P80 to P150 4500 to 7000; stainless P50 to P80 3500 to 5000, P150 to P280 4500 to 5500.</summary>
    [Theory]
    [InlineData("skeleton-hatchet", 36, 4000, 6500)]
    [InlineData("skeleton-hatchet", 120, 4500, 7000)]
    [InlineData("kitchen-knife", 60, 3500, 5000)]
    [InlineData("kitchen-knife", 220, 4500, 5500)]
    public void Belt_speed_as_printed(string example, double number, double low, double high)
    {
        var speed = BeltSpeed.Of(Of(example).Steel, GritScale.Micron(new Grit(GritSeries.FepaP, number))!.Value, isHard: false);
        Assert.Equal((low, high), (Math.Round(speed.Low.FeetPerMin), Math.Round(speed.High.FeetPerMin)));
    }

    [Fact]
    public void A_shop_without_a_listed_grain_is_told_so()
    {
        var r = Of("paring-knife");
        Assert.Contains("no belt or paper", Finished(r with { Shop = r.Shop with { Papers = [], Belts = [new Belt("dust", 4800, null, null)] } }).Faults[0].Message, StringComparison.Ordinal);
    }

    /// <summary>EN 1993-1-2: 439.8 J/(kg·K) at 20 °C, 487.6 at 100 °C, 530 at 200 °C.</summary>
    [Theory]
    [InlineData(20, 439.8)]
    [InlineData(100, 487.6)]
    [InlineData(200, 529.8)]
    public void Heat_capacity(double celsius, double expected) => Assert.Equal(expected, SteelHeatCapacity.JPerKgK(celsius), 0.1);

    /// <summary>
    /// By hand, tempered at 200 °C, dipped to 25, 25 kept: 150 K over 0.5 mm of steel at 7.85 g/cm³ and 492.1 J/(kg·K) at 100 °C take 0.2871 J on each mm²;
    /// of 12 J/mm³ 0.4 goes into the steel: 59.8 µm.
    /// </summary>
    [Fact]
    public void Depth_between_dips()
    {
        var c = SteelHeatCapacity.JPerKgK(100);
        Assert.Equal(7.85e-6 * c * 0.5 * 150 / (12 * 0.4) * 1000, EdgeHeat.Between(0.5, 269, 200, 7.85).UsualUm, 1e-9);
        Assert.Equal(59.8, EdgeHeat.Between(0.5, 269, 200, 7.85).UsualUm, 0.1);
    }

    /// <summary>Student's t of the NIST/SEMATECH handbook's table: 1.886 for 80 % and 2 degrees of freedom, 2.920 for 90 %, 2.228 for 95 % and 10, 12.706 for 95 % and 1.</summary>
    [Theory]
    [InlineData(0.8, 2, 1.886)]
    [InlineData(0.9, 2, 2.920)]
    [InlineData(0.95, 10, 2.228)]
    [InlineData(0.95, 1, 12.706)]
    [InlineData(0.95, 3, 3.182)]
    public void Table_of_t(double share, int freedom, double t) => Assert.Equal(t, StudentT.For(share, freedom), 0.0006);

    /// <summary>Three batches of 10, 12 and 14 g/min: mean 12, s = 2, 1.886 · 2 · √(4/3) = 4.36 either way.</summary>
    [Fact]
    public void Range_of_the_next_batch()
    {
        var range = GrindingLog.Range([10, 12, 14], 0.7, 1.5)!.Value;
        Assert.True(range.IsOwn);
        Assert.Equal(12, range.Mean, 1e-12);
        Assert.Equal(4.355, range.High - 12, 0.002);
        Assert.Equal(4.355, 12 - range.Low, 0.002);
        var two = GrindingLog.Range([10, 12], 0.7, 1.5)!.Value;
        Assert.False(two.IsOwn);
        Assert.Equal((11 * 0.7, 11 * 1.5), (two.Low, two.High));
    }

    [Fact]
    public void Each_example_ends_at_its_edge_and_every_step_takes_out_the_one_before()
    {
        foreach (var name in new[] { "skeleton-hatchet", "kitchen-knife", "paring-knife" })
        {
            var r = Of(name);
            var f = Finished(r).Value;
            Assert.Equal(r.Plan.Bevel!.EdgeFinished.Mm, f.Steps[^1].Edge!.Value.Mm, 1e-9);
            Assert.Equal(r.Plan.Bevel.Ground == GroundWhen.BeforeHardening, f.Steps.Any(s => s.Stage == FinishStage.Soft));
            foreach (var (a, b) in f.Steps.Zip(f.Steps.Skip(1)).Where(p => p.First.Stage == p.Second.Stage))
            {
                Assert.Equal(ScratchDepth.Of(a.Tool.Micron), b.PerFaceUm!.Value);
                Assert.Equal(a.Edge!.Value.Mm - (2e-3 * b.PerFaceUm.Value.Usual), b.Edge!.Value.Mm, 1e-9);
            }
        }
    }

    [Fact]
    public void A_bevel_ground_hard_leaves_its_share_to_the_ladder()
    {
        var r = Of("kitchen-knife");
        var f = Finished(r).Value;
        var all = (r.Stages[2].Mass!.Value - r.Stages[4].Mass!.Value).Grams;

        // the bevel covers the blade, about half of the face; the ladder takes 0.18 mm of it, both faces
        Assert.InRange(all - f.Steps[0].Grams!.Value, 0.4 * 1e-3 * f.FaceMm2 * f.LadderTakes!.Value.Mm * 7.7, 0.8 * 1e-3 * f.FaceMm2 * f.LadderTakes.Value.Mm * 7.7);
    }

    [Fact]
    public void Bevel_and_ladder_together_take_what_the_plan_takes()
    {
        var r = Of("skeleton-hatchet");
        var f = Finished(r).Value;
        var soft = f.Steps.Where(s => s.Stage == FinishStage.Soft).Sum(s => s.Grams!.Value);
        Assert.Equal((r.Stages[2].Mass!.Value - r.Stages[3].Mass!.Value).Grams, soft, 1e-6);
    }

    [Fact]
    public void A_log_of_three_batches_gives_the_times()
    {
        const string Log = GrindingLogReader.Heading + "\n2026-05-01,spring,Ceramic p36,12,360,30,0.5\n2026-07-01,summer,ceramic P36,12,480,30,0.5\n2026-10-01,autumn,ceramic P36,12,420,30,0.5\n,autumn,P400 paper,12,,120,\n";
        var r = Of("skeleton-hatchet");
        var logged = r with { Shop = r.Shop with { GrindingLog = GrindingLogReader.Read(Log, "grinding.csv").Value.Entries } };
        var steps = Finished(logged).Value.Steps;
        Assert.Equal(steps[0].Grams!.Value / 14, steps[0].Minutes!.Value, 1e-9);
        Assert.Equal(steps[0].Grams!.Value / 840, steps[0].Belts!.Value, 1e-9);
        Assert.Contains("3 batches", steps[0].TimeSays, StringComparison.Ordinal);
        Assert.Equal(10, steps[^1].Minutes!.Value, 1e-9);
        Assert.Contains("guess", steps[^1].TimeSays, StringComparison.Ordinal);
        var entry = logged.Shop.GrindingLog[0];
        Assert.Equal(entry, GrindingLogReader.Read(GrindingLogReader.Heading + "\n" + GrindingLogReader.Line(entry), "x").Value.Entries[0]);
    }

    [Theory]
    [InlineData("a,b\n", "name the columns")]
    [InlineData(GrindingLogReader.Heading + "\n,x,y,1,2\n", "5 values")]
    [InlineData(GrindingLogReader.Heading + "\n,x,y,0,2,3,\n", "pieces")]
    [InlineData(GrindingLogReader.Heading + "\n,,y,1,2,3,\n", "no name")]
    public void Logs_that_are_none(string text, string says) => Assert.Contains(says, GrindingLogReader.Read(text, "grinding.csv").Faults[0].Message, StringComparison.Ordinal);

    [Theory]
    [InlineData("400", "without its series")]
    [InlineData("Q40", "no series")]
    [InlineData("P9000", "not in the lists")]
    [InlineData("", "no grit")]
    public void Grits_that_are_none(string text, string says) => Assert.Contains(says, GritText.Read(text).Message, StringComparison.Ordinal);

    [Theory]
    [InlineData("22 m/s", 1320, 1320)]
    [InlineData("8 m/s to 30 m/s", 480, 1800)]
    [InlineData("4500 ft/min", 1371.6, 1371.6)]
    public void Belt_speeds(string text, double low, double high)
    {
        var read = BeltSpeedText.Read(text).Value;
        Assert.Equal(low, read.Low.MetresPerMin, 1e-9);
        Assert.Equal(high, read.High.MetresPerMin, 1e-9);
    }

    [Fact]
    public void A_ladder_that_takes_more_than_the_plan_leaves_is_told()
    {
        var r = Of("skeleton-hatchet");
        var thin = r with { Plan = r.Plan with { Bevel = r.Plan.Bevel! with { EdgeBeforeHardening = Length.OfMm(0.6) } } };
        Assert.Contains(Finished(thin).Value.Notes, n => n.Contains("leave the edge", StringComparison.Ordinal));
    }
}
