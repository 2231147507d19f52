using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Tests;

/// <summary>The way of a machine: tools, order, going past for the play, clamping anew.</summary>
public class MachineWayTests
{
    private static MachineWay Of(Results r, Func<Machine, Machine>? change = null)
    {
        var group = r.Drilling.ByMachine.Single(g => g.Machine is { HasReadout: true });
        return MachineWay.Of(change is null ? group : group with { Machine = change(group.Machine!) }, r.Bench)!;
    }

    [Fact]
    public void The_pilot_goes_back_over_the_spots_the_other_way_round()
    {
        var tools = Of(ExamplePieces.Hatchet()).Clampings.Single().Tools;
        Assert.Equal(["L1", "L2", "L3", "L4", "L5", "L6", "L7", "lanyard"], tools[0].Round.Holes.Select(h => h.Name));
        Assert.Equal(HoleStep.Spot, tools[0].Round.Work.Step);
        Assert.Equal(tools[0].Round.Holes.Reverse().Select(h => h.Name), tools[1].Round.Holes.Select(h => h.Name));
        Assert.Equal(HoleStep.Pilot, tools[1].Round.Work.Step);

        // then the drills, small before large, each once
        var drills = tools.Skip(2).Where(t => t.Round.Work.Step == HoleStep.Drill).Select(t => t.Round.Work.Diameter.Mm).ToArray();
        Assert.Equal([8, 10, 11, 12, 13, 14, 15, 16], drills);
    }

    [Fact]
    public void A_tool_with_the_same_many_holes_goes_back_over_them()
    {
        var chance = new Random(3);
        var plan = TestShop.Plate with { Holes = [.. Enumerable.Range(0, 14).Select(i => TestShop.Hole($"H{i}", 10 + (180 * chance.NextDouble()), 8 + (24 * chance.NextDouble()), 6))] };
        var r = ExamplePieces.Kitchen();
        r = WorkUp.Of(plan, r.Shop, r.Steel);
        var tools = Of(r).Clampings.Single().Tools;
        Assert.True(tools.Length >= 2);
        Assert.Equal(tools[0].Round.Holes.Reverse().Select(h => h.Name), tools[1].Round.Holes.Select(h => h.Name));
    }

    [Theory]
    [InlineData(0.15, 0.5)]
    [InlineData(0.25, 0.5)]
    [InlineData(0.26, 0.6)]
    [InlineData(0.4, 0.8)]
    public void Past_the_place_by_twice_the_play_at_least(double play, double past)
    {
        var machine = ExamplePieces.Hatchet().Shop.Machines.Single(m => m.HasReadout) with { Backlash = TestShop.Mm(play) };
        Assert.Equal(past, GoPast.Of(machine)!.Value.Mm, 1e-9);
        Assert.Equal(1, GoPast.Of(machine with { Backlash = null })!.Value.Mm, 1e-9);
        Assert.Null(GoPast.Of(machine with { Backlash = Length.Zero }));
    }

    [Fact]
    public void Only_what_is_come_to_from_the_wrong_side_is_gone_past()
    {
        var tools = Of(ExamplePieces.Hatchet(), m => m with { Backlash = TestShop.Mm(0.2) }).Clampings.Single().Tools;

        // out: x grows; L2 lies lower than L1, 17.6 after 18.2, so y is gone past
        Assert.All(tools[0].Stops, s => Assert.Null(s.PastXMm));
        Assert.Equal(tools[0].Stops[1].At.Y - 0.5, tools[0].Stops[1].PastYMm!.Value, 1e-9);

        // back: every x but the first is come to from the far side
        Assert.All(tools[1].Stops.Skip(1), s => Assert.Equal(s.At.X - 0.5, s.PastXMm!.Value, 1e-9));
        Assert.All(Of(ExamplePieces.Hatchet(), m => m with { Backlash = Length.Zero }).Clampings.Single().Tools.SelectMany(t => t.Stops), s => Assert.Null(s.PastXMm));
    }

    [Fact]
    public void A_short_table_is_clamped_anew_on_two_pinned_holes()
    {
        var way = Of(ExamplePieces.Hatchet(), m => m with { TravelX = TestShop.Mm(120) });
        Assert.Equal(2, way.Clampings.Length);

        // 103 + 120 = 223: L1 to L6, then L7 and lanyard from L5 and L6
        Assert.Equal(["L5", "L6"], way.Clampings[1].Pins.Select(h => h.Name));
        Assert.Equal(["L7", "lanyard"], way.Clampings[1].Tools[0].Round.Holes.Select(h => h.Name).Order(StringComparer.Ordinal));
        Assert.Equal(90, way.Clampings[1].SlideMm, 1e-9);

        // what takes the pins is made to its size before
        Assert.All(way.Clampings[1].Pins, p => Assert.Contains(way.Clampings[0].Tools, t => t.Round.Work.Step == HoleStep.Drill && t.Round.Holes.Any(h => h.Name == p.Name)));
    }

    [Fact]
    public void Seen_from_the_back_y_counts_the_other_way()
    {
        var r = ExamplePieces.Hatchet();
        var back = Of(r).Back(r.Bench);
        Assert.Equal(r.Holes.Select(h => h.Name).Order(StringComparer.Ordinal), back.Select(s => s.Hole.Name).Order(StringComparer.Ordinal));
        Assert.All(back, s => Assert.Equal(-r.Bench.ToBench(s.Hole.MadeAt).Y, s.At.Y, 1e-9));
    }

    /// <summary>Worked by hand: 275 mm long, 3 mm left at both ends, kerf 2.5 mm: 283.5 from piece to piece; 48 in take (1219.2 + 2.5) / 283.5 = 4.</summary>
    [Fact]
    public void Pieces_one_after_the_other_in_the_bar()
    {
        var r = ExamplePieces.Hatchet();
        var row = PieceRow.Of(r.Plan, r.Shop, r.Bench)!;
        Assert.Equal(283.5, row.Pitch.Mm, 1e-9);
        Assert.Equal(4, row.Fit);
        Assert.Null(PieceRow.Of(r.Plan, r.Shop, r.Bench with { State = DrilledIn.Profile }));
    }
}
