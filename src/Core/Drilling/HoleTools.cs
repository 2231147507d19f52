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
        var (least, most) = StockToReam(reamed);
        var fit = shop.Drills.Where(d => (reamed - d.Diameter).Mm >= least - 1e-6 && (reamed - d.Diameter).Mm <= most + 1e-6).MaxBy(d => d.Diameter.Mm);
        if (fit is not null) return (fit, true);
        var wanted = DrillSeries.OfMm(Math.Round(10 * (reamed.Mm - (0.5 * (least + most))), MidpointRounding.AwayFromZero) / 10);
        return (wanted, false);
    }

    /// <summary>Steel to leave for the reamer on the diameter, mm: 0.15 to 0.25 up to 5 mm, 0.2 to 0.35 up to 20 mm, 0.3 to 0.55 above, what the drill cuts over counted; common practice.</summary>
    public static (double LeastMm, double MostMm) StockToReam(Length reamed)
        => reamed.Mm <= 5 ? (0.15, 0.25) : reamed.Mm <= 20 ? (0.2, 0.35) : (0.3, 0.55);

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
