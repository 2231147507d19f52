using System.Collections.Immutable;

namespace Tangwright.Core;

/// <summary>A hole a tool goes into.</summary>
/// <param name="Hole">Name of the hole.</param>
/// <param name="Step">The step there.</param>
public sealed record ToolInHole(string Hole, HoleOperation Step);

/// <summary>One tool at one setting, and the holes it goes into: what is done between two changes.</summary>
/// <param name="Step">The step in the first hole: tool, speed, feed.</param>
/// <param name="Holes">The holes.</param>
public sealed record ToolRow(HoleOperation Step, ImmutableArray<ToolInHole> Holes)
{
    /// <summary>Whether the tool goes equally deep in all of them.</summary>
    public bool IsSameDepth => Holes.All(h => Math.Abs(h.Step.DepthMm - Step.DepthMm) < 0.05);

    /// <summary>What to watch, each remark once.</summary>
    public string Remark => string.Join("; ", Holes.Select(h => h.Step.Remark).Where(x => x.Length > 0).Distinct(StringComparer.Ordinal));

    /// <summary>The tools of a machine in the order they are used: step by step, the narrow before the wide.</summary>
    public static ImmutableArray<ToolRow> Of(HoleGroup made)
        =>
        [
            .. from h in made.Holes
               from o in h.Operations
               group new ToolInHole(h.Hole.Name, o) by (o.Step, o.Tool, o.Speed?.SetRpm, Feed: o.Step == HoleStep.Spot ? 0 : Math.Round(o.FeedMmPerTurn, 3)) into same
               orderby same.Key.Step, same.First().Step.Diameter.Mm
               select new ToolRow(same.First().Step, [.. same]),
        ];
}
