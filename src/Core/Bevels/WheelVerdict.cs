using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>What a wheel does to a hollow bevel.</summary>
public enum WheelAnswer
{
    /// <summary>Nothing behind the edge is thinner than the edge.</summary>
    Good,

    /// <summary>A little thinner, 95 % or more of the edge left.</summary>
    GoodWithNote,

    /// <summary>Thinner than 95 % of the edge.</summary>
    Thin,

    /// <summary>Thinner than half of the edge.</summary>
    TooThin,

    /// <summary>The wheels meet behind the edge.</summary>
    CutsThrough,
}

/// <summary>A wheel judged.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Diameter">Diameter over the belt.</param>
/// <param name="Answer">The answer.</param>
/// <param name="Thinnest">Least thickness behind the edge; that of the edge when nothing is thinner; null when cut through.</param>
/// <param name="ThinnestUp">How high above the edge that is.</param>
/// <param name="Depth">Depth of the hollow.</param>
public sealed record WheelVerdict(string Name, Length Diameter, WheelAnswer Answer, Length? Thinnest, Length ThinnestUp, Length Depth)
{
    private const double NoteMm = 0.001;

    /// <summary>Share of the edge under which it is thin.</summary>
    public const double ThinShare = 0.95;

    /// <summary>Share of the edge under which it is refused.</summary>
    public const double RefusedShare = 0.5;

    /// <summary>Greatest height with this wheel and nothing behind the edge thinner than it.</summary>
    public Length MostHeight { get; init; }

    /// <summary>Least stock for this wheel and the height asked about; null when the wheel is smaller than the height.</summary>
    public Length? LeastStock { get; init; }

    /// <summary>Judges a wheel.</summary>
    public static WheelVerdict Of(string name, Length diameter, Length stock, Length edge, Length height, bool oneSided = false)
    {
        // a face ground alone rises as much as the two faces of a bevel twice as thick
        var (twice, radius) = (oneSided ? 2.0 : 1, 0.5 * diameter.Mm);
        var face = new HollowFace(twice * stock.Mm, twice * edge.Mm, height.Mm, radius);
        var (mostHeight, leastStock) = (Length.OfMm(HollowFace.MostHeightMm(face.StockMm, face.EdgeMm, radius)), HollowFace.LeastStockMm(face.EdgeMm, height.Mm, radius) is { } least ? Length.OfMm(least / twice) : (Length?)null);
        if (!face.IsPossible) return new WheelVerdict(name, diameter, WheelAnswer.CutsThrough, null, Length.OfMm(0.5 * height.Mm), Length.OfMm(0.5 * diameter.Mm)) { MostHeight = mostHeight, LeastStock = leastStock };
        var (up, thin) = face.Thinnest;
        var t = thin / twice;
        var answer = up <= 0 ? WheelAnswer.Good
            : t <= 0 ? WheelAnswer.CutsThrough
            : t < RefusedShare * edge.Mm ? WheelAnswer.TooThin
            : t < ThinShare * edge.Mm ? WheelAnswer.Thin
            : WheelAnswer.GoodWithNote;
        return new WheelVerdict(name, diameter, answer, t <= 0 ? null : Length.OfMm(t), Length.OfMm(up), Length.OfMm(face.DepthMm)) { MostHeight = mostHeight, LeastStock = leastStock };
    }

    /// <summary>All wheels of a shop and the plan's own, largest first.</summary>
    public static ImmutableArray<WheelVerdict> All(Results r, Length height)
    {
        var (stock, edge) = (r.Plan.Stock.Thickness, r.Plan.Bevel!.EdgeFinished);
        if (!(edge < stock)) return [];
        var wheels = r.Shop.Wheels.Select(w => (w.Name, w.Diameter)).ToList();
        if (r.Plan.Bevel.Wheel is { } own && !wheels.Exists(w => Math.Abs(w.Diameter.Mm - own.Mm) < 0.5)) wheels.Add(("the plan's wheel", own));
        return [.. wheels.OrderByDescending(w => w.Diameter.Mm).Select(w => Of(w.Name, w.Diameter, stock, edge, height, r.Plan.Bevel.OneSided))];
    }

    /// <summary>Least diameter with which nothing behind the edge is thinner than it.</summary>
    public static Length LeastDiameter(Length stock, Length edge, Length height, bool oneSided = false)
        => Length.OfMm(2 * HollowFace.LeastRadiusMm((oneSided ? 2 : 1) * stock.Mm, (oneSided ? 2 : 1) * edge.Mm, height.Mm));

    /// <summary>Whether it misses the strict rule by less than a hair.</summary>
    public bool IsByAHair(Length edge) => Answer == WheelAnswer.GoodWithNote && Thinnest is { } t && edge.Mm - t.Mm < NoteMm;
}
