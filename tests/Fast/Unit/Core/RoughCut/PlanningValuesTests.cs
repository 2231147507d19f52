using Tangwright.Core;
using Tangwright.Foundation;
using Path = Tangwright.Foundation.Path;

namespace Tangwright.Tests.Sawing;

/// <summary>Planning values against figures worked by hand.</summary>
public class PlanningValuesTests
{
    /// <summary>200 mm through 6.35 mm is 12.7 cm²; at 10 cm²/min 1.27 min and the set-up.</summary>
    [Fact]
    public void Time_of_a_cut() => Assert.Equal(2.27, SawTime.Minutes(200, 6.35, 10, 1), 1e-9);

    /// <summary>1.5 kW × 0.6 / 12 J/mm³ = 75 mm³/s = 35 g/min of steel at 7.85 g/cm³.</summary>
    [Fact]
    public void Power_of_the_grinder() => Assert.Equal(35.3, GrindingRate.GramsPerMinute(1500, 0.6, 12, 7.85), 0.05);

    /// <summary>3 · 25.4 / t: 3 mm takes 25, 5 mm 15, 6.35 mm 12.</summary>
    [Theory]
    [InlineData(3, 25.4)]
    [InlineData(5, 15.24)]
    [InlineData(6.35, 12)]
    public void Least_teeth(double mm, double perInch) => Assert.Equal(perInch, TeethInWork.PerInch(3, Length.OfMm(mm)), 1e-9);

    [Fact]
    public void The_blade_to_mount()
    {
        Assert.Equal(24, TeethInWork.Of([10, 14, 24], Length.OfMm(6.35)));
        Assert.Equal(14, TeethInWork.Of([10, 14, 24], Length.OfMm(12.7)));
        Assert.Null(TeethInWork.Of([10, 14, 24], Length.OfMm(1.6)));
    }

    /// <summary>115 mm disc, 4 mm through, 6.35 mm plate: √(57.5² − 47.15²) − √(57.5² − 53.5²) = 32.91 − 21.07.</summary>
    [Fact]
    public void Run_out_of_a_disc() => Assert.Equal(11.84, DiscRunOut.Mm(57.5, 4, 6.35), 0.01);

    /// <summary>65 mm with 6 mm holes and 0.5 mm bridges: ten pitches, eleven holes.</summary>
    [Fact]
    public void A_chain_of_holes()
    {
        var chain = ChainDrilling.Of(new DrillSize("6 mm", Length.OfMm(6)), Length.OfMm(65));
        Assert.Equal(11, chain.Holes);
        Assert.Equal(6.5, chain.Pitch.Mm, 1e-9);
    }

    /// <summary>Square cuts at both ends of a 100 × 40 bar, then one along it: 80 mm sawn along when the ends are off first, 40 and 40 across.</summary>
    [Fact]
    public void Order_of_three_cuts()
    {
        var blank = CutCase.Rectangle(new Box(0, 0, 100, 40));
        SupportCut right = new(0, 90, true), up = new(0.5 * Math.PI, 30, true), left = new(Math.PI, -10, true);
        var order = CutOrder.Of(blank, [right, up, left]);

        // along first: 100 + 30 + 30 = 160; ends first: 40 + 40 + 80 = 160; one end, along, other end: 40 + 90 + 30 = 160
        Assert.Equal(160, order.SawnMm, 1e-9);

        // a saw that cuts 85 mm at most must take the ends first
        var short85 = CutOrder.Of(blank, [right, up, left], (p, c) => ConvexClip.Chord(p, c.Normal, c.OffsetMm) is { } chord && chord.From.To(chord.To) > 85 ? "too long" : null);
        Assert.Equal(up, short85.Cuts[2]);
        var short70 = CutOrder.Of(blank, [right, up, left], (p, c) => ConvexClip.Chord(p, c.Normal, c.OffsetMm) is { } chord && chord.From.To(chord.To) > 70 ? "too long" : null);
        Assert.Empty(short70.Cuts);
        Assert.Equal(up, short70.Offending);
    }

    /// <summary>A square notch 40 wide and 20 deep in the upper side of a plate, no allowance: the widest wedge is a triangle to its floor, half of it.</summary>
    [Fact]
    public void A_wedge_out_of_a_square_notch()
    {
        var piece = Path.Polygon(new(0, 0), new(100, 0), new(100, 40), new(70, 40), new(70, 20), new(30, 20), new(30, 40), new(0, 40));
        var hull = GrownHull.Of(piece, 0);
        var pocket = Assert.Single(Pocket.Of(piece, hull));
        Assert.Equal(800, pocket.AreaMm2, 1e-9);
        Assert.Equal(20, pocket.DepthMm, 1e-9);
        var wedge = PocketWedge.Best(pocket, CutCase.Rectangle(new Box(0, 0, 100, 40)), 0, 0)!;
        Assert.InRange(wedge.AreaMm2, 395, 400 + 1e-6);
        Assert.Equal(20, wedge.Apex.Y, 0.3);
    }

    /// <summary>A hollow of two straight sides, a V, frees whole.</summary>
    [Fact]
    public void A_wedge_frees_a_vee_whole()
    {
        var piece = Path.Polygon(new(0, 0), new(100, 0), new(100, 40), new(80, 40), new(50, 10), new(20, 40), new(0, 40));
        var pocket = Assert.Single(Pocket.Of(piece, GrownHull.Of(piece, 0)));
        var wedge = PocketWedge.Best(pocket, CutCase.Rectangle(new Box(0, 0, 100, 40)), 0, 0)!;
        Assert.InRange(wedge.AreaMm2, 0.98 * 900, 900 + 1e-6);
    }
}
