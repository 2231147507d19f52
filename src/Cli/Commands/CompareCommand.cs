using System.CommandLine;
using Tangwright.UseCases;

namespace Tangwright.Cli.Commands;

/// <summary><c>tangwright compare PLAN OTHER</c>.</summary>
internal static class CompareCommand
{
    /// <summary>The verb.</summary>
    public static Command Make()
    {
        var plan = CommonOptions.Plan();
        var other = new Argument<string>("OTHER") { Description = "the plan to compare it with, the later one of the two" };
        var shop = CommonOptions.Shop();
        var json = CommonOptions.Json();
        var c = new Command("compare", "Say what changed from one plan to another: what moved, what the numbers and the findings did.\n\n  tangwright compare my-hatchet-revisions/my-hatchet.A.plan.toml my-hatchet.plan.toml") { plan, other, shop, json };
        c.SetAction(p =>
        {
            var r = Patience.While("comparing the plans", () => ComparePlans.Of(p.GetRequiredValue(plan), p.GetRequiredValue(other), p.GetValue(shop)));
            if (!r.IsGood) return Says.Faults(r.Faults);
            if (p.GetValue(json)) Says.Text(ComparePlans.Json(r.Value));
            else Tell(r.Value);
            return ExitCode.Answered;
        });
        return c;
    }

    private static void Tell(ComparedPlans compared)
    {
        var (d, units) = (compared.Difference, compared.Now.Plan.Units);
        Says.Line($"From {compared.Was.Plan.Name}, revision {compared.Was.Plan.Revision}, to {compared.Now.Plan.Name}, revision {compared.Now.Plan.Revision}");
        Says.Line();
        if (d.IsNone) Says.Line("  the two plans are the same");
        foreach (var p in PartInWords.Of(d, units)) Says.Line($"  {p.What,-26}{p.Was} \u2192 {p.Now}{(p.By.Length > 0 ? $"; {p.By}" : "")}");
        if (d.Figures.Length > 0) Says.Line();
        foreach (var n in NumberInWords.Of(d.Figures, units)) Says.Line($"  {n.Name,-26}{n.FromTo,-30}{n.By}");
        if (d.Findings.Gone.Length + d.Findings.New.Length + d.Findings.Changed.Length > 0) Says.Line();
        foreach (var f in d.Findings.Gone) Says.Line($"  gone     {CheckPlan.SeverityWord(f.Severity),-8} {f.Where}: {f.Message}");
        foreach (var f in d.Findings.New) Says.Line($"  new      {CheckPlan.SeverityWord(f.Severity),-8} {f.Where}: {f.Message}");
        foreach (var (was, now) in d.Findings.Changed) Says.Line($"  changed  {CheckPlan.SeverityWord(now.Severity),-8} {now.Where}: found {now.Found}, before {was.Found}");
    }
}
