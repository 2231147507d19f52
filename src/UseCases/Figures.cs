using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.UseCases;

/// <summary>Every number of a plan.</summary>
public static class Figures
{
    /// <summary>Works up the plan.</summary>
    public static Checked<Results> Of(string planPath, string? shopPath)
        => OpenWork.Of(planPath, shopPath).Then(w => Checked<Results>.Good(w.WorkUp()));

    /// <summary>The figures as JSON; names are stable between versions.</summary>
    public static string Json(Results r) => JsonText.Of(w =>
    {
        w.WriteString("name", r.Plan.Name);
        w.WriteString("revision", r.Plan.Revision);
        w.WriteString("steel", r.Plan.Stock.Steel);
        w.WriteString("shop", r.Shop.Name);
        w.WriteBoolean("assumed_shop", r.Shop.IsAssumed);
        w.Object("stock", () =>
        {
            w.Number("thickness_mm", r.Plan.Stock.Thickness.Mm);
            w.Number("width_mm", r.Plan.Stock.Width?.Mm);
        });
        w.Object("outline", () =>
        {
            w.Number("area_mm2", r.Outline.Area.Mm2);
            w.Number("perimeter_mm", r.Outline.Perimeter.Mm);
            w.Number("length_mm", r.Outline.Length.Mm);
            w.Number("height_mm", r.Outline.Height.Mm);
            w.Place("centroid", r.Outline.Centroid);
        });
        w.Object("holes", () =>
        {
            w.WriteNumber("count", r.Outline.HoleCount);
            w.Number("area_mm2", r.Outline.HoleArea.Mm2);
        });
        w.List("stages", r.Stages, s =>
        {
            w.WriteString("stage", StageName.Key(s.Stage));
            w.Number("mass_g", s.Mass?.Grams);
            w.Number("volume_mm3", s.Volume.Mm3);
            w.Number("balance_x_mm", s.Balance.X);
            w.Number("balance_y_mm", s.Balance.Y);
            w.Number("balance_from_datum_mm", s.BalanceFromDatum.Mm);
            w.Number("balance_across_from_datum_mm", s.BalanceAcrossFromDatum.Mm);
        });
        if (r.Striking is { } k)
        {
            w.Object("striking", () =>
            {
                w.Number("inertia_kg_m2", k.InertiaKgM2);
                w.Place("pivot", k.Pivot);
                w.Number("percussion_x_mm", k.Percussion.X);
                w.Number("percussion_y_mm", k.Percussion.Y);
                w.Number("pivot_to_balance_mm", k.PivotToBalance.Mm);
                w.Number("pivot_to_percussion_mm", k.PivotToPercussion.Mm);
            });
        }
        else
        {
            w.WriteNull("striking");
        }

        w.Object("bench", () =>
        {
            w.WriteString("drilled_in", r.Bench.State switch { DrilledIn.Bar => "bar", DrilledIn.Rectangle => "rectangle", _ => "profile" });
            w.WriteString("x_from", r.Bench.AlongFrom);
            w.WriteString("y_from", r.Bench.AcrossFrom);
            w.Place("corner", r.Bench.Corner);
            w.WriteString("remark", r.Bench.Remark);
        });
    });
}
