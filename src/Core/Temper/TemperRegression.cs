using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Hardness of a low-alloy steel after a low temper, by the composition of the bar.</summary>
/// <remarks>Fitted by least squares to 334 published readings on 31 steels. For a steel that was not among them it is off by 1.5 HRC (one standard deviation), counted by leaving out one steel after another.</remarks>
[Formula("hardness after a temper at 140 to 350 °C by the composition of the bar, HRC", "temper-regression", "5 min to 24 h; C 0.25 to 1.15, Mn 0.3 to 1.85, Si 0.06 to 1.6, Ni to 3.4, Cr to 1.0, Mo to 0.33 %; hardened through; tungsten and vanadium count nothing; ±1.8 HRC")]
public static class TemperRegression
{
    /// <summary>How far it may be off, HRC.</summary>
    public const double BandHrc = 1.8;

    /// <summary>Coldest temper, °C.</summary>
    public const double ColdestC = 140;

    /// <summary>Hottest temper, °C.</summary>
    public const double HottestC = 350;

    private const double SaturationPercent = 1.11;
    private const double CapPerC = 0.012;
    private const double RoomC = 25;

    /// <summary>Hardness, HRC, not held under anything.</summary>
    /// <param name="bar">Composition of the bar.</param>
    /// <param name="at">Temperature of the steel.</param>
    /// <param name="hours">Time at heat in all, h.</param>
    public static double Hrc(Chemistry bar, Temperature at, double hours)
    {
        var x = HollomonJaffe.Of(at, hours) - 9;
        var c = Math.Min(bar.CarbonPercent, SaturationPercent);
        return 2.08 + (108.307 * Math.Sqrt(c)) - (51.313 * c) - ((1.787 + (1.830 * c)) * x)
            + (1.466 * bar.ManganesePercent) + (2.659 * bar.SiliconPercent) + (0.074 * bar.NickelPercent) + (1.868 * bar.ChromiumPercent) + (1.875 * bar.MolybdenumPercent);
    }

    /// <summary>A hardness held under the quenched one less 0.012 HRC a degree. The rule was set by eye on the very data sheets it is held against, so its figures prove nothing by themselves.</summary>
    /// <param name="hrc">Hardness as computed, HRC.</param>
    /// <param name="asQuenchedHrc">Hardness out of the quench, HRC.</param>
    /// <param name="at">Temperature of the steel.</param>
    public static double Capped(double hrc, double asQuenchedHrc, Temperature at) => Math.Min(hrc, asQuenchedHrc - (CapPerC * (at.Celsius - RoomC)));

    /// <summary>What lies outside the range it was made for, in words; empty when all is inside.</summary>
    /// <param name="bar">Composition of the bar.</param>
    /// <param name="hours">Time at heat in all, h.</param>
    public static string Outside(Chemistry bar, double hours)
    {
        static string Out(string what, double value, double low, double high, string unit) => value < low ? $"{what} {Shown.Trimmed(value, 2)} {unit}, under {Shown.Trimmed(low, 2)}" : value > high ? $"{what} {Shown.Trimmed(value, 2)} {unit}, over {Shown.Trimmed(high, 2)}" : "";
        return string.Join("; ", new[]
        {
            Out("carbon", bar.CarbonPercent, 0.25, 1.15, "%"),
            Out("manganese", bar.ManganesePercent, 0.3, 1.85, "%"),
            Out("silicon", bar.SiliconPercent, 0.06, 1.62, "%"),
            Out("nickel", bar.NickelPercent, 0, 3.41, "%"),
            Out("chromium", bar.ChromiumPercent, 0, 1.0, "%"),
            Out("molybdenum", bar.MolybdenumPercent, 0, 0.33, "%"),
            Out("time", hours, 5.0 / 60, 24, "h"),
        }.Where(w => w.Length > 0));
    }
}
