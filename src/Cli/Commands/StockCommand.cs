using System.CommandLine;
using Tangwright.Core;
using Tangwright.UseCases;

namespace Tangwright.Cli.Commands;

/// <summary><c>tangwright stock PLAN --good N</c>.</summary>
internal static class StockCommand
{
    /// <summary>The verb.</summary>
    public static Command Make()
    {
        var plan = CommonOptions.Plan();
        var shop = CommonOptions.Shop();
        var ask = new StockOptions(required: true);
        var drawing = new Option<bool>("--drawing") { Description = "also write each way of cutting a bar as DXF and SVG, for a cutting service" };
        var folder = CommonOptions.Out("folder for the drawings; else beside the plan");
        var overwrite = CommonOptions.Overwrite();
        var json = CommonOptions.Json();
        var c = new Command("stock", "Say how many pieces to start for so many good ones, which bars to buy, and how to lay the pieces in them.\nBars of the rack come first. One row along the bar, pieces turned end for end where that is shorter.\n\n  tangwright stock small-hatchet.plan.toml --good 12\n  tangwright stock small-hatchet.plan.toml --good 12 --yield 95% --chance 90% --bar \"36 in\" --bar \"48 in\"") { plan, shop, drawing, folder, overwrite, json };
        ask.AddTo(c);
        c.SetAction(p =>
        {
            var answer = Patience.While("laying out the bars", () => PlanStock.Of(p.GetRequiredValue(plan), p.GetValue(shop), ask.Of(p)!));
            if (!answer.IsGood) return Says.Faults(answer.Faults);
            var files = p.GetValue(drawing) ? PlanStock.Draw(answer.Value, p.GetRequiredValue(plan), p.GetValue(folder), p.GetValue(overwrite)) : null;
            if (files is { IsGood: false }) return Says.Faults(files.Faults);
            if (p.GetValue(json)) Says.Text(PlanStock.Json(answer.Value));
            else Tell(answer.Value.Results, answer.Value.Stock);
            foreach (var f in p.GetValue(json) ? [] : files?.Value.Files ?? []) Says.Line($"wrote {f}");
            return ExitCode.Answered;
        });
        return c;
    }

    private static void Tell(Results r, StockPlan s)
    {
        var units = r.Shop.Show;
        string Size(Foundation.Length l) => StockText.Size(l, units);
        Says.Line($"{r.Plan.Name}, revision {r.Plan.Revision}: {s.Good} good in {r.Plan.Stock.Steel}, {Size(r.Plan.Stock.Thickness)} thick");
        Says.Line(StockText.Answer(s));
        if (StockText.Free(s) is { Length: > 0 } free) Says.Line(free);
        Says.Line();
        Says.Line($"  starts  chance of {s.Good} good  new bars");
        foreach (var row in s.Rows) Says.Line($"  {row.Starts,6}  {StockText.Percent(row.ChanceShare),12}  {row.NewBars,9}{(row.Starts == s.Starts ? "  <- laid out" : row.IsFree ? "  no more steel" : "")}");
        Says.Line();
        if (s.Buy.IsEmpty) Says.Line("Buy nothing: the rack holds it.");
        foreach (var b in s.Buy) Says.Line($"Buy {b.Count} x {Size(r.Plan.Stock.Width!.Value)} x {Size(b.Length)}: {b.MostInBar} in a bar, {b.StraightInBar} end to end");
        if (s.Mass is { } mass) Says.Line($"    {StockText.Weight(mass, units)} of steel");
        if (s.StraightBars is { } straight && s.Buy.Sum(b => b.Count) is var bought and > 0 && straight > bought) Says.Line($"    end to end it would take {straight} bars");
        Says.Line();
        for (var i = 0; i < s.Cuts.Length; i++)
        {
            var c = s.Cuts[i];
            Says.Line($"Cut {i + 1}: {StockText.Bars(c, units)}");
            for (var j = 0; j < c.Places.Length && j < MostTold; j++) Says.Line($"    {j + 1,3}  from {Size(Foundation.Length.OfMm(c.Places[j].AlongMm))} to {Size(Foundation.Length.OfMm(c.Places[j].AlongMm) + r.Outline.Length)}, {Size(Foundation.Length.OfMm(c.Places[j].UpMm))} up, {Lies.Words(c.Places[j].Lie)}");
            if (c.Places.Length > MostTold) Says.Line($"    and {c.Places.Length - MostTold} more: --json tells all");
        }

        Says.Line();
        foreach (var n in s.Notes) Says.Line(n);
        Says.Line("Offcuts are hot and sharp; guard on, glasses and ears covered. Local rules and the machine's manual come first.");
    }

    private const int MostTold = 24;
}
