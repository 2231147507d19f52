using System.CommandLine;
using Tangwright.Core;
using Tangwright.UseCases;

namespace Tangwright.Cli.Commands;

/// <summary><c>tangwright handle PLAN</c>.</summary>
internal static class HandleCommand
{
    /// <summary>The verb.</summary>
    public static Command Make()
    {
        var plan = CommonOptions.Plan();
        var shop = CommonOptions.Shop();
        var pieces = new Option<int?>("--pieces") { Description = "pieces in the batch, for glue and boards; else 1", HelpName = "N" };
        var board = new Option<string?>("--board") { Description = "a board the scales come out of: length along the grain x width x thickness", HelpName = "SIZE" };
        var json = CommonOptions.Json();
        var c = new Command("handle", "Scales, pins, glue, cord and grip: what they weigh and how the piece balances, what to cut and drill, how many to glue at once, what the wood will do, and whether a hand can hold it.\n\n  tangwright handle kitchen.plan.toml\n  tangwright handle kitchen.plan.toml --pieces 8 --board \"400 x 120 x 27 mm\"") { plan, shop, pieces, board, json };
        c.SetAction(p =>
        {
            var answer = PlanHandle.Of(p.GetRequiredValue(plan), p.GetValue(shop), new HandleRequest(p.GetValue(pieces), p.GetValue(board)));
            if (!answer.IsGood) return Says.Faults(answer.Faults);
            if (p.GetValue(json)) Says.Text(PlanHandle.Json(answer.Value));
            else Tell(answer.Value);
            return ExitCode.Answered;
        });
        return c;
    }

    private static void Tell(HandlePlan p)
    {
        Says.Line($"{p.Results.Plan.Name}, revision {p.Results.Plan.Revision}: {HandleText.Head(p)}");
        foreach (var block in HandleText.Blocks(p))
        {
            Says.Line();
            Says.Line(block.Title);
            foreach (var line in block.Lines) Says.Line("  " + line);
        }

        Says.Line();
        foreach (var caution in HandleText.Cautions(p)) Says.Line(caution);
    }
}
