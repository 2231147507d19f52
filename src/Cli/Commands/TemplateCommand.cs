using System.CommandLine;
using Tangwright.UseCases;

namespace Tangwright.Cli.Commands;

/// <summary><c>tangwright template PLAN</c>.</summary>
internal static class TemplateCommand
{
    /// <summary>The verb.</summary>
    public static Command Make()
    {
        var plan = CommonOptions.Plan();
        var shop = CommonOptions.Shop();
        var paper = CommonOptions.Paper();
        var mirror = CommonOptions.Mirror();
        var drillOnly = new Option<bool>("--drill-only") { Description = "only punch crosses, rings and datum edges" };
        var measured = CommonOptions.Measured();
        var folder = CommonOptions.Out("folder; else NAME-packet beside the plan");
        var units = CommonOptions.Units();
        var date = CommonOptions.Date();
        var overwrite = CommonOptions.Overwrite();
        var json = CommonOptions.Json();
        var c = new Command("template", "Print the piece at true scale, over as many sheets as it takes.\nMeasure both 100 mm bars on the print before you trust it; if they are off, print again with --measured.\n\n  tangwright template small-hatchet.plan.toml --paper letter\n  tangwright template small-hatchet.plan.toml --measured 97.2x97.0 --overwrite")
        {
            plan, shop, paper, mirror, drillOnly, measured, folder, units, date, overwrite, json,
        };
        c.SetAction(p =>
        {
            var print = new PrintRequest(p.GetValue(paper), p.GetValue(measured), p.GetValue(mirror), p.GetValue(units), CommonOptions.DateOf(p, date));
            var made = Patience.While("drawing the template", () => PrintTemplate.Of(p.GetRequiredValue(plan), p.GetValue(shop), p.GetValue(folder), p.GetValue(drillOnly), print, p.GetValue(overwrite)));
            if (!made.IsGood) return Says.Faults(made.Faults);
            if (p.GetValue(json))
            {
                Says.Text(WrittenJson.Of(made.Value));
                return ExitCode.Answered;
            }

            Says.Line($"wrote {made.Value.Files[0]}: {made.Value.SheetCount} sheet{(made.Value.SheetCount == 1 ? "" : "s")}");
            Says.Line("print at 100 % (actual size), then measure both 100 mm bars");
            return ExitCode.Answered;
        });
        return c;
    }
}
