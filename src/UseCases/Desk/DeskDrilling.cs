using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.UseCases;

/// <summary>One tool on the page of drilling, in words.</summary>
/// <param name="Tool">The tool.</param>
/// <param name="Step">What it does.</param>
/// <param name="Set">What to set, with unit.</param>
/// <param name="Band">The band it lies in.</param>
/// <param name="Depth">Depth of the tip.</param>
/// <param name="Feed">Feed a turn.</param>
/// <param name="Effort">Push and power as bands.</param>
/// <param name="Holes">Names of the holes.</param>
/// <param name="Remark">What to watch.</param>
public sealed record ToolShown(string Tool, string Step, string Set, string Band, string Depth, string Feed, string Effort, string Holes, string Remark);

/// <summary>What one machine makes.</summary>
/// <param name="Name">The machine.</param>
/// <param name="Time">How long, in words.</param>
/// <param name="Tools">Its tools in order.</param>
public sealed record MachineShown(string Name, string Time, ImmutableArray<ToolShown> Tools);

/// <summary>A hole that a machine cannot make, and why.</summary>
/// <param name="Hole">The hole with its size.</param>
/// <param name="Machine">The machine.</param>
/// <param name="Reason">Why not.</param>
/// <param name="Remedy">The smallest change with which it could.</param>
public sealed record RefusalShown(string Hole, string Machine, string Reason, string Remedy);

/// <summary>How the holes are made, as the page of drilling shows it.</summary>
public static class DeskDrilling
{
    /// <summary>Where the numbers come from and what comes first.</summary>
    public const string Caution = "Clamp the work on a board, never hold it by hand. Chuck key out before the switch; no gloves, sleeves or loose hair near the spindle. Local rules and the machine's manual come first.";

    /// <summary>Each machine with its tools.</summary>
    public static ImmutableArray<MachineShown> Machines(Results r)
        => [.. r.Drilling.ByMachine.Where(g => g.Machine is not null).Select(g => new MachineShown(g.Machine!.Name, HoleStepText.Time(DrillTime.Of(g)), [.. ToolRow.Of(g).Select(t => Shown(t, r.Shop.Show))]))];

    /// <summary>Holes no machine makes: what keeps the nearest from it.</summary>
    public static ImmutableArray<RefusalShown> Unmade(Results r) => [.. r.Drilling.Holes.SelectMany(h => h.Nearest.Select(x => Shown(h, x)))];

    /// <summary>Pilots that can be drilled in holes no machine makes, a line each.</summary>
    public static ImmutableArray<string> Pilots(Results r)
        => [.. r.Drilling.Holes.Where(h => h.Pilot is not null)
            .GroupBy(h => $"{h.Pilot!.Operation.Tool} on the {h.Pilot.Machine.Name}, {HoleStepText.Set(h.Pilot.Operation)} rpm")
            .Select(g => $"{string.Join(", ", g.Select(h => h.Hole.Name))}: {g.Key}")];

    /// <summary>What machines cannot make though another makes it.</summary>
    public static ImmutableArray<RefusalShown> Elsewhere(Results r) => [.. r.Drilling.Holes.Where(h => h.Machine is not null).SelectMany(h => h.Refusals.Select(x => Shown(h, x))).OrderBy(x => x.Machine, StringComparer.Ordinal)];

    private static ToolShown Shown(ToolRow tool, UnitsShown units)
    {
        var o = tool.Step;
        var depth = o.Step == HoleStep.Chamfer ? "" : tool.IsSameDepth ? HoleStepText.Depth(o, units) + (o.PeckMm is null ? "" : ", " + HoleStepText.Peck(o, units)) : $"{HoleStepText.Depth(tool.Holes.MinBy(h => h.Step.DepthMm)!.Step, units)} to {HoleStepText.Depth(tool.Holes.MaxBy(h => h.Step.DepthMm)!.Step, units)}";
        return new(
            o.Tool,
            HoleStepText.Of(o.Step),
            HoleStepText.Set(o) + (o.Speed is null ? "" : " rpm"),
            HoleStepText.Band(o),
            depth,
            HoleStepText.Feed(o, units),
            HoleStepText.Effort(o, units),
            string.Join(", ", tool.Holes.Select(h => h.Hole)),
            tool.Remark);
    }

    private static RefusalShown Shown(HolePlan h, MachineRefusal x) => new($"{h.Hole.Name}, {Foundation.Shown.Both(h.Hole.Diameter)}", x.Machine, x.Reason, x.Remedy);
}
