using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>How far the ideal diameter of plain high-carbon steel lies under the printed factors when it is hardened near 790 °C, with carbides left over.</summary>
[Formula("ideal diameter of carbon steel of 0.9 % carbon and more, hardened near 790 °C: 0.70 of ASTM A255", "tool-steel-monograph-7-3", "Nine water-hardening heats, 0.94 to 1.07 % carbon: 0.53 to 0.77")]
public static class CarbonSteelBias
{
    /// <summary>What the printed ideal diameter is multiplied with.</summary>
    public const double UsualFactor = 0.70, LowFactor = 0.53, HighFactor = 0.77;

    /// <summary>Whether it applies: plain carbon steel with 0.9 % carbon or more.</summary>
    /// <param name="x">Composition of the bar.</param>
    public static bool Applies(Chemistry x) => x.CarbonPercent >= 0.9 && x.ChromiumPercent < 0.3 && x.ManganesePercent < 0.7 && x.NickelPercent < 0.4 && x.MolybdenumPercent < 0.1;

    /// <summary>The ideal diameter as it comes out.</summary>
    /// <param name="x">Composition of the bar.</param>
    public static Length Of(Chemistry x) => Applies(x) ? IdealDiameter.Of(x) * UsualFactor : IdealDiameter.Of(x);
}
