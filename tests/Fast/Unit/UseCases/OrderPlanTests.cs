using System.Collections.Immutable;
using System.Text.Json;
using NetTopologySuite.Geometries;
using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Planners;
using Tangwright.Tests.Bars;
using Tangwright.UseCases;

namespace Tangwright.Tests;

/// <summary>Several patterns in one order: bars against every way of filling them, gaps by another library.</summary>
public class OrderPlanTests
{
    private static readonly Results Hatchet = OpenWork.Of(Repository.Path("examples", "skeleton-hatchet.plan.toml"), null).Value.WorkUp();
    private static readonly Results Knife = In(Hatchet, OpenWork.Of(Repository.Path("examples", "kitchen-knife.plan.toml"), null).Value.WorkUp());
    private static readonly Results Paring = In(Hatchet, OpenWork.Of(Repository.Path("examples", "paring-knife.plan.toml"), null).Value.WorkUp());

    [Fact]
    public void Hatchets_and_knives_share_bars_and_save_one()
    {
        var alone = BarPlan.Of(Hatchet, Starts(8)).Value.Buy.Sum(b => b.Count) + BarPlan.Of(Knife, Starts(3)).Value.Buy.Sum(b => b.Count);
        var s = Plan((Hatchet, 8), (Knife, 3));
        Assert.Equal(3, alone);
        Assert.Equal(2, s.Buy.Sum(b => b.Count));
        Assert.Equal([8, 3], Counted(s));
        Assert.True(s.IsLeast);

        // end to end: 4 hatchets in a bar, or 3 knives and none beside them, or 2 hatchets and 1 knife, or 1 and 2
        Assert.Equal(3, s.StraightBars);
        AllClear(s);
    }

    [Fact]
    public void One_pattern_takes_the_bars_of_the_plan_of_one_pattern()
    {
        foreach (var starts in new[] { 1, 6, 7, 14, 40 })
        {
            var one = BarPlan.Of(Hatchet, Starts(starts)).Value;
            var s = Plan((Hatchet, starts));
            Assert.Equal(one.Buy.Sum(b => b.Count), s.Buy.Sum(b => b.Count));
            Assert.Equal(starts, Counted(s)[0]);
            Assert.Equal(one.Cuts[^1].Drop.Mm, s.Cuts[^1].Drop.Mm, 1e-6);
        }
    }

    // all choices of up to five bars out of all fillings of a 48 in bar, one after the other
    [Fact]
    public void No_choice_of_fillings_takes_fewer_bars()
    {
        var pieces = ImmutableArray.Create(LanePiece.Of(Hatchet.Plan.Outline), LanePiece.Of(Knife.Plan.Outline));
        var fillings = MixedLane.Of(pieces, 76.2 - 1, 5.5)!.Fill([9, 9], 1219.2 - 6)!.All.Select(f => f.Counts).ToArray();
        foreach (var (hatchets, knives) in new[] { (4, 3), (9, 2), (7, 5), (5, 9), (1, 9) })
        {
            Assert.Equal(Fewest(hatchets, knives, 1), Plan((Hatchet, hatchets), (Knife, knives)).Buy.Sum(b => b.Count));
        }

        int Fewest(int h, int k, int bars) => Covers(h, k, bars) ? bars : Fewest(h, k, bars + 1);

        bool Covers(int h, int k, int bars) => (h <= 0 && k <= 0) || (bars > 0 && fillings.Any(f => Covers(h - f[0], k - f[1], bars - 1)));
    }

    [Fact]
    public void Other_steels_and_thicknesses_get_bars_of_their_own()
    {
        var thin = OpenWork.Of(Repository.Path("examples", "kitchen-knife.plan.toml"), null).Value.WorkUp();
        var s = Plan((Hatchet, 3), (thin, 2), (Knife, 1));
        Assert.Equal(2, s.Buy.Select(b => (b.Steel, b.Thickness)).Distinct().Count());
        Assert.All(s.Cuts, c => Assert.Single(c.Places.Select(p => p.Pattern == 1).Distinct()));
        Assert.Equal([3, 2, 1], Counted(s));
        AllClear(s);
    }

