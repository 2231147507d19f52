using System.CommandLine;
using Tangwright.UseCases;

namespace Tangwright.Cli.Commands;

/// <summary><c>tangwright import FILE</c>.</summary>
internal static class ImportCommand
{
    /// <summary>The verb.</summary>
    public static Command Make()
    {
        var file = new Argument<string>("FILE") { Description = "a drawing: SVG, or ASCII DXF (R12 to 2018)" };
        var plan = new Option<string?>("--out") { Description = "plan to write; else the drawing's name beside it", HelpName = "NAME.plan.toml" };
        var units = new Option<string?>("--units") { Description = "what one unit of the drawing is, where it does not say", HelpName = "mm|in" };
        units.AcceptOnlyFromAmong("mm", "in");
        var thickness = new Option<string?>("--thickness") { Description = "stock thickness: \"3 mm\", \"1/8 in\"", HelpName = "SIZE" };
        var steel = new Option<string?>("--steel") { Description = "steel, by its standard designation", HelpName = "NAME" };
        var width = new Option<string?>("--width") { Description = "width of the bar", HelpName = "SIZE" };
        var layers = new Option<string[]>("--layer") { Description = "take only this layer; may be given several times", HelpName = "NAME", AllowMultipleArgumentsPerToken = false };
        var loop = new Option<int?>("--loop") { Description = "which of the loops listed is the outline", HelpName = "N" };
        var join = new Option<string?>("--join") { Description = "loose ends this near are joined; else 0.05 mm", HelpName = "SIZE" };
        var overwrite = CommonOptions.Overwrite();
        var json = CommonOptions.Json();
        var c = new Command("import", "Make a plan from the outline and the round holes of a drawing; says what was taken and what was left out.\n\n  tangwright import blade.dxf --thickness \"3 mm\" --steel 80CrV2\n  tangwright import blade.svg --units in --thickness \"1/8 in\" --out blade.plan.toml")
        {
            file, plan, units, thickness, steel, width, layers, loop, join, overwrite, json,
        };
        c.SetAction(p =>
        {
            var request = new ImportRequest(
                p.GetRequiredValue(file),
                p.GetValue(plan),
                p.GetValue(units),
                p.GetValue(thickness),
                p.GetValue(steel),
                p.GetValue(width),
                [.. p.GetValue(layers) ?? []],
                p.GetValue(loop),
                p.GetValue(join),
                p.GetValue(overwrite));
            var made = Patience.While("reading the drawing", () => ImportDrawing.Of(request));
            if (!made.IsGood) return Says.Faults(made.Faults);
            if (p.GetValue(json))
            {
                Says.Text(WrittenJson.Of(made.Value));
                return ExitCode.Answered;
            }

            foreach (var t in made.Value.Taken) Says.Line("taken: " + t);
            foreach (var t in made.Value.LeftOut) Says.Line("left out: " + t);
            Says.Line($"wrote {made.Value.PlanPath}");
            Says.Line($"next: look it over, say which part is the edge, then tangwright check {made.Value.PlanPath}");
            return ExitCode.Answered;
        });
        return c;
    }
}
