using System.Text.Json;
using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.UseCases;

/// <summary>What is asked of the finish, as a person writes it.</summary>
/// <param name="Last">Last grit, "P400"; null: the plan's, else P400.</param>
/// <param name="Tempered">Tempering temperature, "200 C"; null: the plan's, else the low end of common practice.</param>
public sealed record FinishRequest(string? Last, string? Tempered);

/// <summary>The finish of a plan.</summary>
/// <param name="Results">The plan worked up.</param>
/// <param name="Finish">The steps.</param>
public sealed record FinishAnswer(Results Results, FinishPlan Finish);

/// <summary>Which grits, how much each takes, how long, how hot.</summary>
public static class PlanFinish
{
    /// <summary>Works it out.</summary>
    /// <param name="planPath">The plan file.</param>
    /// <param name="shopPath">The shop file; null: looked for.</param>
    /// <param name="request">What is asked.</param>
    public static Checked<FinishAnswer> Of(string planPath, string? shopPath, FinishRequest request)
        => OpenWork.Of(planPath, shopPath).Then(w => Of(w.WorkUp(), request));

    /// <summary>The same for a plan that is worked up already.</summary>
    internal static Checked<FinishAnswer> Of(Results results, FinishRequest request)
        => Read(request).Then(wanted => FinishSteps.Of(results, wanted, RoughCuts.Of(results, new RoughCutWanted(null, null)))).Then(f => Checked<FinishAnswer>.Good(new FinishAnswer(results, f)));

    /// <summary>What is asked, understood.</summary>
    internal static Checked<FinishWanted> Read(FinishRequest request)
    {
        var faults = new List<Fault>();
        Grit? last = null;
        Temperature? temper = null;
        if (!string.IsNullOrWhiteSpace(request.Last))
        {
            var read = GritText.Read(request.Last);
            if (read.IsGood) last = read.Value;
            else faults.Add(Fault.OfFile("last grit", read.Message, read.Remedy));
        }

        if (!string.IsNullOrWhiteSpace(request.Tempered))
        {
            var read = QuantityText.Temperature(request.Tempered);
            if (read.IsGood) temper = read.Value;
            else faults.Add(Fault.OfFile("tempered", read.Message, read.Remedy));
        }

        return faults.Count > 0 ? Checked<FinishWanted>.Bad(faults) : Checked<FinishWanted>.Good(new FinishWanted(last, temper));
    }

    /// <summary>The same as JSON; names are stable between versions.</summary>
    public static string Json(FinishAnswer answer) => JsonText.Of(w =>
    {
        var (r, f) = answer;
        w.WriteString("name", r.Plan.Name);
        w.WriteString("revision", r.Plan.Revision);
        w.WriteString("last_grit", f.Last.Words);
        w.Number("most_ratio", f.MostRatio);
        w.Number("face_mm2", f.FaceMm2);
        w.List("steps", f.Steps, s => Write(w, s));
        w.Number("edge_after_coarse_mm", f.AfterCoarse?.Mm);
        w.Number("ladder_takes_mm", f.LadderTakes?.Mm);
        w.Object("time", () =>
        {
            w.Number("minutes", f.Minutes);
            w.Number("minutes_low", f.LowMinutes);
            w.Number("minutes_high", f.HighMinutes);
            w.WriteBoolean("all_known", !f.HasUntimed);
        });
        w.Object("heat", () =>
        {
            w.Number("tempered_c", f.Tempered.Celsius);
            w.WriteBoolean("assumed", f.IsTemperAssumed);
            if (f.HeatTool is { } tool) w.WriteString("belt", tool.Name);
            w.List("places", f.Heat, h =>
            {
                w.WriteString("where", h.Where);
                w.Number("thickness_mm", h.Thickness.Mm);
                w.Number("depth_um", h.Room.UsualUm);
                w.Number("depth_low_um", h.Room.LowUm);
                w.Number("depth_high_um", h.Room.HighUm);
                w.Number("seconds", h.Seconds);
                w.Number("seconds_low", h.LowSeconds);
                w.Number("seconds_high", h.HighSeconds);
            });
        });
        w.Number("sawing_first_saves_minutes", f.SavedMinutes);
        w.List("notes", f.Notes.Select(n => n), n => w.WriteString("note", n));
    });

    private static void Write(Utf8JsonWriter w, FinishStep s)
    {
        w.WriteNumber("number", s.Number);
        w.WriteString("stage", s.Stage == FinishStage.Soft ? "soft" : "hard");
        w.WriteString("tool", s.Tool.Name);
        w.WriteString("grit", s.Tool.Grain.Words);
        w.Number("grain_um", s.Tool.Micron);
        w.WriteBoolean("grinds_bevel", s.IsBevel);
        w.Number("ratio", s.Ratio);
        w.Number("per_face_um", s.PerFaceUm?.Usual);
        w.Number("per_face_low_um", s.PerFaceUm?.Low);
        w.Number("per_face_high_um", s.PerFaceUm?.High);
        w.Number("grams", s.Grams);
        w.Number("grams_low", s.LowGrams);
        w.Number("grams_high", s.HighGrams);
        w.Number("edge_mm", s.Edge?.Mm);
        w.Number("minutes", s.Minutes);
        w.Number("minutes_low", s.LowMinutes);
        w.Number("minutes_high", s.HighMinutes);
        w.Number("belts", s.Belts);
        w.Number("ra_low_um", s.Ra?.LowUm);
        w.Number("ra_high_um", s.Ra?.HighUm);
        w.Number("belt_speed_low_m_per_s", s.Speed?.Low.MetresPerMin / 60);
        w.Number("belt_speed_high_m_per_s", s.Speed?.High.MetresPerMin / 60);
    }
}
