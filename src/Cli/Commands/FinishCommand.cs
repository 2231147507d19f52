using System.CommandLine;
using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.UseCases;

namespace Tangwright.Cli.Commands;

/// <summary><c>tangwright finish PLAN</c>.</summary>
internal static class FinishCommand
{
    /// <summary>The verb.</summary>
    public static Command Make()
    {
        var plan = CommonOptions.Plan();
        var shop = CommonOptions.Shop();
        var last = new Option<string?>("--last") { Description = "last grit, with its series; else the plan's, else P400", HelpName = "GRIT" };
        var tempered = new Option<string?>("--tempered") { Description = "tempering temperature, for the heat limit; else the plan's, else 175 C", HelpName = "T" };
        var ground = new Option<string?>("--ground") { Description = "write into the shop's log what a belt or paper did: its name; with --batch, --pieces, --minutes, --grams, --belts", HelpName = "BELT" };
        var batch = new Option<string?>("--batch") { Description = "which batch it was", HelpName = "NAME" };
        var pieces = new Option<int?>("--pieces") { Description = "pieces worked on", HelpName = "N" };
        var minutes = new Option<double?>("--minutes") { Description = "minutes for all of them", HelpName = "MIN" };
        var grams = new Option<double?>("--grams") { Description = "steel taken off all of them, weighed before and after", HelpName = "G" };
        var belts = new Option<double?>("--belts") { Description = "belts or sheets worn out", HelpName = "B" };
        var date = CommonOptions.Date();
        var json = CommonOptions.Json();
        var c = new Command("finish", "Say which grits of the shop take the piece to its finish, what each takes off, how long, and when to dip.\nTimes come from the shop's own log once there is one.\n\n  tangwright finish hatchet.plan.toml\n  tangwright finish hatchet.plan.toml --last P800 --tempered \"200 C\"\n  tangwright finish hatchet.plan.toml --ground \"ceramic P36\" --batch autumn --pieces 12 --minutes 41 --grams 480 --belts 0.5") { plan, shop, last, tempered, ground, batch, pieces, minutes, grams, belts, date, json };
        c.SetAction(p =>
        {
            var path = p.GetRequiredValue(plan);
            if (p.GetValue(ground) is { } tool)
            {
                var missing = new[] { ("--batch", p.GetValue(batch) is null), ("--pieces", p.GetValue(pieces) is null), ("--minutes", p.GetValue(minutes) is null) }.Where(m => m.Item2).Select(m => m.Item1).ToArray();
                if (missing.Length > 0) return Says.Faults([Fault.OfFile("--ground", $"{string.Join(" and ", missing)} {(missing.Length > 1 ? "are" : "is")} missing", "say which batch, how many pieces and how many minutes in all")]);
                var wrote = GrindingLogBeside.Add(path, p.GetValue(shop), new GrindingTyped(p.GetValue(batch)!, tool, p.GetValue(pieces)!.Value, p.GetValue(grams), p.GetValue(minutes)!.Value, p.GetValue(belts)), CommonOptions.DateOf(p, date));
                if (!wrote.IsGood) return Says.Faults(wrote.Faults);
            }

            var answer = PlanFinish.Of(path, p.GetValue(shop), new FinishRequest(p.GetValue(last), p.GetValue(tempered)));
            if (!answer.IsGood) return Says.Faults(answer.Faults);
            if (p.GetValue(json)) Says.Text(PlanFinish.Json(answer.Value));
            else Tell(answer.Value);
            return ExitCode.Answered;
        });
        return c;
    }

    private static void Tell(FinishAnswer answer)
    {
        var (r, f) = answer;
        var units = r.Shop.Show;
        Says.Line($"{r.Plan.Name}, revision {r.Plan.Revision}: {FinishText.Head(f)}");
        foreach (var stage in f.Steps.GroupBy(s => s.Stage))
        {
            Says.Line();
            Says.Line(stage.Key == FinishStage.Soft ? "In soft steel" : "In hard steel");
            foreach (var s in stage)
            {
                Says.Line($"  {s.Number,2}  {s.Tool.Name} ({FinishText.Grain(s.Tool)})");
                Says.Line($"      {FinishText.Does(s, units)}; {FinishText.Time(s)}");
                Says.Line($"      {string.Join("; ", FinishText.More(s, r.Shop))}");
            }
        }

        Says.Line();
        Says.Line(FinishText.DoneWhen);
        if (FinishText.StopCoarse(f, units) is { Length: > 0 } stop) Says.Line(stop);
        Says.Line(FinishText.All(f));
        if (!f.Heat.IsEmpty)
        {
            Says.Line();
            Says.Line(FinishText.HeatHead(f));
            foreach (var h in f.Heat) Says.Line($"    {FinishText.Heat(h, units)}");
        }

        if (f.Notes.Length > 0) Says.Line();
        foreach (var n in f.Notes) Says.Line(n);
        Says.Line(FinishText.Sources);
        Says.Line(FinishText.Caution);
    }
}