    [Fact]
    public void The_rack_comes_first_and_no_bar_of_it_twice()
    {
        RackBar Bar(string name, double length, double width = 76.2) => new(name, "80CrV2", Length.OfMm(6.35), Length.OfMm(width), Length.OfMm(length));
        ImmutableArray<RackBar> rack = [Bar("drop", 700), Bar("stub", 250), Bar("narrow", 1000, 50)];
        var s = Plan((Hatchet with { Shop = Hatchet.Shop with { Rack = rack } }, 2), (Paring, 4));
        Assert.Empty(s.Buy);
        Assert.All(s.Cuts, c => Assert.Equal(1, c.Count));
        Assert.Equal(s.Cuts.Length, s.Cuts.Select(c => c.Rack!.Name).Distinct().Count());
        Assert.All(s.Cuts.Where(c => c.Rack!.Name == "narrow"), c => Assert.All(c.Places, p => Assert.Equal(1, p.Pattern)));
        AllClear(s);
    }

    [Fact]
    public void Prices_decide_and_are_shared_out_over_the_good_pieces()
    {
        PricedBar Bar(double inches, decimal price) => new("80CrV2", Length.OfMm(6.35), Length.OfMm(76.2), Length.OfInches(inches), price, null);
        var shop = Hatchet.Shop with { Bars = [Bar(48, 42), Bar(24, 12)], Money = "EUR" };
        var knife = Knife with { Plan = Knife.Plan with { Stock = Hatchet.Plan.Stock } };
        var s = Plan((Hatchet with { Shop = shop }, 4), (knife, 2));
        Assert.All(s.Buy, b => Assert.Equal(24, b.Length.Inches, 1e-9));
        Assert.Equal(s.Buy.Sum(b => b.Count) * 12, s.Price!.Value);
        Assert.Equal((double)s.Price.Value, (double)s.Patterns.Sum(p => p.SteelPrice!.Value * p.Good), 1e-9);
        Assert.Equal("EUR", s.Money);

        // by the kilogram: 7.85 g/cm3
        var byMass = BarPlan.Of(Hatchet with { Shop = Hatchet.Shop with { Bars = [new PricedBar("80CrV2", Length.OfMm(6.35), Length.OfMm(76.2), Length.OfMm(2000), null, 10)] } }, Starts(6)).Value;
        Assert.Equal(10 * 7.85e-6 * 76.2 * 6.35 * 1219.2, (double)byMass.Price!.Value, 0.3);
    }

    [Fact]
    public void Prices_are_read_from_the_shop_file_and_one_kind_a_bar()
    {
        const string Bar = "[[bar]]\nsteel = \"80CrV2\"\nthickness = \"1/4 in\"\nwidth = \"3 in\"\nlength = \"48 in\"\n";
        var shop = Inputs.ShopReader.Read("tangwright = 1\nmoney = \"EUR\"\n" + Bar + "price = 42.5\n", "shop.toml").Value;
        Assert.Equal(("EUR", 42.5m), (shop.Money, shop.Bars[0].Price!.Value));
        Assert.Equal(48, shop.Bars[0].Length.Inches, 1e-9);
        Assert.Contains("one for the kilogram", Inputs.ShopReader.Read("tangwright = 1\n" + Bar + "price = 42\nprice_per_kg = 9\n", "shop.toml").Faults[0].Message, StringComparison.Ordinal);
    }

    // some bars have a price, some none
    [Fact]
    public void With_a_price_missing_steel_is_counted_and_that_is_said()
    {
        var shop = Hatchet.Shop with { Bars = [new PricedBar("80CrV2", Length.OfMm(6.35), Length.OfMm(76.2), Length.OfInches(24), 1, null)] };
        var s = BarPlan.Of(Hatchet with { Shop = shop }, Starts(6)).Value;
        Assert.Contains(s.Notes, n => n.Contains("no price for a bar", StringComparison.Ordinal));
        Assert.Equal(48, s.Buy.Sum(b => b.Count * b.Length.Inches), 1e-6);
    }

