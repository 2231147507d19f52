using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.UseCases;

/// <summary>A written machine program as JSON; names are stable between versions.</summary>
public static class ProgramJson
{
    /// <summary>The text.</summary>
    /// <param name="written">The program.</param>
    public static string Of(WrittenProgram written) => JsonText.Of(w =>
    {
        var (report, program) = (written.Checked.Report, written.Checked.Program);
        var (setUp, wanted) = (program.SetUp, program.Wanted);
        w.WriteString("file", written.File);
        w.WriteString("machine", report.Machine.Name);
        w.WriteNumber("checked_moves", report.Moves);
        w.Number("running_min", report.RunningSeconds / 60);
        w.Number("tool_changes_min", report.ChangeSeconds / 60);
        w.WriteString("zero", setUp.ZeroInWords);
        w.Place("zero_in_plan", setUp.ZeroAt);
        w.Number("stock_thickness_mm", setUp.ThicknessMm);
        w.Number("safe_height_mm", program.Path.SafeZMm);
        w.List("tools", report.Tools, t =>
        {
            w.WriteNumber("number", t.Tool.Number);
            w.WriteString("tool", t.Tool.Name);
            w.Number("diameter_mm", t.Tool.DiameterMm);
            w.Number("least_speed_rpm", t.SlowestTurnsPerMin);
            w.Number("greatest_speed_rpm", t.FastestTurnsPerMin);
            w.Number("least_feed_mm_per_min", t.SlowestMmPerMin);
            w.Number("greatest_feed_mm_per_min", t.FastestMmPerMin);
            w.Number("cutting_min", t.CuttingSeconds / 60);
            w.Number("crossing_min", t.CrossingSeconds / 60);
        });
        w.List("clamps", setUp.Clamps, c =>
        {
            w.WriteString("clamp", c.Name);
            w.Number("from_x_mm", c.Box.MinX);
            w.Number("from_y_mm", c.Box.MinY);
            w.Number("to_x_mm", c.Box.MaxX);
            w.Number("to_y_mm", c.Box.MaxY);
            w.Number("height_mm", c.TopZMm);
        });
        w.List("pins", setUp.Pins, p => Hole(w, p));
        w.List("holes", wanted.Holes, h => Hole(w, h));
        w.WriteBoolean("profile", wanted.Outline is not null);
        w.WriteStartArray("left_out");
        foreach (var l in program.LeftOut) w.WriteStringValue(l);
        w.WriteEndArray();
    });

    private static void Hole(System.Text.Json.Utf8JsonWriter w, WantedHole h)
    {
        w.WriteString("hole", h.Name);
        w.Number("x_mm", h.At.X);
        w.Number("y_mm", h.At.Y);
        w.Number("diameter_mm", h.DiameterMm);
    }
}
