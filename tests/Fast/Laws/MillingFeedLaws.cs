using CsCheck;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Tests;

public class MillingFeedLaws
{
    [Fact]
    public void The_rim_of_a_tool_in_a_hole_feeds_as_on_a_straight_cut()
        => Gen.Double[1, 1000].Select(Gen.Double[3, 30], Gen.Double[0.1, 0.95]).Sample(
            (feed, hole, share) =>
            {
                // the centre goes round at (D − d) / 2, the cutting rim at D / 2, in the same time
                var tool = hole * share;
                var centre = CentreFeed.Inside(feed, Length.OfMm(hole), Length.OfMm(tool));
                var minutes = Math.PI * (hole - tool) / centre;
                return Math.Abs((Math.PI * hole / minutes) - feed) < 1e-9 * feed;
            });

    [Fact]
    public void A_wider_mill_bites_no_less_and_turns_no_faster()
        => Gen.Double[1, 20].Select(Gen.Double[0, 5], (d, more) => (d, d + more)).Sample(
            p =>
            {
                var mill = new Machine("mill", MachineKind.CncMill, [100, 24000], true, null, null, null, null, null, false);
                var (narrow, wide) = (new EndMill("a", Length.OfMm(p.d), 3, null, true, null), new EndMill("b", Length.OfMm(p.Item2), 3, null, true, null));
                return MillingFeed.ToothMm(wide) >= MillingFeed.ToothMm(narrow) && MillingFeed.TurnsPerMin(wide, mill) <= MillingFeed.TurnsPerMin(narrow, mill);
            });
}
