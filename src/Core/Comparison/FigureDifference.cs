using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>What a figure is a number of.</summary>
public enum FigureKind
{
    /// <summary>Length, mm.</summary>
    Length,

    /// <summary>Mass, g.</summary>
    Mass,

    /// <summary>Area, mm².</summary>
    Area,

    /// <summary>Volume, mm³.</summary>
    Volume,

    /// <summary>Moment of inertia, kg·m².</summary>
    Inertia,

    /// <summary>So many.</summary>
    Count,
}

/// <summary>A number of the piece that is not the same in two plans.</summary>
/// <param name="Key">Its stable name with its unit: "finished.mass_g".</param>
/// <param name="Kind">What it is a number of.</param>
/// <param name="Was">As it was, in the unit of its kind; null when it was not known.</param>
/// <param name="Now">As it is; null when it is not known.</param>
public sealed record FigureDifference(string Key, FigureKind Kind, double? Was, double? Now)
{
    /// <summary>A part in so many is no difference: the last bits of the arithmetic.</summary>
    private const double SameShare = 1e-9;

    /// <summary>Those that are not the same.</summary>
    public static ImmutableArray<FigureDifference> Of(Results was, Results now)
        => [.. All(was).Zip(All(now), (a, b) => new FigureDifference(b.Key, b.Kind, a.Value, b.Value)).Where(d => !IsSame(d.Was, d.Now))];

    private static bool IsSame(double? a, double? b)
        => a is { } x && b is { } y ? Math.Abs(x - y) <= SameShare * Math.Max(1, Math.Max(Math.Abs(x), Math.Abs(y))) : a is null && b is null;

    private static IEnumerable<(string Key, FigureKind Kind, double? Value)> All(Results r)
    {
        var finished = r.At(Core.Stage.Finished)!;
        var assembled = r.At(Core.Stage.Assembled);
        yield return ("assembled.mass_g", FigureKind.Mass, assembled?.Mass?.Grams);
        yield return ("assembled.balance_from_datum_mm", FigureKind.Length, assembled?.BalanceFromDatum.Mm);
        foreach (var s in r.Stages.Reverse().Where(s => s.Stage != Core.Stage.Assembled)) yield return (Stage(s.Stage) + ".mass_g", FigureKind.Mass, s.Mass?.Grams);
        yield return ("finished.balance_from_datum_mm", FigureKind.Length, finished.BalanceFromDatum.Mm);
        yield return ("finished.balance_across_from_datum_mm", FigureKind.Length, finished.BalanceAcrossFromDatum.Mm);
        yield return ("striking.pivot_to_percussion_mm", FigureKind.Length, r.Striking?.PivotToPercussion.Mm);
        yield return ("striking.inertia_kg_m2", FigureKind.Inertia, r.Striking?.InertiaKgM2);
        yield return ("outline.length_mm", FigureKind.Length, r.Outline.Length.Mm);
        yield return ("outline.height_mm", FigureKind.Length, r.Outline.Height.Mm);
        yield return ("outline.perimeter_mm", FigureKind.Length, r.Outline.Perimeter.Mm);
        yield return ("outline.area_mm2", FigureKind.Area, r.Outline.Area.Mm2);
        yield return ("holes.count", FigureKind.Count, r.Outline.HoleCount);
        yield return ("holes.area_mm2", FigureKind.Area, r.Outline.HoleArea.Mm2);
        yield return ("holes.least_web_mm", FigureKind.Length, LeastWeb.Of(r)?.Mm);
        yield return ("finished.volume_mm3", FigureKind.Volume, finished.Volume.Mm3);
    }

    private static string Stage(Stage stage) => stage switch
    {
        Core.Stage.Blank => "blank",
        Core.Stage.Profiled => "profiled",
        Core.Stage.Drilled => "drilled",
        Core.Stage.BeforeHardening => "before_hardening",
        _ => "finished",
    };
}
