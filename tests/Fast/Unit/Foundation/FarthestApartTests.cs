using Tangwright.Foundation;
using Path = Tangwright.Foundation.Path;

namespace Tangwright.Tests.Unit.Foundation;

/// <summary>Against closed forms.</summary>
public class FarthestApartTests
{
    [Fact]
    public void A_shifted_square_is_as_far_as_it_was_shifted() => Near(3, Square(0, 10), Square(3, 10));

    [Fact]
    public void A_square_in_a_square_is_farthest_at_the_corners() => Near(Math.Sqrt(2), Square(0, 10), Path.Polygon(new(-1, -1), new(11, -1), new(11, 11), new(-1, 11)));

    [Fact]
    public void Two_circles_round_one_middle() => Near(2, Path.Circle(new(5, 5), 10), Path.Circle(new(5, 5), 12));

    [Fact]
    public void A_circle_against_its_square()
        => Near(10 * (Math.Sqrt(2) - 1), Path.Circle(default, 10), Path.Polygon(new(-10, -10), new(10, -10), new(10, 10), new(-10, 10)));

    /// <summary>A tooth on one side: seen only from the outline that has it; farthest is its tip.</summary>
    [Fact]
    public void A_tooth_counts_whichever_way_it_is_asked()
    {
        var tooth = Path.Polygon(new(0, 0), new(40, 0), new(50, 7.5), new(60, 0), new(100, 0), new(100, 30), new(0, 30));
        var plain = Path.Polygon(new(0, 0), new(100, 0), new(100, 30), new(0, 30));
        Near(7.5, tooth, plain);
        Assert.Equal(new Point(50, 7.5), FarthestApart.Of(plain, tooth).At);
    }

    [Fact]
    public void A_point_put_in_changes_nothing()
        => Assert.Equal(0, FarthestApart.Of(Square(0, 10), Path.Polygon(new(0, 0), new(4, 0), new(10, 0), new(10, 10), new(0, 10))).Mm, 1e-12);

    private static Path Square(double x, double side) => Path.Polygon(new(x, 0), new(x + side, 0), new(x + side, side), new(x, side));

    private static void Near(double mm, Path a, Path b)
    {
        Assert.InRange(mm - FarthestApart.Of(a, b).Mm, -1e-9, FarthestApart.WithinMm);
        Assert.InRange(mm - FarthestApart.Of(b, a).Mm, -1e-9, FarthestApart.WithinMm);
    }
}
