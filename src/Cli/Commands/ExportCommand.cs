using System.CommandLine;
using Tangwright.UseCases;

namespace Tangwright.Cli.Commands;

/// <summary><c>tangwright export PLAN --to dxf|svg</c>.</summary>
internal static class ExportCommand
{
    /// <summary>The verb.</summary>
    public static Command Make()
    {
        var plan = CommonOptions.Plan();
        var to = new Option<string>("--to") { Description = "kind of drawing", HelpName = "dxf|svg", Required = true };
        to.AcceptOnlyFromAmong("dxf", "svg");
        var folder = CommonOptions.Out("folder; else beside the plan");
        var overwrite = CommonOptions.Overwrite();
        var c = new Command("export", "Write the outline and the holes for a drawing program, true size in mm, arcs as arcs.\n\n  tangwright export small-hatchet.plan.toml --to dxf") { plan, to, folder, overwrite };
        c.SetAction(p =>
        {
            var made = Patience.While("writing the drawing", () => ExportDrawing.Of(p.GetRequiredValue(plan), p.GetRequiredValue(to), p.GetValue(folder), p.GetValue(overwrite)));
            if (!made.IsGood) return Says.Faults(made.Faults);
            Says.Line($"wrote {made.Value}");
            return ExitCode.Answered;
        });
        return c;
    }
}
