using System.Globalization;
using System.Text.Json;
using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.UseCases;

/// <summary>What is asked of the bevels, as a person writes it.</summary>
/// <param name="Measured">Thickness of the bar as measured, "6.21 mm"; null or empty: nominal.</param>
/// <param name="Stations">How many stations.</param>
/// <param name="Wheel">Another wheel to judge, "203 mm"; null or empty: none.</param>
/// <param name="IsProtected">Hardened in foil, coating or without air.</param>
public sealed record BevelsRequest(string? Measured = null, int Stations = BevelStations.Usual, string? Wheel = null, bool IsProtected = false);

/// <summary>The bevels of a plan in numbers.</summary>
/// <param name="Results">The plan worked up.</param>
/// <param name="Bevels">The numbers.</param>
public sealed record BevelsAnswer(Results Results, BevelNumbers Bevels);

/// <summary>The bevels of a plan in numbers for the belt.</summary>
public static class PlanBevels
{
    /// <summary>Works it out.</summary>
    public static Checked<BevelsAnswer> Of(string planPath, string? shopPath, BevelsRequest request) => OpenWork.Of(planPath, shopPath).Then(w => Of(w.WorkUp(), request));

    /// <summary>The same for a plan that is worked up already.</summary>
    internal static Checked<BevelsAnswer> Of(Results results, BevelsRequest request)
        => Read(request, results.Plan.Units).Then(wanted => BevelNumbers.Of(results, wanted)).Then(n => Checked<BevelsAnswer>.Good(new BevelsAnswer(results, n)));

    /// <summary>What is asked, understood.</summary>
    internal static Checked<BevelsWanted> Read(BevelsRequest request, LengthUnit units)
    {
        var faults = new List<Fault>();
        Length? Size(string what, string? text)
        {
            if (string.IsNullOrWhiteSpace(text)) return null;
            var read = LengthText.Read(text, units == LengthUnit.Inch ? Length.MmPerInch : 1);
            if (read.IsGood) return read.Value.Length;
            faults.Add(Fault.OfFile(what, read.Message, read.Remedy));
            return null;
        }

        var wanted = new BevelsWanted(Size("measured thickness", request.Measured), request.Stations, Size("wheel", request.Wheel), request.IsProtected);
        return faults.Count > 0 ? Checked<BevelsWanted>.Bad(faults) : Checked<BevelsWanted>.Good(wanted);
    }

    /// <summary>The same as JSON; names are stable between versions.</summary>
    public static string Json(BevelsAnswer answer) => JsonText.Of(w =>
    {
        var (r, n) = answer;
        w.WriteString("name", r.Plan.Name);
        w.WriteString("revision", r.Plan.Revision);
        w.List("stations", n.Table.Stations, s =>
        {
            w.WriteString("station", s.Name);
            w.Number("from_datum_mm", s.FromDatum.Mm);
            w.Place("edge", s.Foot);
            w.Place("shoulder", s.Shoulder);
            w.Number("height_mm", s.Height.Mm);
            w.Number("to_spine_mm", s.Spine.Mm);
            w.Number("stock_mm", s.Stock.Mm);
            w.Number("soft_angle_per_side_deg", s.SoftAngle?.Degrees);
            w.Number("angle_per_side_deg", s.FinishedAngle.Degrees);
            w.Number("angle_inclusive_deg", (r.Plan.Bevel!.OneSided ? 1 : 2) * s.FinishedAngle.Degrees);
            w.List("thickness", s.Thicknesses, t =>
            {
                w.Number("above_edge_mm", t.Up.Mm);
                w.Number("soft_mm", t.Soft?.Mm);
                w.Number("finished_mm", t.Finished.Mm);
            });
        });
        w.Object("plunge", () =>
        {
            w.Place("from", n.Table.Plunge?.A);
            w.Place("to", n.Table.Plunge?.B);
        });
        w.Object("scribe", () => Write(w, n.Scribe));
        w.Object("scribe_measured", () => Write(w, n.ScribeMeasured));
        w.List("wheels", n.Wheels, v =>
        {
            w.WriteString("wheel", v.Name);
            w.Number("diameter_mm", v.Diameter.Mm);
            w.WriteString("answer", v.Answer switch { WheelAnswer.Good => "good", WheelAnswer.GoodWithNote => "good with note", WheelAnswer.Thin => "thin", WheelAnswer.TooThin => "refused", _ => "cuts through" });
            w.Number("thinnest_mm", v.Thinnest?.Mm);
            w.Number("thinnest_above_edge_mm", v.ThinnestUp.Mm);
            w.Number("depth_mm", v.Depth.Mm);
        });
        w.Number("least_wheel_mm", n.LeastWheel?.Mm);
        w.Object("edge_for_hardening", () =>
        {
            w.Number("leave_mm", n.Advice?.Leave?.Mm);
            w.Number("trade_low_mm", n.Advice?.TradeLow.Mm);
            w.Number("trade_high_mm", n.Advice?.TradeHigh.Mm);
            w.Number("oven_takes_each_face_mm", n.Advice?.FaceLoss.Mm);
        });
        w.Number("soft_grams_per_side", n.SoftPerSideGrams);
        w.Number("hard_grams_per_side", n.HardPerSideGrams);
        w.Object("sharpening", () =>
        {
            w.Number("angle_per_side_deg", r.Plan.Bevel!.SharpenPerSide?.Degrees);
            w.Number("facet_height_mm", n.Facet?.HeightMm);
            w.Number("facet_face_mm", n.Facet?.FaceMm);
            w.Number("shoulder_mm", n.Facet?.ShoulderMm);
            w.Number("spine_over_stone_mm", n.BlockHeight?.Mm);
            w.Number("blade_height_mm", n.BladeHeight.Mm);
        });
        w.List("notes", n.Notes.Select(x => x), x => w.WriteString("note", x));
    });

    private static void Write(Utf8JsonWriter w, ScribeLines? s)
    {
        w.Number("stock_mm", s?.Stock.Mm);
        w.Number("edge_mm", s?.Edge.Mm);
        w.Number("from_each_face_mm", s?.FromFace.Mm);
        w.Number("centre_mm", s?.Centre.Mm);
    }
}
