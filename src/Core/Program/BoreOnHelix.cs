using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>A hole bored with an end mill: down on a helix, one flat circle at the bottom, to the middle and out; a wide hole on several helices from the middle outward, so that no core comes loose. Counter-clockwise inside a hole is climb milling.</summary>
internal static class BoreOnHelix
{
    /// <summary>Slope of the helix, degrees; common practice in steel 1 to 3.</summary>
    private const double SlopeDegrees = 1.5;

    /// <summary>Radius of the first helix of a wide hole as a share of the tool: no core is left.</summary>
    private const double FirstShare = 0.45;

    /// <summary>How far the next helix lies outside the one before as a share of the tool; common practice.</summary>
    private const double NextShare = 0.4;

    /// <summary>How far under the stock it ends, mm.</summary>
    private const double ThroughMm = 0.3;

    /// <summary>Height over the stock where the helix starts, mm.</summary>
    private const double StartMm = 0.2;

    private const double MillimetresOver = 1;

    public static IEnumerable<ToolpathStep> Steps(Length hole, Length tool, Point centre, double thicknessMm, double straightMmPerMin, double safeMm)
        => Radii(hole, tool).SelectMany(r => Helix(r, tool, centre, -thicknessMm - ThroughMm, straightMmPerMin, safeMm));

    private static IEnumerable<double> Radii(Length hole, Length tool)
    {
        var (first, last) = (FirstShare * tool.Mm, (hole.Mm - tool.Mm) / 2);
        var more = last <= first ? 0 : (int)Math.Ceiling((last - first) / (NextShare * tool.Mm));
        for (var i = 0; i < more; i++) yield return first + ((last - first) * i / more);
        yield return last;
    }

    private static IEnumerable<ToolpathStep> Helix(double radius, Length tool, Point centre, double bottom, double straightMmPerMin, double safeMm)
    {
        var feed = Math.Round(CentreFeed.Inside(straightMmPerMin, Length.OfMm((2 * radius) + tool.Mm), tool), 1);
        var turns = (int)Math.Ceiling((StartMm - bottom) / (2 * Math.PI * radius * Math.Tan(SlopeDegrees * Math.PI / 180)));
        var start = centre + new Point(radius, 0);
        SpacePoint At(double z) => new(start.X, start.Y, z);
        yield return new RapidStep(At(safeMm));
        yield return new RapidStep(At(MillimetresOver));
        yield return new FeedStep(At(StartMm), feed);
        for (var i = 1; i <= turns; i++) yield return new ArcStep(At(StartMm + ((bottom - StartMm) * i / turns)), centre, true, feed);
        yield return new ArcStep(At(bottom), centre, true, feed);
        yield return new FeedStep(new(centre.X, centre.Y, bottom), feed);
        yield return new RapidStep(new(centre.X, centre.Y, safeMm));
    }
}
