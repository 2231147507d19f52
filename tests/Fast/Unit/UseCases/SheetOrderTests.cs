using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Tests.Bars;
using Tangwright.UseCases;

namespace Tangwright.Tests;

/// <summary>Orders laid on sheets by search: counts, rack, prices, words for what cannot be.</summary>
public class SheetOrderTests
{
    private static readonly Results Hatchet = OpenWork.Of(Repository.Path("examples", "skeleton-hatchet.plan.toml"), null).Value.WorkUp();
    private static readonly Results Knife = OpenWork.Of(Repository.Path("examples", "kitchen-knife.plan.toml"), null).Value.WorkUp();
    private static readonly SheetSearch Sheet = new(Length.OfMm(300), Length.OfMm(1000)) { Effort = new SearchEffort(800_000, 2, 1) };

    [Fact]
    public void Two_patterns_of_one_steel_share_sheets_and_every_piece_is_there()
    {
        var knife = In(Knife);
        var s = Good(SheetOrder.Of([Item(Hatchet, 9), Item(knife, 7)]));
        Assert.Equal([9, 7], new[] { 0, 1 }.Select(i => s.Cuts.Sum(c => c.Count * c.Places.Count(p => p.Pattern == i))));
        Assert.Equal(s.Cuts.Sum(c => c.Count), s.Buy.Single().Count);
        Clear(s);
    }

    [Fact]
    public void A_sheet_of_the_rack_comes_before_new_ones()
    {
        var shop = Hatchet.Shop with { Rack = [new RackBar("short one", Hatchet.Plan.Stock.Steel, Hatchet.Plan.Stock.Thickness, Length.OfMm(300), Length.OfMm(420)), new RackBar("other steel", "other", Hatchet.Plan.Stock.Thickness, Length.OfMm(300), Length.OfMm(800)), new RackBar("too short", Hatchet.Plan.Stock.Steel, Hatchet.Plan.Stock.Thickness, Length.OfMm(300), Length.OfMm(200))] };
        var s = Good(SheetOrder.Of([Item(Hatchet with { Shop = shop }, 12)]));
        Assert.Equal(["short one"], s.Cuts.Select(c => c.Rack?.Name).OfType<string>());
        Assert.Equal("short one", s.Cuts[0].Rack!.Name);
        Assert.Equal(12, s.Cuts.Sum(c => c.Count * c.Places.Length));
        Clear(s);
    }

    [Fact]
    public void Ten_thousand_alike_are_a_few_ways_of_cutting()
    {
        var s = Good(SheetOrder.Of([Item(Hatchet, 10_000)]));
        Assert.Equal(10_000, s.Cuts.Sum(c => c.Count * c.Places.Length));
        Assert.InRange(s.Cuts.Length, 1, 3);
        Clear(s);
    }

    [Fact]
    public void A_piece_higher_than_the_sheet_fits_across_where_that_is_allowed()
    {
        var narrow = Sheet with { Width = Length.OfMm(60), Length = Length.OfMm(500) };
        Assert.Contains("high", Fault(SheetOrder.Of([Item(Hatchet, 2, narrow)])), StringComparison.Ordinal);
        var wide = Sheet with { Width = Length.OfMm(300), Length = Length.OfMm(200) };
        Assert.NotEmpty(Fault(SheetOrder.Of([Item(Hatchet, 2, wide)])));
        var s = Good(SheetOrder.Of([Item(Hatchet, 2, wide with { MayLieAcross = true })]));
        Assert.All(s.Cuts.SelectMany(c => c.Places), p => Assert.True(Lies.IsAcross(p.Lie)));
        Clear(s);
    }

