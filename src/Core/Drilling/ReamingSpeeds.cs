using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Speed of a reamer: half to two thirds of the drill's; feed two to three times.</summary>
[Formula("cutting speed of a reamer", "machinerys-handbook-31", "high-speed steel reamers in steel; the ratio of the handbook's two columns")]
public static class ReamingSpeeds
{
    /// <summary>Feed over that of a drill of the size; common practice.</summary>
    public const double FeedFactor = 2.5;

    /// <summary>The band from that of the drill.</summary>
    public static Estimate<CuttingSpeed> For(Estimate<CuttingSpeed> drill)
    {
        var (low, high) = (drill.Low.MetresPerMin / 2, drill.High.MetresPerMin * 2 / 3);
        return new(CuttingSpeed.OfMetresPerMin((low + high) / 2), CuttingSpeed.OfMetresPerMin(low), CuttingSpeed.OfMetresPerMin(high), "machinerys-handbook-31");
    }
}
