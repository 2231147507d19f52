using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Time of one tool in a program.</summary>
/// <param name="Tool">The tool.</param>
/// <param name="SlowestTurnsPerMin">Least spindle speed, rpm.</param>
/// <param name="FastestTurnsPerMin">Greatest spindle speed, rpm.</param>
/// <param name="CuttingSeconds">At feed, s.</param>
/// <param name="CrossingSeconds">Not cutting, and waiting for the spindle, s.</param>
/// <param name="SlowestMmPerMin">Least feed, mm/min.</param>
/// <param name="FastestMmPerMin">Greatest feed, mm/min.</param>
public sealed record ToolTime(ProgramTool Tool, double SlowestTurnsPerMin, double FastestTurnsPerMin, double CuttingSeconds, double CrossingSeconds, double SlowestMmPerMin, double FastestMmPerMin);

/// <summary>How long a program runs, from the motions as read. Speeding up and slowing down are not counted: a machine takes longer, the more so the shorter its moves.</summary>
[Formula("time of a machine program, s", SourceTag.CommonPractice, "t = sum of L / F over its moves at feed and at the machine's speed without cutting, 2 s a tool for the spindle")]
public static class ProgramTime
{
    /// <summary>Speed of a move that does not cut when the shop file does not say, mm/min; common practice.</summary>
    public const double UsualRapidMmPerMin = 1000;

    /// <summary>From start of the spindle to its speed, s; common practice.</summary>
    public const double SpindleSeconds = 2;

    /// <summary>The time of each tool, in order.</summary>
    /// <param name="motions">The motions as read.</param>
    /// <param name="tools">The tools of the program.</param>
    /// <param name="rapidMmPerMin">Speed of a move that does not cut, mm/min.</param>
    public static ImmutableArray<ToolTime> Of(ImmutableArray<Motion> motions, ImmutableArray<ProgramTool> tools, double rapidMmPerMin)
        => [.. motions.Where(m => m.IsKnown() && m.Tool > 0).GroupBy(m => m.Tool).Select(g =>
        {
            var cuts = g.Where(m => m.Kind != MotionKind.Rapid).ToArray();
            return new ToolTime(
                tools.First(t => t.Number == g.Key),
                cuts.Select(m => m.TurnsPerMin).DefaultIfEmpty(0).Min(),
                cuts.Select(m => m.TurnsPerMin).DefaultIfEmpty(0).Max(),
                60 * cuts.Sum(m => LengthMm(m) / m.MmPerMin),
                (60 * g.Where(m => m.Kind == MotionKind.Rapid).Sum(LengthMm) / rapidMmPerMin) + SpindleSeconds,
                cuts.Select(m => m.MmPerMin).DefaultIfEmpty(0).Min(),
                cuts.Select(m => m.MmPerMin).DefaultIfEmpty(0).Max());
        })];

    private static double LengthMm(Motion m)
    {
        var down = m.To.Z - m.From.Z;
        var flat = m.Flat()?.Length ?? 0;
        return Math.Sqrt((flat * flat) + (down * down));
    }
}
