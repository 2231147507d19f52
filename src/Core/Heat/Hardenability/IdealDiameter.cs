using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Ideal diameter: the round bar that hardens half through in a quench that takes heat as fast as it comes. ASTM A255, product of a factor for each element; grain size 7.</summary>
[Formula("ideal diameter, inch: product of the factors of ASTM A255", "astm-a255", "C 0.10 to 0.70, Mn 0.50 to 1.65, Si 0.15 to 0.60, Ni to 1.50, Cr to 1.35, Mo to 0.55 %; printed out to C 0.90, Mn 1.95, Si 2.00, Ni 3.50, Cr 2.50; more counts as the last printed")]
public static class IdealDiameter
{
    /// <summary>Ideal diameter.</summary>
    /// <param name="x">Composition.</param>
    public static Length Of(Chemistry x) => Length.OfInches(Carbon(x.CarbonPercent) * Manganese(x.ManganesePercent) * Silicon(x.SiliconPercent) * Nickel(x.NickelPercent)
        * Chromium(x.ChromiumPercent) * Molybdenum(x.MolybdenumPercent) * Copper(x.CopperPercent) * Vanadium(x.VanadiumPercent));

    /// <summary>Whether every content is inside the printed range for use without doubt.</summary>
    /// <param name="x">Composition.</param>
    public static bool IsInRange(Chemistry x) => x.CarbonPercent is >= 0.10 and <= 0.70 && x.ManganesePercent is >= 0.50 and <= 1.65 && x.SiliconPercent is >= 0.15 and <= 0.60
        && x.NickelPercent <= 1.5 && x.ChromiumPercent <= 1.35 && x.MolybdenumPercent <= 0.55 && x.CopperPercent <= 0.35 && x.VanadiumPercent <= 0.20;

    /// <summary>Factor of carbon at grain size 7, inch.</summary>
    /// <param name="percent">Mass per cent.</param>
    public static double Carbon(double percent)
    {
        var c = Math.Clamp(percent, 0, 0.90);
        return c switch
        {
            <= 0.39 => 0.54 * c,
            <= 0.55 => 0.171 + (0.001 * c) + (0.265 * c * c),
            <= 0.65 => 0.115 + (0.268 * c) - (0.038 * c * c),
            <= 0.75 => 0.143 + (0.2 * c),
            _ => 0.062 + (0.409 * c) - (0.135 * c * c),
        };
    }

    /// <summary>Factor of manganese.</summary>
    /// <param name="percent">Mass per cent.</param>
    public static double Manganese(double percent) => percent <= 1.2 ? (3.3333 * percent) + 1 : (5.1 * Math.Min(percent, 1.95)) - 1.12;

    /// <summary>Factor of silicon.</summary>
    /// <param name="percent">Mass per cent.</param>
    public static double Silicon(double percent) => (0.7 * Math.Min(percent, 2)) + 1;

    /// <summary>Factor of nickel.</summary>
    /// <param name="percent">Mass per cent.</param>
    public static double Nickel(double percent)
    {
        var ni = Math.Min(percent, 3.5);
        return ni <= 1.5 ? (0.363 * ni) + 1 : 0.3211 + (1.4501 * ni) - (0.6119 * ni * ni) + (0.1253 * ni * ni * ni);
    }

    /// <summary>Factor of chromium.</summary>
    /// <param name="percent">Mass per cent.</param>
    public static double Chromium(double percent) => (2.16 * Math.Min(percent, 2.5)) + 1;

    /// <summary>Factor of molybdenum.</summary>
    /// <param name="percent">Mass per cent.</param>
    public static double Molybdenum(double percent) => (3 * Math.Min(percent, 0.55)) + 1;

    /// <summary>Factor of copper.</summary>
    /// <param name="percent">Mass per cent.</param>
    public static double Copper(double percent) => (0.365 * Math.Min(percent, 0.55)) + 1;

    /// <summary>Factor of vanadium.</summary>
    /// <param name="percent">Mass per cent.</param>
    public static double Vanadium(double percent) => (1.73 * Math.Min(percent, 0.20)) + 1;
}
