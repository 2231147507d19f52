using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>How hard a machine may feed a drill: the usual feed where push and power allow it, else as much less as it takes.</summary>
/// <param name="FeedMmPerTurn">Feed, mm a turn.</param>
/// <param name="Load">Push and torque at that feed.</param>
/// <param name="IsLight">Whether the feed is under the usual band to spare the machine.</param>
internal sealed record DrillEffort(double FeedMmPerTurn, DrillLoad Load, bool IsLight)
{
    /// <summary>Under this feed the lips rub instead of cutting, mm a turn for each mm of diameter; common practice.</summary>
    private const double LeastFeedShare = 0.003;

    /// <summary>Step in which the feed is made lighter.</summary>
    private const double Lighter = 0.9;

    /// <summary>The feed a machine can take and its load.</summary>
    public static DrillEffort Of(DrillJob job, Machine machine, PlacedHole hole, Length drill, Length? pilot, double rpm)
    {
        var usual = DrillFeed.For(drill);
        var least = Math.Min(usual.Low, LeastFeedShare * drill.Mm);
        var feed = hole.IsDrilledHard ? usual.Low : usual.Value;
        while (true)
        {
            var load = job.Load(hole, drill, pilot, feed);
            if (Bears(machine, load, rpm) || feed <= least) return new(feed, load, feed < usual.Low - 1e-9);
            feed = Math.Max(least, Lighter * feed);
        }
    }

    /// <summary>Push or power beyond the machine even at the lightest feed, by the lower of the two models.</summary>
    public static IEnumerable<MachineRefusal> Refusals(DrillJob job, Machine machine, PlacedHole hole, DrillSize drill)
    {
        if (machine.MostThrust is null && machine.PowerW is null) yield break;
        var speed = SpindleSpeed.Of(machine, job.DrillSpeed(hole), drill.Diameter)!;
        var effort = Of(job, machine, hole, drill.Diameter, job.Pilot(drill.Diameter)?.Diameter, speed.SetRpm);
        if (machine.MostThrust is { } most && effort.Load.Thrust.Low.Newtons > most.Newtons)
        {
            yield return new(machine.Name, $"a {drill.Name} drill pushes with at least {Newtons(effort.Load.Thrust.Low)} even at a light feed; it bears {Newtons(most)}", "drill a larger pilot first, have the point split, or take a stiffer machine")
            {
                Gate = MachineGate.Thrust,
                Found = $"{Newtons(effort.Load.Thrust.Low)} to {Newtons(effort.Load.Thrust.High)}",
                Limit = $"bears {Newtons(most)}",
                Source = effort.Load.Thrust.SourceKey,
            };
        }

        var power = effort.Load.PowerAt(speed.SetRpm);
        if (Available(machine) is { } watts && power.Low.Watts > watts.Watts)
        {
            yield return new(machine.Name, $"a {drill.Name} drill takes at least {Watts(power.Low)} at the spindle even at a light feed; it has {Watts(watts)} there", "drill in more steps of size, or take a stronger machine")
            {
                Gate = MachineGate.Power,
                Found = $"{Watts(power.Low)} to {Watts(power.High)}",
                Limit = $"{Watts(watts)} at the spindle",
                Source = power.SourceKey,
            };
        }
    }

    private static bool Bears(Machine machine, DrillLoad load, double rpm)
    {
        return (machine.MostThrust is not { } most || load.Thrust.Value.Newtons <= most.Newtons)
            && (Available(machine) is not { } power || load.PowerAt(rpm).Value.Watts <= power.Watts);
    }

    /// <summary>Power at the spindle; null when the motor's is not said.</summary>
    public static Power? Available(Machine machine)
        => machine.PowerW is { } w ? Power.OfWatts(w * (machine.EfficiencyShare ?? UsualEfficiency(machine))) : null;

    /// <summary>Share of the motor's power that reaches the spindle, from memory of a handbook table: belts 0.90, geared heads 0.70 to 0.80.</summary>
    private static double UsualEfficiency(Machine machine) => machine.Kind is MachineKind.DrillPress or MachineKind.DrillingVise ? 0.9 : 0.75;

    internal static string Newtons(Force f) => $"{Shown.Number(f.Newtons, 0)} N ({Shown.Number(f.Pounds, 0)} lbf)";

    internal static string Watts(Power p) => $"{Shown.Number(p.Watts, 0)} W";
}
