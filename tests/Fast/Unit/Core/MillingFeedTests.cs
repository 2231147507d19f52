using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Tests;

/// <summary>Speed and feed of end mills; common practice for annealed high-carbon steel.</summary>
public class MillingFeedTests
{
    private static readonly Machine Mill = new("mill", MachineKind.CncMill, [2000, 24000], true, null, null, null, null, null, false);

    private static EndMill Tool(double mm, Length? tooth = null, bool carbide = true) => new("end mill", Length.OfMm(mm), 3, null, carbide, tooth);

    [Fact]
    public void Inside_a_hole_the_centre_feeds_slower_than_the_rim()
        => Assert.Equal(180, CentreFeed.Inside(360, Length.OfMm(12), Length.OfMm(6)), 1e-9); // 12 mm hole, 6 mm tool, 360 mm/min straight: half of it

    [Fact]
    public void A_carbide_mill_of_6_mm_turns_at_80_metres_a_minute()
    {
        Assert.Equal(4244, MillingFeed.TurnsPerMin(Tool(6), Mill)); // 1000 · 80 / (π · 6)
        Assert.Equal(0.03, MillingFeed.ToothMm(Tool(6)), 1e-9);
        Assert.Equal(4244 * 3 * 0.03, MillingFeed.StraightMmPerMin(Tool(6), Mill), 1e-9);
    }

    [Fact]
    public void What_the_shop_says_of_a_tooth_goes_first()
        => Assert.Equal(0.02, MillingFeed.ToothMm(Tool(6, Length.OfMm(0.02))), 1e-12);

    [Fact]
    public void A_machine_that_cannot_go_so_slow_goes_as_slow_as_it_can()
        => Assert.Equal(2000, MillingFeed.TurnsPerMin(Tool(12, carbide: false), Mill));
}
