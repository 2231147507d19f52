using System.Text.Json;
using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.UseCases;

/// <summary>One size with the shop it was asked for.</summary>
/// <param name="Fit">All that is known of the size.</param>
/// <param name="Shop">The shop.</param>
public sealed record FitAnswer(SizeFit Fit, Shop Shop)
{
    /// <summary>Whether the shop has the drill.</summary>
    public bool Owns(DrillSize drill) => SizeFit.IsOwned(Shop.Drills, drill.Diameter);

    /// <summary>Whether the shop has a reamer of the size.</summary>
    public bool OwnsReamer => SizeFit.IsOwned(Shop.Reamers, Fit.Size);

    /// <summary>Largest drill of the shop that leaves the reamer what it needs; null when there is none.</summary>
    public DrillSize? OwnedToReam => NearestDrills.ToReam(Shop.Drills, Fit.Size);
}

/// <summary>Limits and clearance of a pin and its hole, steel for the reamer, drills beside a size; and the pins of a plan.</summary>
public static class Fits
{
    /// <summary>Class of the hole when none is named.</summary>
    public const string UsualHole = "H7";

    /// <summary>Class of the pin when none is named.</summary>
    public const string UsualPin = "h6";

    /// <summary>Works up one size.</summary>
    /// <param name="size">The size with its unit, or a drill's number or letter.</param>
    /// <param name="hole">Class of the hole; null: the usual.</param>
    /// <param name="pin">Class of the pin; null: the usual.</param>
    /// <param name="shopPath">Shop file; null: looked for.</param>
    public static Checked<FitAnswer> Of(string size, string? hole, string? pin, string? shopPath)
        => OpenWork.ShopAlone(shopPath).Then(shop => Of(size, hole, pin, shop));

    /// <summary>Works up one size for a shop.</summary>
    public static Checked<FitAnswer> Of(string size, string? hole, string? pin, Shop shop)
    {
        var read = LengthText.Read(size, 1, drills: true);
        if (!read.IsGood) return Checked<FitAnswer>.Bad(Fault.OfFile("SIZE", read.Message, read.Remedy));
        if (read.Value.Writing == LengthWriting.Bare) return Checked<FitAnswer>.Bad(Fault.OfFile("SIZE", $"'{size.Trim()}' has no unit", $"write {size.Trim()} mm or {size.Trim()} in"));
        return SizeFit.Of(read.Value.Length, hole ?? UsualHole, pin ?? UsualPin).Then(f => Checked<FitAnswer>.Good(new(f, shop)));
    }

    /// <summary>Works up a plan for its pins.</summary>
    public static Checked<Results> OfPlan(string planPath, string? shopPath) => OpenWork.Of(planPath, shopPath).Then(w => Checked<Results>.Good(w.WorkUp()));

    /// <summary>One size as JSON; names are stable between versions.</summary>
    public static string Json(FitAnswer a) => JsonText.Of(w =>
    {
        var f = a.Fit;
        w.Number("size_mm", f.Size.Mm);
        w.WriteString("shop", a.Shop.Name);
        w.WriteBoolean("assumed_shop", a.Shop.IsAssumed);
        w.Object("hole", () => WriteLimits(w, f.Hole));
        w.Object("pin", () => WriteLimits(w, f.Pin));
        WriteFit(w, f.Fit);
        w.Number("left_to_ream_least_mm", f.LeftToReam.Least.Mm);
        w.Number("left_to_ream_most_mm", f.LeftToReam.Most.Mm);
        w.Number("drilled_least_mm", f.Drilled?.Least.Mm);
        w.Number("drilled_most_mm", f.Drilled?.Most.Mm);
        w.Number("general_tolerance_medium_mm", GeneralTolerance.Of(f.Size, 'm')?.Mm);
        w.WriteBoolean("reamer_owned", a.OwnsReamer);
        w.WriteString("owned_drill_to_ream", a.OwnedToReam?.Name);
        w.List("drills", f.Drills, s =>
        {
            w.WriteString("series", s.Series);
            WriteDrill(w, a, "below", s.Below);
            WriteDrill(w, a, "above", s.Above);
            WriteDrill(w, a, "to_ream", s.ToReam);
        });
    });

    /// <summary>The pins of a plan as JSON; names are stable between versions.</summary>
    public static string Json(Results r) => JsonText.Of(w =>
    {
        w.WriteString("name", r.Plan.Name);
        w.WriteString("revision", r.Plan.Revision);
        w.WriteString("shop", r.Shop.Name);
        w.WriteBoolean("assumed_shop", r.Shop.IsAssumed);
        w.List("pins", PinFits.Of(r), p =>
        {
            w.WriteString("hole", p.Hole.Name);
            w.Number("diameter_mm", p.Hole.Diameter.Mm);
            w.WriteString("made_by", p.MadeBy);
            w.Number("made_least_mm", p.Made?.Least.Mm);
            w.Number("made_most_mm", p.Made?.Most.Mm);
            w.WriteString("drill", p.Drill.Name);
            w.WriteBoolean("drill_owned", p.DrillIsOwned);
            if (p.ReamerIsOwned is { } owned) w.WriteBoolean("reamer_owned", owned);
            else w.WriteNull("reamer_owned");
            w.Number("rod_mm", p.Rod?.Mm);
            w.WriteBoolean("rod_said", p.RodIsSaid);
            if (p.Fit is { } fit) WriteFit(w, fit);
            w.WriteString("room", PinFitText.Room(p));
        });
    });

    private static void WriteLimits(Utf8JsonWriter w, FitLimits l)
    {
        w.WriteString("class", l.Class.ToString());
        w.Number("least_mm", l.Least.Mm);
        w.Number("most_mm", l.Most.Mm);
        w.Number("least_in", l.Least.Inches);
        w.Number("most_in", l.Most.Inches);
    }

    private static void WriteFit(Utf8JsonWriter w, FitResult fit)
    {
        w.Number("clearance_least_mm", fit.LeastClearance.Mm);
        w.Number("clearance_most_mm", fit.MostClearance.Mm);
        w.WriteString("fit", fit.Says);
    }

    private static void WriteDrill(Utf8JsonWriter w, FitAnswer a, string name, DrillSize? drill)
    {
        if (drill is null)
        {
            w.WriteNull(name);
            return;
        }

        w.Object(name, () =>
        {
            w.WriteString("drill", drill.Name);
            w.Number("diameter_mm", drill.Diameter.Mm);
            w.Number("off_mm", drill.Diameter.Mm - a.Fit.Size.Mm);
            w.Number("off_in", drill.Diameter.Inches - a.Fit.Size.Inches);
            w.WriteBoolean("owned", a.Owns(drill));
        });
    }
}
