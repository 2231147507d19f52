using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.Tests;

/// <summary>The hatchet drilled through its guide piece in the vise of the press.</summary>
public class GuidePieceTests
{
    private static Results Worked(params MeasuredHole[] measured)
    {
        var r = ExamplePieces.Hatchet();
        return WorkUp.Of(r.Plan, r.Shop, SteelList.BuiltIn.Find(r.Plan.Stock.Steel), [.. measured]);
    }

    [Fact]
    public void The_two_farthest_apart_are_pinned_the_nearer_one_first()
    {
        var guide = Assert.Single(GuidePiece.Of(Worked()));

        // what the press takes at 500 rpm: 11, 10 and 8 mm; the rest comes from the mill
        Assert.Equal(["L6", "lanyard", "L7"], guide.Holes.Select(h => h.Hole.Name));
        Assert.Equal([GuideTurn.First, GuideTurn.Second, GuideTurn.Rest], guide.Holes.Select(h => h.Turn));
        Assert.Equal(["L1", "L2", "L3", "L4", "L5"], guide.Elsewhere.Select(h => h.Name));
        Assert.Equal(48, guide.PinsApart!.Value.Mm, 1e-9);
    }

    [Fact]
    public void Before_it_is_measured_the_play_is_the_most_a_drilled_hole_is_over()
    {
        var last = Assert.Single(GuidePiece.Of(Worked())).Holes[2];
        Assert.False(last.IsMeasured);
        Assert.Equal(0.006 * 25.4, last.Clearance.Mm, 1e-9);

        // the guide is as thick as the blank: 0.1524 / 6.35 x 6.35 + 0.0762
        Assert.Equal(0.2286, last.Walk.Mm, 1e-9);

        // L7 lies 19 mm of 48 along the pins; both have 2 x 0.1524 (0.1524 up to 1/2 in) of play
        Assert.Equal(0.1524, last.Shift!.Value.Mm, 1e-9);
    }

    [Fact]
    public void A_measured_guide_hole_counts_as_measured()
    {
        var guide = Assert.Single(GuidePiece.Of(Worked(new MeasuredHole("guide", "L7", new Point(229.1, 18.05), TestShop.Mm(10.03), MeasuredEdges.OfPlan, null))));
        var hole = guide.Holes.Single(h => h.Hole.Name == "L7");
        Assert.True(hole.IsMeasured);
        Assert.Equal("10 mm", hole.Drill?.Name);
        Assert.Equal(0.03, hole.Clearance.Mm, 1e-9);
        Assert.Equal(0.045, hole.Walk.Mm, 1e-9);
        Assert.Equal(229.1, hole.Hole.MadeAt.X, 1e-9);
    }

    [Fact]
    public void A_hole_no_drill_of_the_shop_runs_in_takes_no_pin()
    {
        var r = ExamplePieces.Hatchet();
        var fewer = r.Shop with { Drills = [.. r.Shop.Drills.Where(d => d.Diameter.Mm is < 7 or > 9)] };
        var guide = Assert.Single(GuidePiece.Of(WorkUp.Of(r.Plan, fewer, r.Steel)));
        Assert.Equal(["L6", "L7"], guide.Holes.Take(2).Select(h => h.Hole.Name));
        Assert.Null(guide.Holes.Single(h => h.Hole.Name == "lanyard").Drill);
    }

    [Fact]
    public void A_shop_without_a_drilling_vise_has_none() => Assert.Empty(GuidePiece.Of(ExamplePieces.Kitchen()));
}
