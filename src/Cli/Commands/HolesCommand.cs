using System.CommandLine;
using System.Text;
using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.UseCases;

namespace Tangwright.Cli.Commands;

/// <summary><c>tangwright holes PLAN</c>.</summary>
internal static class HolesCommand
{
    /// <summary>The verb.</summary>
    public static Command Make()
    {
        var plan = CommonOptions.Plan();
        var shop = CommonOptions.Shop();
        var json = CommonOptions.Json();
        var csv = new Option<bool>("--csv") { Description = "print the readout list: every stop of the machines with a readout, as a table" };
        var c = new Command("holes", "Say how each hole is made on this shop's machines: tools, speeds, feeds, push, time; and what each machine cannot make and why.\nExit code 1 when the plan has an error finding.\n\n  tangwright holes small-hatchet.plan.toml") { plan, shop, json, csv };
        c.SetAction(p =>
        {
            var r = Patience.While("working out the holes", () => Holes.Of(p.GetRequiredValue(plan), p.GetValue(shop)));
            if (!r.IsGood) return Says.Faults(r.Faults);
            if (p.GetValue(json)) Says.Text(Holes.Json(r.Value));
            else if (p.GetValue(csv)) Says.Text(Encoding.UTF8.GetString(Holes.Csv(r.Value)));
            else Tell(r.Value);
            return CheckPlan.HasError(r.Value) ? ExitCode.ErrorFound : ExitCode.Answered;
        });
        return c;
    }

    private static void Tell(Results r)
    {
        Says.Line($"{r.Plan.Name}, revision {r.Plan.Revision}: {r.Holes.Length} {(r.Holes.Length == 1 ? "hole" : "holes")} in {r.Plan.Stock.Steel}, {Shown.Both(r.Plan.Stock.Thickness)}, on the machines of {(r.Shop.IsAssumed ? "the assumed shop" : r.Shop.Name)}");
        foreach (var group in r.Drilling.ByMachine)
        {
            Says.Line();
            Says.Line(group.Machine is { } m ? $"{m.Name}: {HoleStepText.Time(DrillTime.Of(group))}" : "NO MACHINE of the shop makes these");
            foreach (var alike in Alike(group, r.Shop.Show))
            {
                Says.Line($"  {string.Join(", ", alike.Select(h => h.Hole.Name))}: {Shown.Both(alike.First().Hole.Diameter)}{(alike.Count() > 1 ? " each" : "")}");
                Says.Line(alike.Key);
            }

            if (MachineWay.Of(group, r.Bench) is { } way) Tell(way);
        }

        var refused = r.Drilling.Holes.SelectMany(h => h.Refusals.Select(x => (h.Hole.Name, Refusal: x))).GroupBy(x => x.Refusal.Machine).ToArray();
        if (refused.Length > 0) Says.Line();
        foreach (var machine in refused)
        {
            var can = r.Drilling.Holes.Where(h => !h.Refusals.Any(x => x.Machine == machine.Key)).Select(h => h.Hole.Name).ToArray();
            Says.Line($"The {machine.Key} can make {(can.Length == 0 ? "none" : string.Join(", ", can))}; it cannot make:");
            foreach (var x in machine) Says.Line($"  {x.Name,-10}{x.Refusal.Reason}");
        }

        Says.Line();
        Says.Line("Push and power are bands from two published models. Clamp the work; local rules and the machine's manual come first.");
    }

    /// <summary>Holes of the same size that are made in the same way, so that the way is told once.</summary>
    private static IEnumerable<IGrouping<string, HolePlan>> Alike(HoleGroup group, UnitsShown units)
        => group.Holes.GroupBy(h => h.Hole.Diameter).SelectMany(size => size.GroupBy(h => string.Join('\n', Way(h, units)), StringComparer.Ordinal));

    private static void Tell(MachineWay way)
    {
        Says.Line("  the way, each tool from where the one before stopped:");
        foreach (var (clamping, i) in way.Clampings.Select((c, i) => (c, i)))
        {
            if (i > 0) Says.Line($"    clamp anew, slide the work {Shown.Both(Length.OfMm(Math.Abs(clamping.SlideMm)))}{(clamping.Pins.Length == 2 ? $", find {clamping.Pins[0].Name} and {clamping.Pins[1].Name} again" : "")}");
            foreach (var t in clamping.Tools) Says.Line($"    {HoleStepText.Of(t.Round.Work.Step),-8}{t.Round.Tool,-24}{string.Join(", ", t.Stops.Select((s, n) => $"{n + 1} {s.Hole.Name}"))}");
        }
    }

    private static IEnumerable<string> Way(HolePlan hole, UnitsShown units)
    {
        foreach (var line in hole.Operations.SelectMany(o => Step(o, "", units))) yield return line;
        if (hole.Pilot is { } p)
        {
            foreach (var line in Step(p.Operation, $"on the {p.Machine.Name}", units)) yield return line;
        }

        foreach (var x in hole.Nearest) yield return $"    -> {x.Remedy}";
    }

    private static IEnumerable<string> Step(HoleOperation o, string where, UnitsShown units)
    {
        var speed = o.Speed is null ? "by hand" : $"{HoleStepText.Set(o)} rpm (band {HoleStepText.Band(o)}), {HoleStepText.Feed(o, units)}{(o.FeedMmPerTurn > 0 ? $" a turn, {HoleStepText.Depth(o, units)} deep, {HoleStepText.Peck(o, units)}" : "")}";
        yield return $"    {HoleStepText.Of(o.Step),-8}{o.Tool,-24}{speed}{(where.Length > 0 ? ", " + where : "")}";
        string[] more = [HoleStepText.Effort(o, units), o.Remark];
        if (more.Any(x => x.Length > 0)) yield return $"            {string.Join("; ", more.Where(x => x.Length > 0))}";
    }
}
