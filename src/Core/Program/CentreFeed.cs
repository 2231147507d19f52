using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Feed of the tool's centre on an arc, so that its rim feeds as on a straight cut.</summary>
[Formula("feed of the centre of an end mill inside a hole, mm/min", SourceTag.CommonPractice, "Fc = F (D - d) / D")]
public static class CentreFeed
{
    /// <summary>Inside a hole.</summary>
    /// <param name="straightMmPerMin">Feed on a straight cut, mm/min.</param>
    /// <param name="hole">Diameter of the hole.</param>
    /// <param name="tool">Diameter of the tool.</param>
    public static double Inside(double straightMmPerMin, Length hole, Length tool) => straightMmPerMin * (hole.Mm - tool.Mm) / hole.Mm;
}
