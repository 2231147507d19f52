using System.CommandLine;
using Tangwright.Foundation;
using Tangwright.UseCases;

namespace Tangwright.Cli.Commands;

/// <summary><c>tangwright heat [PLAN]</c>.</summary>
internal static class HeatCommand
{
    /// <summary>The verb.</summary>
    public static Command Make()
    {
        var plan = new Argument<string?>("PLAN") { Description = "plan file; or none, with --steel and --thickness", Arity = ArgumentArity.ZeroOrOne };
        var shop = CommonOptions.Shop();
        var steel = new Option<string?>("--steel") { Description = "a steel by itself, with --thickness", HelpName = "NAME" };
        var thickness = new Option<string?>("--thickness") { Description = "its thickness in the quench, with the unit", HelpName = "T" };
        var harden = new Option<string?>("--harden") { Description = "hardening temperature; else the plan's, else the middle of the steel's window", HelpName = "T" };
        var soak = new Option<string?>("--soak") { Description = "time at heat, \"10 min\"", HelpName = "TIME" };
        var quenchant = new Option<string?>("--quenchant") { Description = "what it is quenched in; else the plan's, else the shop's", HelpName = "NAME" };
        var hardness = new Option<string?>("--hardness") { Description = "hardness wanted, \"57 to 59 HRC\"; else the plan's", HelpName = "HRC" };
        var temper = new Option<string?>("--temper") { Description = "how hard it is after a temper at this temperature", HelpName = "T" };
        var hold = new Option<string?>("--hold") { Description = "time at heat of one temper; else 2 h", HelpName = "TIME" };
        var tempers = new Option<int?>("--tempers") { Description = "how often it is tempered; else as the steel's file says", HelpName = "N" };
        var cold = new Option<string?>("--sub-zero") { Description = "cooled on to this before the temper", HelpName = "T" };
        var pieces = new Option<int?>("--pieces") { Description = "how many pieces, for loads and bath", HelpName = "N" };
        var read = new Option<string?>("--read") { Description = "write a hardness into the shop's log, what the tester showed; with --batch", HelpName = "HRC" };
        var batch = new Option<string?>("--batch") { Description = "which batch it was", HelpName = "NAME" };
        var piece = new Option<string?>("--piece") { Description = "which piece", HelpName = "N" };
        var load = new Option<string?>("--load") { Description = "which load", HelpName = "N" };
        var spot = new Option<string?>("--spot") { Description = "where on the piece", HelpName = "WHERE" };
        var oil = new Option<string?>("--oil") { Description = "how warm the oil was as the piece went in", HelpName = "T" };
        var date = CommonOptions.Date();
        var json = CommonOptions.Json();
        var c = new Command("heat", "Say whether the steel hardens in this thickness and quenchant, how hard it comes out, what to set the ovens to,\nhow long, and how warm the oil gets.\n\n  tangwright heat hatchet.plan.toml --pieces 13\n  tangwright heat hatchet.plan.toml --hardness \"57 to 59 HRC\"\n  tangwright heat --steel 1084 --thickness \"1/4 in\" --quenchant \"fast oil\" --temper \"400 F\"") { plan, shop, steel, thickness, harden, soak, quenchant, hardness, temper, hold, tempers, cold, pieces, read, batch, piece, load, spot, oil, date, json };
        c.SetAction(p =>
        {
            var request = new HeatRequest(p.GetValue(harden), p.GetValue(soak), p.GetValue(quenchant), p.GetValue(hardness), p.GetValue(temper), p.GetValue(hold), p.GetValue(tempers), p.GetValue(cold), p.GetValue(pieces));
            var (path, name, thick) = (p.GetValue(plan), p.GetValue(steel), p.GetValue(thickness));
            if (path is null && (name is null || thick is null)) return Says.Faults([Fault.OfFile("heat", "neither a plan nor a steel with its thickness", "name a plan, or write --steel 1084 --thickness \"6.35 mm\"")]);
            if (path is not null && (name is not null || thick is not null)) return Says.Faults([Fault.OfFile("heat", "both a plan and a steel or thickness", "leave the plan out, or --steel and --thickness")]);
            if (p.GetValue(read) is { } reading)
            {
                if (path is null || p.GetValue(batch) is null) return Says.Faults([Fault.OfFile("--read", path is null ? "the plan is missing" : "--batch is missing", "name the plan and the batch the piece is of")]);
                var wrote = HardnessWriting.Add(path, p.GetValue(shop), new HardnessRequest(reading, p.GetValue(batch)!, p.GetValue(temper), p.GetValue(hold), p.GetValue(tempers), p.GetValue(piece) ?? "", p.GetValue(load) ?? "", p.GetValue(spot) ?? "", p.GetValue(oil)), CommonOptions.DateOf(p, date));
                if (!wrote.IsGood) return Says.Faults(wrote.Faults);
            }

            var answer = path is not null ? PlanHeat.Of(path, p.GetValue(shop), request) : PlanHeat.Of(name!, thick!, p.GetValue(shop), request);
            if (!answer.IsGood) return Says.Faults(answer.Faults);
            if (p.GetValue(json)) Says.Text(PlanHeat.Json(answer.Value));
            else Tell(answer.Value);
            return ExitCode.Answered;
        });
        return c;
    }

    private static void Tell(HeatAnswer a)
    {
        Says.Line((a.Name == a.Heat.Subject.Steel.Name ? "" : a.Name + ": ") + HeatText.Head(a));
        foreach (var l in HeatText.Why(a)) Says.Line("  " + l);
        Part("Out of the quench", HeatText.Stations(a));
        Part("Oven", HeatText.Oven(a));
        Part("Bath", HeatText.Bath(a));
        Part("Temper", HeatText.Temper(a));
        Part("Readings out of line", HeatText.Flagged(a));
        Part("To know", HeatText.Remarks(a));
        Part("Cautions", HeatText.Cautions(a));
        Says.Line();
        Says.Line(HeatText.Start);
    }

    private static void Part(string title, IReadOnlyCollection<string> lines)
    {
        if (lines.Count == 0) return;
        Says.Line();
        Says.Line(title);
        foreach (var l in lines) Says.Line("  " + l);
    }
}