    [Fact]
    public void Straight_cuts_part_all_pieces_and_the_price_of_that_is_told()
    {
        var request = new StockRequest(6) { Starts = 6, StraightCuts = true };
        var answer = PlanStock.Of(Repository.Path("examples", "kitchen-knife.plan.toml"), null, request).Value;
        Assert.True(answer.Stock.Cuts.Sum(c => c.Count * c.Row.Mm) >= answer.Free!.Cuts.Sum(c => c.Count * c.Row.Mm) - 1e-6);
        Assert.StartsWith("Straight cuts take", StockText.Straight(answer, UnitsShown.Mm), StringComparison.Ordinal);

        // as many hatchets end to end as turned into one another: square cuts, and the price of them
        var square = PlanStock.Of(Repository.Path("examples", "skeleton-hatchet.plan.toml"), null, request with { Starts = 4, Good = 4 }).Value;
        Assert.Contains("more of bar in all", StockText.Straight(square, UnitsShown.Mm), StringComparison.Ordinal);
        Assert.All(square.Stock.Cuts.SelectMany(c => c.SawLines), l => Assert.Equal(l.LowMm, l.HighMm));
        Assert.Contains(square.Stock.Notes, n => n == "Square cuts part all pieces.");
        Parted(square.Stock);
        Parted(answer.Stock);
        Parted(Plan(straight: true, (Hatchet, 5), (Knife, 3)));

        static void Parted(StockPlan s)
        {
            AllClear(s);
            foreach (var cut in s.Cuts)
            {
                Assert.Equal(cut.Places.Length - 1, cut.SawLines.Length);
                var placed = Placed(s, cut);
                foreach (var (line, i) in cut.SawLines.Select((l, i) => (l, i)).Where(l => l.l.RoomMm >= s.Room.Kerf.Mm))
                {
                    // half the kerf on each side is clear of every piece, and each piece lies on its own side
                    var blade = new LineString([new Coordinate(line.LowMm, 0), new Coordinate(line.HighMm, cut.Width.Mm)]);
                    Assert.All(placed, p => Assert.True(p.Distance(blade) >= (0.5 * s.Room.Kerf.Mm) - 1e-3));
                    double Side(Polygon p) => ((line.HighMm - line.LowMm) * p.Centroid.Y) - (cut.Width.Mm * (p.Centroid.X - line.LowMm));
                    Assert.All(placed.Take(i + 1), p => Assert.True(Side(p) > 0));
                    Assert.All(placed.Skip(i + 1), p => Assert.True(Side(p) < 0));
                }
            }
        }
    }

