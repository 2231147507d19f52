using System.Text.Json;
using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Tests.Bars;
using Tangwright.UseCases;

namespace Tangwright.Tests;

/// <summary>From good pieces to bars in the three worked examples; counts worked by hand in the job's own table.</summary>
public class PlanStockTests
{
    [Fact]
    public void Twelve_hatchets_take_fourteen_starts_and_three_bars_where_end_to_end_takes_four()
    {
        var s = Plan("skeleton-hatchet", new StockRequest(12) { Yield = "95%", Chance = "90%" });
        Assert.Equal(14, s.Starts);
        Assert.Equal(0.97, s.Chosen.ChanceShare, 0.005);
        Assert.True(s.Chosen.IsFree);
        Assert.Equal(3, Assert.Single(s.Buy).Count);
        Assert.Equal(6, s.Buy[0].MostInBar);
        Assert.Equal(4, s.Buy[0].StraightInBar);
        Assert.Equal(4, s.StraightBars);
        Assert.Equal(14, s.Cuts.Sum(c => c.Count * c.Places.Length));
        Assert.Equal(18, s.Free.Starts);
        Assert.InRange(s.Cuts[^1].Drop.Mm, 845, 862);
        Assert.True(s.Cuts[^1].DropHoldsPiece);
        AllClear(s, Repository.Path("examples", "skeleton-hatchet.plan.toml"));
    }

    [Fact]
    public void Eight_kitchen_knives_come_out_of_three_strips_only_with_tips_facing()
    {
        var s = Plan("kitchen-knife", new StockRequest(6) { Yield = "88%" });
        Assert.Equal(8, s.Starts);
        Assert.Equal((3, 3, 2), (s.Buy[0].Count, s.Buy[0].MostInBar, s.Buy[0].StraightInBar));
        Assert.Equal(4, s.StraightBars);
        AllClear(s, Repository.Path("examples", "kitchen-knife.plan.toml"));
    }

    [Fact]
    public void Twenty_paring_knives_come_out_of_five_strips()
    {
        var s = Plan("paring-knife", new StockRequest(20) { Yield = "0.9", Chance = "95%" });
        Assert.Equal((25, 5, 5), (s.Starts, s.Buy[0].Count, s.Buy[0].MostInBar));
        AllClear(s, Repository.Path("examples", "paring-knife.plan.toml"));
    }

    [Fact]
    public void Without_a_count_of_its_own_the_yield_is_said_to_be_assumed()
    {
        var s = Plan("paring-knife", new StockRequest(20));
        Assert.True(s.Yield.IsPrior);
        Assert.Contains("assumed", StockText.Answer(s) + s.Notes[0], StringComparison.Ordinal);
        Assert.True(s.Chosen.LowChanceShare < s.Chosen.ChanceShare && s.Chosen.ChanceShare < s.Chosen.HighChanceShare);
    }

    [Fact]
    public void The_rack_comes_first_the_smallest_bar_that_holds_the_rest()
    {
        var r = Results("skeleton-hatchet");
        RackBar Bar(string name, double length, string steel = "80CrV2") => new(name, steel, Length.OfMm(6.35), Length.OfMm(76.2), Length.OfMm(length));
        var racked = r with { Shop = r.Shop with { Rack = [Bar("long", 860), Bar("short", 400), Bar("other steel", 1200, "1095"), Bar("stub", 200)] } };
        var s = BarPlan.Of(racked, new StockWanted(2) { Starts = 2 }).Value;
        Assert.Equal("short", Assert.Single(s.Cuts).Rack!.Name);
        Assert.Empty(s.Buy);
        s = BarPlan.Of(racked, new StockWanted(9) { Starts = 9 }).Value;
        Assert.Equal(["long", "short", null], s.Cuts.Select(c => c.Rack?.Name));
        Assert.Equal(9, s.Cuts.Sum(c => c.Count * c.Places.Length));
        Assert.Equal(1, s.Buy[0].Count);
    }

    [Fact]
    public void Of_several_lengths_the_least_steel_is_bought()
    {
        var s = Plan("skeleton-hatchet", new StockRequest(7) { Starts = 7, Bars = ["48 in", "36 in", "12 in"] });
        Assert.Equal(7, s.Cuts.Sum(c => c.Count * c.Places.Length));
        Assert.Equal(60, s.Buy.Sum(b => b.Count * b.Length.Inches), 1e-9);
    }

