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
        var seed = CommonOptions.Seed();
        var overwrite = CommonOptions.Overwrite();
        var json = CommonOptions.Json();
        var c = new Command("stock", "Say how many pieces to start for so many good ones, which bars to buy, and how to lay the pieces in them.\nBars of the rack come first. One row along the bar, pieces turned end for end where that is shorter.\nSeveral plans: pieces of one steel and thickness share bars. Ctrl-C ends the search with the best so far.\n\n  tangwright stock small-hatchet.plan.toml --good 12\n  tangwright stock small-hatchet.plan.toml --good 12 --yield 95% --chance 90% --bar \"36 in\" --bar \"48 in\"\n  tangwright stock small-hatchet.plan.toml --good 12 --with paring-knife.plan.toml=6\n  tangwright stock small-hatchet.plan.toml --good 30 --sheet \"500 mm x 1000 mm\"") { plan, shop, drawing, folder, seed, overwrite, json };
        ask.AddTo(c, seed);
        c.SetAction(p =>
        {
            var asked = ask.Of(p)!;
            if (!asked.IsGood) return Says.Faults(asked.Faults);
            var answer = Patience.UntilStopped("laying out the bars", stop => PlanStock.Of(p.GetRequiredValue(plan), p.GetValue(shop), asked.Value with { Stop = stop, Better = Better() }));
            if (!answer.IsGood) return Says.Faults(answer.Faults);
            var files = p.GetValue(drawing) ? PlanStock.Draw(answer.Value, p.GetRequiredValue(plan), p.GetValue(folder), p.GetValue(overwrite)) : null;
            if (files is { IsGood: false }) return Says.Faults(files.Faults);
            if (p.GetValue(json)) Says.Text(StockJson.Of(answer.Value));
            else Tell(answer.Value);
            foreach (var f in p.GetValue(json) ? [] : files?.Value.Files ?? []) Says.Line($"wrote {f}");
            return ExitCode.Answered;
        });
        return c;
    }

    /// <summary>Says on standard error how far the search has come, at most once a second.</summary>
    private static Action<int, Foundation.Length> Better()
    {
        var last = TimeProvider.System.GetTimestamp();
        return (sheets, used) =>
        {
            if (TimeProvider.System.GetElapsedTime(last).TotalSeconds < 1) return;
            last = TimeProvider.System.GetTimestamp();
            Console.Error.WriteLine($"so far {sheets} {(sheets == 1 ? "sheet" : "sheets")}, the last used up to {Foundation.Shown.Both(used)}; Ctrl-C keeps the best");
        };
    }

    private static void Tell(StockAnswer answer)
    {
        var (r, s) = answer;
        var units = r.Shop.Show;
        string Size(Foundation.Length l) => StockText.Size(l, units);
        if (s.Patterns.Length == 1) Says.Line($"{r.Plan.Name}, revision {r.Plan.Revision}: {s.Good} good in {r.Plan.Stock.Steel}, {Size(r.Plan.Stock.Thickness)} thick");
        foreach (var line in s.Patterns.Length == 1 ? [StockText.Answer(s), StockText.Free(s)] : s.Patterns.Select(StockText.Answer)) if (line.Length > 0) Says.Line(line);
        Says.Line();
        if (s.Patterns.Length == 1 && s.Rows.Length > 1) Starts(s);
        if (s.Buy.IsEmpty) Says.Line("Buy nothing: the rack holds it.");
        foreach (var b in s.Buy) Says.Line(StockText.Buy(s, b, units, "x"));
        if (s.Mass is { } mass) Says.Line($"    {StockText.Weight(mass, units)} of steel");
        if (s.StraightBars is { } straight && s.Buy.Sum(b => b.Count) is var bought and > 0 && straight > bought) Says.Line($"    end to end it would take {straight} bars");
        foreach (var line in new[] { StockText.Price(s), StockText.Straight(answer, units) }) if (line.Length > 0) Says.Line(line);
        Says.Line();
        for (var i = 0; i < s.Cuts.Length; i++)
        {
            var c = s.Cuts[i];
            Says.Line($"Cut {i + 1}: {StockText.Bars(s, c, units)}");
            for (var j = 0; j < c.Places.Length && j < MostTold; j++)
            {
                Says.Line($"    {j + 1,3}  {StockText.Place(s, c.Places[j], units)}");
                if (j < c.SawLines.Length) Says.Line($"         saw {StockText.Cut(c.SawLines[j], s.Room.Kerf, units)}");
            }

            if (c.Places.Length > MostTold) Says.Line($"    and {c.Places.Length - MostTold} more: --json tells all");
        }

        Says.Line();
        foreach (var n in s.Notes) Says.Line(n);
        Says.Line(StockText.Caution(s));
    }

    private static void Starts(StockPlan s)
    {
        Says.Line($"  starts  chance of {s.Good} good  new bars");
        foreach (var row in s.Rows) Says.Line($"  {row.Starts,6}  {StockText.Percent(row.ChanceShare),12}  {row.NewBars,9}{(row.Starts == s.Starts ? "  <- laid out" : row.IsFree ? "  no more steel" : "")}");
        Says.Line();
    }

    private const int MostTold = 24;
}
