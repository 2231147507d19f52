using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>One tool's way over its holes.</summary>
/// <param name="Tool">The tool.</param>
/// <param name="Step">What it does first.</param>
/// <param name="Holes">Holes in the order they are visited.</param>
public sealed record ToolRound(string Tool, HoleStep Step, ImmutableArray<PlacedHole> Holes);

/// <summary>The order of tools and holes on one machine: every tool is taken up once, small drills before large, and goes the shortest way from where the one before stopped, so that the way back is drilled too.</summary>
public static class ToolRounds
{
    /// <summary>The rounds of a group, the first from the corner measured from; none without a machine.</summary>
    public static ImmutableArray<ToolRound> Of(HoleGroup made, BenchDatum bench)
    {
        if (made.Machine is null) return [];
        var at = default(Point);
        var rounds = ImmutableArray.CreateBuilder<ToolRound>();
        var tools = from h in made.Holes
                    from o in h.Operations
                    group (h.Hole, Step: o) by (Rank: Rank(o.Step), o.Tool) into same
                    orderby same.Key.Rank, same.First().Step.Diameter.Mm, same.Key.Tool
                    select same;
        foreach (var tool in tools)
        {
            var holes = tool.Select(t => t.Hole).DistinctBy(h => h.Name).ToImmutableArray();
            ImmutableArray<Point> places = [.. holes.Select(h => bench.ToBench(h.MadeAt))];
            var order = ShortestWay.Over(at, places);
            rounds.Add(new(tool.Key.Tool, tool.Min(t => t.Step.Step), [.. order.Select(i => holes[i])]));
            at = places[order[^1]];
        }

        return rounds.ToImmutable();
    }

    // a pilot is smaller than the drill that follows it, so pilots and drills go by size together
    private static int Rank(HoleStep step) => step == HoleStep.Pilot ? (int)HoleStep.Drill : (int)step;
}