    [Fact]
    public void A_plan_named_twice_and_a_service_beside_straight_cuts_are_refused()
    {
        var knife = Repository.Path("examples", "kitchen-knife.plan.toml");
        Assert.Contains("twice", PlanStock.Of(knife, null, new StockRequest(6) { With = [new StockWith(knife, 2)] }).Faults[0].Message, StringComparison.Ordinal);
        Assert.Contains("no straight cuts", PlanStock.Of(knife, null, new StockRequest(6) { StraightCuts = true, Service = "laser" }).Faults[0].Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Stopped_early_it_still_answers_with_all_pieces()
    {
        using var stopped = new CancellationTokenSource();
        stopped.Cancel();
        var s = OrderPlan.Of([new(Hatchet, Starts(8)), new(Knife, Starts(4))], new BarSolver(), stopped.Token).Value;
        Assert.False(s.IsLeast);
        Assert.Contains(s.Notes, n => n.Contains("ended before", StringComparison.Ordinal));
        Assert.Equal([8, 4], Counted(s));
        AllClear(s);
    }

    [Fact]
    public void Ten_thousand_of_two_patterns_are_a_few_ways_of_cutting()
    {
        var s = OrderPlan.Of([new(Hatchet, new StockWanted(5000) { YieldShare = 1 }), new(Paring, new StockWanted(5000) { YieldShare = 1 })], new BarSolver()).Value;
        Assert.Equal([5000, 5000], Counted(s));
        Assert.InRange(s.Cuts.Length, 1, 6);
    }

    [Fact]
    public void The_same_answer_twice() => Assert.Equal(Text(Plan((Hatchet, 11), (Knife, 7), (Paring, 5))), Text(Plan((Hatchet, 11), (Knife, 7), (Paring, 5))));

    [Fact]
    public void What_cannot_be_is_refused_in_words()
    {
        Assert.Contains("0 good pieces cannot be planned", Says((Hatchet, new(3)), (Knife, new(0))), StringComparison.Ordinal);
        Assert.Contains("would touch", Says((Hatchet, new(3) { Clearance = Length.Zero }), (Knife, new(1))), StringComparison.Ordinal);
        Assert.Contains("comes out of any bar", Says((Hatchet, new(3) { Bars = [Length.OfMm(300)] }), (Knife, new(1))), StringComparison.Ordinal);
        Assert.Contains("more than are planned at once", Says([.. Enumerable.Repeat((Hatchet, new StockWanted(1)), 13)]), StringComparison.Ordinal);
        Assert.False(StockWith.Read("other.plan.toml").IsGood);
        Assert.False(StockWith.Read("=6").IsGood);
        Assert.False(StockWith.Read("other.plan.toml=six").IsGood);
        Assert.Equal(("a=b.plan.toml", 6), (StockWith.Read("a=b.plan.toml=6").Value.PlanPath, StockWith.Read("a=b.plan.toml=6").Value.Good));

        string Says(params (Results R, StockWanted W)[] items) => string.Join(" ", OrderPlan.Of([.. items.Select(i => new StockItem(i.R, i.W))], new BarSolver()).Faults.Select(f => f.Message));
    }

    [Fact]
    public void Json_names_the_pattern_of_every_piece()
    {
        var request = new StockRequest(2) { Starts = 2, With = [new StockWith(Repository.Path("examples", "skeleton-knife.plan.toml"), 3)], Solver = () => new BarSolver() };
        using var json = JsonDocument.Parse(StockJson.Of(PlanStock.Of(Repository.Path("examples", "skeleton-hatchet.plan.toml"), null, request).Value));
        Assert.Equal(2, json.RootElement.GetProperty("patterns").GetArrayLength());
        Assert.All(json.RootElement.GetProperty("cuts").EnumerateArray().SelectMany(c => c.GetProperty("places").EnumerateArray()), p => Assert.NotEmpty(p.GetProperty("pattern").GetString()!));
    }

    private static StockWanted Starts(int starts) => new(starts) { Starts = starts, YieldShare = 1 };

    private static StockPlan Plan(params (Results R, int Starts)[] items) => Plan(straight: false, items);

    private static StockPlan Plan(bool straight, params (Results R, int Starts)[] items)
        => OrderPlan.Of([.. items.Select(i => new StockItem(i.R, Starts(i.Starts) with { StraightCuts = straight }))], new BarSolver()).Value;

    private static int[] Counted(StockPlan s) => [.. s.Patterns.Select((_, i) => s.Cuts.Sum(c => c.Count * c.Places.Count(p => p.Pattern == i)))];

    private static string Text(StockPlan s) => string.Join('\n', s.Cuts.Select(c => $"{c.Count} {c.Length} {string.Join(' ', c.Places)}"));

    /// <summary>The piece of another plan in the bar of the first.</summary>
    private static Results In(Results bar, Results piece)
        => piece with { Plan = piece.Plan with { Stock = bar.Plan.Stock }, Shop = bar.Shop, Steel = bar.Steel };

    private static Polygon[] Placed(StockPlan s, BarCut cut) => [.. cut.Places.Select(p => BarCase.Placed(s.Patterns[p.Pattern].Results.Plan.Outline, new LaneLayout([p], 0, 0))[0])];

    /// <summary>By another library: no two pieces closer than asked, all inside the bar with its margins.</summary>
    private static void AllClear(StockPlan s)
    {
        foreach (var cut in s.Cuts)
        {
            var (placed, end) = (Placed(s, cut), cut.Places.Max(p => s.Patterns[p.Pattern].Results is var r ? (r.Plan.Layout.EndAllowance ?? r.Shop.EndAllowance).Mm : 0));
            Assert.True(BarCase.LeastGap(placed) >= s.Room.Clearance.Mm - 1e-6);
            foreach (var e in placed.Select(p => p.EnvelopeInternal))
            {
                Assert.True(e.MinX >= end - 1e-6 && e.MaxX <= cut.Length.Mm - end + 1e-6);
                Assert.True(e.MinY >= s.Room.Edge.Mm - 1e-6 && e.MaxY <= cut.Width.Mm - s.Room.Edge.Mm + 1e-6);
            }
        }
    }
}
