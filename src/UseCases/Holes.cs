using System.Text.Json;
using Tangwright.Core;
using Tangwright.Documents;
using Tangwright.Formats;
using Tangwright.Foundation;

namespace Tangwright.UseCases;

/// <summary>How every hole is made on the machines of the shop, and what each machine cannot make and why.</summary>
public static class Holes
{
    /// <summary>Works up the plan.</summary>
    public static Checked<Results> Of(string planPath, string? shopPath)
        => OpenWork.Of(planPath, shopPath).Then(w => Checked<Results>.Good(w.WorkUp()));

    /// <summary>The same as JSON; names are stable between versions.</summary>
    public static string Json(Results r) => JsonText.Of(w =>
    {
        w.WriteString("name", r.Plan.Name);
        w.WriteString("revision", r.Plan.Revision);
        w.WriteString("steel", r.Plan.Stock.Steel);
        w.WriteString("shop", r.Shop.Name);
        w.WriteBoolean("assumed_shop", r.Shop.IsAssumed);
        w.List("machines", r.Drilling.ByMachine.Where(g => g.Machine is not null), g =>
        {
            var time = DrillTime.Of(g);
            w.WriteString("machine", g.Machine!.Name);
            w.WriteNumber("holes", g.Holes.Length);
            w.Number("time_s", time.Value);
            w.Number("time_low_s", time.Low);
            w.Number("time_high_s", time.High);
            w.List("way", MachineWay.Of(g, r.Bench)!.Clampings.SelectMany((c, i) => c.Tools.Select(t => (Clamping: i + 1, Tool: t))), x =>
            {
                w.WriteNumber("clamping", x.Clamping);
                w.WriteString("tool", x.Tool.Round.Tool);
                w.WriteString("step", HoleStepText.Of(x.Tool.Round.Work.Step));
                w.List("stops", x.Tool.Stops, s =>
                {
                    w.WriteString("hole", s.Hole.Name);
                    w.Number("x_mm", s.At.X);
                    w.Number("y_mm", s.At.Y);
                    w.Number("first_x_mm", s.PastXMm);
                    w.Number("first_y_mm", s.PastYMm);
                });
            });
        });
        w.List("holes", r.Drilling.Holes, h => WriteHole(w, h));
    });

    /// <summary>Every stop of the machines with a readout, front face and back, as a table.</summary>
    public static byte[] Csv(Results r) => CsvWriter.Write(ReadoutCsv.Rows(r));

    private static void WriteHole(Utf8JsonWriter w, HolePlan h)
    {
        w.WriteString("hole", h.Hole.Name);
        w.Number("diameter_mm", h.Hole.Diameter.Mm);
        w.Place("at", h.Hole.At);
        w.WriteString("machine", h.Machine?.Name);
        w.WriteString("pilot_machine", h.Pilot?.Machine.Name);
        w.List("operations", h.Pilot is { } p ? [p.Operation] : h.Operations, o => WriteStep(w, o));
        w.List("refusals", h.Refusals, x =>
        {
            w.WriteString("machine", x.Machine);
            w.WriteString("reason", x.Reason);
            w.WriteString("found", x.Found);
            w.WriteString("limit", x.Limit);
            w.WriteString("source", x.Source);
            w.WriteString("remedy", x.Remedy);
        });
    }

    private static void WriteStep(Utf8JsonWriter w, HoleOperation o)
    {
        w.WriteString("step", HoleStepText.Of(o.Step));
        w.WriteString("tool", o.Tool);
        w.Number("diameter_mm", o.Diameter.Mm);
        w.Number("set_rpm", o.Speed?.SetRpm);
        w.Number("low_rpm", o.Speed?.LowRpm);
        w.Number("target_rpm", o.Speed?.TargetRpm);
        w.Number("high_rpm", o.Speed?.HighRpm);
        w.Number("feed_mm_per_turn", o.FeedMmPerTurn > 0 ? o.FeedMmPerTurn : null);
        w.Number("thrust_low_n", o.Thrust?.Low.Newtons);
        w.Number("thrust_high_n", o.Thrust?.High.Newtons);
        w.Number("torque_low_nm", o.Torque?.Low.NewtonMetres);
        w.Number("torque_high_nm", o.Torque?.High.NewtonMetres);
        w.Number("power_low_w", o.Power?.Low.Watts);
        w.Number("power_high_w", o.Power?.High.Watts);
        w.Number("depth_mm", o.DepthMm);
        w.Number("peck_mm", o.PeckMm);
        w.Number("time_s", o.TimeSeconds);
        w.WriteString("remark", o.Remark);
    }
}
