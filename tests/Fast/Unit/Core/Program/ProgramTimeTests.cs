using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Tests;

public class ProgramTimeTests
{
    private static readonly ImmutableArray<ProgramTool> Tools = [new(1, "6 mm end mill", ToolForm.EndMill, 6, 180, null)];

    [Fact]
    public void Counts_way_by_feed()
    {
        // 300 mm at 1000 mm/min is 18 s, 2 s for the spindle; 60 mm at 120 is 30 s; a turn of radius 5 that goes 10 mm down is sqrt((10 pi)^2 + 100) = 32.969 mm
        var time = Assert.Single(ProgramTime.Of([Move(MotionKind.Rapid, 300, 0), Move(MotionKind.Feed, 60, 120), Turn(60)], Tools, 1000));
        Assert.Equal(20, time.CrossingSeconds, 1e-9);
        Assert.Equal(30 + 32.969, time.CuttingSeconds, 1e-3);
        Assert.Equal((60, 120), (time.SlowestMmPerMin, time.FastestMmPerMin));
    }

    private static Motion Move(MotionKind kind, double mm, double feed) => new(1, kind, default, new(mm, 0, 0), default, false, feed, 1, 1000);

    private static Motion Turn(double feed) => new(1, MotionKind.Arc, new(5, 0, 10), new(5, 0, 0), default, true, feed, 1, 1000);
}
