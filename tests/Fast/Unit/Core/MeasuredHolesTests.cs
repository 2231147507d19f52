using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Tests;

/// <summary>What to do with measured holes, and which of them are carried on.</summary>
public class MeasuredHolesTests
{
    private static readonly Plan Pinned = TestShop.Plate with
    {
        Holes =
        [
            .. new[] { 40.0, 100, 160 }.Select((x, i) => TestShop.Hole($"P{i + 1}", x, 20, 5.2) with { Use = HoleUse.Pin, Pin = TestShop.Mm(5) }),
            TestShop.Hole("light", 70, 20, 12),
        ],
    };

    private static readonly ImmutableArray<(string Name, double X, double Y, double? D)> AsPlanned = [("P1", 40, 20, 5.2), ("P2", 100, 20, 5.2), ("P3", 160, 20, 5.2)];

    private static Results WorkedUp(string piece, params (string Name, double X, double Y, double? D)[] holes)
        => WorkUp.Of(Pinned, TestShop.Own, TestShop.Steel, [.. holes.Select(h => new MeasuredHole(piece, h.Name, new Point(h.X, h.Y), h.D is { } d ? TestShop.Mm(d) : null, MeasuredEdges.OfPlan, null))]);

    private static HoleReport Of(Results r, string hole) => r.Measured.Single().Holes.Single(h => h.Hole.Name == hole);

    [Fact]
    public void Holes_in_their_places_are_accepted()
    {
        var r = WorkedUp("guide", [.. AsPlanned, ("light", 70, 20, null)]);
        Assert.All(r.Measured.Single().Holes, h => Assert.Equal((HoleAction.Accept, 0.0), (h.Verdict.Action, Math.Round(h.Position.Mm, 9))));
        Assert.Equal(0.2, Of(r, "P1").Allowed!.Value.Mm, 9);
        Assert.Null(Of(r, "light").Allowed);
        Assert.DoesNotContain(r.Findings, f => f.Code.StartsWith("measured.", StringComparison.Ordinal));
    }

    /// <summary>A pattern that lies 1 mm up and turned passes all rods: blade and scales are laid on one another, not on the drawing.</summary>
    [Fact]
    public void A_pattern_out_of_place_as_a_whole_still_passes()
    {
        var turn = Transform.Turn(0.004);
        var r = WorkedUp("guide", [.. AsPlanned.Select(h => (h.Name, At: turn.Map(new Point(h.X, h.Y)) + new Point(0.1, 0.5), h.D)).Select(h => (h.Name, h.At.X, h.At.Y, h.D))]);
        Assert.All(r.Measured.Single().Holes, h => Assert.Equal(HoleAction.Accept, h.Verdict.Action));
        Assert.True(Of(r, "P3").Position.Mm > 2);
        Assert.True(Of(r, "P3").PositionPassing.Mm < 0.001);
    }

    /// <summary>The middle hole 0.6 mm off the line of the others: laid best all are 0.3 mm off, 0.6 as a diameter; the rod of 5 needs 5.6, and the next drill owned is 6.</summary>
    [Fact]
    public void A_hole_off_its_row_is_opened_up_to_a_drill_owned()
    {
        var r = WorkedUp("guide", AsPlanned[0], ("P2", 100, 20.6, 5.2), AsPlanned[2]);
        Assert.Equal(0.6, Of(r, "P2").PositionPassing.Mm, 5);
        Assert.Equal((HoleAction.OpenUp, "6 mm"), (Of(r, "P2").Verdict.Action, Of(r, "P2").Verdict.To!.Name));
        Assert.Contains(r.Findings, f => f.Code == FindingCodes.MeasuredRod && f.Severity == Severity.Warning && f.Where.Contains("P2", StringComparison.Ordinal));

        // a larger hole is allowed more
        Assert.Equal(HoleAction.Accept, Of(WorkedUp("guide", ("P1", 40, 20, 5.4), ("P2", 100, 20.15, 5.4), ("P3", 160, 20, 5.4)), "P2").Verdict.Action);
        Assert.Equal(0.4, Of(WorkedUp("guide", ("P1", 40, 20, 5.4)), "P1").Allowed!.Value.Mm, 9);
    }

    [Fact]
    public void A_hole_that_the_rod_does_not_enter_is_opened_up()
    {
        var verdict = Of(WorkedUp("guide", ("P1", 40, 20, 4.9), AsPlanned[1], AsPlanned[2]), "P1").Verdict;
        Assert.Equal((HoleAction.OpenUp, "5 mm"), (verdict.Action, verdict.To!.Name));
        Assert.Contains("does not go in", verdict.Words, StringComparison.Ordinal);
    }

