using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Tests;

/// <summary>Drilling through a guide: worked cases.</summary>
public class GuideCases
{
    /// <summary>Worked by hand: drill 6.35 mm, clearance 0.015, bushing 12 long, gap 6, work 5: 0.015 / 12 x 11 + 0.0075 = 0.02125 mm.</summary>
    [Fact]
    public void Walk_under_a_bushing()
        => Assert.Equal(0.02125, BushingTilt.Of(TestShop.Mm(0.015), TestShop.Mm(12), TestShop.Mm(6), TestShop.Mm(5)).Mm, 1e-9);

    /// <summary>Worked by hand: pins 100 mm apart with 0.2 and 0.1 mm play. At the first 0.1, half way 0.075, 50 mm beyond the second (0.2 x 0.5 + 0.1 x 1.5) / 2 = 0.125.</summary>
    [Theory]
    [InlineData(0, 0.1)]
    [InlineData(50, 0.075)]
    [InlineData(100, 0.05)]
    [InlineData(150, 0.125)]
    public void Shift_of_a_pinned_blank(double x, double shift)
        => Assert.Equal(shift, PinnedPlay.Of(new(10, 20), new(110, 20), TestShop.Mm(0.2), TestShop.Mm(0.1), new(10 + x, 20)).Mm, 1e-9);

    /// <summary>AND10387 as printed: drills of 0.0135 to 0.125 in +0.004, to 0.250 +0.005, to 0.500 +0.006, to 0.750 +0.008, to 1.000 +0.010, to 2.000 +0.012.</summary>
    [Theory]
    [InlineData(0.125, 0.004)]
    [InlineData(0.1285, 0.005)]
    [InlineData(0.250, 0.005)]
    [InlineData(0.500, 0.006)]
    [InlineData(0.750, 0.008)]
    [InlineData(1.000, 0.010)]
    [InlineData(1.500, 0.012)]
    public void A_drilled_hole_over_its_drill(double drill, double over) => Assert.Equal(over, DrilledSize.MostOver(Length.OfInches(drill)).Inches, 1e-12);
}
