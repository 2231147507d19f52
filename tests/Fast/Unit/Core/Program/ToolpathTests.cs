using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.UseCases;

namespace Tangwright.Tests;

/// <summary>What goes into a program and in which order, on the skeleton knife and its small mill.</summary>
public class ToolpathTests
{
    private static readonly Results Knife = OddBlades.Example("skeleton-knife");
    private static readonly MachineProgram Whole = Made(ProgramWork.All);

    [Fact]
    public void Spots_come_first_drills_next_the_bore_after_and_the_profile_last()
    {
        var forms = Whole.Path.Steps.OfType<ToolStep>().Select(t => t.Tool.Form).ToArray();
        Assert.Equal(forms.Order().Distinct(), forms.Distinct());
        Assert.Equal(ToolForm.SpotDrill, forms[0]);
        Assert.Equal(ToolForm.EndMill, forms[^1]);

        // every cut on the way round comes after every cut inside a hole
        var cuts = Whole.Path.Steps.Select((s, i) => (Step: s, Index: i)).Where(s => s.Step is ArcStep or FeedStep).Select(s => (End: s.Step is ArcStep a ? a.To : ((FeedStep)s.Step).To, s.Index)).ToArray();
        bool InHole(SpacePoint p) => Whole.Wanted.Holes.Any(h => h.At.To(p.Flat) < h.DiameterMm / 2);
        Assert.True(cuts.Where(c => InHole(c.End)).Max(c => c.Index) < cuts.Where(c => !InHole(c.End)).Min(c => c.Index));
    }

    [Fact]
    public void The_piece_lies_to_the_right_of_the_tool_all_the_way_round_and_the_hole_to_its_right_hand_inside()
    {
        // climb milling with a spindle that turns clockwise: clockwise round the piece, counter-clockwise in a hole
        var steps = Whole.Path.Steps.ToList();
        var outer = steps.FindLastIndex(s => s is ToolStep);
        var from = default(Point);
        var turned = 0.0;
        var centre = Whole.Wanted.Outline!.Bounds.Centre;
        foreach (var s in steps.Skip(outer + 1))
        {
            if (s is not (RapidStep or FeedStep or ArcStep)) continue;
            var to = s switch { RapidStep r => r.To.Flat, FeedStep f => f.To.Flat, _ => ((ArcStep)s).To.Flat };
            if (s is not RapidStep) turned += (from - centre).Cross(to - centre) / 2;
            from = to;
        }

        Assert.True(turned < -0.5 * Moments.Of(Whole.Wanted.Outline).AreaMm2);
        Assert.All(steps.Take(outer).OfType<ArcStep>(), a => Assert.True(a.IsCounterClockwise));
    }

    [Fact]
    public void Tabs_stand_on_straight_flanks_away_from_the_ends_of_the_piece()
    {
        var (outline, radius) = (Whole.Wanted.Outline!, 3.0);
        Assert.InRange(Whole.Tabs.Length, 2, 4);
        foreach (var tab in Whole.Tabs)
        {
            var near = outline.Segments.MinBy(s => Nearest.Distance(s, tab))!;
            Assert.IsType<Line>(near);
            Assert.Equal(radius, Nearest.Distance(near, tab), 1e-6);

            // the whole width of the tab lies beside that flank
            Assert.True(Math.Min(near.Start.To(tab), near.End.To(tab)) > 2);
            Assert.InRange(tab.X, outline.Bounds.MinX + 8, outline.Bounds.MaxX - 8);
        }

        Assert.True(Whole.Tabs.SelectMany(a => Whole.Tabs.Where(b => b != a).Select(b => a.To(b))).Min() > 20);
    }