    [Theory]
    [InlineData(0, null, null, null, "cannot be planned")]
    [InlineData(12, "140%", null, null, "not between 5 and 100 %")]
    [InlineData(12, "most", null, null, "is no share")]
    [InlineData(12, null, "10 in", null, "not one piece")]
    [InlineData(12, null, "30 furlongs", null, "furlongs")]
    [InlineData(12, null, null, "0 mm", "would touch")]
    [InlineData(12, null, null, "3 m", "more than can be meant")]
    [InlineData(20_000, null, null, null, "cannot be planned")]
    public void What_cannot_be_is_refused_in_words(int good, string? yield, string? bar, string? clearance, string says)
    {
        var answer = PlanStock.Of(Repository.Path("examples", "skeleton-hatchet.plan.toml"), null, new StockRequest(good) { Yield = yield, Bars = bar is null ? [] : [bar], Clearance = clearance });
        Assert.Contains(says, string.Join(" ", answer.Faults.Select(f => f.Message)), StringComparison.Ordinal);
        Assert.All(answer.Faults, f => Assert.NotEmpty(f.Remedy));
    }

    [Fact]
    public void Ten_thousand_copies_are_a_few_ways_of_cutting()
    {
        var s = Plan("paring-knife", new StockRequest(10_000) { Bars = ["6 m"] });
        Assert.InRange(s.Starts, 11_111, 11_300);
        Assert.True(s.Cuts.Length <= 2);
        Assert.Equal(s.Starts, s.Cuts.Sum(c => c.Count * c.Places.Length));
    }

    [Fact]
    public void Fewest_bars_are_those_of_trying_every_combination()
    {
        (double LengthMm, int Holds, double Cost)[] kinds = [(1219.2, 6, 1219.2), (914.4, 4, 914.4), (304.8, 1, 304.8)];
        var bars = FewestBars.Of([.. kinds], 40);
        for (var n = 1; n <= 40; n++)
        {
            var best = double.PositiveInfinity;
            for (var a = 0; a <= 8; a++)
            {
                for (var b = 0; b <= 11; b++)
                {
                    var c = Math.Max(0, n - (6 * a) - (4 * b));
                    best = Math.Min(best, (a * kinds[0].LengthMm) + (b * kinds[1].LengthMm) + (c * kinds[2].LengthMm));
                }
            }

            Assert.Equal(best, bars.For(n).LengthMm, 1e-6);
            Assert.True(bars.Counts(n).Zip(kinds, (x, k) => x * k.Holds).Sum() >= n);
        }
    }

    [Fact]
    public void Json_holds_every_place()
    {
        var answer = PlanStock.Of(Repository.Path("examples", "kitchen-knife.plan.toml"), null, new StockRequest(6) { Yield = "88%" }).Value;
        using var json = JsonDocument.Parse(StockJson.Of(answer));
        Assert.Equal(8, json.RootElement.GetProperty("cuts").EnumerateArray().Sum(c => c.GetProperty("bars").GetInt32() * c.GetProperty("places").GetArrayLength()));
        Assert.All(json.RootElement.GetProperty("cuts").EnumerateArray(), c => Assert.True(c.GetProperty("least_gap_mm").GetDouble() >= 5));
    }

    private static Results Results(string example) => OpenWork.Of(Repository.Path("examples", example + ".plan.toml"), null).Value.WorkUp();

    private static StockPlan Plan(string example, StockRequest request) => PlanStock.Of(Repository.Path("examples", example + ".plan.toml"), null, request).Value.Stock;

    /// <summary>By another library: no two pieces closer than asked, all inside the bar with its margins.</summary>
    private static void AllClear(StockPlan s, string path)
    {
        var outline = OpenWork.Of(path, null).Value.Plan.Outline;
        foreach (var cut in s.Cuts)
        {
            var placed = BarCase.Placed(outline, new LaneLayout(cut.Places, 0, 0));
            Assert.True(BarCase.LeastGap(placed) >= s.Room.Clearance.Mm - 1e-6);
            foreach (var p in placed)
            {
                var e = p.EnvelopeInternal;
                Assert.True(e.MinX >= s.Room.End.Mm - 1e-6 && e.MaxX <= cut.Length.Mm - s.Room.End.Mm + 1e-6);
                Assert.True(e.MinY >= s.Room.Edge.Mm - 1e-6 && e.MaxY <= cut.Width.Mm - s.Room.Edge.Mm + 1e-6);
            }
        }
    }
}
