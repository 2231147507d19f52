using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>One figure with its name.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Value">The figure with its unit.</param>
public sealed record FigureLine(string Name, string Value)
{
    /// <summary>What stands for "found" where only a measurement tells.</summary>
    public const string MeasureIt = "measure it";

    /// <summary>The figures of the piece, as the cover and the command line show them.</summary>
    public static ImmutableArray<FigureLine> OfPiece(Results results, UnitsShown units)
    {
        var lines = ImmutableArray.CreateBuilder<FigureLine>();
        var o = results.Outline;
        lines.Add(new("Length", FigureText.Size(o.Length, units)));
        lines.Add(new("Height", FigureText.Size(o.Height, units)));
        lines.Add(new("Outline, area", FigureText.Surface(o.Area, units)));
        lines.Add(new("Outline, run round", FigureText.Size(o.Perimeter, units)));
        lines.Add(new("Holes", o.HoleCount == 0 ? "none" : $"{o.HoleCount}, {FigureText.Surface(o.HoleArea, units)} in all"));
        if (results.Striking is { } s)
        {
            lines.Add(new("Inertia, mid grip", $"{Shown.Number(s.InertiaKgM2 * 1e4, 2)} kg·cm²"));
            lines.Add(new("Grip to percussion", FigureText.Size(s.PivotToPercussion, units)));
        }

        return lines.ToImmutable();
    }

    /// <summary>What the plan wants beside what was found: name, wanted, found, and whether it passes.</summary>
    public static ImmutableArray<TargetLine> OfTargets(Results results, UnitsShown units)
    {
        var lines = ImmutableArray.CreateBuilder<TargetLine>();
        var target = results.Plan.Target;
        StageFigures? finished = results.Stages.IsDefaultOrEmpty ? null : results.Stages[^1];
        if (target.Weight is { } w)
        {
            var wanted = Wanted(units, Shown.Trimmed(w.Grams, 1), Shown.Trimmed(w.Ounces, 2), target.WeightTolerance is { } tol ? (Shown.Trimmed(tol.Grams, 1), Shown.Trimmed(tol.Ounces, 2)) : null, "g", "oz");
            var found = finished?.Mass;
            lines.Add(new("Finished weight", wanted, found is { } m ? FigureText.Weight(m, units) : "not known", found is { } f && target.WeightTolerance is { } t ? Math.Abs(f.Grams - w.Grams) <= t.Grams : null));
        }

        if (target.BalanceFromDatum is { } b)
        {
            var wanted = Wanted(units, Shown.Trimmed(b.Mm, 2), Shown.Trimmed(b.Inches, 3), target.BalanceTolerance is { } tol ? (Shown.Trimmed(tol.Mm, 2), Shown.Trimmed(tol.Inches, 3)) : null, "mm", "in");
            var found = finished?.BalanceFromDatum;
            lines.Add(new("Balance from datum", wanted, found is { } x ? FigureText.Size(x, units) : "not known", found is { } f && target.BalanceTolerance is { } t ? Math.Abs((f - b).Mm) <= t.Mm : null));
        }

        if (target.Hardness is { } h) lines.Add(new("Hardness", $"{Shown.Trimmed(h.LowHrc, 1)} to {Shown.Trimmed(h.HighHrc, 1)} HRC", MeasureIt, null));
        return lines.ToImmutable();
    }

    /// <summary>The bevel and its edge: grind, height, when it is ground, edge thickness, sharpening angle; empty without a bevel.</summary>
    public static ImmutableArray<FigureLine> OfBevel(Plan plan, UnitsShown units)
    {
        if (plan.Bevel is not { } bevel) return [];
        var lines = ImmutableArray.CreateBuilder<FigureLine>();
        var grind = bevel switch
        {
            { Grind: Grind.Flat } => "flat",
            { Grind: Grind.Hollow, Wheel: { } wheel } => $"hollow on a {FigureText.Size(wheel, units)} wheel",
            { Grind: Grind.Hollow } => "hollow",
            { Radius: { } radius } => $"convex, radius {FigureText.Size(radius, units)}",
            _ => "convex",
        };
        var tip = plan.DistalTaper is { } distal ? $", tip {FigureText.Size(distal.Thickness, units)}" : "";
        var butt = plan.TangTaper is { } tang ? $", butt {FigureText.Size(tang.Thickness, units)}" : "";
        lines.Add(new("Stock", FigureText.Size(plan.Stock.Thickness, units) + tip + butt));
        lines.Add(new("Grind", bevel.OneSided ? grind + ", one face" : grind + ", both faces"));
        lines.Add(new("Height", bevel.Height is { } h ? FigureText.Size(h, units) : bevel.AnglePerSide is { } constant ? $"by angle, {Shown.PerSide(constant, 1)}" : "full, edge to spine"));
        lines.Add(new("Ground", bevel.Ground == GroundWhen.BeforeHardening ? "before hardening" : "after hardening"));
        if (bevel.EdgeBeforeHardening is { } before) lines.Add(new("Edge at quench", FigureText.Size(before, units)));
        lines.Add(new("Edge finished", FigureText.Size(bevel.EdgeFinished, units)));
        if (bevel.SharpenPerSide is { } angle) lines.Add(new("Sharpen", Shown.PerSide(angle, 1)));
        return lines.ToImmutable();
    }

    /// <summary>"450 ± 15 g (15.87 ± 0.53 oz)": each unit once.</summary>
    private static string Wanted(UnitsShown units, string metric, string inch, (string Metric, string Inch)? tolerance, string metricUnit, string inchUnit)
    {
        var m = (tolerance is { } t ? $"{metric} ± {t.Metric}" : metric) + " " + metricUnit;
        var i = (tolerance is { } u ? $"{inch} ± {u.Inch}" : inch) + " " + inchUnit;
        return units switch { UnitsShown.Mm => m, UnitsShown.Inch => i, _ => $"{m} ({i})" };
    }
}

/// <summary>Something the maker wants beside what was found.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Wanted">Wanted, with tolerance.</param>
/// <param name="Found">Found.</param>
/// <param name="Within">Whether it lies within the tolerance; null when that cannot be said.</param>
public sealed record TargetLine(string Name, string Wanted, string Found, bool? Within);