    [Fact]
    public void Clamps_hold_the_stock_clear_of_holes_and_of_the_way_round()
    {
        var s = Whole.SetUp;
        Assert.Equal(2, s.Clamps.Length);
        foreach (var c in s.Clamps)
        {
            Assert.True(c.Box.Touches(s.Stock), "it holds nothing");
            Assert.True(c.Box.MinX < s.Stock.MinX || c.Box.MaxX > s.Stock.MaxX || c.Box.MinY < s.Stock.MinY || c.Box.MaxY > s.Stock.MaxY, "it stands on nothing");
            Assert.All(Whole.Wanted.Holes, h => Assert.True(c.Box.DistanceTo(h.At) > h.DiameterMm / 2));

            // a 6 mm end mill, its lead-in and 2 mm more
            Assert.All(Whole.Wanted.Outline!.Segments, g => Assert.True(Enumerable.Range(0, 41).Min(i => c.Box.DistanceTo(g.At(i / 40.0))) > 8));
        }

        Assert.False(s.Clamps[0].Box.Touches(s.Clamps[1].Box));
    }

    [Fact]
    public void A_wide_bore_leaves_no_core_and_cuts_no_more_than_its_tool_bears()
    {
        var ring = Whole.Wanted.Holes.Single(h => h.Name == "ring");
        var radii = Whole.Path.Steps.OfType<ArcStep>().Where(a => a.Centre.To(ring.At) < 1e-9).Select(a => Math.Round(a.To.Flat.To(ring.At), 6)).Distinct().ToArray();
        Assert.True(radii[0] < 3, "a core is left in the middle");
        Assert.Equal(9.5, radii[^1], 1e-9);
        Assert.All(radii.Zip(radii.Skip(1)), p => Assert.InRange(p.Second - p.First, 0.1, 0.4 * 6));
    }

    [Fact]
    public void The_second_clamping_goes_by_the_pins()
    {
        var profile = Made(ProgramWork.Profile);
        Assert.Equal(["H1", "H3"], profile.SetUp.Pins.Select(p => p.Name));
        Assert.Equal(0, profile.SetUp.Pins[0].At.Length, 1e-12);
        Assert.Equal(29, profile.SetUp.Pins[1].At.Length, 1e-9);
        Assert.Empty(profile.Wanted.Holes);

        // no room for clamps beside the paring knife: nuts on its pins
        var paring = MakeProgram.For(OddBlades.Example("paring-knife"), null, new(ProgramWork.Profile, "P2"), "x.ngc").Value.Program;
        Assert.Equal(new Point(165, 12.7), paring.SetUp.ZeroAt);
        Assert.All(paring.SetUp.Clamps, c => Assert.Contains("nut", c.Name, StringComparison.Ordinal));
    }

    [Fact]
    public void A_corner_narrower_than_the_mill_is_left_round_and_told()
    {
        // corner of 86,4: the way turns by 75.96 - 14.04 degrees; a radius r leaves r (1 / cos(half the turn) - 1) = 0.1661 mm of r = 1
        var paring = MakeProgram.For(OddBlades.Example("paring-knife"), null, new(ProgramWork.Profile, null), "x.ngc").Value.Program;
        var left = Assert.Single(paring.ToFile);
        Assert.Equal(0, (left.At + paring.SetUp.ZeroAt).To(new Point(86, 4)), 1e-9);
        Assert.Equal((1 / Math.Cos((Math.Atan2(4, 1) - Math.Atan2(1, 4)) / 2)) - 1, left.Mm, 1e-6);
        Assert.Contains(paring.LeftOut, l => l.Contains("file it", StringComparison.Ordinal));
    }

    [Fact]
    public void Refuses_in_words()
    {
        static string Why(Results r, ProgramChoice choice) => Assert.Single(MakeProgram.For(r, null, choice, "x.ngc").Faults).Message;
        Assert.Contains("no clamp", Why(Knife with { Shop = Knife.Shop with { Clamps = [] } }, ProgramChoice.Usual), StringComparison.Ordinal);
        Assert.Contains("no mill", Why(OddBlades.Example("skeleton-hatchet"), ProgramChoice.Usual), StringComparison.Ordinal);
        Assert.Contains("no hole \"Z\"", Why(Knife, new(ProgramWork.All, "Z")), StringComparison.Ordinal);
        Assert.Contains("two holes for pins", Why(Knife with { Holes = [] }, new(ProgramWork.Profile, null)), StringComparison.Ordinal);
    }

    private static MachineProgram Made(ProgramWork work) => MakeProgram.For(Knife, null, new(work, null), "x.ngc").Value.Program;
}
