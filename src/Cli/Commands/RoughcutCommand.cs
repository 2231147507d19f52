using System.CommandLine;
using Tangwright.Core;
using Tangwright.UseCases;

namespace Tangwright.Cli.Commands;

/// <summary><c>tangwright roughcut PLAN</c>.</summary>
internal static class RoughcutCommand
{
    /// <summary>The verb.</summary>
    public static Command Make()
    {
        var plan = CommonOptions.Plan();
        var shop = CommonOptions.Shop();
        var cuts = new Option<int?>("--cuts") { Description = "make so many saw cuts, 0 to 8; else as many as pay", HelpName = "K" };
        var saw = new Option<string?>("--saw") { Description = "name of the saw, or a part of it; else the one that is quickest in all", HelpName = "NAME" };
        var json = CommonOptions.Json();
        var c = new Command("roughcut", "Say which straight saw cuts to make before the grinder, in which order, and what is then left to grind.\nEvery cut keeps off the line; both times are told, with the saw and without.\n\n  tangwright roughcut small-hatchet.plan.toml\n  tangwright roughcut small-hatchet.plan.toml --cuts 2 --saw hacksaw") { plan, shop, cuts, saw, json };
        c.SetAction(p =>
        {
            var answer = PlanRoughCuts.Of(p.GetRequiredValue(plan), p.GetValue(shop), p.GetValue(cuts), p.GetValue(saw));
            if (!answer.IsGood) return Says.Faults(answer.Faults);
            if (p.GetValue(json)) Says.Text(PlanRoughCuts.Json(answer.Value));
            else Tell(answer.Value);
            return ExitCode.Answered;
        });
        return c;
    }

    private static void Tell(RoughCutAnswer answer)
    {
        var (r, p, widths) = answer;
        var units = r.Shop.Show;
        Says.Line($"{r.Plan.Name}, revision {r.Plan.Revision}: rough cuts with the {p.Saw.Name}");
        Says.Line($"  blank {RoughCutText.Size(p.Blank.Box.Width, units)} x {RoughCutText.Size(p.Blank.Box.Height, units)}, {RoughCutText.Size(r.Plan.Stock.Thickness.Mm, units)} thick; every cut keeps {RoughCutText.Size(p.Allowance.Mm, units)} off the line");
        Says.Line();
        foreach (var h in p.Reliefs) Says.Line($"  first   {RoughCutText.Relief(h, p.Blank, units)}");
        foreach (var c in p.Cuts)
        {
            Says.Line($"  cut {c.Number}   {RoughCutText.Marks(c, units)}");
            Says.Line($"          {RoughCutText.Run(c, units)}; {RoughCutText.Offcut(c, units)}; {RoughCutText.Minutes(c.Minutes)}");
        }

        if (p.BladeSays.Length > 0) Says.Line(p.BladeSays);
        var (sawn, only) = RoughCutText.Both(p, units);
        Says.Line(sawn);
        Says.Line(only);
        Says.Line($"The cuts take {RoughCutText.Percent(p.TakenShare)} of the waste; the best {string.Join(", ", p.ShareByCuts.Select((s, i) => $"{i + 1}: {RoughCutText.Percent(s)}"))}; through cuts never more than {RoughCutText.Percent(p.HullShare)}.");
        foreach (var h in p.Hollows) Says.Line($"Hollow left for the grinder: {RoughCutText.Hollow(h, units)}");
        if (widths.Mass is { } mass) Says.Line($"Profiled it weighs {RoughCutText.Weight(mass, units)}{(widths.MassBand is { } band ? $", {RoughCutText.Weight(band, units)} more or less" : "")}{(widths.DrilledMass is { } drilled ? $"; with its holes {RoughCutText.Weight(drilled, units)}" : "")}.");
        Says.Line();
        foreach (var n in p.Notes) Says.Line(n);
        Says.Line(RoughCutText.Caution(p));
    }
}
