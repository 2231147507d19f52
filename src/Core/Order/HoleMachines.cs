using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Holes that are made together on one machine.</summary>
/// <param name="Machine">The machine; null when none of the shop holds the drill.</param>
/// <param name="Holes">The holes, in the plan's order.</param>
public sealed record HoleGroup(Machine? Machine, ImmutableArray<PlacedHole> Holes);

/// <summary>Which machine makes which hole: the one that places holes best, if its chuck holds the drill. Speeds are judged later.</summary>
public static class HoleMachines
{
    /// <summary>The holes by machine, best placed first.</summary>
    public static ImmutableArray<HoleGroup> Of(Shop shop, ImmutableArray<PlacedHole> holes)
    {
        var machines = shop.Machines.OrderByDescending(m => Placing(m)).ToArray();
        return
        [
            .. holes.GroupBy(h => Array.FindIndex(machines, m => m.Chuck is not { } chuck || h.Diameter.Mm <= chuck.Mm + 1e-6))
                .OrderBy(g => g.Key < 0 ? int.MaxValue : g.Key)
                .Select(g => new HoleGroup(g.Key < 0 ? null : machines[g.Key], [.. g])),
        ];
    }

    private static int Placing(Machine m) => m.Kind switch
    {
        MachineKind.CncMill => 4,
        MachineKind.MillDrill => m.HasReadout ? 3 : 1,
        MachineKind.DrillingVise => 2,
        _ => 0,
    };
}
