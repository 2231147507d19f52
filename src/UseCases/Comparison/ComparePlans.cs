using System.Text.Json;
using Tangwright.Core;
using Tangwright.Documents;
using Tangwright.Foundation;

namespace Tangwright.UseCases;

/// <summary>Two plans and what is not the same in them.</summary>
/// <param name="Was">The first, worked up.</param>
/// <param name="Now">The second, worked up in the same shop.</param>
/// <param name="Difference">What changed from the first to the second.</param>
public sealed record ComparedPlans(Results Was, Results Now, PlanDifference Difference);

/// <summary>What changed from one plan file to another.</summary>
public static class ComparePlans
{
    /// <summary>Works both up in one shop: the one named, else that of the second plan, else that of the first, so that a kept copy in a folder of its own is not judged by an assumed one.</summary>
    public static Checked<ComparedPlans> Of(string wasPath, string nowPath, string? shopPath)
    {
        var (was, now) = (OpenWork.Of(wasPath, shopPath), OpenWork.Of(nowPath, shopPath));
        if (!was.IsGood || !now.IsGood) return Checked<ComparedPlans>.Bad(was.Faults.AddRange(now.Faults));
        var (a, b) = (was.Value, now.Value);
        var shop = b.Shop.IsAssumed ? a.Shop : b.Shop;

        // a shop's own steels are known to whichever plan lies beside it
        Steel? SteelOf(OpenedWork one, OpenedWork other) => one.Steel ?? (other.Plan.Stock.Steel == one.Plan.Stock.Steel ? other.Steel : null);
        var (before, after) = ((a with { Shop = shop, Steel = SteelOf(a, b) }).WorkUp(), (b with { Shop = shop, Steel = SteelOf(b, a) }).WorkUp());
        return Checked<ComparedPlans>.Good(new ComparedPlans(before, after, PlanDifference.Of(before, after)));
    }

    /// <summary>The difference as JSON; names are stable between versions.</summary>
    public static string Json(ComparedPlans compared) => JsonText.Of(w =>
    {
        var d = compared.Difference;
        w.Object("was", () => Head(w, compared.Was.Plan));
        w.Object("now", () => Head(w, compared.Now.Plan));
        if (d.Outline is { } o)
        {
            w.Object("outline", () =>
            {
                w.WriteNumber("points_was", o.PointsWas);
                w.WriteNumber("points_now", o.PointsNow);
                w.Number("apart_mm", o.Apart.Mm);
                w.Place("apart_at", o.ApartAt);
                w.List("moved", o.Moved, p =>
                {
                    w.WriteNumber("point", p.Number);
                    w.Place("was", p.Was);
                    w.Place("now", p.Now);
                });
            });
        }
        else
        {
            w.WriteNull("outline");
        }

        w.List("holes", d.Holes, h =>
        {
            w.WriteString("name", h.Name);
            Hole(w, "was", h.Was);
            Hole(w, "now", h.Now);
            w.Number("moved_x_mm", h.Moved?.X);
            w.Number("moved_y_mm", h.Moved?.Y);
        });
        w.List("values", d.Values, v =>
        {
            w.WriteString("name", v.Name);
            w.WriteString("was", v.Was);
            w.WriteString("now", v.Now);
        });
        w.List("figures", d.Figures, f =>
        {
            w.WriteString("key", f.Key);
            w.Number("was", f.Was);
            w.Number("now", f.Now);
        });
        w.Object("findings", () =>
        {
            w.List("gone", d.Findings.Gone, f => Finding(w, f));
            w.List("new", d.Findings.New, f => Finding(w, f));
            w.List("changed", d.Findings.Changed, c =>
            {
                Finding(w, c.Now);
                w.WriteString("found_was", c.Was.Found);
            });
        });
    });

    private static void Head(Utf8JsonWriter w, Plan plan)
    {
        w.WriteString("name", plan.Name);
        w.WriteString("revision", plan.Revision);
    }

    private static void Hole(Utf8JsonWriter w, string name, PlacedHole? hole)
    {
        if (hole is null)
        {
            w.WriteNull(name);
            return;
        }

        w.Object(name, () =>
        {
            w.Number("x_mm", hole.At.X);
            w.Number("y_mm", hole.At.Y);
            w.Number("diameter_mm", hole.Diameter.Mm);
            w.WriteString("use", FigureText.Of(hole.Use));
            w.WriteString("make", FigureText.Of(hole.Make));
        });
    }

    private static void Finding(Utf8JsonWriter w, Finding f)
    {
        w.WriteString("code", f.Code);
        w.WriteString("severity", CheckPlan.SeverityWord(f.Severity));
        w.WriteString("where", f.Where);
        w.WriteString("found", f.Found);
    }
}
