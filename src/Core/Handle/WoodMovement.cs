using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>How the rings lie in a piece of wood.</summary>
public enum WoodCut
{
    /// <summary>Rings along the width: it moves by the tangential coefficient.</summary>
    FlatSawn,

    /// <summary>Rings square to the width: it moves by the radial coefficient.</summary>
    QuarterSawn,
}

/// <summary>How far the width of a piece of wood changes with its moisture: ΔD = D C (M₂ − M₁).</summary>
[Formula("change of width of wood with moisture, mm", "wood-handbook-13-5", "6 to 14 % of moisture, across the grain, straight-grained; coefficients are means of a kind of wood: 30 % either way holds nearly every piece (two spreads of 15 %, from memory)")]
public static class WoodMovement
{
    /// <summary>Driest wood the coefficients hold for, per cent.</summary>
    public const double DriestPercent = 6;

    /// <summary>Wettest wood they hold for, per cent.</summary>
    public const double WettestPercent = 14;

    private const double BandShare = 0.30;

    /// <summary>The change: above 0 it grows, under 0 it shrinks.</summary>
    /// <param name="across">Width across the grain as it is now.</param>
    /// <param name="coefficientPerPercent">Share of the width for each per cent of moisture.</param>
    /// <param name="fromPercent">Moisture now.</param>
    /// <param name="toPercent">Moisture it will come to.</param>
    public static Estimate<Length> Of(Length across, double coefficientPerPercent, double fromPercent, double toPercent) => Of(across, coefficientPerPercent, fromPercent, toPercent, "wood-handbook-13-5");

    /// <summary>The change of a piece of a wood; null when its file does not say how it moves that way.</summary>
    /// <param name="wood">The wood.</param>
    /// <param name="cut">How its rings lie.</param>
    /// <param name="across">Width across the grain as it is now.</param>
    /// <param name="fromPercent">Moisture now.</param>
    /// <param name="toPercent">Moisture it will come to.</param>
    public static Estimate<Length>? Of(HandleMaterial wood, WoodCut cut, Length across, double fromPercent, double toPercent)
        => (cut == WoodCut.FlatSawn ? wood.Movement?.TangentialPerPercent : wood.Movement?.RadialPerPercent) is { } c ? Of(across, c.Value, fromPercent, toPercent, c.SourceKey) : null;

    private static Estimate<Length> Of(Length across, double coefficientPerPercent, double fromPercent, double toPercent, string source)
    {
        var change = across * (coefficientPerPercent * (toPercent - fromPercent));
        var (less, more) = (change * (1 - BandShare), change * (1 + BandShare));
        var outside = Math.Min(fromPercent, toPercent) < DriestPercent || Math.Max(fromPercent, toPercent) > WettestPercent ? "moisture outside 6 to 14 %: the figure is rough" : "";
        return new Estimate<Length>(change, Length.Min(less, more), Length.Max(less, more), source, outside);
    }
}
