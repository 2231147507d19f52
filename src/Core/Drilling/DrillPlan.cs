using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>One step of making a hole.</summary>
public enum HoleStep
{
    /// <summary>Started with a spot drill; at the press the punch mark does it.</summary>
    Spot,

    /// <summary>A smaller drill first.</summary>
    Pilot,

    /// <summary>Drilled to its last drilled size.</summary>
    Drill,

    /// <summary>Reamed to size.</summary>
    Ream,

    /// <summary>Bored to size with an end mill on a helix.</summary>
    Bore,

    /// <summary>Rims chamfered on both faces.</summary>
    Chamfer,
}

/// <summary>Spindle speed for one tool: the band that suits material and tool, and what the machine can set.</summary>
/// <param name="LowRpm">Lower end of the band, rpm.</param>
/// <param name="TargetRpm">Middle of the band, rpm.</param>
/// <param name="HighRpm">Upper end of the band, rpm; a machine that cannot go this slow is refused.</param>
/// <param name="SetRpm">What to set on the machine, rpm.</param>
/// <param name="SourceKey">Where the band comes from.</param>
public sealed record SpeedChoice(double LowRpm, double TargetRpm, double HighRpm, double SetRpm, string SourceKey);

/// <summary>One tool's work on one hole.</summary>
/// <param name="Step">Which step.</param>
/// <param name="Tool">The tool as the trade calls it: "6 mm drill", "90 degree countersink".</param>
/// <param name="Diameter">Diameter of the tool; for a bore that of the end mill.</param>
/// <param name="Speed">Speed; null where no spindle turns.</param>
/// <param name="FeedMmPerTurn">Feed, mm a turn; 0 by hand feel.</param>
/// <param name="Thrust">Push on the tool; null where it does not matter.</param>
/// <param name="Torque">Torque at the spindle; null where it does not matter.</param>
/// <param name="Power">Power at the spindle; null where it does not matter.</param>
/// <param name="DepthMm">Depth of the tip under the upper face, mm, the point and the run-through included.</param>
/// <param name="PeckMm">Bite after which the drill is drawn out, mm; null: in one go.</param>
/// <param name="TimeSeconds">Cutting time, s.</param>
/// <param name="Remark">What to watch, in a few words; empty when nothing.</param>
public sealed record HoleOperation(
    HoleStep Step,
    string Tool,
    Length Diameter,
    SpeedChoice? Speed,
    double FeedMmPerTurn,
    Estimate<Force>? Thrust,
    Estimate<Torque>? Torque,
    Estimate<Power>? Power,
    double DepthMm,
    double? PeckMm,
    double TimeSeconds,
    string Remark);

/// <summary>Why a machine cannot make a hole.</summary>
/// <param name="Machine">Name of the machine.</param>
/// <param name="Reason">One short sentence with the numbers.</param>
/// <param name="Remedy">The smallest change with which it could.</param>
public sealed record MachineRefusal(string Machine, string Reason, string Remedy)
{
    /// <summary>Which gate it did not pass.</summary>
    public MachineGate Gate { get; init; }

    /// <summary>What was found, with unit.</summary>
    public string Found { get; init; } = "";

    /// <summary>What it was held against, with unit.</summary>
    public string Limit { get; init; } = "";

    /// <summary>Where the limit comes from.</summary>
    public string Source { get; init; } = "";

    /// <summary>Largest hole that would pass; null when size is not the trouble.</summary>
    public Length? Largest { get; init; }
}

/// <summary>What can keep a machine from making a hole.</summary>
public enum MachineGate
{
    /// <summary>Its slowest speed is above the band of the drill.</summary>
    TooFast,

    /// <summary>The drill does not fit its chuck.</summary>
    Chuck,

    /// <summary>It springs away from the push on the drill.</summary>
    Thrust,

    /// <summary>Its motor is too weak.</summary>
    Power,

    /// <summary>The hole lies too far from every edge of the stock.</summary>
    Throat,

    /// <summary>The stock is wider than its vise opens.</summary>
    Vise,

    /// <summary>It cannot bore.</summary>
    Bore,

    /// <summary>The drills do not cut hardened steel.</summary>
    Hard,
}

/// <summary>A pilot that a machine can drill in a hole it cannot finish.</summary>
/// <param name="Machine">The machine.</param>
/// <param name="Operation">The pilot.</param>
public sealed record PilotElsewhere(Machine Machine, HoleOperation Operation);

/// <summary>Holes that are made together on one machine.</summary>
/// <param name="Machine">The machine; null when none of the shop can make them.</param>
/// <param name="Holes">The holes, in the plan's order.</param>
public sealed record HoleGroup(Machine? Machine, ImmutableArray<HolePlan> Holes);

/// <summary>How one hole is made.</summary>
/// <param name="Hole">The hole.</param>
/// <param name="Machine">The machine that makes it; null when none of the shop can.</param>
/// <param name="Operations">Steps in order; empty when no machine can.</param>
/// <param name="Refusals">Machines that cannot, with the reason.</param>
public sealed record HolePlan(PlacedHole Hole, Machine? Machine, ImmutableArray<HoleOperation> Operations, ImmutableArray<MachineRefusal> Refusals)
{
    /// <summary>The pilot, where no machine can finish the hole but one can start it; else null.</summary>
    public PilotElsewhere? Pilot { get; init; }

    /// <summary>What keeps the machine that comes nearest from making it; empty when one can.</summary>
    public ImmutableArray<MachineRefusal> Nearest
        => Machine is not null || Refusals.IsEmpty ? [] : [.. Refusals.GroupBy(r => r.Machine, StringComparer.Ordinal).MinBy(g => g.Count())!];
}

/// <summary>How all holes are made, in the plan's order.</summary>
/// <param name="Holes">One for each hole.</param>
public sealed record DrillPlan(ImmutableArray<HolePlan> Holes)
{
    /// <summary>No holes.</summary>
    public static DrillPlan None { get; } = new([]);

    /// <summary>How each hole is made: on the machine that places it best of those that can make it.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="shop">The shop.</param>
    /// <param name="steel">The steel; null when it is not known: the most careful speeds are then taken.</param>
    /// <param name="holes">The holes.</param>
    /// <param name="bench">The edges that can be measured from, and the stock around the piece.</param>
    public static DrillPlan Of(Plan plan, Shop shop, Steel? steel, ImmutableArray<PlacedHole> holes, BenchDatum bench)
    {
        var job = new DrillJob(plan, shop, steel, bench.StockBox);
        var machines = MachineChoice.BestFirst(shop);
        return new([.. holes.Select(h => MachineChoice.Of(job, machines, h))]);
    }

    /// <summary>The holes by machine, the machine that places best first, those that none can make last.</summary>
    public ImmutableArray<HoleGroup> ByMachine
        => [.. Holes.GroupBy(h => h.Machine).OrderByDescending(g => g.Key is null ? -1 : MachineChoice.Placing(g.Key)).Select(g => new HoleGroup(g.Key, [.. g]))];
}
