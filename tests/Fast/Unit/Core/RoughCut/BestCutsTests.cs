using Tangwright.Core;
using Tangwright.Foundation;
using Path = Tangwright.Foundation.Path;

namespace Tangwright.Tests.Sawing;

/// <summary>The best cuts against values known by proof, and against the shares of the synthetic parts worked out once by another program (Python, sets over the same candidates).</summary>
public class BestCutsTests
{
    private static readonly double[] DiscLeft = [3.82843, 3.65685, 3.48528, 3.31371, 3.28913, 3.26455, 3.23997, 3.21539];

    /// <summary>A disc of radius 1 in a blank of 2 × 2: one cut a corner takes 3 − 2√2; four leave the octagon, 8 tan 22.5°; eight the 12-gon, 12 tan 15°.</summary>
    [Fact]
    public void A_disc_in_a_square()
    {
        // a regular polygon of so many sides about the disc stands for it: its sides touch the disc, corners lie beyond by 0.0001 %
        var blank = CutCase.Rectangle(new Box(-1, -1, 1, 1));
        var corners = Enumerable.Range(0, 4320).Select(i => Point.Direction(2 * Math.PI * i / 4320));
        var hull = new GrownHull([.. corners], 0);
        var best = CutCase.Best(blank, hull, 8, stepDegrees: 5).Best;
        for (var k = 1; k <= 8; k++) Assert.Equal(DiscLeft[k - 1], 4 - best.Worth(k), 1e-5);
        Assert.Equal(8 * Math.Tan(Math.PI / 8), 4 - best.Worth(4), 1e-9);
        Assert.Equal(12 * Math.Tan(Math.PI / 12), 4 - best.Worth(8), 1e-9);
    }

    [Fact]
    public void A_right_triangle_in_half_its_box_takes_one_cut()
    {
        var (blank, hull) = (CutCase.Rectangle(new Box(0, 0, 80, 50)), GrownHull.Of(Path.Polygon(new(0, 0), new(80, 0), new(0, 50)), 0));
        Assert.Equal(2000, CutCase.Best(blank, hull, 1).Best.Worth(1), 1e-9);
    }

    [Fact]
    public void As_many_cuts_as_sides_free_a_convex_piece_whole()
    {
        var piece = Path.Polygon(new(30, 2), new(70, 10), new(95, 35), new(60, 48), new(10, 40), new(3, 20));
        var blank = CutCase.Rectangle(new Box(0, 0, 100, 50));
        var best = CutCase.Best(blank, GrownHull.Of(piece, 0), 6).Best;
        var waste = 5000 - Math.Abs(Moments.Of(piece).AreaMm2);
        Assert.Equal(waste, best.Worth(6), 1e-8);
        Assert.True(best.Worth(5) < waste - 1);
    }

    [Theory]
    [InlineData("bar_A6_w40", new[] { 46.9, 63.4, 69.7, 74.2, 76.5 }, 80.9)]
    [InlineData("bar_B6_w125", new[] { 28.3, 48.5, 49.2, 49.8, 50.0 }, 50.0)]
    [InlineData("bar_C6_w75", new[] { 34.0, 51.4, 68.1, 71.9, 76.3 }, 77.9)]
    [InlineData("bar_D20_w30", new[] { 41.3, 51.6, 58.7, 63.3, 66.9 }, 71.0)]
    public void Share_of_the_waste_that_so_many_cuts_take(string file, double[] shares, double limit)
    {
        var part = CutCase.Part(file);
        var blank = CutCase.Rectangle(part.Bounds);
        var hull = GrownHull.Of(part, 0);
        var best = CutCase.Best(blank, hull, 6).Best;
        var box = part.Bounds.Width * part.Bounds.Height;
        var waste = box - Math.Abs(Moments.Of(part).AreaMm2);
        Assert.Equal(limit, 100 * (box - ConvexClip.AreaMm2(hull.Corners.AsSpan())) / waste, 0.06);
        foreach (var (k, i) in new[] { 1, 2, 3, 4, 6 }.Select((k, i) => (k, i))) Assert.Equal(shares[i], 100 * best.Worth(k) / waste, 0.15);
    }
}
