using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>What keeps a machine from making a hole, each with the numbers and the smallest change with which it could.</summary>
internal static class MachineGates
{
    /// <summary>Where sizes of machines come from.</summary>
    internal const string ShopFile = "the shop file";

    /// <summary>The gates a machine does not pass for a hole; none when it can make it.</summary>
    public static IEnumerable<MachineRefusal> Of(DrillJob job, Machine machine, PlacedHole hole)
    {
        if (hole.IsDrilledHard && hole.Make == HoleMake.Ream)
        {
            yield return Refused(machine, "has no reamer that cuts hardened steel", "ream it before hardening and allow for scale and movement, or plan make = \"drill\"", "reamed after hardening", "reamers of high-speed steel");
            yield break;
        }

        if (hole.Make == HoleMake.Bore)
        {
            if (Bore(job, machine, hole) is { } bore) yield return bore;
        }
        else
        {
            var drill = job.FinalDrill(hole);
            if (Hard(job, machine, hole) is { } hard)
            {
                yield return hard;
                yield break;
            }

            var fast = TooFast(job, machine, hole, drill);
            if (fast is not null) yield return fast;
            if (Chuck(machine, drill) is { } chuck) yield return chuck;
            if (fast is null)
            {
                foreach (var weak in DrillEffort.Refusals(job, machine, hole, drill)) yield return weak;
            }
        }

        if (Throat(job, machine, hole) is { } throat) yield return throat;
        if (Vise(job, machine) is { } vise) yield return vise;
    }

    private static MachineRefusal? TooFast(DrillJob job, Machine machine, PlacedHole hole, DrillSize drill)
    {
        var speed = job.DrillSpeed(hole);
        if (SpindleSpeed.Of(machine, speed, drill.Diameter) is not null) return null;
        var most = speed.High.TurnsPerMin(drill.Diameter);
        var largest = SpindleSpeed.Largest(machine, speed);
        return new(
            machine.Name,
            $"turns no slower than {Rpm(machine.SpeedsRpm[0])}; a {drill.Name} drill may turn at most {Rpm(most)} in this steel",
            $"make the hole on a machine that turns {Rpm(Math.Floor(most))} or slower, fit a slower pulley, or plan at most {Shown.Both(largest)}{(machine.Kind == MachineKind.CncMill ? ", or bore it with an end mill (make = \"bore\")" : "")}")
        {
            Gate = MachineGate.TooFast,
            Found = $"slowest {Rpm(machine.SpeedsRpm[0])}",
            Limit = $"at most {Rpm(most)} for {Shown.Both(drill.Diameter)}",
            Source = speed.SourceKey,
            Largest = largest,
        };
    }

    private static MachineRefusal? Chuck(Machine machine, DrillSize drill)
        => machine.Chuck is not { } chuck || drill.Diameter.Mm <= chuck.Mm + 1e-6
            ? null
            : new(machine.Name, $"holds {Shown.Both(chuck)} at most in its chuck", $"a {drill.Name} drill with its shank turned down to {Shown.Both(chuck)}, or plan at most that size")
            {
                Gate = MachineGate.Chuck,
                Found = $"{drill.Name} drill",
                Limit = $"chuck {Shown.Both(chuck)}",
                Source = ShopFile,
                Largest = chuck,
            };

    private static MachineRefusal? Throat(DrillJob job, Machine machine, PlacedHole hole)
    {
        if (machine.Throat is not { } throat) return null;
        var reach = Math.Min(Math.Min(hole.At.X - job.Stock.MinX, job.Stock.MaxX - hole.At.X), Math.Min(hole.At.Y - job.Stock.MinY, job.Stock.MaxY - hole.At.Y));
        return reach <= throat.Mm
            ? null
            : new(machine.Name, $"has its column {Shown.Both(throat)} from the spindle; the hole lies {Shown.Both(Length.OfMm(reach))} from the nearest edge of the stock", "saw the piece out first, so that the column is clear of it, or take a machine with a deeper throat")
            {
                Gate = MachineGate.Throat,
                Found = $"{Shown.Both(Length.OfMm(reach))} from the nearest edge",
                Limit = $"throat {Shown.Both(throat)}",
                Source = ShopFile,
            };
    }

    private static MachineRefusal? Vise(DrillJob job, Machine machine)
    {
        if (machine.Kind != MachineKind.DrillingVise || machine.ViseOpens is not { } opens) return null;
        var width = Length.OfMm(Math.Min(job.Stock.Width, job.Stock.Height));
        return width <= opens
            ? null
            : new(machine.Name, $"opens its vise {Shown.Both(opens)}; the stock is {Shown.Both(width)} wide", "saw the piece out first, or clamp the stock and the guide piece flat on the table")
            {
                Gate = MachineGate.Vise,
                Found = $"stock {Shown.Both(width)} wide",
                Limit = $"vise opens {Shown.Both(opens)}",
                Source = ShopFile,
            };
    }

    private static MachineRefusal? Bore(DrillJob job, Machine machine, PlacedHole hole)
    {
        var mill = machine.Kind is MachineKind.CncMill ? HoleTools.ForBore(job.Shop, hole.Diameter) : null;
        if (hole.IsDrilledHard && (machine.Kind is MachineKind.MillDrill || mill is { IsCarbide: false }))
            return Refused(machine, "has no tool that bores hardened steel", "bore it before hardening, or buy a carbide end mill for a mill under computer control", "bored after hardening", "tools of high-speed steel");
        if (machine.Kind is MachineKind.MillDrill || mill is not null) return null;
        var noMill = machine.Kind is MachineKind.CncMill;
        return new(
            machine.Name,
            noMill ? $"has no end mill small enough to run round in {Shown.Both(hole.Diameter)}" : "cannot bore",
            noMill ? $"an end mill of at most {Shown.Both(Length.OfMm(HoleTools.MostOfBoreShare * hole.Diameter.Mm))} in the shop file, or make = \"ream\"" : "plan make = \"ream\" or \"drill\", or take a mill")
        {
            Gate = MachineGate.Bore,
            Found = $"bore {Shown.Both(hole.Diameter)}",
            Limit = "a mill with a boring head, or one under computer control with an end mill that fits",
            Source = SourceTag.CommonPractice,
        };
    }

    private static MachineRefusal? Hard(DrillJob job, Machine machine, PlacedHole hole)
        => !hole.IsDrilledHard || job.Shop.DrillGrind.Metal == DrillMetal.Carbide
            ? null
            : Refused(machine, "has no drill that cuts hardened steel", "drill it before hardening, or buy a carbide drill and write drill_metal = \"carbide\"", "drilled after hardening", "carbide drills");

    private static MachineRefusal Refused(Machine machine, string reason, string remedy, string found, string limit)
        => new(machine.Name, reason, remedy) { Gate = MachineGate.Hard, Found = found, Limit = limit, Source = SourceTag.CommonPractice };

    internal static string Rpm(double rpm) => Shown.Number(rpm, 0) + " rpm";
}
