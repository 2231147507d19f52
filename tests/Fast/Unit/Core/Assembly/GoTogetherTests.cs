using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Tests;

/// <summary>Ways of making tang and scales, each with its chance.</summary>
public class GoTogetherTests
{
    private static readonly Shop Shop = TestShop.Own with
    {
        Drills = [.. new[] { 3.0, 5, 5.1, 5.2, 5.3, 5.4, 6 }.Select(TestShop.Size)],
        Placings =
        [
            Placing(PlacingWay.Readout, 0.2, own: true),
            Placing(PlacingWay.CarefulPunch, 0.6), Placing(PlacingWay.Readout, 0.12), Placing(PlacingWay.ThroughOtherPart, 0.3), Placing(PlacingWay.DrilledTogether, 0.05),
        ],
    };

    private static PlacingCapability Placing(PlacingWay way, double zone, bool own = false, double? sigma = null)
        => new(way, "", TestShop.Mm(zone), sigma is { } s ? TestShop.Mm(s) : null, sigma is null ? 0 : 12, own);

    private static Results WorkedUp(double tang, double scales, PlacingWay? by, Shop? shop = null) => TestShop.WorkedUp(
        TestShop.Plate with
        {
            Holes = [.. new[] { 40.0, 100, 160 }.Select((x, i) => TestShop.Hole($"P{i + 1}", x, 20, tang) with { Use = HoleUse.Pin, Pin = TestShop.Mm(4.97) })],
            Scales = new ScalesPlan(by, TestShop.Mm(scales), 0.95),
        },
        shop ?? Shop);

    private static WayChance Of(Results r, PlacingWay way) => GoTogether.Of(r, trials: 2000)!.Ways.Single(w => w.Making.Way == way);

    /// <summary>A rod of 4.97 and holes within 0.10 of their places, the scales holding it: 5.37, so the drill of 5.4.</summary>
    [Fact]
    public void The_drawing_standard_asks_for_5_4()
    {
        var way = Of(WorkedUp(5.1, 5, null), PlacingWay.Readout);
        Assert.Equal(5.37, way.Fixed.Mm, 9);
        Assert.Equal("5.4 mm", GoTogether.Tool(Shop, way.Fixed)!.Name);
        Assert.Equal(5.17, way.Floating.Mm, 9);
    }

    [Fact]
    public void The_plans_own_way_stands_first_and_what_the_shop_has_not_last()
    {
        var all = GoTogether.Of(WorkedUp(5.1, 5, PlacingWay.DrilledTogether), trials: 200)!;
        Assert.Equal(PlacingWay.DrilledTogether, all.Ways[0].Making.Way);
        Assert.Equal(PlacingWay.Readout, all.Ways[^1].Making.Way);
        Assert.False(all.Ways[^1].IsInShop);
    }

    [Fact]
    public void Scales_pinned_to_the_tang_go_on_where_scales_made_apart_do_not()
    {
        var r = WorkedUp(5.1, 5, null);
        Assert.True(Of(r, PlacingWay.DrilledTogether).Chance.Share > 0.9);
        Assert.True(Of(r, PlacingWay.ThroughOtherPart).Chance.Share < 0.1);
        Assert.Null(Of(r, PlacingWay.Readout).TangAlone);
        Assert.NotNull(Of(r, PlacingWay.Readout).AllAlike);
    }

    /// <summary>With room in the scales the tang's holes decide; opened as told the chance is there, on the same trials.</summary>
    [Fact]
    public void The_hole_told_gives_the_chance_asked()
    {
        var way = Of(WorkedUp(4.98, 5.1, null), PlacingWay.Readout);
        Assert.True(way.Chance.Share < 0.9);
        Assert.True(Of(WorkedUp(4.97 + way.TangAlone!.Value.Mm, 5.1, null), PlacingWay.Readout).Chance.Share >= 0.95);
    }

    /// <summary>What was measured is a bound already: it is taken as it stands, and there is no band round it.</summary>
    [Fact]
    public void What_was_measured_is_not_widened()
    {
        var way = Of(WorkedUp(5.05, 5.05, null, Shop with { Placings = [Placing(PlacingWay.Readout, 0.2, own: true, sigma: 0.02), .. Shop.Placings] }), PlacingWay.Readout);
        Assert.Equal(0.02, way.Sigma.Mm, 12);
        Assert.Equal((way.Chance.Share, way.Chance.Share), (way.LowShare, way.HighShare));
        var guessed = Of(WorkedUp(5.05, 5.05, null), PlacingWay.Readout);
        Assert.True(guessed.LowShare < guessed.Chance.Share && guessed.Chance.Share < guessed.HighShare);
    }

    [Fact]
    public void A_finding_only_when_the_plan_says_a_way_that_falls_short()
    {
        Assert.Contains(WorkedUp(5.1, 5, PlacingWay.Readout).Findings, f => f.Code == FindingCodes.AssemblyChance && f.Severity == Severity.Warning);
        Assert.DoesNotContain(WorkedUp(5.4, 5.4, PlacingWay.Readout).Findings, f => f.Code == FindingCodes.AssemblyChance);
        Assert.DoesNotContain(WorkedUp(5.1, 5, null).Findings, f => f.Code == FindingCodes.AssemblyChance);
    }

    [Fact]
    public void Without_scales_or_rods_there_is_nothing_to_ask()
    {
        Assert.Null(GoTogether.Of(WorkedUp(5.1, 5, null) with { Plan = TestShop.Plate }));
        Assert.Null(GoTogether.Of(WorkedUp(5.1, 5, null) with { Holes = [] }));
    }
}
