using System.CommandLine;
using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.UseCases;

namespace Tangwright.Cli.Commands;

/// <summary><c>tangwright check PLAN</c>.</summary>
internal static class CheckCommand
{
    /// <summary>The verb.</summary>
    public static Command Make()
    {
        var plan = CommonOptions.Plan();
        var shop = CommonOptions.Shop();
        var json = CommonOptions.Json();
        var c = new Command("check", "Say what is wrong or risky about a plan, gravest first, each with the smallest change that would pass.\nExit code 1 when an error is among them.\n\n  tangwright check small-hatchet.plan.toml") { plan, shop, json };
        c.SetAction(p =>
        {
            var r = Patience.While("checking the plan", () => CheckPlan.Of(p.GetRequiredValue(plan), p.GetValue(shop)));
            if (!r.IsGood) return Says.Faults(r.Faults);
            if (p.GetValue(json)) Says.Text(CheckPlan.Json(r.Value));
            else Tell(r.Value);
            return CheckPlan.HasError(r.Value) ? ExitCode.ErrorFound : ExitCode.Answered;
        });
        return c;
    }

    /// <summary>Tells the findings.</summary>
    public static void Tell(Results r)
    {
        Says.Line($"{r.Plan.Name}, revision {r.Plan.Revision}: {Count(r)}");
        foreach (var f in r.Findings)
        {
            Says.Line();
            var place = f.Place is { } at ? $"  at {Shown.Trimmed(at.X, 2)}, {Shown.Trimmed(at.Y, 2)}" : "";
            Says.Line($"{CheckPlan.SeverityWord(f.Severity),-8} {f.Where}{place}   [{f.Code}]{(f.AssumedShop ? "   (assumed shop)" : "")}");
            Says.Line($"  {f.Message}");
            if (f.Found.Length > 0) Says.Line($"  found {f.Found}{(f.Limit.Length > 0 ? $"; limit {f.Limit}" : "")}{(f.Source.Length > 0 ? $" ({f.Source})" : "")}");
            if (f.Remedy.Length > 0) Says.Line($"  -> {f.Remedy}");
        }

        Says.Line();
        Says.Line("A plan without findings is checked against these rules only; it is no proof that the piece will hold.");
    }

    private static string Count(Results r)
    {
        if (r.Findings.IsEmpty) return "nothing found";
        var parts = from s in new[] { Severity.Error, Severity.Warning, Severity.Note }
                    let n = r.Findings.Count(f => f.Severity == s)
                    where n > 0
                    select $"{n} {CheckPlan.SeverityWord(s)}{(n == 1 ? "" : "s")}";
        return string.Join(", ", parts);
    }
}
