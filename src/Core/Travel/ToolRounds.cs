using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>One tool's way over its holes.</summary>
/// <param name="Tool">The tool.</param>
/// <param name="Work">What it does in the first of them, with speed and depth.</param>
/// <param name="Holes">Holes in the order they are visited.</param>
public sealed record ToolRound(string Tool, HoleOperation Work, ImmutableArray<PlacedHole> Holes);

/// <summary>The order of tools and holes on one machine: every tool is taken up once, small drills before large, and goes the shortest way from where the one before stopped. A tool with the same holes as the one before goes back over them the other way round.</summary>
public static class ToolRounds
{
    /// <summary>The rounds over some holes; none without steps.</summary>
    /// <param name="holes">The holes with their steps.</param>
    /// <param name="bench">The edges measured from.</param>
    /// <param name="from">Where the table stands, mm from the two edges.</param>
    public static ImmutableArray<ToolRound> Of(IEnumerable<HolePlan> holes, BenchDatum bench, Point from = default)
    {
        var (at, before) = (from, ImmutableArray<PlacedHole>.Empty);
        var rounds = ImmutableArray.CreateBuilder<ToolRound>();
        var tools = from h in holes
                    from o in h.Operations
                    group (h.Hole, Step: o) by (Rank: Rank(o.Step), o.Tool) into same
                    orderby same.Key.Rank, same.First().Step.Diameter.Mm, same.Key.Tool
                    select same;
        foreach (var tool in tools)
        {
            var round = tool.Select(t => t.Hole).DistinctBy(h => h.Name).ToImmutableArray();
            round = IsSame(round, before) ? [.. before.Reverse()] : Shortest(round, bench, at);
            var first = tool.First(t => t.Hole.Name == round[0].Name).Step;
            rounds.Add(new(tool.Key.Tool, first, round));
            (at, before) = (bench.ToBench(round[^1].MadeAt), round);
        }

        return rounds.ToImmutable();
    }

    // a pilot is smaller than the drill that follows it, so pilots and drills go by size together
    private static int Rank(HoleStep step) => step == HoleStep.Pilot ? (int)HoleStep.Drill : (int)step;

    private static bool IsSame(ImmutableArray<PlacedHole> some, ImmutableArray<PlacedHole> others)
        => some.Length == others.Length && some.All(s => others.Any(o => o.Name == s.Name));

    private static ImmutableArray<PlacedHole> Shortest(ImmutableArray<PlacedHole> holes, BenchDatum bench, Point at)
        => [.. ShortestWay.Over(at, [.. holes.Select(h => bench.ToBench(h.MadeAt))]).Select(i => holes[i])];
}
