using System.Collections.Immutable;
using System.Globalization;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>The order of work on this shop's machines. Steps the plan does not need are left out.</summary>
public static class OrderOfWork
{
    /// <summary>The steps, numbered from 1.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="shop">The shop.</param>
    /// <param name="holes">All holes.</param>
    /// <param name="drilling">What each hole takes.</param>
    /// <param name="steel">The steel, whose heat has sheets of its own when its hardening is known; null when the steel is not.</param>
    public static ImmutableArray<WorkStep> Of(Plan plan, Shop shop, ImmutableArray<PlacedHole> holes, DrillPlan drilling, Steel? steel = null)
    {
        var bench = BenchEdges.Of(plan, shop);
        var steps = new Steps();
        steps.Add("Read the findings; settle every error before cutting", "", "findings", "no error left open", OrderRules.Findings);
        steps.Add("Print the template and measure its check bars both ways", Printer(shop), "template", "both bars true, or print again with what they measured", OrderRules.Scale);
        if (bench.State == DrilledIn.Profile)
        {
            CutOut(steps, plan, shop, bench, holes);
            Holes(steps, bench, holes, drilling);
        }
        else
        {
            Stock(steps, shop, bench);
            Holes(steps, bench, holes, drilling);
            CutOut(steps, plan, shop, bench, holes);
        }

        BeforeHeat(steps, plan, holes);
        Heat(steps, plan, shop, steel is { Heat.Hardening: not null });
        AfterHeat(steps, plan, holes);
        return steps.Numbered();
    }

    private static void Stock(Steps steps, Shop shop, BenchDatum bench)
    {
        if (bench.State == DrilledIn.Bar)
        {
            steps.Add("Measure the bar's width and thickness; file the sawn end square to the long edge", "", "layout", "", OrderRules.OneDatum);
            return;
        }

        steps.Add($"Saw a rectangle {Both(bench.StockBox.Width)} by {Both(bench.StockBox.Height)}; file the two datum sides square", Saw(shop), "layout", "", OrderRules.OneDatum);
        Number(steps);
    }

    private static void Holes(Steps steps, BenchDatum bench, ImmutableArray<PlacedHole> holes, DrillPlan drilling)
    {
        if (holes.IsEmpty)
        {
            if (bench.State != DrilledIn.Profile) steps.Add($"Lay out the outline from the {bench.AlongFrom} and the {bench.AcrossFrom}", "", "template", "", OrderRules.OneDatum);
            return;
        }

        var groups = drilling.ByMachine;
        var punched = groups.Any(g => g.Machine is null or { Kind: MachineKind.DrillPress } or { Kind: MachineKind.MillDrill, HasReadout: false });
        steps.Add(
            bench.State == DrilledIn.Profile
                ? $"Lay out the holes from the {bench.AlongFrom} and the {bench.AcrossFrom}{(punched ? "; punch the centres" : "")}"
                : $"Lay out outline and holes from the {bench.AlongFrom} and the {bench.AcrossFrom}, by glued template or by scriber{(punched ? "; punch the centres" : "")}",
            "",
            "layout",
            "",
            OrderRules.OneDatum);
        foreach (var g in groups) steps.Add(Drill(g, bench), g.Machine?.Name ?? "", g.Machine?.Kind == MachineKind.DrillPress ? "drill-only" : "hole-card", "", bench.State == DrilledIn.Profile ? OrderRules.HolesOnProfile : OrderRules.HolesWhileSquare);
        var reamed = holes.Count(h => h.Make == HoleMake.Ream);
        if (reamed > 0) steps.Add($"Ream {Holes(reamed)} to size (drilled 0.1 to 0.3 mm, 0.004 to 0.012 in, under)", "", "holes", "", "A pin shows, so its hole must be true to size.");
        steps.Add($"Chamfer {All(holes.Length)} on both faces", "", "holes", "", OrderRules.Chamfer);
    }

