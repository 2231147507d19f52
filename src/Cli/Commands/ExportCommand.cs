using System.CommandLine;
using Tangwright.UseCases;

namespace Tangwright.Cli.Commands;

/// <summary><c>tangwright export PLAN --to dxf|svg|stl|3mf</c>.</summary>
internal static class ExportCommand
{
    private const string About = """
        Write the outline and the holes for a drawing program (dxf, svg: true size in mm, arcs as arcs), or the ground piece as a solid for a printed mock-up to hold in the hand (stl, 3mf: mm).

          tangwright export small-hatchet.plan.toml --to dxf
          tangwright export small-hatchet.plan.toml --to 3mf --stage before_hardening
        """;

    /// <summary>The verb.</summary>
    public static Command Make()
    {
        var plan = CommonOptions.Plan();
        var to = new Option<string>("--to") { Description = "kind of drawing or solid", HelpName = "dxf|svg|stl|3mf", Required = true };
        to.AcceptOnlyFromAmong("dxf", "svg", "stl", "3mf");
        var stage = new Option<string?>("--stage") { Description = "stage of the solid: " + string.Join(", ", PieceSolid.Stages) + "; else finished. Drawings have none", HelpName = "STAGE" };
        stage.AcceptOnlyFromAmong([.. PieceSolid.Stages]);
        var folder = CommonOptions.Out("folder; else beside the plan");
        var overwrite = CommonOptions.Overwrite();
        var c = new Command("export", About) { plan, to, stage, folder, overwrite };
        c.SetAction(p =>
        {
            var (from, kind, into, replace) = (p.GetRequiredValue(plan), p.GetRequiredValue(to), p.GetValue(folder), p.GetValue(overwrite));
            if (kind is "stl" or "3mf")
            {
                var solid = Patience.While("writing the solid", () => ExportSolid.Of(from, kind, p.GetValue(stage), into, replace));
                if (!solid.IsGood) return Says.Faults(solid.Faults);
                Says.Line($"wrote {solid.Value.Path}");
                foreach (var line in solid.Value.Says) Says.Line(line);
                return ExitCode.Answered;
            }

            var made = Patience.While("writing the drawing", () => ExportDrawing.Of(from, kind, into, replace));
            if (!made.IsGood) return Says.Faults(made.Faults);
            Says.Line($"wrote {made.Value}");
            return ExitCode.Answered;
        });
        return c;
    }
}
