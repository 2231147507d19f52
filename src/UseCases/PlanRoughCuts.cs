using System.Text.Json;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.UseCases;

/// <summary>The rough cuts of a plan, and the widths it is ground to.</summary>
/// <param name="Results">The plan worked up.</param>
/// <param name="Cuts">The cuts.</param>
/// <param name="Widths">Widths of the profiled piece.</param>
public sealed record RoughCutAnswer(Results Results, RoughCutPlan Cuts, WidthTable Widths);

/// <summary>Which straight saw cuts to make before the grinder.</summary>
public static class PlanRoughCuts
{
    /// <summary>Works it out.</summary>
    /// <param name="planPath">The plan file.</param>
    /// <param name="shopPath">The shop file; null: looked for.</param>
    /// <param name="cuts">How many saw cuts; null: as many as pay.</param>
    /// <param name="saw">Name of the saw, or a part of it; null: the quickest in all.</param>
    public static Checked<RoughCutAnswer> Of(string planPath, string? shopPath, int? cuts, string? saw)
        => OpenWork.Of(planPath, shopPath).Then(w => Of(w.WorkUp(), cuts, saw));

    /// <summary>The same for a plan that is worked up already.</summary>
    internal static Checked<RoughCutAnswer> Of(Results results, int? cuts, string? saw)
        => RoughCuts.Of(results, new RoughCutWanted(cuts, saw)).Then(p => Checked<RoughCutAnswer>.Good(new RoughCutAnswer(results, p, WidthStations.Of(results))));

    /// <summary>The same as JSON; names are stable between versions.</summary>
    public static string Json(RoughCutAnswer answer) => JsonText.Of(w =>
    {
        var (r, p, widths) = answer;
        w.WriteString("name", r.Plan.Name);
        w.WriteString("revision", r.Plan.Revision);
        w.WriteString("saw", p.Saw.Name);
        w.Number("kerf_mm", p.Saw.Kerf.Mm);
        w.Number("teeth_per_inch", p.TeethPerInch);
        w.Number("least_teeth_per_inch", SawPractice.HasTeeth(p.Saw.Kind) ? TeethInWork.PerInch(TeethInWork.Least, r.Plan.Stock.Thickness) : null);
        w.Number("allowance_mm", p.Allowance.Mm);
        w.Number("least_gap_mm", p.Cuts.IsEmpty ? null : p.LeastGap.Mm);
        w.Object("blank", () =>
        {
            w.Number("length_mm", p.Blank.Box.Width);
            w.Number("width_mm", p.Blank.Box.Height);
            w.Number("thickness_mm", r.Plan.Stock.Thickness.Mm);
            w.WriteString("along_from", p.Blank.EndWords);
            w.WriteString("across_from", p.Blank.EdgeWords);
        });
        w.List("relief_holes", p.Reliefs, h =>
        {
            w.WriteNumber("pocket", h.Pocket);
            w.Number("along_mm", h.FromCorner.X);
            w.Number("across_mm", h.FromCorner.Y);
            w.Number("diameter_mm", h.Drill?.Diameter.Mm);
        });
        w.List("cuts", p.Cuts, c => WriteCut(w, c));
        w.Object("areas", () =>
        {
            w.Number("blank_mm2", p.BlankMm2);
            w.Number("piece_mm2", p.PieceMm2);
            w.Number("offcuts_mm2", p.Cuts.Sum(c => ConvexClip.AreaMm2(c.Offcut.AsSpan())));
            w.Number("kerf_mm2", p.Cuts.Sum(c => c.KerfMm2));
            w.Number("left_mm2", p.RestMm2);
            w.Number("taken_share", p.TakenShare);
            w.Number("hull_share", p.HullShare);
        });
        w.List("share_by_cuts", p.ShareByCuts.Select((s, i) => (s, i)), s =>
        {
            w.WriteNumber("cuts", s.i + 1);
            w.Number("share", s.s);
        });
        w.Object("saw_then_grind", () =>
        {
            w.Number("saw_minutes", p.SawMinutes);
            w.Number("saw_minutes_low", p.LowSawMinutes);
            w.Number("saw_minutes_high", p.HighSawMinutes);
            WriteGrinding(w, p.Sawn);
            w.Number("minutes", p.Minutes);
        });
        w.Object("grind_only", () => WriteGrinding(w, p.GrindOnly));
        w.Object("belt", () =>
        {
            w.WriteString("name", p.Belt.Belt.Name);
            w.Number("grams_per_min", p.Belt.GramsPerMinute);
            w.Number("grams_per_min_low", p.Belt.LowGramsPerMinute);
            w.Number("grams_per_min_high", p.Belt.HighGramsPerMinute);
            w.Number("grams_per_belt", p.Belt.GramsPerBelt);
        });
        w.List("hollows", p.Hollows, h =>
        {
            w.Place("at", h.Middle);
            w.Number("left_mm2", h.Left.Mm2);
            w.Number("grind_minutes", h.GrindMinutes);
            w.Number("chain_holes", h.Chain?.Holes);
            w.Number("chain_diameter_mm", h.Chain?.Drill.Diameter.Mm);
            w.Number("chain_pitch_mm", h.Chain?.Pitch.Mm);
            w.Number("chain_minutes", h.Chain?.Minutes);
            w.WriteNumber("relief_cuts", h.ReliefCuts);
            w.Number("relief_minutes", h.ReliefMinutes);
        });
        w.Object("profiled", () =>
        {
            w.WriteString("along_from", widths.EndWords);
            w.WriteString("across_from", widths.EdgeWords);
            w.Number("tolerance_mm", widths.Tolerance.Mm);
            w.Number("mass_g", widths.Mass?.Grams);
            w.Number("drilled_mass_g", widths.DrilledMass?.Grams);
            w.Number("mass_band_g", widths.MassBand?.Grams);
            w.List("widths", widths.Stations, s =>
            {
                w.Number("from_end_mm", s.FromEnd.Mm);
                w.Number("low_mm", s.Low.Mm);
                w.Number("high_mm", s.High.Mm);
                w.Number("width_mm", s.Width.Mm);
            });
        });
        w.List("notes", p.Notes.Select(n => n), n => w.WriteString("note", n));
    });

    private static void WriteCut(Utf8JsonWriter w, SawCut c)
    {
        w.WriteNumber("number", c.Number);
        w.Number("pocket", c.Pocket);
        w.Place("from", c.From);
        w.Place("to", c.To);
        w.List("marks", c.Marks, m =>
        {
            w.WriteString("on", m.On);
            w.WriteString("from", m.Measured);
            w.Number("distance_mm", m.Distance.Mm);
        });
        w.Number("angle_to_edge_deg", c.AngleToEdge.Degrees);
        w.Number("length_mm", c.Chord.Mm);
        w.WriteBoolean("from_both_ends", c.FromBothEnds);
        w.Number("minutes", c.Minutes);
        w.Number("offcut_mm2", ConvexClip.AreaMm2(c.Offcut.AsSpan()));
        w.Number("offcut_length_mm", c.OffcutLength.Mm);
        w.Number("offcut_width_mm", c.OffcutWidth.Mm);
        w.Number("kerf_mm2", c.KerfMm2);
    }

    private static void WriteGrinding(Utf8JsonWriter w, GrindingWork g)
    {
        w.Number("left_mass_g", g.Mass?.Grams);
        w.Number("left_volume_mm3", g.Volume.Mm3);
        w.Number("grind_minutes", g.Minutes);
        w.Number("grind_minutes_low", g.LowMinutes);
        w.Number("grind_minutes_high", g.HighMinutes);
        w.Number("belts", g.Belts);
    }
}
