using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;
using static Tangwright.Tests.Worked;
using Path = Tangwright.Foundation.Path;

namespace Tangwright.Tests;

/// <summary>Swing against the textbook cases, broken edges against closed forms, rows against plain geometry.</summary>
public class SwingAndRims
{
    private static void Near(double expected, double actual, double relative = 1e-9) => Assert.True(Math.Abs(actual - expected) <= relative * Math.Abs(expected), $"expected {expected:R}, was {actual:R}");

    // Meriam and Kraige, Dynamics: the centre of percussion of a uniform slender bar about its end lies at 2L/3
    [Fact]
    public void A_slender_bar_held_at_its_end_strikes_best_at_two_thirds()
    {
        var (length, height) = (300.0, 0.01);
        var plan = Plan("bar", 5, Path.Polygon(new(0, 0), new(length, 0), new(length, height), new(0, height)), grip: new Grip(new(-10, height / 2), new(10, height / 2)));
        var swing = Striking.Of(plan, Stages(plan, 7.85)[^1], Steel(7.85))!;
        Near(2 * length / 3, swing.PivotToPercussion.Mm, 1e-8);
        Near(length * height * 5 * 7.85e-6 * length * length / 3 * 1e-6, swing.InertiaKgM2, 1e-8);
    }

    // worked by hand: block 100 × 40 mm of 0.55 kg at 290 mm from the butt, handle 0.25 kg 300 mm long and thin, pivot 50 mm from the butt: I = 0.036587 kg·m², q = 233.04 mm
    [Fact]
    public void Head_and_handle_worked_by_hand()
    {
        const double thickness = 10, head = 0.55 / (100 * 40 * thickness * 1e-6), thin = 1e-3;
        var shaft = 0.25 / (300 * thin * thickness * 1e-6);
        Moments Block(double x0, double x1, double y0, double y1, double density) => Moments.Of(Path.Polygon(new(x0, y0), new(x1, y0), new(x1, y1), new(x0, y1))) * (thickness * density);
        // in one density: the handle's weight is carried by a scaled section
        var solid = Block(270, 310, -50, 50, head / 7.85) + Block(0, 300, -thin / 2, thin / 2, shaft / 7.85);
        var plan = Plan("hatchet", thickness, Path.Circle(new(150, 0), 200), grip: new Grip(new(40, 0), new(60, 0)));
        var stage = new StageFigures(Stage.Finished, Volume.OfMm3(solid.AreaMm2), null, solid.Centroid, default, default, solid);
        var swing = Striking.Of(plan, stage, Steel(7.85))!;
        Near(0.036587, swing.InertiaKgM2, 2e-5);
        Near(233.04, swing.PivotToPercussion.Mm, 2e-5);
        Near(196.25, swing.PivotToBalance.Mm, 1e-9);
    }

    // a 45° chamfer of leg c on a rim of radius R takes π c² (R + c/3) a face: a cone frustum less its core
    [Theory]
    [InlineData(8, 0.5)]
    [InlineData(3, 1)]
    public void A_chamfered_rim(double r, double c)
    {
        var plan = Plan("plate", 6, Path.Circle(default, 50), holes: [Drilled("H", new(5, 6), 2 * r)]) with { BrokenEdges = new BrokenEdges(Mm(c), null, Rounded: false) };
        var holes = HolePlacement.Of(plan);
        var off = BrokenEdgeSteel.Of(plan, holes, Piece(plan, holes));
        var cone = Math.PI * c / 3 * (((r + c) * (r + c)) + ((r + c) * r) + (r * r));
        Near(2 * (cone - (Math.PI * r * r * c)), off.AreaMm2);
        Near(5, off.Centroid.X);
        Near(6, off.Centroid.Y);
    }

    // the outside of a disc: the frustum the other way round; Pappus' theorem for the round: quarter-round waste 1 − π/4 with its centroid at r(10 − 3π)/(12 − 3π) from the corner
    [Fact]
    public void A_broken_outline_of_a_disc()
    {
        var (r, c) = (40.0, 0.8);
        var disc = Plan("disc", 6, Path.Circle(default, r)) with { BrokenEdges = new BrokenEdges(null, Mm(c), Rounded: false) };
        var cone = Math.PI * c / 3 * ((r * r) + (r * (r - c)) + ((r - c) * (r - c)));
        Near(2 * ((Math.PI * r * r * c) - cone), BrokenEdgeSteel.Of(disc, [], Piece(disc, [])).AreaMm2);

        var rounded = disc with { BrokenEdges = new BrokenEdges(null, Mm(c), Rounded: true) };
        var waste = c * c * (1 - (Math.PI / 4));
        var inward = c * (10 - (3 * Math.PI)) / (12 - (3 * Math.PI));
        Near(2 * waste * 2 * Math.PI * (r - inward), BrokenEdgeSteel.Of(rounded, [], Piece(rounded, [])).AreaMm2);
    }

    // similar triangles: T 2.5, edge 0.25; 10 mm above the edge of a 46 mm blade 0.25 + 2.25 · 10/46 = 0.739; sharpened at 14° the first tenth of a millimetre is 2 · 0.1 · tan 14° = 0.0499 thick
    [Fact]
    public void A_full_flat_bevel_gauged_above_the_edge()
    {
        var law = GrindProfile.Finished(Kitchen);
        Near(0.25 + (2.25 * 10 / 46), law.At(10, 46));
        Near(0.0498656, law.At(0.1, 46), 1e-6);
        Assert.Equal(2.5, law.At(46, 46));
    }

    [Fact]
    public void A_graded_row_has_equal_webs()
    {
        var plan = Plan("bar", 5, Path.Polygon(new(0, 0), new(200, 0), new(200, 30), new(0, 30))) with
        {
            Holes = [new HoleRow("R", new(20, 15), new(180, 15), false, 6, [Mm(15), Mm(10)], RowSpacing.EqualWebs, HoleUse.Lightening, HoleMake.Drill)],
        };
        var holes = HolePlacement.Of(plan);
        Assert.Equal(["R1", "R2", "R3", "R4", "R5", "R6"], holes.Select(h => h.Name));
        Assert.Equal([15, 14, 13, 12, 11, 10], holes.Select(h => Math.Round(h.Diameter.Mm, 9)));
        // 160 mm from first to last centre less 62.5 mm of holes between them, shared by five webs
        var webs = holes.Zip(holes.Skip(1), (a, b) => a.At.To(b.At) - ((a.Diameter.Mm + b.Diameter.Mm) / 2));
        Assert.All(webs, w => Near((160 - 62.5) / 5, w));
    }
}
