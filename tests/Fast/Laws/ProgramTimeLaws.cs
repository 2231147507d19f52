using System.Collections.Immutable;
using CsCheck;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Tests.Laws;

/// <summary>What holds for the time of every program.</summary>
public class ProgramTimeLaws
{
    private static readonly ImmutableArray<ProgramTool> Tools = [new(1, "6 mm end mill", ToolForm.EndMill, 6, 180, null)];

    [Fact]
    public void Twice_the_feed_takes_half_the_time()
        => Gen.Select(Gen.Double[1, 500], Gen.Double[10, 2000]).Sample((mm, feed) =>
        {
            var (slow, fast) = (ProgramTime.Of([Cut(mm, feed)], Tools, 1000)[0], ProgramTime.Of([Cut(mm, 2 * feed)], Tools, 1000)[0]);
            return Math.Abs(slow.CuttingSeconds - (2 * fast.CuttingSeconds)) < 1e-9 * slow.CuttingSeconds;
        });

    private static Motion Cut(double mm, double feed) => new(1, MotionKind.Feed, default, new(mm, 0, 0), default, false, feed, 1, 1000);
}
