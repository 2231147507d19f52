using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Tests.Bars;

/// <summary>Equal pieces on a bar: lengths against published or proven ones, gaps by another library.</summary>
public class LaneTests
{
    // outlines made for this project; lengths of an exact dynamic program written apart, in another language
    [Theory]
    [InlineData("bar_A6_w40", 1241.951)]
    [InlineData("bar_A6_w50", 1155.794)]
    [InlineData("bar_C6_w75", 1341.819)]
    [InlineData("bar_B6_w125", 1102.176)]
    [InlineData("bar_D20_w30", 2875.768)]
    [InlineData("bar_A40_w50", 7705.294)]
    [InlineData("bar_B24_w150", 4371.099)]
    public void Bars_come_out_as_short_as_known(string name, double known)
    {
        var c = BarCase.Read("bar", name);
        var layout = c.Lay();
        Assert.InRange(layout.LengthMm, known - 0.6, known + 0.05);
        Assert.True(layout.IsShortest);
        Assert.InRange(BarCase.MostOverlap(BarCase.Placed(c.Outline, layout, 1e-6)), 0, 1e-4);

        // and pushed together by a tenth of a millimetre a piece they do overlap: nothing is given away
        Assert.True(BarCase.MostOverlap(BarCase.Placed(c.Outline, layout, -0.1)) > 1e-4);
    }

    [Fact]
    public void With_the_back_face_up_allowed_a_bar_may_be_shorter()
    {
        var c = BarCase.Read("bar", "bar_B24_w150");
        var layout = c.Lay(mayTurnOver: true);
        Assert.InRange(layout.LengthMm, 4360, 4369.289 + 0.05);
        Assert.InRange(BarCase.MostOverlap(BarCase.Placed(c.Outline, layout, 1e-6)), 0, 1e-4);
    }

    [Theory]
    [InlineData("tri_isosceles_n9")]
    [InlineData("trap_right_n7")]
    [InlineData("trap_right_n8")]
    [InlineData("parallelogram_n10")]
    public void Proven_lengths_are_met(string name)
    {
        var c = BarCase.Read("known", name);
        var layout = c.Lay();
        Assert.InRange(layout.LengthMm, c.KnownMm - 1e-6, c.KnownMm + 1e-5);
        Assert.InRange(BarCase.MostOverlap(BarCase.Placed(c.Outline, layout)), 0, 1e-3);
    }

    // zigzag: 2 r + (N − 1) √(4 r² − (W − 2 r)²) for W up to (2 + √3) r; Z. Füredi 1991 (from memory)
    [Theory]
    [InlineData(10, 20, 8)]
    [InlineData(10, 26, 9)]
    [InlineData(10, 35, 12)]
    [InlineData(10, 37.3, 12)]
    public void Discs_lie_in_a_zigzag(double r, double w, int n)
    {
        var disc = Tangwright.Foundation.Path.Circle(new(3, 4), r);
        var layout = Lane.Of(LanePiece.Of(disc), w, 0, n * 2 * r * 1.001)!.Lay(n);
        var known = (2 * r) + ((n - 1) * Math.Sqrt((4 * r * r) - ((w - (2 * r)) * (w - (2 * r)))));
        Assert.InRange(layout.LengthMm, known - (n * 0.01), known + (n * 0.01));
    }

    [Fact]
    public void Hatchets_lie_head_to_tail_six_to_a_four_foot_bar()
    {
        var piece = LanePiece.Of(Worked.Hatchet.Outline);
        var lane = Lane.Of(piece, 76.2 - 1, 5.5, 1219.2)!;
        Assert.True(lane.Lay(2).LengthMm <= 357);
        Assert.True(lane.Lay(6).LengthMm <= 1082);
        var most = lane.MostIn(1219.2 - 6)!;
        Assert.Equal(6, most.Places.Length);
        Clear(Worked.Hatchet.Outline, most, 5.5);
    }

    [Fact]
    public void Three_kitchen_knives_fit_a_metre_only_with_tips_facing()
    {
        var lane = Lane.Of(LanePiece.Of(Worked.Kitchen.Outline), 50, 5, 1000)!;
        var three = lane.MostIn(1000 - 2)!;
        Assert.Equal(3, three.Places.Length);
        Assert.InRange(three.LengthMm + 2, 980, 984.75);
        Assert.Contains(three.Places, p => p.Lie == Lie.Turned);
        Clear(Worked.Kitchen.Outline, three, 5);
        Assert.InRange(lane.Lay(2).LengthMm, 640, 647.75);
    }

    [Fact]
    public void Five_paring_knives_fit_a_metre()
    {
        var five = Lane.Of(LanePiece.Of(Worked.Paring.Outline), 24, 2.5, 1000)!.MostIn(1000 - 5)!;
        Assert.Equal(5, five.Places.Length);
        Clear(Worked.Paring.Outline, five, 2.5);
    }

    // two right angles facing: the corner of one goes past the flat of the other by the clearance; worked by hand
    [Fact]
    public void Steps_and_gaps_of_simple_shapes_are_those_worked_by_hand()
    {
        var square = Tangwright.Foundation.Path.Polygon(new(0, 0), new(10, 0), new(10, 10), new(0, 10));
        var flanks = LanePiece.Of(square).Flanks[0];
        Assert.Equal(13, LeastStep.Mm(flanks, flanks, 4, 3), 1e-12);
        Assert.Equal(10 + Math.Sqrt(9 - 4), LeastStep.Mm(flanks, flanks, 12, 3), 1e-12);
        Assert.True(double.IsNegativeInfinity(LeastStep.Mm(flanks, flanks, 13.1, 3)));

        var slope = LanePiece.Of(Tangwright.Foundation.Path.Polygon(new(0, 0), new(10, 0), new(0, 10))).Flanks;
        Assert.Equal(3 * Math.Sqrt(2), LeastStep.Mm(slope[0], slope[1], 0, 3), 1e-12);

        Assert.Equal(5, LeastGap.Of(square, square.Transformed(Transform.Shift(new(13, 14)))), 1e-12);
        Assert.Equal(0, LeastGap.Of(square, square.Transformed(Transform.Shift(new(4, 4)))));
        Assert.InRange(LeastGap.Of(square, Tangwright.Foundation.Path.Circle(new(20, 5), 4)), 6 - LeastGap.WithinMm, 6);
    }

    [Fact]
    public void A_piece_higher_than_the_lane_has_none() => Assert.Null(Lane.Of(LanePiece.Of(Worked.Hatchet.Outline), 60, 3, 1000));

    [Fact]
    public void A_bar_shorter_than_the_piece_holds_none() => Assert.Null(Lane.Of(LanePiece.Of(Worked.Hatchet.Outline), 76, 3, 200)!.MostIn(200));

    private static void Clear(Tangwright.Foundation.Path outline, LaneLayout layout, double clearance)
    {
        // chords lie inside their curves by up to 0.1 µm, or outside in hollows
        var gap = BarCase.LeastGap(BarCase.Placed(outline, layout));
        Assert.InRange(gap, clearance - 1e-6, clearance + 0.01);
    }
}