    private static string Drill(HoleGroup g, BenchDatum bench)
    {
        var what = $"{Holes(g.Holes.Length)} ({string.Join(", ", g.Holes.Select(h => h.Hole.Name))})";
        return g.Machine?.Kind switch
        {
            null => $"Make {what} elsewhere: no machine of the shop can (see the findings){Pilots(g)}",
            MachineKind.CncMill => $"Set zero on the {bench.AlongFrom} and the {bench.AcrossFrom}; spot and drill {what}",
            MachineKind.MillDrill when g.Machine.HasReadout => $"Find the {bench.AlongFrom} and the {bench.AcrossFrom}, set the readout to zero; spot and drill {what}",
            MachineKind.DrillingVise => $"Clamp the guide piece on the blank against the stop; drill one hole, pin it, drill the far one, pin it, then the rest: {what}",
            _ => $"Clamp flat on a backing board; pilot, then drill {what}",
        };
    }

    private static string Pilots(HoleGroup g)
        => g.Holes.Select(h => h.Pilot).OfType<PilotElsewhere>().FirstOrDefault() is { } pilot ? $"; the pilots go on the {pilot.Machine.Name}" : "";

    private static void CutOut(Steps steps, Plan plan, Shop shop, BenchDatum bench, ImmutableArray<PlacedHole> holes)
    {
        if (bench.State == DrilledIn.Profile) steps.Add($"Lay out the outline on the stock, at least {Both(shop.EndAllowance.Mm)} from a sawn end", "", "template", "", OrderRules.OneDatum);
        if (bench.State != DrilledIn.Rectangle) Number(steps);
        if (Mill(plan, shop, bench, holes) is { } mill) steps.Add("Hold the piece by its holes, mill the outline and leave tabs; then cut the tabs", mill.Name, "holes", "", OrderRules.MillOut);
        else if (shop.Saws.IsDefaultOrEmpty) steps.Add("Saw out, 1 to 1.5 mm (0.04 to 0.06 in) outside the line", Saw(shop), "template", "", OrderRules.SawOut);
        else steps.Add("Saw out by the rough-cut card, outside the line", Saw(shop), "rough-cut", "", OrderRules.SawOut);
        steps.Add("Profile to the line, square to the faces; then P120", "belt grinder", "widths", "", plan.Bevel is null ? "The belt leaves the line; the saw does not." : OrderRules.ProfileBeforeBevel);
    }

    private static void Number(Steps steps) => steps.Add("Stamp or scratch the piece number on the tang", "", "", "", OrderRules.NumberEarly);

    private static void BeforeHeat(Steps steps, Plan plan, ImmutableArray<PlacedHole> holes)
    {
        if (plan.Bevel is { Ground: GroundWhen.BeforeHardening } bevel)
        {
            var leave = bevel.EdgeBeforeHardening is { } e ? $", leaving {Both(e.Mm)} at the edge" : "";
            steps.Add($"Scribe the edge, both faces flat, and grind the bevel{leave}", "belt grinder", "scribe", bevel.EdgeBeforeHardening is { } left ? $"edge not under {Both(left.Mm)} anywhere" : "", OrderRules.BevelSoft);
        }

        var broken = plan.BrokenEdges?.Outline is { } b ? $"; break the long edges {Both(b.Mm)}" : "; break the long edges";
        steps.Add($"Finish to P120, scratches lengthwise{broken}", "", plan.Bevel is null ? "" : "finish", "", OrderRules.FinishSoft);
        var gate = holes.IsEmpty ? "profile, finish and piece number done?" : $"{All(holes.Length)} drilled and chamfered?";
        steps.Add("Stop and check before heat", "", holes.IsEmpty ? "cover" : "holes", gate, OrderRules.Gate);
    }

    private static void Heat(Steps steps, Plan plan, Shop shop, bool hasSheets)
    {
        var oven = shop.Oven?.Name ?? "";
        var quench = (plan.Heat?.Quenchant ?? shop.Quenchant) is { } q ? $", quench in {q.Name}" : ", quench as the steel asks";
        steps.Add($"Harden{quench}", oven, hasSheets ? "run" : "cautions", "", OrderRules.Harden);
        steps.Add("Straighten while still warm, gloves on", "", hasSheets ? "straightening" : "cautions", "", OrderRules.StraightenWarm);
        if (plan.Heat?.SubZero is { } cold) steps.Add($"Cool on to {Shown.Both(cold)} within the hour, then temper", "", hasSheets ? "run" : "cautions", "", OrderRules.Cold);
        steps.Add("Temper within the hour", shop.TemperOven?.Name ?? oven, hasSheets ? "temper" : "cautions", "", OrderRules.TemperSoon);
        var wanted = plan.Target.Hardness is { } h ? $"{Shown.Trimmed(h.LowHrc, 1)} to {Shown.Trimmed(h.HighHrc, 1)} HRC" : "";
        steps.Add("Check hardness and straightness", "", hasSheets ? "hardness" : "cover", wanted, OrderRules.Check);
    }

