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

/// <summary>Another angle, height, edge or stock to try on the bevel, as a person writes it; what is left out is the plan's.</summary>
/// <param name="Angle">Angle per side, "6" or "6 deg".</param>
/// <param name="Height">Height.</param>
/// <param name="Edge">Finished edge.</param>
/// <param name="Stock">Thickness of the stock.</param>
public sealed record BevelTried(string? Angle, string? Height, string? Edge, string? Stock)
{
    /// <summary>Whether something is tried.</summary>
    public bool IsAsked => Angle is not null || Height is not null || Edge is not null || Stock is not null;
}

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

    /// <summary>What follows from another angle, height, edge or stock, in words: with an angle the height, the edge or the stock that gives it; else the angle, and for a hollow the least wheel.</summary>
    public static Checked<BevelWhat> Try(BevelsAnswer answer, BevelTried tried)
    {
        var (r, n) = answer;
        var (bevel, units, faults) = (r.Plan.Bevel!, r.Shop.Show, new List<Fault>());
        Length Size(string what, string? text, Length otherwise, double mostMm = 1000)
        {
            if (string.IsNullOrWhiteSpace(text)) return otherwise;
            var read = LengthText.Read(text, r.Plan.Units == LengthUnit.Inch ? Length.MmPerInch : 1);
            if (read.IsGood && read.Value.Length.Mm > 0 && read.Value.Length.Mm < mostMm) return read.Value.Length;
            faults.Add(Fault.OfFile(what, read.IsGood ? $"a length that is not above 0 and under {Shown.Number(mostMm, 0)} mm" : read.Message, read.IsGood ? "check the number and the unit" : read.Remedy));
            return otherwise;
        }

        var (stock, edge) = (Size("--stock", tried.Stock, r.Plan.Stock.Thickness, 100), Size("--edge", tried.Edge, bevel.EdgeFinished));
        var height = Size("--height", tried.Height, n.Table.Highest);
        var past = n.Table.BladeHeight is { Mm: > 0 } blade && height > blade ? $" That is higher than the blade, {BevelText.Fine(blade, units)}." : "";
        Angle? angle = null;
        if (!string.IsNullOrWhiteSpace(tried.Angle))
        {
            var read = QuantityText.Degrees(tried.Angle);
            if (read.IsGood && read.Value.Degrees is > 0 and < 60) angle = read.Value;
            else faults.Add(Fault.OfFile("--angle", read.IsGood ? "an angle per side that is not between 0 and 60 degrees" : read.Message, read.IsGood ? "write it per side, as 6" : read.Remedy));
        }

        if (height.Mm <= 0) faults.Add(Fault.OfFile("--height", "the bevel of the plan is under 1 mm high everywhere", "give a height to try"));
        if (edge >= stock) faults.Add(Fault.OfFile("--edge", $"an edge of {Shown.Both(edge)} in stock of {Shown.Both(stock)}", "give an edge thinner than the stock"));
        if (faults.Count > 0) return Checked<BevelWhat>.Bad(faults);
        var one = bevel.OneSided;
        if (angle is not { } a)
        {
            var follows = BevelAngle.Of(stock.Mm, edge.Mm, height.Mm, one);
            var wheel = bevel.Grind == Grind.Hollow ? $"; least wheel {BevelText.Fine(WheelVerdict.LeastDiameter(stock, edge, height, one), units)}" : "";
            return Checked<BevelWhat>.Good(new BevelWhat($"{BevelText.Fine(height, units)} high, edge {BevelText.Fine(edge, units)}, stock {BevelText.Fine(stock, units)}: {BevelText.Angle(follows, one)}{wheel}.{past}"));
        }

        var thin = BevelAngle.EdgeMm(stock.Mm, height.Mm, a, one);
        var thinSays = thin > 0 ? $"an edge of {BevelText.Fine(Length.OfMm(thin), units)} at {BevelText.Fine(height, units)} high" : $"no edge at {BevelText.Fine(height, units)} high: the faces meet {BevelText.Fine(Length.OfMm(height.Mm - BevelAngle.HeightMm(stock.Mm, 0, a, one)), units)} above it";
        return Checked<BevelWhat>.Good(new BevelWhat($"At {BevelText.Angle(a, one)}: {BevelText.Fine(Length.OfMm(BevelAngle.HeightMm(stock.Mm, edge.Mm, a, one)), units)} high with an edge of {BevelText.Fine(edge, units)} in {BevelText.Fine(stock, units)} stock; or {thinSays}; or stock of {BevelText.Fine(Length.OfMm(BevelAngle.StockMm(edge.Mm, height.Mm, a, one)), units)} for that height and edge.{past}"));
    }

    /// <summary>The same as JSON; names are stable between versions.</summary>
    /// <param name="answer">The numbers.</param>
    /// <param name="tried">What follows from what was tried; null when nothing was.</param>
    public static string Json(BevelsAnswer answer, BevelWhat? tried = null) => JsonText.Of(w =>
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
        w.List("scribe_tapered", n.ScribeAt, s =>
        {
            w.WriteString("station", s.Name);
            w.Object("sold", () => Write(w, s.Sold));
            w.Object("measured", () => Write(w, s.Measured));
        });
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
            w.Number("blade_height_mm", n.Table.BladeHeight.Mm);
        });
        if (tried is not null) w.WriteString("tried", tried.Says);
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

/// <summary>What follows from what was tried.</summary>
/// <param name="Says">In words.</param>
public sealed record BevelWhat(string Says);
