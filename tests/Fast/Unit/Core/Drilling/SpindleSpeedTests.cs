using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Tests;

/// <summary>Speeds of the skeleton hatchet's holes at 50 to 60 ft/min, tool steel as taught in the US Navy's drill-press chapter: middle 55 ft/min.</summary>
public class SpindleSpeedTests
{
    private static readonly Estimate<CuttingSpeed> Band = new(CuttingSpeed.OfFeetPerMin(55), CuttingSpeed.OfFeetPerMin(50), CuttingSpeed.OfFeetPerMin(60), "test");

    private static Machine With(bool stepless, params double[] speeds) => TestShop.Own.Machines[0] with { SpeedsRpm = [.. speeds], SpeedIsStepless = stepless };

    [Theory]
    [InlineData(16, 334)]
    [InlineData(12, 445)]
    [InlineData(8, 667)]
    [InlineData(3.2, 1670)]
    public void The_target_is_the_middle_of_the_band(double mm, double rpm)
        => Assert.Equal(rpm, SpindleSpeed.Of(With(true, 10, 5000), Band, TestShop.Mm(mm))!.SetRpm, 3.0);

    [Theory]
    [InlineData(11, true)]
    [InlineData(11.6, true)]
    [InlineData(11.7, false)]
    [InlineData(12, false)]
    [InlineData(13, false)]
    public void A_press_of_500_rpm_takes_up_to_11_6_mm(double mm, bool takes)
        => Assert.Equal(takes, SpindleSpeed.Of(With(false, 500, 890), Band, TestShop.Mm(mm)) is not null);

    [Fact]
    public void The_largest_is_where_the_slowest_speed_meets_the_top() => Assert.Equal(11.64, SpindleSpeed.Largest(With(false, 500), Band).Mm, 0.01);

    [Theory]
    [InlineData(660, 660)] // at 8 mm the band runs from 606 to 728, its middle is 667
    [InlineData(700, 700)] // over the middle, but in the band
    [InlineData(740, 600)] // none in the band: the fastest under it
    public void A_step_of_the_pulley_is_chosen(double second, double set)
        => Assert.Equal(set, SpindleSpeed.Of(With(false, 300, 600, second), Band, TestShop.Mm(8))!.SetRpm);
}
