using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>Which drill or reamer of the shop makes a hole, in the trade's names.</summary>
public static class DrillText
{
    /// <summary>Sizes this close are the same drill, mm: half the last figure of an inch size in thousandths is 0.0127 mm.</summary>
    private const double SameMm = 0.013;

    /// <summary>The drill, reamer or way: "drill #30", "ream 5 mm", "bore to size"; when none of the size is owned, that and the nearest owned ones.</summary>
    /// <param name="hole">The hole.</param>
    /// <param name="shop">The shop.</param>
    public static (string Drill, string Nearest) For(PlacedHole hole, Shop shop)
    {
        if (hole.Make == HoleMake.Bore) return ("bore to size", "");
        var (owned, word) = hole.Make == HoleMake.Ream ? (shop.Reamers, "ream") : (shop.Drills, "drill");
        var near = owned.IsDefaultOrEmpty ? null : owned.MinBy(d => Math.Abs((d.Diameter - hole.Diameter).Mm));
        if (near is not null && Math.Abs((near.Diameter - hole.Diameter).Mm) <= SameMm) return ($"{word} {near.Name}", "");
        if (near is null) return (hole.Make == HoleMake.Ream ? "NO REAMER OWNED" : "NO DRILL OWNED", "");
        DrillSize?[] around = [owned.LastOrDefault(d => d.Diameter < hole.Diameter), owned.FirstOrDefault(d => d.Diameter > hole.Diameter)];
        return ("NOT OWNED; near", string.Join(", ", around.OfType<DrillSize>().Select(d => d.Name)));
    }

    /// <summary>Use and making in a few words: "lightening", "pin, ream".</summary>
    public static string Purpose(PlacedHole hole) => hole.Make switch
    {
        HoleMake.Ream => FigureText.Of(hole.Use) + ", ream",
        HoleMake.Bore => FigureText.Of(hole.Use) + ", bore",
        _ => FigureText.Of(hole.Use),
    };
}
