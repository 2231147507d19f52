using System.CommandLine;
using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.UseCases;

namespace Tangwright.Cli.Commands;

/// <summary><c>tangwright program PLAN</c>.</summary>
internal static class ProgramCommand
{
    private const string About = """
        Write the program for a mill under computer control (RS-274/NGC), in the words its controller knows.
        It is read back and swept through stock and clamps first; one that fails is not written, and the exit code is 2.
        Exit code 1 when the plan has an error finding.

          tangwright program ring-knife.plan.toml
          tangwright program ring-knife.plan.toml --work holes
          tangwright program ring-knife.plan.toml --work profile --zero P1
        """;

    /// <summary>The verb.</summary>
    public static Command Make()
    {
        var plan = CommonOptions.Plan();
        var shop = CommonOptions.Shop();
        var machine = new Option<string?>("--machine") { Description = "name of the mill; else the first one under computer control", HelpName = "NAME" };
        var work = new Option<string?>("--work") { Description = "all in one clamping (usual); or holes, then profile with the piece on pins through two of its holes", HelpName = "all|holes|profile" };
        work.AcceptOnlyFromAmong([.. MakeProgram.Works]);
        var zero = new Option<string?>("--zero") { Description = "hole whose centre is the program's zero; else the corner of the stock", HelpName = "HOLE" };
        var file = new Option<string?>("--out") { Description = "file; else NAME.ngc beside the plan", HelpName = "FILE" };
        var overwrite = CommonOptions.Overwrite();
        var json = CommonOptions.Json();
        var c = new Command("program", About) { plan, shop, machine, work, zero, file, overwrite, json };
        c.SetAction(p =>
        {
            var choice = new ProgramChoice((ProgramWork)Math.Max(0, MakeProgram.Works.IndexOf(p.GetValue(work) ?? "all")), p.GetValue(zero));
            var made = Patience.While("checking the program", () => MakeProgram.Of(p.GetRequiredValue(plan), p.GetValue(shop), p.GetValue(machine), choice, p.GetValue(file), p.GetValue(overwrite)));
            if (!made.IsGood) return Says.Faults(made.Faults);
            if (p.GetValue(json)) Says.Text(ProgramJson.Of(made.Value));
            else Tell(made.Value);
            return CheckPlan.HasError(made.Value.Checked.Results) ? ExitCode.ErrorFound : ExitCode.Answered;
        });
        return c;
    }

    private static void Tell(WrittenProgram written)
    {
        var (report, program) = (written.Checked.Report, written.Checked.Program);
        Says.Line($"wrote {written.File}, for the {report.Machine.Name}");
        Says.Line($"checked: {report.Moves} moves, {ProgramText.Made(program)}");
        Says.Line($"time: {ProgramText.Time(report)}");
        Says.Line();
        foreach (var t in report.Tools) Says.Line("  " + ProgramText.Tool(t));
        Says.Line();
        Says.Line("zero: " + program.SetUp.ZeroInWords);
        foreach (var line in ProgramText.SetUp(program.SetUp)) Says.Line(line);
        foreach (var line in program.LeftOut) Says.Line("NOT DONE HERE: " + line);
        Says.Line();
        Says.Line("Run it in the air first. The machine's manual and local rules come first.");
    }
}