    [Fact]
    public void What_cannot_be_is_said_in_a_word()
    {
        Assert.Contains("same sheet", Fault(SheetOrder.Of([Item(Hatchet, 2), Item(Knife, 2)])), StringComparison.Ordinal);
        Assert.Contains("straight cuts", Fault(SheetOrder.Of([Item(Hatchet, 2) with { Wanted = Wanted(2, Sheet) with { StraightCuts = true } }])), StringComparison.Ordinal);
        Assert.Contains("cannot be", Fault(SheetOrder.Of([Item(Hatchet, 2, Sheet with { Width = Length.OfMm(0) })])), StringComparison.Ordinal);
        Assert.Contains("touch", Fault(SheetOrder.Of([Item(Hatchet, 2) with { Wanted = Wanted(2, Sheet) with { Clearance = Length.Zero } }])), StringComparison.Ordinal);
        Assert.Contains("patterns", Fault(SheetOrder.Of([Item(Hatchet, 200), Item(In(Knife), 200)])), StringComparison.Ordinal);
    }

    [Fact]
    public void Words_of_a_request_that_cannot_be_read_are_named()
    {
        foreach (var (sheet, millions, seconds, word) in new (string, int?, double?, string)[] { ("300 mm", null, null, "--sheet"), ("300 mm x many", null, null, "--sheet"), ("300 mm x 1000 mm", 0, null, "--search"), ("300 mm x 1000 mm", null, -1, "--seconds") })
        {
            var answer = PlanStock.Of(Repository.Path("examples", "skeleton-hatchet.plan.toml"), null, new StockRequest(2) { Sheet = sheet, Millions = millions, Seconds = seconds });
            Assert.False(answer.IsGood);
            Assert.Contains(answer.Faults, f => f.ToString()!.Contains(word, StringComparison.Ordinal));
        }
    }

    [Fact]
    public void Better_layouts_are_told_while_it_runs_and_a_stop_keeps_the_best()
    {
        using var stop = new CancellationTokenSource();
        var told = new List<(int Sheets, double UsedMm)>();
        var endless = Sheet with { Effort = new SearchEffort(1_000_000_000, 2, 1) };
        var s = Good(SheetOrder.Of([Item(Hatchet, 24, endless)], (sheets, used) =>
        {
            told.Add((sheets, used.Mm));
            if (told.Count == 2) stop.Cancel();
        }, stop.Token));
        Assert.Equal(2, told.Count);
        Assert.Equal(told.OrderByDescending(t => t.Sheets).ThenByDescending(t => t.UsedMm), told);
        Clear(s);
    }

    private static StockWanted Wanted(int starts, SheetSearch sheet) => new(starts) { Starts = starts, Sheet = sheet };

    private static StockItem Item(Results r, int starts, SheetSearch? sheet = null) => new(r, Wanted(starts, sheet ?? Sheet));

    /// <summary>A plan as if it were cut from the hatchet's steel.</summary>
    private static Results In(Results r) => r with { Plan = r.Plan with { Stock = r.Plan.Stock with { Steel = Hatchet.Plan.Stock.Steel, Thickness = Hatchet.Plan.Stock.Thickness } }, Shop = Hatchet.Shop };

    private static StockPlan Good(Checked<StockPlan> s) => s.IsGood ? s.Value : throw new InvalidOperationException(string.Join("; ", s.Faults.Select(f => f.ToString())));

    private static string Fault(Checked<StockPlan> s) => string.Join("; ", s.Faults.Select(f => f.ToString()));

    private static void Clear(StockPlan s)
    {
        foreach (var cut in s.Cuts)
        {
            Assert.True(cut.LeastGap >= s.Room.Clearance);
            var polygons = cut.Places.Select(p => BarCase.Placed(s.Patterns[p.Pattern].Results.Plan.Outline, new LaneLayout([p], 0, 0))[0]).ToArray();
            Assert.True(BarCase.LeastGap(polygons) >= s.Room.Clearance.Mm - 1e-3);
            foreach (var box in polygons.Select(p => p.EnvelopeInternal))
            {
                Assert.InRange(box.MinX, s.Room.End.Mm - 1e-6, cut.Length.Mm);
                Assert.InRange(box.MaxX, 0, cut.Length.Mm - s.Room.End.Mm + 1e-6);
                Assert.InRange(box.MinY, s.Room.Edge.Mm - 1e-6, cut.Width.Mm);
                Assert.InRange(box.MaxY, 0, cut.Width.Mm - s.Room.Edge.Mm + 1e-6);
            }
        }
    }
}
