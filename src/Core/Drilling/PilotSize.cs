using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Size of a pilot: not narrower than the chisel edge, not wider than half of the drill, best a third.</summary>
[Formula("diameter of a pilot", SourceTag.CommonPractice, "twist drills; wider pilots let the drill behave like a boring tool")]
public static class PilotSize
{
    /// <summary>The band, its value the best.</summary>
    public static Estimate<Length> For(Length drill, bool isSplitPoint)
        => new(drill / 3, drill * (isSplitPoint ? ChiselFactors.SplitShare : ChiselFactors.StandardShare), drill / 2, SourceTag.CommonPractice);
}
