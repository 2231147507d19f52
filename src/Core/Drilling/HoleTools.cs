using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Which tools of the shop a hole takes.</summary>
internal static class HoleTools
{
    /// <summary>An end mill wider than this share of its hole has no room for chips; common practice.</summary>
    public const double MostOfBoreShare = 0.8;

    /// <summary>The drill of a size: the owned one that is that size, else the size itself.</summary>
    public static DrillSize Drill(Shop shop, Length size)
        => Nearest(shop.Drills, size) is { } near && Math.Abs((near.Diameter - size).Mm) <= DrillFindings.SameSizeMm ? near : new DrillSize(Sized(size), size);

    /// <summary>The drill before the reamer: of those owned the largest that leaves enough; a drill that leaves the middle of what is wanted when none is owned.</summary>
    public static (DrillSize Size, bool IsOwned) BeforeReaming(Shop shop, Length reamed)
    {
        var fit = NearestDrills.ToReam(shop.Drills, reamed);
        if (fit is not null) return (fit, true);
        var (least, most) = ReamingStock.ByMm(reamed);
        var wanted = DrillSeries.OfMm(Math.Round(10 * (reamed.Mm - (0.5 * (least + most).Mm)), MidpointRounding.AwayFromZero) / 10);
        return (wanted, false);
    }

    /// <summary>The smallest spot drill; null when none is written down.</summary>
    public static PointedTool? Spot(Shop shop) => shop.SpotDrills.IsDefaultOrEmpty ? null : shop.SpotDrills[0];

    /// <summary>The smallest countersink wider than a hole; null when there is none.</summary>
    public static PointedTool? Countersink(Shop shop, Length hole) => shop.Countersinks.FirstOrDefault(c => c.Diameter > hole);

    /// <summary>The largest end mill that leaves room to run round in a hole; null when there is none.</summary>
    public static EndMill? ForBore(Shop shop, Length hole) => shop.EndMills.LastOrDefault(m => m.Diameter.Mm <= MostOfBoreShare * hole.Mm);

    /// <summary>Of a list the size nearest to one wanted; null when the list is empty.</summary>
    public static DrillSize? Nearest(IEnumerable<DrillSize> sizes, Length wanted) => sizes.MinBy(d => Math.Abs((d.Diameter - wanted).Mm));

    private static string Sized(Length size) => $"{Shown.Trimmed(size.Mm, 2)} mm";
}
