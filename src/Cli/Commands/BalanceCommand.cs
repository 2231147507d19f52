using System.CommandLine;
using Tangwright.UseCases;

namespace Tangwright.Cli.Commands;

/// <summary><c>tangwright balance PLAN</c>.</summary>
internal static class BalanceCommand
{
    /// <summary>The verb.</summary>
    public static Command Make()
    {
        var plan = CommonOptions.Plan();
        var shop = CommonOptions.Shop();
        var to = new Option<string?>("--to") { Description = "where it shall balance, from the datum; else the plan's target", HelpName = "X" };
        var weight = new Option<string?>("--weight") { Description = "what it shall weigh, as \"162 g\" or \"5.7 oz\"; else the plan's target", HelpName = "W" };
        var levers = new Option<string?>("--levers") { Description = "what may be changed, with commas: tang-taper, distal-taper, holes-lightening, holes-glue, scales, stock, bevel-height, weight-front, weight-rear; else all", HelpName = "A,B" };
        var json = CommonOptions.Json();
        var c = new Command("balance", "Say what brings the balance where it is wanted: each change alone, how far it gets, and the least change of several together.\nAlso what a mm, or 1/64 in, of each does to weight and balance.\n\n  tangwright balance kitchen-knife.plan.toml --to 10\n  tangwright balance kitchen-knife.plan.toml --to 10 --weight \"160 g\" --levers tang-taper,scales") { plan, shop, to, weight, levers, json };
        c.SetAction(p =>
        {
            var answer = PlanBalance.Of(p.GetRequiredValue(plan), p.GetValue(shop), p.GetValue(to), p.GetValue(weight), p.GetValue(levers));
            if (!answer.IsGood) return Says.Faults(answer.Faults);
            if (p.GetValue(json)) Says.Text(PlanBalance.Json(answer.Value));
            else foreach (var line in BalanceText.Lines(answer.Value)) Says.Line(line);
            return ExitCode.Answered;
        });
        return c;
    }
}
