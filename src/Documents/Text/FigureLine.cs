using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>One figure with its name.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Value">The figure with its unit.</param>
public sealed record FigureLine(string Name, string Value)
{
    /// <summary>The figures of the piece, as the cover and the command line show them.</summary>
    public static ImmutableArray<FigureLine> OfPiece(Results results, UnitsShown units)
    {
        var lines = ImmutableArray.CreateBuilder<FigureLine>();
        var o = results.Outline;
        lines.Add(new("Length", FigureText.Size(o.Length, units)));
        lines.Add(new("Height", FigureText.Size(o.Height, units)));
        lines.Add(new("Area inside the outline", FigureText.Surface(o.Area, units)));
        lines.Add(new("Length of the outline", FigureText.Size(o.Perimeter, units)));
        lines.Add(new("Holes", o.HoleCount == 0 ? "none" : $"{o.HoleCount}, {FigureText.Surface(o.HoleArea, units)} in all"));
        if (results.Striking is { } s)
        {
            lines.Add(new("Moment of inertia about mid grip", $"{Shown.Number(s.InertiaKgM2 * 1e4, 2)} kg·cm²"));
            lines.Add(new("Mid grip to percussion point", FigureText.Size(s.PivotToPercussion, units)));
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
            var wanted = FigureText.Weight(w, units) + (target.WeightTolerance is { } tol ? " ± " + FigureText.Weight(tol, units) : "");
            var found = finished?.Mass;
            lines.Add(new("Finished weight", wanted, found is { } m ? FigureText.Weight(m, units) : "not known", found is { } f && target.WeightTolerance is { } t ? Math.Abs(f.Grams - w.Grams) <= t.Grams : null));
        }

        if (target.BalanceFromDatum is { } b)
        {
            var wanted = FigureText.Size(b, units, brief: true) + (target.BalanceTolerance is { } tol ? " ± " + FigureText.Size(tol, units, brief: true) : "");
            var found = finished?.BalanceFromDatum;
            lines.Add(new("Balance from datum", wanted, found is { } x ? FigureText.Size(x, units) : "not known", found is { } f && target.BalanceTolerance is { } t ? Math.Abs((f - b).Mm) <= t.Mm : null));
        }

        if (target.Hardness is { } h) lines.Add(new("Hardness", $"{Shown.Trimmed(h.LowHrc, 1)} to {Shown.Trimmed(h.HighHrc, 1)} HRC", "measure after tempering", null));
        return lines.ToImmutable();
    }
}

/// <summary>Something the maker wants beside what was found.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Wanted">Wanted, with tolerance.</param>
/// <param name="Found">Found.</param>
/// <param name="Within">Whether it lies within the tolerance; null when that cannot be said.</param>
public sealed record TargetLine(string Name, string Wanted, string Found, bool? Within);
