using System.CommandLine;
using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.UseCases;

namespace Tangwright.Cli.Commands;

/// <summary><c>tangwright fits SIZE</c> and <c>tangwright fits PLAN</c>.</summary>
internal static class FitsCommand
{
    /// <summary>The verb.</summary>
    public static Command Make()
    {
        var what = new Argument<string[]>("SIZE|PLAN") { Description = "a size with its unit, as 6 mm, 1/4 in or #30; or a plan file", Arity = ArgumentArity.OneOrMore };
        var hole = new Option<string?>("--hole") { Description = $"class of the hole; else {Fits.UsualHole}", HelpName = "CLASS" };
        var pin = new Option<string?>("--pin") { Description = $"class of the pin; else {Fits.UsualPin}", HelpName = "CLASS" };
        var shop = CommonOptions.Shop();
        var json = CommonOptions.Json();
        var c = new Command("fits", "Limits and clearance of a pin and its hole by ISO 286, steel to leave for the reamer, the drills beside the size in every series; or the fits of all pins of a plan.\nExit code 1 when the plan has an error finding.\n\n  tangwright fits 1/4 in --hole H7 --pin m6\n  tangwright fits small-hatchet.plan.toml") { what, hole, pin, shop, json };
        c.SetAction(p =>
        {
            var text = string.Join(" ", p.GetRequiredValue(what));
            if (text.EndsWith(".toml", StringComparison.OrdinalIgnoreCase)) return Plan(text, p.GetValue(shop), p.GetValue(json));
            var a = Fits.Of(text, p.GetValue(hole), p.GetValue(pin), p.GetValue(shop));
            if (!a.IsGood) return Says.Faults(a.Faults);
            if (p.GetValue(json)) Says.Text(Fits.Json(a.Value));
            else Tell(a.Value);
            return ExitCode.Answered;
        });
        return c;
    }

    private static int Plan(string path, string? shop, bool json)
    {
        var r = Fits.OfPlan(path, shop);
        if (!r.IsGood) return Says.Faults(r.Faults);
        if (json) Says.Text(Fits.Json(r.Value));
        else Tell(r.Value);
        return CheckPlan.HasError(r.Value) ? ExitCode.ErrorFound : ExitCode.Answered;
    }

    private static void Tell(FitAnswer a)
    {
        var f = a.Fit;
        Says.Line($"{FitText.Size(f.Size)}, {FitText.SixtyFourth(f.Size)}");
        Says.Line($"  hole {f.Hole.Class,-5}{FitText.Band(f.Hole.Least, f.Hole.Most)}");
        Says.Line($"  pin  {f.Pin.Class,-5}{FitText.Band(f.Pin.Least, f.Pin.Most)}");
        Says.Line($"  {FitText.Clearance(f.Fit)}");
        Says.Line();
        if (f.Drilled is { } drilled) Says.Line($"Drilled only, a hole of this size comes out {FitText.Band(drilled.Least, drilled.Most)} (AND10387).");
        if (GeneralTolerance.Of(f.Size, 'm') is { } general) Says.Line($"A size without limits of its own may be off by {FitText.Size(general)} either way (ISO 2768-1, medium).");
        Says.Line($"To ream, leave {FitText.Band(f.LeftToReam.Least, f.LeftToReam.Most)} on the diameter.");
        Says.Line();
        Says.Line($"{"",-10}{"not larger",-44}{"not smaller",-44}before the reamer");
        foreach (var s in f.Drills) Says.Line($"{s.Series,-10}{Named(a, s.Below),-44}{Named(a, s.Above),-44}{Named(a, s.ToReam)}");
        Says.Line($"* owned by {(a.Shop.IsAssumed ? "the assumed shop" : a.Shop.Name)}");
        Says.Line($"It {(a.OwnsReamer ? "has a" : "has no")} reamer of this size; {(a.OwnedToReam is { } drill ? $"drill {drill.Name} before it" : "no drill it has suits before it")}.");
    }

    private static string Named(FitAnswer a, DrillSize? drill)
        => drill is null ? "none" : $"{(a.Owns(drill) ? "* " : "  ")}{drill.Name} {FitText.Signed(drill.Diameter - a.Fit.Size)}";

    private static void Tell(Results r)
    {
        var pins = PinFits.Of(r);
        Says.Line($"{r.Plan.Name}, revision {r.Plan.Revision}: {pins.Length} pinned or reamed {(pins.Length == 1 ? "hole" : "holes")}, tools of {(r.Shop.IsAssumed ? "the assumed shop" : r.Shop.Name)}");
        foreach (var p in pins)
        {
            Says.Line($"  {p.Hole.Name}, {FitText.Size(p.Hole.Diameter)}: {PinFitText.Tools(p)}");
            if (p.Made is { } made) Says.Line($"    comes out {FitText.Band(made.Least, made.Most)}, {p.MadeBy}");
            Says.Line($"    {PinFitText.Rod(p)}{(p.Fit is { } fit ? ": " + FitText.Clearance(fit) : "")}");
            if (PinFitText.Room(p) is { Length: > 0 } room) Says.Line($"    -> {room}");
        }

        if (pins.Length == 0) return;
        Says.Line();
        Says.Line($"Clearance about a glued rod, common practice: {FitText.Band(GlueRoom.InSteel.Least, GlueRoom.InSteel.Most)} in the steel, {FitText.Band(GlueRoom.InScales.Least, GlueRoom.InScales.Most)} in the scales.");
    }
}
