using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Inputs;
using Tangwright.Tests.Rules;

namespace Tangwright.Tests;

/// <summary>Worked examples: the skeleton hatchet, the kitchen knife and the paring knife on the machines of their shops.</summary>
public class DrillPlanTests
{
    private static Results Of(string example, Func<Shop, Shop>? change = null)
    {
        var plan = PlanReader.Read(Repository.Text("examples", example + ".plan.toml"), example).Value.Plan;
        var shop = ShopReader.Read(Repository.Text("examples", example + ".shop.toml"), example).Value;
        return WorkUp.Of(plan, change is null ? shop : change(shop), FindingExamples.SteelOf(plan));
    }

    private static Shop OnlyPress(Shop shop) => shop with { Machines = [shop.Machines[0]] };

    private static HolePlan The(Results r, string hole) => r.Drilling.Holes.Single(h => h.Hole.Name == hole);

    [Fact]
    public void The_press_makes_8_10_and_11_mm_and_all_pilots()
    {
        var r = Of("skeleton-hatchet", OnlyPress);
        foreach (var name in new[] { "L6", "L7", "lanyard" })
        {
            var hole = The(r, name);
            Assert.Equal("bench press", hole.Machine?.Name);
            Assert.Contains(hole.Operations, o => o.Step == HoleStep.Pilot);
            Assert.Empty(hole.Refusals);
        }

        foreach (var name in new[] { "L1", "L2", "L3", "L4", "L5" })
        {
            var hole = The(r, name);
            Assert.Null(hole.Machine);
            Assert.Equal("bench press", hole.Pilot?.Machine.Name);
            Assert.InRange(hole.Pilot!.Operation.Diameter / hole.Hole.Diameter, 0.2, 0.5);
        }
    }

    [Theory]
    [InlineData("L5", false)]
    [InlineData("L4", false)]
    [InlineData("L3", true)]
    [InlineData("L2", true)]
    [InlineData("L1", true)]
    public void Big_holes_are_refused_by_speed_and_the_biggest_by_the_chuck_too(string hole, bool chuckToo)
    {
        var gates = The(Of("skeleton-hatchet", OnlyPress), hole).Refusals.Select(x => x.Gate);
        Assert.Equal(chuckToo ? [MachineGate.TooFast, MachineGate.Chuck] : [MachineGate.TooFast], gates);
    }

    [Fact]
    public void They_are_warnings_with_a_remedy()
    {
        var findings = Of("skeleton-hatchet", OnlyPress).Findings.Where(f => f.Code.StartsWith("drilling.", StringComparison.Ordinal)).ToArray();
        var fast = findings.Single(f => f.Code == FindingCodes.TooFast);
        Assert.Equal(Severity.Warning, fast.Severity);
        Assert.Equal("holes L1, L2, L3, L4, L5", fast.Where);
        Assert.Contains("turns 363 rpm or slower", fast.Remedy);
        Assert.Equal("holes L1, L2, L3", findings.Single(f => f.Code == FindingCodes.ChuckTooSmall).Where);
        Assert.DoesNotContain(Of("skeleton-hatchet").Findings, f => f.Code == FindingCodes.TooFast);
    }

    [Fact]
    public void The_mill_drill_takes_what_the_press_cannot()
    {
        var r = Of("skeleton-hatchet");
        foreach (var hole in new[] { "L1", "L5" }) Assert.Equal("mill-drill", The(r, hole).Machine?.Name);
        Assert.Contains(The(r, "L1").Refusals, x => x is { Machine: "bench press", Gate: MachineGate.TooFast });
        Assert.Equal(310, The(r, "L1").Operations.Single(o => o.Step == HoleStep.Drill).Speed!.SetRpm);
        Assert.Equal(600, The(r, "lanyard").Operations.Single(o => o.Step == HoleStep.Drill).Speed!.SetRpm);
    }

