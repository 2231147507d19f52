using System.Collections.Immutable;

namespace Tangwright.Core;

/// <summary>Which machine makes a hole: of those that can, the one that places holes best.</summary>
internal static class MachineChoice
{
    /// <summary>The shop's machines, the one that places holes best first; of equals the first written.</summary>
    public static ImmutableArray<Machine> BestFirst(Shop shop) => [.. shop.Machines.OrderByDescending(Placing)];

    /// <summary>Rank of a machine by how well it places holes; common practice.</summary>
    public static int Placing(Machine m) => m.Kind switch
    {
        MachineKind.CncMill => 4,
        MachineKind.MillDrill => m.HasReadout ? 3 : 1,
        MachineKind.DrillingVise => 2,
        _ => 0,
    };

    /// <summary>How one hole is made.</summary>
    public static HolePlan Of(DrillJob job, ImmutableArray<Machine> machines, PlacedHole hole)
    {
        Machine? chosen = null;
        var refusals = ImmutableArray.CreateBuilder<MachineRefusal>();
        foreach (var machine in machines)
        {
            var before = refusals.Count;
            refusals.AddRange(MachineGates.Of(job, machine, hole));
            if (chosen is null && refusals.Count == before) chosen = machine;
        }

        if (chosen is not null) return new HolePlan(hole, chosen, HoleSteps.Of(job, chosen, hole), refusals.ToImmutable());
        return new HolePlan(hole, null, [], refusals.ToImmutable()) { Pilot = HoleSteps.PilotOf(job, machines, hole) };
    }
}
