using Tangwright.Foundation;
using Path = Tangwright.Foundation.Path;

namespace Tangwright.Tests;

/// <summary>Outlines laid outside and inside themselves.</summary>
public class OffsetLoopTests
{
    private static readonly Path Square = Path.Polygon(new(0, 0), new(100, 0), new(100, 30), new(0, 30));

    // a rounded bar with a Bézier for its nose, convex
    private static readonly Path Nose = new([new Line(new(0, 0), new(60, 0)), new Bezier(new(60, 0), new(90, 0), new(90, 30), new(60, 30)), new Line(new(60, 30), new(0, 30)), Arc.Through(new(0, 30), new(0, 0), 15, large: false, counterClockwise: true)], closed: true);

    /// <summary>Steiner's formula for the parallel curve of a convex figure: area A + P d + π d², length P + 2 π d (do Carmo, Differential Geometry of Curves and Surfaces, §1-7, exercise 6).</summary>
    [Theory]
    [InlineData(0.5)]
    [InlineData(3)]
    [InlineData(12)]
    public void A_convex_outline_grows_by_Steiners_formula(double d)
    {
        foreach (var (loop, slack) in new[] { (Square, 1e-9), (Path.Circle(new(5, 5), 20), 1e-9), (Nose, OffsetLoop.FitMm) })
        {
            foreach (var way in new[] { loop, loop.Reversed() })
            {
                var grown = OffsetLoop.Of(way, d);
                Assert.Equal("", grown.Why);
                Assert.True(grown.WorstMm <= slack);
                Assert.Equal(Math.Abs(Moments.Of(loop).AreaMm2) + (loop.Length * d) + (Math.PI * d * d), Math.Abs(Moments.Of(grown.Path!).AreaMm2), slack * grown.Path!.Length);
                Assert.Equal(loop.Length + (2 * Math.PI * d), grown.Path!.Length, slack * 40);
                Assert.Equal(Math.Sign(Moments.Of(way).AreaMm2), Math.Sign(Moments.Of(grown.Path!).AreaMm2));
            }
        }
    }

    [Fact]
    public void Inside_a_square_is_a_smaller_square_and_outside_it_has_round_corners()
    {
        var inside = OffsetLoop.Of(Square, -5).Path!;
        Assert.Equal(4, inside.Segments.Length);
        Assert.Equal(90 * 20, Moments.Of(inside).AreaMm2, 1e-9);
        var outside = OffsetLoop.Of(Square, 5).Path!;
        Assert.Equal(4, outside.Segments.Count(s => s is Arc { IsCircle: true, Radius: 5 }));

        // out again from an inside corner: the corner of an L is sharp outside of it
        var ell = Path.Polygon(new(0, 0), new(60, 0), new(60, 20), new(20, 20), new(20, 60), new(0, 60));
        Assert.Equal((60 * 20) + (40 * 20) + (ell.Length * 4) + (Math.PI * 16 * 5 / 4) - 16, Moments.Of(OffsetLoop.Of(ell, 4).Path!).AreaMm2, 1e-9);
    }

    [Fact]
    public void What_would_vanish_or_cross_itself_is_refused_in_words()
    {
        foreach (var (loop, d) in new[] { (Square, -15.0), (Square, -16), (Path.Circle(default, 10), -10), (Nose, -15.5) })
        {
            var none = OffsetLoop.Of(loop, d);
            Assert.Null(none.Path);
            Assert.NotEqual("", none.Why);
        }

        // a waist of 8 mm parts when 5 mm go from either side
        var waist = Path.Polygon(new(0, 0), new(30, 0), new(45, 11), new(55, 11), new(70, 0), new(100, 0), new(100, 30), new(70, 30), new(55, 19), new(45, 19), new(30, 30), new(0, 30));
        Assert.Null(OffsetLoop.Of(waist, -5).Path);
        Assert.NotNull(OffsetLoop.Of(waist, -3).Path);
    }
}
