using System.CommandLine;
using Tangwright.UseCases;

namespace Tangwright.Cli.Commands;

/// <summary><c>tangwright new NAME</c>.</summary>
internal static class NewCommand
{
    /// <summary>The verb.</summary>
    public static Command Make()
    {
        var name = new Argument<string>("NAME") { Description = "name of the pattern; NAME.plan.toml is written" };
        var like = new Option<string>("--like") { Description = "which example to start from", HelpName = string.Join('|', NewPlan.Likes), DefaultValueFactory = _ => NewPlan.Likes[0] };
        like.AcceptOnlyFromAmong([.. NewPlan.Likes]);
        var folder = CommonOptions.Out("folder to write it in");
        var overwrite = CommonOptions.Overwrite();
        var c = new Command("new", "Write a starter plan: a whole example under your own name, every key explained.\n\n  tangwright new small-hatchet --like hatchet") { name, like, folder, overwrite };
        c.SetAction(p =>
        {
            var made = NewPlan.Of(p.GetRequiredValue(name), p.GetRequiredValue(like), p.GetValue(folder), p.GetValue(overwrite));
            if (!made.IsGood) return Says.Faults(made.Faults);
            Says.Line($"wrote {made.Value}");
            Says.Line($"next: tangwright check {made.Value}");
            return ExitCode.Answered;
        });
        return c;
    }
}
