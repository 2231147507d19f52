using System.CommandLine;
using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.UseCases;

namespace Tangwright.Cli.Commands;

/// <summary><c>tangwright measure PLAN</c>.</summary>
internal static class MeasureCommand
{
    /// <summary>The verb.</summary>
    public static Command Make()
    {
        var plan = CommonOptions.Plan();
        var shop = CommonOptions.Shop();
        var piece = new Option<string?>("--piece") { Description = "which piece: guide, the piece all later sheets go by, or a number; guide when not said", HelpName = "NAME" };
        var hole = new Option<string?>("--hole") { Description = "name of the hole", HelpName = "NAME" };
        var at = new Option<string?>("--at") { Description = "where its centre was measured, along and across: 147.22,17.55 or \"5.796 in, 0.691 in\"", HelpName = "X,Y" };
        var diameter = new Option<string?>("--diameter") { Description = "its diameter, when measured", HelpName = "D" };
        var from = new Option<string?>("--from") { Description = "the edges measured from: bench (those of the bench sheets; when not said), profile (the profiled piece's outermost places) or plan (the plan's axes)", HelpName = "bench|profile|plan" };
        from.AcceptOnlyFromAmong([.. MeasureHoles.FromWords]);
        var list = new Option<string?>("--import") { Description = "take in a list: name, x, y and perhaps the diameter of each hole", HelpName = "FILE" };
        var remove = new Option<string?>("--take-out") { Description = "take the last entry of a hole out again", HelpName = "HOLE" };
        var learn = new Option<string?>("--learn") { Description = "write the scatter into the shop file, for this way of placing holes", HelpName = "WAY" };
        learn.AcceptOnlyFromAmong([.. LearnScatter.Ways]);
        var machine = new Option<string?>("--machine") { Description = "the machine it was learnt on; any when not said", HelpName = "NAME" };
        var date = CommonOptions.Date();
        var json = CommonOptions.Json();
        var c = new Command("measure", "Take in measured holes (NAME.measured.csv beside the plan) and tell how far each is out of place and what to do.\n\n  tangwright measure small-hatchet.plan.toml --hole L3 --at 150.22,18.65\n  tangwright measure small-hatchet.plan.toml --import readout.csv --piece 4\n  tangwright measure small-hatchet.plan.toml --learn readout --machine mill-drill")
        {
            plan, shop, piece, hole, at, diameter, from, list, remove, learn, machine, date, json,
        };
        c.SetAction(p =>
        {
            var (file, own) = (p.GetRequiredValue(plan), p.GetValue(shop));
            var (which, edges) = (p.GetValue(piece) ?? PositionReport.Guide, (MeasuredFrom)Math.Max(0, MeasureHoles.FromWords.IndexOf(p.GetValue(from) ?? "")));
            if (p.GetValue(at) is not null && p.GetValue(hole) is null) return Says.Faults([Fault.OfFile("--at", "no hole is named", "add --hole with its name")]);
            var said = (string?[])[p.GetValue(hole), p.GetValue(list), p.GetValue(remove)];
            if (said.Count(s => s is not null) > 1) return Says.Faults([Fault.OfFile("measure", "more than one of --hole, --import and --take-out", "give one at a time")]);
            var done = said switch
            {
                [{ } name, _, _] => Typed(name, p.GetValue(at), p.GetValue(diameter)).Then(t => MeasureHoles.Add(file, own, which, edges, t, CommonOptions.DateOf(p, date))),
                [_, { } from1, _] => MeasureHoles.Import(file, own, which, edges, from1, CommonOptions.DateOf(p, date)),
                [_, _, { } name] => MeasureHoles.TakeOut(file, own, which, name),
                _ => Figures.Of(file, own),
            };
            if (!done.IsGood) return Says.Faults(done.Faults);
            var learnt = p.GetValue(learn) is { } way ? LearnScatter.Write(file, own, p.GetValue(piece), way, p.GetValue(machine) ?? "") : null;
            if (learnt is { IsGood: false }) return Says.Faults(learnt.Faults);
            if (p.GetValue(json)) Says.Text(MeasuredJson.Of(done.Value));
            else Tell(done.Value, p.GetValue(piece), learnt?.Value);
            return ExitCode.Answered;
        });
        return c;
    }

    private static Checked<TypedHole> Typed(string hole, string? at, string? diameter)
        => at?.Split(',') is [var x, var y]
            ? Checked<TypedHole>.Good(new TypedHole(hole, x, y, diameter ?? ""))
            : Checked<TypedHole>.Bad(Fault.OfFile("--at", at is null ? "where the hole is was not said" : "not two numbers with a comma between them", "write --at 147.22,17.55"));

    private static void Tell(Results r, string? piece, string? learntInto)
    {
        var pieces = r.Measured.Where(p => piece is null || p.Piece == piece).ToArray();
        Says.Line($"{r.Plan.Name}, revision {r.Plan.Revision}");
        if (pieces.Length == 0) Says.Line(piece is null ? "no hole was measured yet" : $"no hole of piece {piece} was measured yet");
        foreach (var p in pieces)
        {
            Says.Line();
            Says.Line(p.IsGuide ? "  guide piece: these places are carried on to all later sheets" : $"  piece {p.Piece}");
            Says.Line($"  {"hole",-10}{"x (plan's axes)",-24}{"y",-24}{"position from edges",-24}in pattern");
            foreach (var h in p.Holes)
            {
                Says.Line($"  {h.Hole.Name,-10}{Both(h.Built.At.X),-24}{Both(h.Built.At.Y),-24}{Shown.Both(h.Position),-24}{Shown.Both(h.PositionPassing)}");
                Says.Line($"  {"",-10}{MeasuredJson.Word(h.Verdict.Action).ToUpperInvariant()}: {h.Verdict.Words}");
            }

            if (p.NotMeasured.Length > 0) Says.Line($"  not measured, so as planned: {string.Join(", ", p.NotMeasured)}");
            if (p.Holes.Length > 1) Says.Line($"  best fit: shifted {Both(p.Fit.Shift.X)} along, {Both(p.Fit.Shift.Y)} across, turned {Shown.Number(p.Fit.Turn.Degrees, 3)} degrees; rms left {Both(p.Fit.RmsMm)}");
        }

        if (LearnScatter.Of(r, piece) is not { } learnt) return;
        Says.Line();
        Says.Line($"  scatter along one axis {Both(learnt.Sigma.Mm)} from {learnt.Holes} holes of {learnt.Pieces} piece{(learnt.Pieces == 1 ? "" : "s")}; with 95 in 100 it is under {Both(learnt.Bound.Mm)}");
        Says.Line($"  99 of 100 centres then fall in a circle of {Shown.Both(learnt.Zone)}");
        if (learntInto is not null) Says.Line($"  written into {learntInto}");
    }

    private static string Both(double mm) => Shown.Both(Length.OfMm(mm));
}
