using System.Collections.Immutable;
using System.Text.Json;
using Tangwright.Core;
using Tangwright.Foundation;
using Path = Tangwright.Foundation.Path;

namespace Tangwright.Tests.Bars;

/// <summary>Unlike pieces on one bar: proven lengths, the lane of equal pieces, every order tried by hand; gaps by another library.</summary>
public class MixedLaneTests
{
    // cut out of one rectangle, so that nothing shorter than the rectangle can hold them: corners are written to 0.001 mm
    [Theory]
    [InlineData("jigsaw_bar_6")]
    [InlineData("jigsaw_bar_12")]
    public void A_jigsaw_is_put_together_again(string name)
    {
        var (outlines, width, known) = Jigsaw(name);
        var layout = Lane(outlines, width).Lay([.. outlines.Select(_ => 1)]);
        Assert.InRange(layout.LengthMm, known - 0.01, known + 0.01);
        Assert.True(layout.IsShortest);
        Assert.Equal(outlines.Length, layout.Places.Select(p => p.Pattern).Distinct().Count());
        Assert.InRange(BarCase.MostOverlap(Placed(outlines, layout)), 0, 0.05);
    }

    // 2^24 sets of pieces are too many to look at: the most promising ones are, and the bound is the steel
    [Fact]
    public void A_jigsaw_of_twenty_four_is_put_together_by_the_most_promising_orders()
    {
        var (outlines, width, known) = Jigsaw("jigsaw_bar_24");
        Assert.Null(Lane(outlines, width).Fill([.. outlines.Select(_ => 1)], double.PositiveInfinity));
        var layout = Lane(outlines, width).Lay([.. outlines.Select(_ => 1)]);
        Assert.InRange(layout.AtLeastMm, known - 0.01, known + 0.01);
        Assert.InRange(layout.LengthMm, known - 0.01, known + 0.02);
        Assert.InRange(BarCase.MostOverlap(Placed(outlines, layout)), 0, 0.05);
    }

    [Theory]
    [InlineData("bar_A6_w40")]
    [InlineData("bar_B6_w125")]
    [InlineData("bar_C6_w75")]
    public void Equal_pieces_come_out_as_in_the_lane_of_equal_pieces(string name)
    {
        var c = BarCase.Read("bar", name);
        var one = c.Lay(2.5);
        var mixed = MixedLane.Of([LanePiece.Of(c.Outline)], c.WidthMm, 2.5)!.Lay([c.Count]);
        Assert.Equal(one.LengthMm, mixed.LengthMm, 1e-6);
        Assert.Equal(one.IsShortest, mixed.IsShortest);

        // called two patterns, they are still the same pieces
        var two = MixedLane.Of([LanePiece.Of(c.Outline), LanePiece.Of(c.Outline)], c.WidthMm, 2.5)!.Lay([c.Count - 2, 2]);
        Assert.InRange(two.LengthMm, one.LengthMm - 1e-6, one.LengthMm + 0.5);
    }

    [Fact]
    public void Hatchets_and_knives_keep_their_clearance_and_no_order_is_shorter()
    {
        ImmutableArray<Path> outlines = [Worked.Hatchet.Outline, Worked.Kitchen.Outline];
        var lane = Lane(outlines, 75.2, 5.5);
        var layout = lane.Lay([2, 2]);
        Assert.True(layout.IsShortest);
        Assert.InRange(BarCase.LeastGap(Placed(outlines, layout)), 5.5 - 1e-6, 5.51);
        Assert.True(layout.LengthMm < lane.Lay([2, 0]).LengthMm + lane.Lay([0, 2]).LengthMm + 5.5);
    }

    // every order and every lie of four unlike pieces without room across, one after the other
    [Fact]
    public void Four_unlike_pieces_lie_as_short_as_the_best_of_all_orders()
    {
        var (outlines, width, _) = Jigsaw("jigsaw_bar_6");
        ImmutableArray<Path> four = [outlines[0], outlines[2], outlines[3], outlines[5]];
        var pieces = four.Select(o => LanePiece.Of(o)).ToArray();
        var best = double.PositiveInfinity;
        Try([], 0);
        Assert.Equal(best, MixedLane.Of([.. pieces], width, 3)!.Lay([1, 1, 1, 1]).LengthMm, 1e-6);

        void Try(ImmutableArray<(int Piece, int Lie, double Along)> laid, int used)
        {
            if (laid.Length == 4) best = Math.Min(best, laid.Max(p => p.Along + pieces[p.Piece].LengthMm));
            for (var i = 0; i < 4; i++)
            {
                if ((used & (1 << i)) != 0) continue;
                for (var l = 0; l < 2; l++)
                {
                    var along = laid.IsEmpty ? 0 : laid.Max(p => p.Along + LeastStep.Mm(pieces[p.Piece].Flanks[p.Lie], pieces[i].Flanks[l], 0, 3 + 1e-7));
                    Try(laid.Add((i, l, along)), used | (1 << i));
                }
            }
        }
    }

    [Fact]
    public void All_fillings_of_a_length_are_found_and_none_is_longer()
    {
        ImmutableArray<Path> outlines = [Worked.Hatchet.Outline, Worked.Kitchen.Outline, Worked.Paring.Outline];
        var lane = Lane(outlines, 75.2, 5.5);
        var fillings = lane.Fill([9, 9, 9], 800)!;
        Assert.All(fillings.All, f => Assert.True(f.AtLeastMm <= 800));
        Assert.Contains(fillings.All, f => f.Counts.SequenceEqual([1, 1, 0]));
        Assert.DoesNotContain(fillings.All, f => f.Counts.SequenceEqual([3, 1, 0]));
        Assert.All(lane.Fill([9, 9, 9], 800, mostTogether: 1)!.All, f => Assert.Single(f.Counts, c => c > 0));
    }

    [Fact]
    public void A_piece_higher_than_the_lane_has_none() => Assert.Null(MixedLane.Of([LanePiece.Of(Worked.Paring.Outline), LanePiece.Of(Worked.Hatchet.Outline)], 60, 3));

    private static MixedLane Lane(ImmutableArray<Path> outlines, double width, double clearance = 0) => MixedLane.Of([.. outlines.Select(o => LanePiece.Of(o))], width, clearance)!;

    private static NetTopologySuite.Geometries.Polygon[] Placed(ImmutableArray<Path> outlines, LaneLayout layout)
        => [.. layout.Places.Select(p => BarCase.Placed(outlines[p.Pattern], new LaneLayout([p], 0, 0))[0])];

    private static (ImmutableArray<Path> Outlines, double WidthMm, double KnownMm) Jigsaw(string name)
    {
        using var json = JsonDocument.Parse(Repository.Text("tests", "fixtures", "nesting", "known", name + ".json"));
        var root = json.RootElement;
        var outlines = root.GetProperty("items").EnumerateArray().Select(i => Path.Polygon([.. i.GetProperty("shape").GetProperty("data").EnumerateArray().Select(p => new Point(p[0].GetDouble(), p[1].GetDouble()))]));
        return ([.. outlines], root.GetProperty("strip_height").GetDouble(), root.GetProperty("known_optimum_length").GetDouble());
    }
}