    [Fact]
    public void Reamed_pins_of_5_mm_are_drilled_under_and_reamed()
    {
        var steps = The(Of("kitchen-knife"), "P1").Operations;
        Assert.Equal([HoleStep.Spot, HoleStep.Drill, HoleStep.Ream, HoleStep.Chamfer], steps.Select(o => o.Step));
        Assert.Equal(4.8, steps[1].Diameter.Mm, 1e-9);
        Assert.True(steps[2].Speed!.TargetRpm < steps[1].Speed!.TargetRpm);
    }

    [Fact]
    public void Pins_of_the_paring_knife_go_on_the_small_mill_within_the_band()
    {
        var drill = The(Of("paring-knife"), "P1").Operations.Single(o => o.Step == HoleStep.Drill);
        Assert.InRange(drill.Speed!.SetRpm, 2000, drill.Speed.HighRpm);
        Assert.NotNull(The(Of("paring-knife"), "P1").Operations.Single(o => o.Step == HoleStep.Spot).Speed);
    }

    [Fact]
    public void Every_figure_of_a_step_holds_together()
    {
        foreach (var step in new[] { "skeleton-hatchet", "kitchen-knife", "paring-knife" }.SelectMany(e => Of(e).Drilling.Holes).SelectMany(h => h.Operations).Where(o => o.Step is HoleStep.Pilot or HoleStep.Drill))
        {
            Assert.Equal(60 * step.DepthMm / (step.FeedMmPerTurn * step.Speed!.SetRpm), step.TimeSeconds, 1e-9);
            Assert.InRange(step.Thrust!.Value.Newtons, step.Thrust.Low.Newtons, step.Thrust.High.Newtons);
            Assert.InRange(step.Torque!.Value.NewtonMetres, step.Torque.Low.NewtonMetres, step.Torque.High.NewtonMetres);
            Assert.Equal(step.Torque.Value.NewtonMetres * step.Speed.SetRpm * Math.PI / 30, step.Power!.Value.Watts, 1e-6);
        }
    }

    [Fact]
    public void A_weak_machine_feeds_lighter_not_slower()
    {
        HoleOperation Drill(double watts) => The(Of("skeleton-hatchet", s => s with { Machines = [s.Machines[0] with { PowerW = watts }] }), "L7").Operations.Single(o => o.Step == HoleStep.Drill);
        var (strong, weak) = (Drill(2000), Drill(300));
        Assert.True(weak.FeedMmPerTurn < strong.FeedMmPerTurn);
        Assert.Equal(strong.Speed, weak.Speed);
        Assert.InRange(weak.Power!.Value.Watts, 1, 300);
    }

    [Fact]
    public void A_row_longer_than_the_travel_is_clamped_anew_on_the_last_two()
    {
        var holes = HolePlacement.Of(TestShop.Plate with { Holes = [.. Enumerable.Range(0, 5).Select(i => TestShop.Hole($"H{i}", 20 + (40 * i), 20, 6))] });
        var reach = Reclamp.Along(holes, 120);
        Assert.Equal([["H0", "H1", "H2", "H3"], ["H4"]], reach.Clampings.Select(c => c.Select(h => h.Name)));
        Assert.Equal(["H2", "H3"], reach.Pins.Single().Select(h => h.Name));
        Assert.Single(Reclamp.Along(holes, 160).Clampings);
        Assert.Equal(5, Reclamp.Along(holes, 10).Clampings.Length);
        Assert.Empty(Reclamp.Along(holes, 10).Pins[0]);
    }

    [Fact]
    public void A_clamp_has_room_where_no_hole_is()
    {
        var holes = HolePlacement.Of(TestShop.Plate with { Holes = [.. Enumerable.Range(1, 9).Select(i => TestShop.Hole($"H{i}", 20 * i, 20, 8))] });
        var stock = new Box(0, 0, 200, 40);
        Assert.True(ClampRoom.Fits(new Clamp("low", TestShop.Mm(30), TestShop.Mm(10), TestShop.Mm(15)), stock, holes));
        Assert.False(ClampRoom.Fits(new Clamp("tall", TestShop.Mm(30), TestShop.Mm(10), TestShop.Mm(60)), stock, holes));
        Assert.False(ClampRoom.Fits(new Clamp("deep", TestShop.Mm(30), TestShop.Mm(16), TestShop.Mm(15)), stock, holes));
    }
}
