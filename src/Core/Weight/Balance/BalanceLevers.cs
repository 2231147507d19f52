using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>The levers a plan has for weight and balance. Limits are common practice: no tang under 1 mm, no tip under 0.6 mm or 0.2 mm over the edge, steel as wide as the stock is thick left beside a hole, scales of 3 mm and more.</summary>
public static class BalanceLevers
{
    private const double LeastTangMm = 1, LeastTipMm = 0.6, OverEdgeMm = 0.2, LeastScaleMm = 3, LeastHoleMm = 2;

    /// <summary>Whether a lever is one of the two that only add weight.</summary>
    public static bool IsAddedWeight(BalanceLever lever) => lever.IsWeight;

    /// <summary>Those a plan has, in the order a maker would think of them.</summary>
    /// <param name="r">The plan worked up.</param>
    public static ImmutableArray<BalanceLever> Of(Results r)
    {
        var plan = r.Plan;
        var levers = ImmutableArray.CreateBuilder<BalanceLever>();
        var way = HandleEnd.Of(plan);
        if (way is { } handle)
        {
            Add(Taper(plan, handle, toTang: true));
            Add(Taper(plan, handle, toTang: false));
        }

        if (r.Measured.IsDefaultOrEmpty) foreach (var use in (HoleUse[])[HoleUse.Lightening, HoleUse.Glue]) Add(Holes(r, use));
        Add(Scales(plan));
        Add(Stock(plan));
        Add(Height(plan));
        if (way is { } end)
        {
            levers.Add(Weight(plan, "weight-front", "weight added where the handle begins", end.FrontMm));
            levers.Add(Weight(plan, "weight-rear", "weight added at the butt", end.ButtMm));
        }

        return levers.ToImmutable();

        void Add(BalanceLever? lever)
        {
            if (lever is not null && lever.Range > 1e-6) levers.Add(lever);
        }
    }

    private static BalanceLever? Taper(Plan plan, HandleEnd handle, bool toTang)
    {
        var stock = plan.Stock.Thickness.Mm;
        var old = toTang ? plan.TangTaper : plan.DistalTaper;
        var taper = old ?? new Taper(Length.OfMm(toTang ? handle.FrontMm : handle.BladeMm), Length.OfMm(toTang ? handle.ButtMm : handle.TipMm), plan.Stock.Thickness);
        if (Math.Abs(taper.Ends.Mm - taper.Starts.Mm) < 1) return null;
        var least = toTang ? LeastTangMm : Math.Max(LeastTipMm, (plan.Bevel?.EdgeFinished.Mm ?? 0) + OverEdgeMm);
        var (name, limits) = toTang ? ("tang thickness at the butt", "no thinner than 1 mm") : ("thickness at the tip", $"no thinner than {Shown.Trimmed(least, 2)} mm");
        return new(toTang ? "tang-taper" : "distal-taper", name, false, Math.Min(stock, taper.Thickness.Mm), Math.Min(least, Math.Min(stock, taper.Thickness.Mm)), stock, limits + ", no thicker than the bar", $"[{(toTang ? "tang_taper" : "distal_taper")}] starts = {Shown.Trimmed(In(plan, taper.Starts), 3)}, thickness = {{0}}")
        {
            Set = (p, v) =>
            {
                var set = taper with { Thickness = Length.OfMm(v) };
                return toTang ? p with { TangTaper = set } : p with { DistalTaper = set };
            },
            Touches = LeverTouches.Faces | LeverTouches.Bevel,
        };
    }

    private static BalanceLever? Holes(Results r, HoleUse use)
    {
        var holes = r.Holes.Where(h => h.Use == use).ToArray();
        if (holes.Length == 0) return null;
        var (now, smallest) = (holes.Max(h => h.Diameter.Mm), holes.Min(h => h.Diameter.Mm));
        var more = HoleGrowth.MostMm(r, use);
        var word = use == HoleUse.Glue ? "glue" : "lightening";
        var name = holes.Length == 1 ? $"{word} hole" : $"{holes.Length} {word} holes{(now - smallest > 1e-6 ? ", the largest" : "")}";
        return new($"holes-{word}", name, false, now, now - Math.Max(0, smallest - LeastHoleMm), now + more, "steel beside them no narrower than the stock is thick", now - smallest > 1e-6 ? "the largest {0}, the others as much more or less" : "diameter = {0} for each")
        {
            Set = (p, v) => p with { Holes = [.. p.Holes.Select(h => h.Use != use ? h : Grown(h, v - now))] },
            Touches = LeverTouches.Holes | LeverTouches.Bevel | LeverTouches.BrokenEdges,
        };
    }

    private static HoleEntry Grown(HoleEntry entry, double byMm) => entry switch
    {
        Hole h => h with { Diameter = Length.OfMm(h.Diameter.Mm + byMm) },
        HoleRow row => row with { Diameters = [.. row.Diameters.Select(d => Length.OfMm(d.Mm + byMm))] },
        _ => entry,
    };

