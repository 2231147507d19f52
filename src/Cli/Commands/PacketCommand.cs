using System.CommandLine;
using Tangwright.UseCases;

namespace Tangwright.Cli.Commands;

/// <summary><c>tangwright packet PLAN</c>.</summary>
internal static class PacketCommand
{
    /// <summary>The verb.</summary>
    public static Command Make()
    {
        var plan = CommonOptions.Plan();
        var shop = CommonOptions.Shop();
        var sheets = new Option<string?>("--sheets")
        {
            Description = "only these, for tonight: " + string.Join(", ", MakePacket.Kinds.Select(k => k.Key)),
            HelpName = "A,B",
        };
        var paper = CommonOptions.Paper();
        var mirror = CommonOptions.Mirror();
        var measured = CommonOptions.Measured();
        var folder = CommonOptions.Out("folder; else NAME-packet beside the plan");
        var units = CommonOptions.Units();
        var date = CommonOptions.Date();
        var seed = CommonOptions.Seed();
        var overwrite = CommonOptions.Overwrite();
        var json = CommonOptions.Json();
        var ask = new StockOptions(required: false);
        var c = new Command("packet", "Make the bench packet: all sheets in one PDF, the template, the hole list, the drawings and the figures.\nWith error findings it is still written, findings first, and the exit code is 1.\n\n  tangwright packet small-hatchet.plan.toml\n  tangwright packet small-hatchet.plan.toml --sheets holes,template\n  tangwright packet small-hatchet.plan.toml --good 12")
        {
            plan, shop, sheets, paper, mirror, measured, folder, units, date, seed, overwrite, json,
        };
        ask.AddTo(c, seed);
        c.SetAction(p =>
        {
            var asked = ask.Of(p);
            if (asked is { IsGood: false }) return Says.Faults(asked.Faults);
            var print = new PrintRequest(p.GetValue(paper), p.GetValue(measured), p.GetValue(mirror), p.GetValue(units), CommonOptions.DateOf(p, date)) { Stock = asked?.Value };
            var only = (p.GetValue(sheets) ?? "").Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
            var made = Patience.While("drawing the sheets", () => MakePacket.Of(p.GetRequiredValue(plan), p.GetValue(shop), p.GetValue(folder), [.. only], print, p.GetValue(overwrite)));
            if (!made.IsGood) return Says.Faults(made.Faults);
            var exit = CheckPlan.HasError(made.Value.Results) ? ExitCode.ErrorFound : ExitCode.Answered;
            if (p.GetValue(json))
            {
                Says.Text(WrittenJson.Of(made.Value));
                return exit;
            }

            CheckCommand.Tell(made.Value.Results);
            Says.Line();
            foreach (var f in made.Value.Files) Says.Line($"wrote {f}{(f.EndsWith("packet.pdf", StringComparison.Ordinal) ? $" ({made.Value.SheetCount} sheets)" : "")}");
            foreach (var f in made.Value.NoProgram) Says.Line($"no program for the {f.File}: {f.Message} -> {f.Remedy}");
            return exit;
        });
        return c;
    }
}
