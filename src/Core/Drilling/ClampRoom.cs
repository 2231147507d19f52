using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Is there room for two clamps that the chuck and its handles pass? Clamps as boxes along the long edges of the stock.</summary>
public static class ClampRoom
{
    /// <summary>Half the width of a chuck with room for its key, mm; common practice.</summary>
    private const double ChuckMm = 25;

    /// <summary>A drill stands out of its chuck by at least this, mm; a clamp no higher passes under the chuck; common practice.</summary>
    private const double DrillStandsOutMm = 40;

    /// <summary>Clear of the drill itself, mm; common practice.</summary>
    private const double ClearMm = 3;

    /// <summary>Steps in which places along an edge are tried, mm.</summary>
    private const double StepMm = 2;

    /// <summary>The finding when no two clamps fit; null when they do, or no clamps are written down.</summary>
    internal static Finding? Blocked(Results r, Machine machine, PlacedHole[] holes)
    {
        if (r.Shop.Clamps.IsDefaultOrEmpty || machine.Kind == MachineKind.DrillingVise || r.Shop.Clamps.Any(c => Fits(c, r.Bench.StockBox, holes))) return null;
        var clamp = r.Shop.Clamps.MinBy(c => c.Depth.Mm)!;
        var tall = clamp.Height.Mm > DrillStandsOutMm;
        return HoldingFindings.Finding(
            FindingCodes.ClampInTheWay,
            holes,
            $"No two places along the edges are clear for a {clamp.Name} at the {machine.Name}: it stands in the way of the {(tall ? "chuck" : "drill")}.",
            $"{clamp.Name} {Shown.Both(clamp.Width)} wide, reaches {Shown.Both(clamp.Depth)} onto the stock, stands {Shown.Both(clamp.Height)} high",
            tall ? $"{Shown.Both(Length.OfMm(ChuckMm))} clear of every centre" : $"{Shown.Both(Length.OfMm(ClearMm))} clear of every hole",
            SourceTag.CommonPractice,
            "leave more bar beyond the piece for the clamps (end_allowance), clamp lower, or move a clamp when its hole comes: two always hold");
    }

    /// <summary>Whether two clamps of a kind fit, half the stock apart at least.</summary>
    public static bool Fits(Clamp clamp, Box stock, IReadOnlyList<PlacedHole> holes)
    {
        var (first, last) = (double.PositiveInfinity, double.NegativeInfinity);
        for (var x = stock.MinX; x + clamp.Width.Mm <= stock.MaxX + 1e-9; x += StepMm)
        {
            if (!IsClear(clamp, x, stock.MinY, stock.MinY + clamp.Depth.Mm, holes) && !IsClear(clamp, x, stock.MaxY - clamp.Depth.Mm, stock.MaxY, holes)) continue;
            first = Math.Min(first, x);
            last = x;
        }

        return last - first >= 0.5 * stock.Width;
    }

    private static bool IsClear(Clamp clamp, double left, double low, double high, IReadOnlyList<PlacedHole> holes)
    {
        foreach (var hole in holes)
        {
            var dx = Math.Max(0, Math.Max(left - hole.At.X, hole.At.X - (left + clamp.Width.Mm)));
            var dy = Math.Max(0, Math.Max(low - hole.At.Y, hole.At.Y - high));
            var away = (0.5 * hole.Diameter.Mm) + ClearMm;
            if (clamp.Height.Mm > DrillStandsOutMm) away = Math.Max(away, ChuckMm);
            if (Math.Sqrt((dx * dx) + (dy * dy)) < away) return false;
        }

        return true;
    }
}
