using System.CommandLine;
using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.UseCases;

namespace Tangwright.Cli.Commands;

/// <summary><c>tangwright figures PLAN</c>.</summary>
internal static class FiguresCommand
{
    /// <summary>The verb.</summary>
    public static Command Make()
    {
        var plan = CommonOptions.Plan();
        var shop = CommonOptions.Shop();
        var json = CommonOptions.Json();
        var c = new Command("figures", "Give every number of a plan: area, holes, mass and balance by stage, how it swings.\n\n  tangwright figures small-hatchet.plan.toml --json") { plan, shop, json };
        c.SetAction(p =>
        {
            var r = Patience.While("working out the figures", () => Figures.Of(p.GetRequiredValue(plan), p.GetValue(shop)));
            if (!r.IsGood) return Says.Faults(r.Faults);
            if (p.GetValue(json)) Says.Text(Figures.Json(r.Value));
            else Tell(r.Value);
            return ExitCode.Answered;
        });
        return c;
    }

    private static void Tell(Results r)
    {
        Says.Line($"{r.Plan.Name}, revision {r.Plan.Revision}");
        Says.Line();
        Says.Line($"  steel      {r.Plan.Stock.Steel}, {Shown.Both(r.Plan.Stock.Thickness)} thick");
        Says.Line($"  length     {Shown.Both(r.Outline.Length)}");
        Says.Line($"  height     {Shown.Both(r.Outline.Height)}");
        Says.Line($"  area       {Shown.Number(r.Outline.Area.Mm2, 0)} mm2 ({Shown.Number(r.Outline.Area.Mm2 / (Length.MmPerInch * Length.MmPerInch), 2)} sq in), outline {Shown.Number(r.Outline.Perimeter.Mm, 0)} mm round");
        Says.Line($"  holes      {r.Outline.HoleCount}, {Shown.Number(r.Outline.HoleArea.Mm2, 0)} mm2");
        Says.Line();
        Says.Line($"  {"stage",-18}{"mass",-22}{"balance from datum",-24}across");
        foreach (var s in r.Stages)
        {
            var mass = s.Mass is { } m ? Shown.Both(m) : "not known";
            Says.Line($"  {StageName.Key(s.Stage).Replace('_', ' '),-18}{mass,-22}{Shown.Both(s.BalanceFromDatum),-24}{Shown.Both(s.BalanceAcrossFromDatum)}");
        }

        if (r.Striking is { } k)
        {
            Says.Line();
            Says.Line($"  swings about the middle of the grip: inertia {Shown.Number(k.InertiaKgM2 * 1e4, 2)} kg cm2, balance {Shown.Both(k.PivotToBalance)} from it,");
            Says.Line($"  centre of percussion {Shown.Both(k.PivotToPercussion)} from it, at x {Shown.Number(k.Percussion.X, 1)}, y {Shown.Number(k.Percussion.Y, 1)}");
        }

        Says.Line();
        Says.Line($"  measured at the bench from: {r.Bench.AlongFrom}; {r.Bench.AcrossFrom}");
        if (r.Bench.Remark.Length > 0) Says.Line($"  {r.Bench.Remark}");
        if (r.Steel is null) Says.Line($"  no steel file for \"{r.Plan.Stock.Steel}\": masses are left out");
    }
}