    private static void AfterHeat(Steps steps, Plan plan, ImmutableArray<PlacedHole> holes)
    {
        if (plan.Bevel is { } bevel)
        {
            var hard = bevel.Ground == GroundWhen.AfterHardening;
            steps.Add($"{(hard ? "Scribe and grind" : "Finish grind")} the bevel to {Both(bevel.EdgeFinished.Mm)} at the edge, cool", "belt grinder", "thickness", $"edge {Both(bevel.EdgeFinished.Mm)}, no temper colour", hard ? OrderRules.BevelHard : OrderRules.FinishHard);
        }

        steps.Add("Final finish; mark or etch, neutralise, oil", "", plan.Bevel is null ? "cautions" : "finish", "", OrderRules.Etch);
        if (holes.Any(h => h.Use is HoleUse.Pin or HoleUse.Glue)) AddScales(steps, plan);
        if (plan.Cord is not null) steps.Add("Wind the cord, pulled tight, ends tucked under", "", "handle", "", OrderRules.HandleLate);
        if (plan.Sheath is not null) steps.Add("Make and fit the sheath, the edge taped", "", "sheath", "goes in and out, and stays in upside down?", OrderRules.SheathFirst);
        if (plan.Edge is not null)
        {
            var at = plan.Bevel?.SharpenPerSide is { } a ? $" at {Shown.PerSide(a)}" : "";
            steps.Add($"Sharpen{at}, last of all; then cover the edge", "", plan.Bevel?.SharpenPerSide is null ? "cautions" : "sharpening", "", OrderRules.SharpenLast);
        }
    }

    private static void AddScales(Steps steps, Plan plan)
    {
        if (plan.Scales is not { IsShaped: true })
        {
            steps.Add("Fit the scales: dry fit, finish front ends, glue and pin", "", "holes", "dry fit without gaps?", OrderRules.HandleLate);
            return;
        }

        steps.Add("Saw the scales, drill them through the tang, finish their front ends", "", "scales", "pins slip in by hand, no gaps?", OrderRules.HandleLate);
        steps.Add("Glue and pin the scales", "", "glue-up", "witness hard?", OrderRules.HandleLate);
        steps.Add("Shape the handle to the section gauges, cool; finish it", "belt grinder", "gauges", "gauges close all round?", OrderRules.HandleLate);
    }

    /// <summary>A mill under computer control that takes the whole piece, when the piece has at least two holes to be held by.</summary>
    private static Machine? Mill(Plan plan, Shop shop, BenchDatum bench, ImmutableArray<PlacedHole> holes)
    {
        var box = plan.Outline.Bounds;
        if (bench.State == DrilledIn.Profile || holes.Length < 2) return null;
        return shop.Machines.FirstOrDefault(m => m.Kind == MachineKind.CncMill && m.TravelX is { } x && m.TravelY is { } y && box.Width <= x.Mm && box.Height <= y.Mm);
    }

    private static string Printer(Shop shop) => shop.Printers.IsDefaultOrEmpty ? "" : shop.Printers[0].Name;

    private static string Saw(Shop shop) => shop.Saws.IsDefaultOrEmpty ? "" : shop.Saws[0].Name;

    private static string Holes(int n) => n == 1 ? "1 hole" : $"{Count(n)} holes";

    private static string All(int n) => n switch
    {
        1 => "the hole",
        2 => "both holes",
        _ => $"all {Count(n)} holes",
    };

    private static string Count(int n) => n.ToString(CultureInfo.InvariantCulture);

    private static string Both(double mm) => Shown.Both(Length.OfMm(mm));

    private sealed class Steps
    {
        private readonly List<WorkStep> _steps = [];

        public void Add(string what, string on, string sheet, string gate, string why) => _steps.Add(new WorkStep(_steps.Count + 1, what, on, sheet, gate, why));

        public ImmutableArray<WorkStep> Numbered() => [.. _steps];
    }
}
