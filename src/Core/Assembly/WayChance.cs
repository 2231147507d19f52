using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>One way of making pinned parts with its chance.</summary>
/// <param name="Making">The way.</param>
/// <param name="Capability">How well the shop does it.</param>
/// <param name="IsInShop">Whether the shop has the machine for it.</param>
/// <param name="Chance">Chance that all pins go through.</param>
/// <param name="LowShare">The chance when the way scatters as widely as it may; the chance itself when it was measured.</param>
/// <param name="HighShare">The chance when it scatters as little as it may.</param>
/// <param name="TangAlone">Least clearance of the tang's holes for the chance asked, the scales' holes as planned; null when the scales' own holes do not allow it.</param>
/// <param name="AllAlike">Least clearance of all holes, scales' and tang's, for the chance asked.</param>
/// <param name="Floating">Hole by the drawing standard for the largest rod, play in every part.</param>
/// <param name="Fixed">Hole in the tang by the drawing standard for the largest rod, the scales holding it.</param>
public sealed record WayChance(WayOfMaking Making, PlacingCapability Capability, bool IsInShop, PinChance Chance, double LowShare, double HighShare, Length? TangAlone, Length? AllAlike, Length Floating, Length Fixed)
{
    /// <summary>Scatter along one axis.</summary>
    public Length Sigma => PlacingScatter.Of(Capability);

    /// <summary>Circle that 99 of 100 centres fall in.</summary>
    public Length Zone => Capability.MeasuredSigma is { } s ? PlacingScatter.Zone(s) : Capability.Zone;
}
