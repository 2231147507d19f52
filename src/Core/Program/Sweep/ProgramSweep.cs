using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Runs a program as read over the stock in its set-up and says everything that is wrong with it.</summary>
public static class ProgramSweep
{
    /// <summary>Everything wrong with it, in the program's order; empty when it may be run.</summary>
    public static ImmutableArray<ProgramTrouble> Of(ProgramReading reading, ImmutableArray<ProgramTool> tools, ProgramSetUp setUp, WantedPart wanted)
    {
        ImmutableArray<Motion> known = [.. reading.Motions.Where(m => m.IsKnown())];
        IEnumerable<ProgramTrouble> all =
        [
            .. MachineWays.Of(reading, setUp.Machine.ProgramWays, wanted.ToleranceMm),
            .. StartAndEnd.Of(reading, setUp),
            .. TravelReach.Of(known, setUp),
            .. ClampHits.Of(known, tools, setUp),
            .. StockHits.Of(known, tools, setUp),
            .. HoleWalls.Of(known, tools, setUp, wanted),
            .. PartCuts.Of(known, tools, setUp, wanted),
            .. OutlineWalls.Of(known, tools, setUp, wanted),
        ];
        return [.. reading.Troubles.Concat(all).DistinctBy(t => (t.Kind, t.Line, t.Message)).OrderBy(t => t.Line == 0 ? int.MaxValue : t.Line)];
    }
}