    // what has a thickness is as heavy as it is thick: scales, and pins as long as the scales are thick
    private static BalanceLever? Scales(Plan plan)
    {
        if (plan.Scales is { IsShaped: true, Thickness: { } thick } scales) return Shaped(scales, thick.Mm);
        var first = plan.AddedMasses.FirstOrDefault(m => m.Thickness is not null && m.Over is not null) ?? plan.AddedMasses.FirstOrDefault(m => m.Thickness is not null);
        if (first?.Thickness is not { } now) return null;
        var thinnest = plan.AddedMasses.Min(m => m.Thickness?.Mm ?? now.Mm);
        var least = Math.Min(now.Mm, Math.Max(Math.Max(LeastScaleMm, 0.5 * now.Mm), now.Mm - (0.9 * thinnest)));
        return new("scales", "thickness of each scale, pins with it", false, now.Mm, least, 1.5 * now.Mm, "no thinner than 3 mm or half as now, no thicker than 1.5 times as now", "thickness = {0}, mass in proportion")
        {
            Set = (p, v) => p with { AddedMasses = [.. p.AddedMasses.Select(m => m.Thickness is not { } t ? m : m with { Thickness = Length.OfMm(t.Mm + v - now.Mm), Weight = m.Weight is { } w ? Mass.OfGrams(w.Grams * (t.Mm + v - now.Mm) / t.Mm) : null })] },
        };
    }

    private static BalanceLever? Shaped(ScalesPlan scales, double now)
    {
        var thinnest = scales.Stations.IsEmpty ? now : scales.Stations.Min(s => s.Thickness.Mm);
        var least = Math.Min(now, Math.Max(Math.Max(LeastScaleMm, 0.5 * now), now - (0.9 * thinnest)));
        return new("scales", "thickness of each scale, pins with it", false, now, least, 1.5 * now, "no thinner than 3 mm or half as now, no thicker than 1.5 times as now", scales.Stations.IsEmpty ? "[scales] thickness = {0}" : "[scales] thickness_at: {0} at the thickest place, the others as much more or less")
        {
            Set = (p, v) => p with { Scales = scales with { Thickness = Length.OfMm(v), Stations = [.. scales.Stations.Select(s => s with { Thickness = Length.OfMm(s.Thickness.Mm + v - now) })] } },
        };
    }

    private static BalanceLever? Stock(Plan plan)
    {
        var now = plan.Stock.Thickness.Mm;
        var least = Math.Max(0.6 * now, Math.Max(plan.Bevel?.EdgeFinished.Mm ?? 0, plan.Bevel?.EdgeBeforeHardening?.Mm ?? 0) + OverEdgeMm);
        least = Math.Max(least, Math.Max(plan.TangTaper?.Thickness.Mm ?? 0, plan.DistalTaper?.Thickness.Mm ?? 0));
        if (least >= now) return null;
        return new("stock", "thickness of the bar", false, now, least, 1.6 * now, "from 0.6 to 1.6 of what it is now", "[stock] thickness = {0}")
        {
            Set = (p, v) => p with
            {
                Stock = p.Stock with { Thickness = Length.OfMm(v) },

                // a taper that takes nothing goes on taking nothing
                TangTaper = p.TangTaper is { } t && t.Thickness.Mm >= p.Stock.Thickness.Mm - 1e-9 ? null : p.TangTaper,
                DistalTaper = p.DistalTaper is { } d && d.Thickness.Mm >= p.Stock.Thickness.Mm - 1e-9 ? null : p.DistalTaper,
            },
            Touches = LeverTouches.Faces | LeverTouches.Bevel | LeverTouches.BrokenEdges,
        };
    }

    private static BalanceLever? Height(Plan plan)
    {
        if (plan.Bevel?.Height is not { } h) return null;
        var most = Math.Max(h.Mm, Math.Min(2 * h.Mm, 0.95 * Math.Min(plan.Outline.Bounds.Height, plan.Outline.Bounds.Width)));
        return new("bevel-height", "height of the bevel", false, h.Mm, 0.4 * h.Mm, most, "from 0.4 to twice as now, no higher than the piece", "[bevel] height = {0}")
        {
            Set = (p, v) => p with { Bevel = p.Bevel! with { Height = Length.OfMm(v) } },
            Touches = LeverTouches.Bevel,
        };
    }

    private static BalanceLever Weight(Plan plan, string key, string name, double x)
        => new(key, name, true, 0, 0, 100, "100 g at most", $"[[added_mass]] mass = \"{{0}} g\", at x {Shown.Trimmed(In(plan, Length.OfMm(x)), 3)}")
        {
            Set = (p, v) => p with { AddedMasses = p.AddedMasses.Add(new AddedMass(key, Mass.OfGrams(v), null, null, 1, new Point(x, p.Outline.Bounds.Centre.Y), null)) },
        };

    private static double In(Plan plan, Length l) => plan.Units == LengthUnit.Inch ? l.Inches : l.Mm;
}
