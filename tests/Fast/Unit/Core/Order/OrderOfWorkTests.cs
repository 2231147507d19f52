using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Tests;

public class OrderOfWorkTests
{
    private static string[] Steps(Plan plan, Shop? shop = null) => [.. TestShop.WorkedUp(plan, shop).Order.Select(s => s.What)];

    private static int At(string[] steps, string word)
    {
        var i = Array.FindIndex(steps, s => s.Contains(word, StringComparison.OrdinalIgnoreCase));
        Assert.True(i >= 0, $"no step with '{word}' in: {string.Join(" | ", steps)}");
        return i;
    }

    private static void InOrder(string[] steps, params string[] words)
    {
        for (var i = 1; i < words.Length; i++) Assert.True(At(steps, words[i - 1]) < At(steps, words[i]), $"'{words[i - 1]}' must come before '{words[i]}'");
    }

    [Fact]
    public void The_hatchet_goes_through_the_shop_in_the_trades_order()
        => InOrder(Steps(TestShop.Hatchet), "Print the template", "Lay out", "then drill", "Chamfer", "piece number", "Saw out", "Profile to", "Scribe the edge", "Finish to P120", "before heat", "Harden", "Straighten", "Temper", "Check hardness", "Finish grind", "etch", "Sharpen");

    [Fact]
    public void Drilled_in_the_profile_the_profile_comes_first()
        => InOrder(Steps(TestShop.Hatchet with { Layout = new Layout(DrilledIn.Profile, null, null) }), "piece number", "Saw out", "Profile to", "Lay out the holes", "then drill", "Chamfer", "before heat");

    [Fact]
    public void A_sawn_rectangle_is_sawn_and_numbered_first()
        => InOrder(Steps(TestShop.Hatchet with { Layout = new Layout(DrilledIn.Rectangle, null, null) }), "Saw a rectangle", "piece number", "Lay out", "then drill", "Saw out");

    [Fact]
    public void A_mill_under_computer_control_cuts_out_what_it_can_reach()
    {
        var mill = new Machine("small mill", MachineKind.CncMill, [200, 24000], true, TestShop.Mm(16), null, TestShop.Mm(300), TestShop.Mm(200), null, false);
        InOrder(Steps(TestShop.Hatchet, TestShop.Own with { Machines = [mill] }), "spot and drill", "mill the outline", "Profile to");
        var shorter = Steps(TestShop.Hatchet, TestShop.Own with { Machines = [mill with { TravelX = TestShop.Mm(200) }] });
        Assert.DoesNotContain(shorter, s => s.Contains("mill the outline"));
        InOrder(shorter, "spot and drill", "Saw out", "Profile to");
    }

    [Fact]
    public void What_the_plan_does_not_have_is_left_out()
    {
        var steps = Steps(TestShop.Plate);
        Assert.DoesNotContain(steps, s => s.Contains("hole", StringComparison.OrdinalIgnoreCase) || s.Contains("bevel", StringComparison.OrdinalIgnoreCase) || s.Contains("Sharpen") || s.Contains("scales"));
    }

    [Fact]
    public void Bevels_after_hardening_are_ground_after_it()
    {
        var steps = Steps(TestShop.Hatchet with { Bevel = TestShop.Hatchet.Bevel! with { Ground = GroundWhen.AfterHardening, EdgeBeforeHardening = null } });
        InOrder(steps, "Harden", "grind the bevel", "Sharpen");
        Assert.DoesNotContain(steps, s => s.Contains("Scribe the edge"));
    }

    [Fact]
    public void Holes_go_to_the_machine_that_places_them_best_and_holds_the_drill()
    {
        var mill = new Machine("mill-drill", MachineKind.MillDrill, [100, 2000], true, TestShop.Mm(13), null, null, null, null, true);
        var slow = TestShop.Own.Machines[0] with { Name = "big press", SpeedsRpm = [300, 1000], Chuck = TestShop.Mm(16) };
        var groups = TestShop.WorkedUp(TestShop.Hatchet, TestShop.Own with { Machines = [slow, mill] }).Drilling.ByMachine;
        Assert.Equal(["mill-drill", "big press"], groups.Select(g => g.Machine!.Name));
        Assert.Equal(["L1", "L2", "L3"], groups[1].Holes.Select(h => h.Hole.Name));
        var none = TestShop.WorkedUp(TestShop.Hatchet).Drilling.ByMachine;
        Assert.Null(none[^1].Machine);
        Assert.Contains("no machine of the shop can", string.Join("\n", Steps(TestShop.Hatchet)));
    }

    [Fact]
    public void The_gate_counts_the_holes_and_steps_count_from_one()
    {
        var order = TestShop.WorkedUp(TestShop.Hatchet).Order;
        Assert.Contains(order, s => s.Gate == "all 8 holes drilled and chamfered?");
        Assert.Equal(Enumerable.Range(1, order.Length), order.Select(s => s.Number));
        Assert.All(order, s => Assert.NotEmpty(s.Why));
        Assert.All(order, s => Assert.Contains(s.SheetKind, new[] { "", "cover", "findings", "scribe", "thickness", "finish", "sharpening", "holes", "template", "drill-only", "hole-card", "layout", "rough-cut", "widths", "cautions", "run", "straightening", "temper", "hardness", "sheath" }));
    }
}