    [Fact]
    public void A_hole_far_too_large_takes_a_thicker_rod_where_one_is_sold()
    {
        var thicker = Of(WorkedUp("guide", ("P1", 40, 20, 6.1), AsPlanned[1], AsPlanned[2]), "P1").Verdict;
        Assert.Equal((HoleAction.ThickerRod, "6 mm"), (thicker.Action, thicker.To!.Name));
        var loose = Of(WorkedUp("guide", ("P1", 40, 20, 5.6), AsPlanned[1], AsPlanned[2]), "P1").Verdict;
        Assert.Equal(HoleAction.Accept, loose.Action);
        Assert.Contains("over its size", loose.Words, StringComparison.Ordinal);
    }

    [Fact]
    public void A_hole_that_would_need_half_again_the_rod_is_scrap()
    {
        var r = WorkedUp("guide", ("P1", 38.2, 20, 5.2), AsPlanned[1], ("P3", 161.9, 20, 5.2));
        Assert.Equal(HoleAction.Scrap, Of(r, "P1").Verdict.Action);
        Assert.Contains(r.Findings, f => f.Code == FindingCodes.MeasuredScrap && f.Severity == Severity.Error);
        Assert.Contains(WorkedUp("4", ("P1", 38.2, 20, 5.2), AsPlanned[1], ("P3", 161.9, 20, 5.2)).Findings, f => f.Code == FindingCodes.MeasuredScrap && f.Severity == Severity.Warning);
    }

    /// <summary>Half the stock of 5 mm must stay: a hole of 12 as large as 35 leaves 2.5 mm to the sides, one larger less.</summary>
    [Theory]
    [InlineData(34.99, HoleAction.Accept)]
    [InlineData(35.01, HoleAction.Scrap)]
    public void Too_little_steel_beside_a_hole_is_scrap(double diameter, HoleAction action)
        => Assert.Equal(action, Of(WorkUp.Of(TestShop.Plate with { Holes = [TestShop.Hole("light", 100, 20, 12)] }, TestShop.Own, TestShop.Steel, [new MeasuredHole("4", "light", new Point(100, 20), TestShop.Mm(diameter), MeasuredEdges.OfPlan, null)]), "light").Verdict.Action);

    [Fact]
    public void The_guide_piece_alone_is_carried_on_and_what_was_not_measured_stays_planned()
    {
        var guide = WorkedUp("guide", ("P1", 40.1, 20.2, 5.25), ("P1", 40.11, 20.2, null), ("gone", 3, 3, null));
        Assert.Equal(new Point(40.11, 20.2), guide.Holes[0].MadeAt);
        Assert.Equal(5.2, guide.Holes[0].MadeDiameter.Mm);
        Assert.Equal(guide.Holes[1].At, guide.Holes[1].MadeAt);
        Assert.Equal(["P2", "P3", "light"], guide.Measured.Single().NotMeasured);
        Assert.Equal(["gone"], guide.Measured.Single().NotInPlan);
        Assert.All(WorkedUp("4", ("P1", 40.1, 20.2, 5.25)).Holes, h => Assert.Null(h.AsBuilt));
    }

    /// <summary>A digit left out: 14.02 for 140.2 would drill the next piece through its edge.</summary>
    [Fact]
    public void A_mistyped_place_is_neither_carried_on_nor_fitted_nor_learnt_from()
    {
        var r = WorkedUp("guide", AsPlanned[0], AsPlanned[1], ("P3", 16.002, 20, 5.2));
        Assert.Null(r.Holes.Single(h => h.Name == "P3").AsBuilt);
        Assert.Equal(HoleAction.MeasureAgain, Of(r, "P3").Verdict.Action);
        Assert.Equal(2, r.Measured.Single().Fit.Rest.Length);
        Assert.Contains(r.Findings, f => f.Code == FindingCodes.MeasuredFarOff);
    }

    [Fact]
    public void The_plan_itself_is_judged_as_planned()
    {
        var (plain, measured) = (WorkUp.Of(Pinned, TestShop.Own, TestShop.Steel), WorkedUp("guide", ("P1", 40.3, 20.2, 5.3)));
        Assert.Equal(plain.Stages, measured.Stages);
        Assert.Equal(plain.Findings.Select(f => f.Code), measured.Findings.Where(f => !f.Code.StartsWith("measured.", StringComparison.Ordinal)).Select(f => f.Code));
    }

    [Fact]
    public void Rod_for_pins_is_listed_once_and_ascending()
        => Assert.Equal(PinStock.Sizes.Select(s => s.Diameter.Mm).Distinct().Order(), PinStock.Sizes.Select(s => s.Diameter.Mm));
}
