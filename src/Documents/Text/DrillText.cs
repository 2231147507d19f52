using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>Which drill or reamer of the shop makes a hole, in the trade's names.</summary>
public static class DrillText
{
    /// <summary>Sizes this close are the same drill, mm: half the last figure of an inch size in thousandths is 0.0127 mm.</summary>
    private const double SameMm = 0.013;

    /// <summary>"#30", "ream 5 mm", or "none; 15.5 or 16.5 mm".</summary>
    /// <param name="hole">The hole.</param>
    /// <param name="shop">The shop.</param>
    public static string For(PlacedHole hole, Shop shop)
    {
        if (hole.Make == HoleMake.Bore) return "bore to size";
        var owned = hole.Make == HoleMake.Ream ? shop.Reamers : shop.Drills;
        var word = hole.Make == HoleMake.Ream ? "ream " : "drill ";
        if (owned.IsDefaultOrEmpty) return hole.Make == HoleMake.Ream ? "no reamer" : "no drill";
        var nearest = owned.MinBy(d => Math.Abs((d.Diameter - hole.Diameter).Mm))!;
        if (Math.Abs((nearest.Diameter - hole.Diameter).Mm) <= SameMm) return word + nearest.Name;
        var smaller = owned.LastOrDefault(d => d.Diameter < hole.Diameter);
        var larger = owned.FirstOrDefault(d => d.Diameter > hole.Diameter);
        return "none: " + string.Join(" or ", new[] { smaller, larger }.OfType<DrillSize>().Select(d => d.Name));
    }

    /// <summary>Use and making in a few words: "lightening", "pin, ream".</summary>
    public static string Purpose(PlacedHole hole) => hole.Make switch
    {
        HoleMake.Ream => FigureText.Of(hole.Use) + ", ream",
        HoleMake.Bore => FigureText.Of(hole.Use) + ", bore",
        _ => FigureText.Of(hole.Use),
    };
}
