using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Tests;

/// <summary>The short ways of weighing against the long one: many bevels along the same rays against one pass each, and a bevel left out because the holes lie beyond it against one followed anew.</summary>
public class PieceWeigherTests
{
    private static Results Example(string name) => name switch
    {
        "kitchen" => ExamplePieces.Kitchen(),
        "paring" => ExamplePieces.Paring(),
        "hatchet" => ExamplePieces.Hatchet(),
        _ => ExamplePieces.SkeletonKnife(),
    };

    /// <summary>Slopes by 0.05 mm: together and each alone, to 1e-4 of the slope; a single pass is good to about 1e-9 of the piece, 1e-5 g a mm here.</summary>
    [Theory]
    [InlineData("kitchen")]
    [InlineData("paring")]
    [InlineData("hatchet")]
    [InlineData("skeleton")]
    public void Slopes_of_all_levers_together_are_those_of_single_passes(string example)
    {
        var r = Example(example);
        var weigher = new PieceWeigher(r);
        var levers = BalanceLevers.Of(r).Where(l => l.Touches.HasFlag(LeverTouches.Bevel) && !l.Touches.HasFlag(LeverTouches.Holes)).ToArray();
        Assert.True(levers.Length >= 3);
        var trials = levers.SelectMany(l => Values(l).Select(v => (Plan: l.Set(r.Plan, v), l.Touches))).ToArray();
        var near = weigher.Near([.. trials]);
        for (var i = 0; i < levers.Length; i++)
        {
            var (a, b) = Values(levers[i]) is [var low, var high] ? (low, high) : default;
            var (one, two) = (weigher.Of(trials[2 * i].Plan, trials[2 * i].Touches), weigher.Of(trials[(2 * i) + 1].Plan, trials[(2 * i) + 1].Touches));
            Same((two.Grams - one.Grams) / (b - a), (near[(2 * i) + 1].Weighed.Grams - near[2 * i].Weighed.Grams) / (b - a), levers[i].Key);
            Same((two.FromDatumMm - one.FromDatumMm) / (b - a), (near[(2 * i) + 1].Weighed.FromDatumMm - near[2 * i].Weighed.FromDatumMm) / (b - a), levers[i].Key);
        }

        static double[] Values(BalanceLever l) => l.Now + 0.05 <= l.High ? [l.Now, l.Now + 0.05] : [l.Now - 0.05, l.Now];

        static void Same(double single, double together, string lever)
            => Assert.True(Math.Abs(single - together) <= (1e-4 * Math.Abs(single)) + 2e-5, $"{lever}: {single} alone, {together} together");
    }

    /// <summary>
    /// The hatchet's bevel is 26 mm high and has no plunge; its bit rises to y 74.00 at x 37: 68.78 + 120 − √(120² − 35²).
    /// A hole there whose rim lies 26.5 mm under it is left alone, one at 25.5 mm is not.
    /// The kitchen knife's bevel runs to the spine as far as the plunge line at x 198: only a hole whole behind it is left alone.
    /// </summary>
    [Theory]
    [InlineData("hatchet", 37, 42.5, 10, false)]
    [InlineData("hatchet", 37, 43.5, 10, true)]
    [InlineData("hatchet", 37, 42.5, 12, true)]
    [InlineData("kitchen", 206, 34, 15, false)]
    [InlineData("kitchen", 206, 34, 17, true)]
    [InlineData("kitchen", 100, 40, 4, true)]
    public void A_hole_beyond_reach_or_behind_the_plunge_leaves_the_bevel(string example, double x, double y, double grown, bool isFollowed)
    {
        var r = Example(example);
        var hole = r.Plan.Holes.OfType<Hole>().First() with { At = new Point(x, y), Diameter = Length.OfMm(4), Use = HoleUse.Lightening };
        var alone = WorkUp.Of(r.Plan with { Holes = [hole] }, r.Shop, r.Steel);
        var weigher = new PieceWeigher(alone);
        var lever = Assert.Single(BalanceLevers.Of(alone), l => l.Key == "holes-lightening") with { High = grown };
        var narrowed = weigher.Narrowed(lever);
        Assert.Equal(isFollowed, narrowed.Touches.HasFlag(LeverTouches.Bevel));

        // and where it is left out, following it anew finds the same
        var plan = lever.Set(alone.Plan, grown);
        var (quick, whole) = (weigher.Of(plan, narrowed.Touches), weigher.Of(plan, lever.Touches));
        Assert.Equal(whole.Grams, quick.Grams, 1e-5);
        Assert.Equal(whole.FromDatumMm, quick.FromDatumMm, 1e-5);
    }
}
