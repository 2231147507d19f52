using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.UseCases;

namespace Tangwright.Cli.Commands;

/// <summary><c>tangwright assembly PLAN</c>.</summary>
internal static class AssemblyCommand
{
    /// <summary>The verb.</summary>
    public static Command Make()
    {
        var plan = CommonOptions.Plan();
        var shop = CommonOptions.Shop();
        var seed = new Option<int>("--seed") { Description = "seed of the trials, 0 or more; the same seed gives the same numbers", HelpName = "N", DefaultValueFactory = _ => (int)GoTogether.UsualSeed };
        seed.Validators.Add(v =>
        {
            if (Written(v) < 0) v.AddError("--seed is under 0: write a whole number from 0");
        });
        var (fewest, most) = GoingTogether.Trials;
        var trials = new Option<int>("--trials") { Description = $"trials for each way, {fewest} to {most}", HelpName = "N", DefaultValueFactory = _ => PinChance.UsualTrials };
        trials.Validators.Add(v =>
        {
            if (Written(v) is { } n && (n < fewest || n > most)) v.AddError($"--trials {n}: write a whole number from {fewest} to {most}");
        });
        var json = CommonOptions.Json();
        var c = new Command("assembly", "Say how likely tang and scales go together on their pins, by every way of making the holes, with the smallest hole for the chance you ask; and how straight rows of holes will look.\nThe plan names the rods with \"pin\" under its holes and the scales under [scales].\n\n  tangwright assembly kitchen-knife.plan.toml") { plan, shop, seed, trials, json };
        c.SetAction(p =>
        {
            var r = Patience.While("trying how the parts go together", () => GoingTogether.Of(p.GetRequiredValue(plan), p.GetValue(shop), (ulong)p.GetValue(seed), p.GetValue(trials)));
            if (!r.IsGood) return Says.Faults(r.Faults);
            if (p.GetValue(json)) Says.Text(r.Value.Json());
            else Tell(r.Value);
            return ExitCode.Answered;
        });
        return c;
    }

    // null when nothing or no whole number was written: that is told elsewhere
    private static int? Written(OptionResult option)
        => option.Tokens is [var t] && int.TryParse(t.Value, NumberStyles.Integer, CultureInfo.InvariantCulture, out var n) ? n : null;

    private static void Tell(GoingTogether x)
    {
        var r = x.Results;
        Says.Line($"{r.Plan.Name}, revision {r.Plan.Revision}, as {(r.Shop.IsAssumed ? "the assumed shop" : r.Shop.Name)} places holes");
        if (x.Ways is { } all) Tell(r, all);
        else Says.Line(r.Plan.Scales is null ? "the plan puts on no scales: write [scales]" : "no hole names its rod: write pin = \"4.97 mm\" under it");
        foreach (var row in x.Rows.GroupBy(s => s.Row))
        {
            Says.Line();
            Says.Line($"  row {row.Key}: how far its holes stand off their best line");
            foreach (var way in row) Says.Line($"    {way.Making.Word,-16}rms {Shown.Both(way.Rms),-22}worst hole {Shown.Both(way.WorstUsual)}, in 95 of 100 rows under {Shown.Both(way.WorstSeldom)}: {AssemblyText.Looks(way)}");
        }

        if (x.Rows.Length > 0) Says.Line($"  a sharp eye sees about {Shown.Both(RowStraightness.Seen)}, anybody {Shown.Both(RowStraightness.Plain)}: common practice");
    }

    private static void Tell(Results r, GoTogether all)
    {
        Says.Line(AssemblyText.Asked(all));
        foreach (var way in all.Ways)
        {
            var known = way.Capability.MeasuredSigma is null ? $"; for all that is known of this way, {AssemblyText.MayBe(way)}" : $"; {AssemblyText.MayBe(way)}";
            Says.Line();
            Says.Line($"  {(way.Making.Way == all.Said ? "> " : "")}{AssemblyText.Says(all, way)}");
            Says.Line($"    in {AssemblyText.InHundred(way.Chance.Share)} of 100 (trials know it to {AssemblyText.Known(way.Chance)}{(way.Chance.Undecided > 0 ? $", {way.Chance.Undecided} of {way.Chance.Trials} undecided" : "")}){known}");
            Says.Line($"    99 of 100 centres within {Shown.Both(way.Zone)}; by the drawing standard holes of {Shown.Both(way.Floating)} with play in every part, {Shown.Both(way.Fixed)} in the tang when the scales hold the rod");
            if (way.TangAlone is { } a) Says.Line($"    for the chance asked open the tang to {AssemblyText.Hole(r.Shop, all.Rod + a)}");
            else Says.Line("    however large the tang's holes, the scales' own holes do not allow the chance asked");
            if (way.AllAlike is { } b) Says.Line($"    or all holes to {AssemblyText.Hole(r.Shop, all.Rod + b)}");
        }

        Says.Line();
        Says.Line(AssemblyText.LeftOut);
        Says.Line(AssemblyText.ThroughTang);
    }
}
