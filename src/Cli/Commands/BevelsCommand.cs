using System.CommandLine;
using Tangwright.Core;
using Tangwright.UseCases;

namespace Tangwright.Cli.Commands;

/// <summary><c>tangwright bevels PLAN</c>.</summary>
internal static class BevelsCommand
{
    /// <summary>The verb.</summary>
    public static Command Make()
    {
        var plan = CommonOptions.Plan();
        var shop = CommonOptions.Shop();
        var measured = new Option<string?>("--measured-thickness") { Description = "thickness of the bar as measured, for the lines to scribe", HelpName = "T" };
        var stations = new Option<int?>("--stations") { Description = "how many stations along the edge; else 8", HelpName = "N" };
        var wheel = new Option<string?>("--wheel") { Description = "judge this wheel too, by its diameter", HelpName = "D" };
        var angle = new Option<string?>("--angle") { Description = "try this angle per side: which height, edge or stock gives it", HelpName = "A" };
        var height = new Option<string?>("--height") { Description = "try this height: which angle, and which wheel for a hollow", HelpName = "H" };
        var edge = new Option<string?>("--edge") { Description = "the same for this finished edge", HelpName = "E" };
        var stock = new Option<string?>("--stock") { Description = "the same for this thickness of stock", HelpName = "T" };
        var foil = new Option<bool>("--protected") { Description = "hardened in foil, coating or without air: less to grind off after" };
        var json = CommonOptions.Json();
        var c = new Command("bevels", "Say the bevel in numbers for the belt: angle and thickness by station, lines to scribe, wheels judged,\nthe edge to leave for hardening, grams per side, the sharpened facet.\n\n  tangwright bevels hatchet.plan.toml\n  tangwright bevels hatchet.plan.toml --measured-thickness \"6.21 mm\" --stations 12\n  tangwright bevels hatchet.plan.toml --angle 7\n  tangwright bevels paring-knife.plan.toml --wheel \"8 in\"") { plan, shop, measured, stations, wheel, angle, height, edge, stock, foil, json };
        c.SetAction(p =>
        {
            var answer = PlanBevels.Of(p.GetRequiredValue(plan), p.GetValue(shop), new BevelsRequest(p.GetValue(measured), p.GetValue(stations) ?? BevelStations.Usual, p.GetValue(wheel), p.GetValue(foil)));
            if (!answer.IsGood) return Says.Faults(answer.Faults);
            var tried = new BevelTried(p.GetValue(angle), p.GetValue(height), p.GetValue(edge), p.GetValue(stock));
            var what = tried.IsAsked ? PlanBevels.Try(answer.Value, tried) : null;
            if (what is { IsGood: false }) return Says.Faults(what.Faults);
            if (p.GetValue(json)) Says.Text(PlanBevels.Json(answer.Value, what?.Value));
            else if (what is not null) Says.Line(what.Value.Says);
            else Tell(answer.Value);
            return ExitCode.Answered;
        });
        return c;
    }

    private static void Tell(BevelsAnswer answer)
    {
        var (r, n) = answer;
        var (units, one) = (r.Shop.Show, r.Plan.Bevel!.OneSided);
        Says.Line($"{r.Plan.Name}, revision {r.Plan.Revision}: bevel at {n.Table.Stations.Length} stations, from the datum on, square to the edge");
        foreach (var s in n.Table.Stations)
        {
            Says.Line($"  {s.Name,-3} {BevelText.Fine(s.FromDatum, units)}: {BevelText.Fine(s.Height, units)} high, {BevelText.Angle(s.FinishedAngle, one)}{(s.SoftAngle is { } soft ? $" (before hardening {BevelText.Angle(soft, one)})" : "")}");
            if (s.Thicknesses.Length > 0) Says.Line($"      {BevelText.Thicknesses(s, units)}");
        }

        Says.Line();
        Says.Line("Scribe: " + BevelText.Scribe(n.Scribe, one, units));
        if (n.ScribeMeasured is { } m) Says.Line("As measured: " + BevelText.Scribe(m, one, units));
        foreach (var (line, i) in BevelText.ScribeAt(n, units).Select((l, i) => (l, i))) Says.Line(i == 0 ? line : "  " + line);
        foreach (var g in BevelText.Grams(answer)) Says.Line(g);
        foreach (var w in BevelText.Wheels(answer)) Says.Line(w);
        foreach (var line in new[] { BevelText.Advice(n, units), BevelText.Sharpening(answer) }.Where(l => l.Length > 0)) Says.Line(line);
        foreach (var note in n.Notes) Says.Line(note);
        Says.Line(BevelText.Caution);
    }
}
