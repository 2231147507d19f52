using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Hardness of a low-alloy steel after any temper, by the composition of the bar: for springs, hammers and soft tangs.</summary>
[Formula("hardness after a temper at 140 to 700 °C by the composition of the bar, HRC", "temper-regression", "As the fit for low tempers, but only while it gives 20 HRC or more; off by 1.9, 1.7, 1.7 and 2.5 HRC on steels left out, at 140 to 230, 230 to 330, 330 to 460 and over 460 °C; worse than the other fit under 350 °C")]
public static class FullTemperRegression
{
    /// <summary>Softest it is good for, HRC.</summary>
    public const double SoftestHrc = 20;

    /// <summary>Hottest temper, °C.</summary>
    public const double HottestC = 700;

    /// <summary>Hardness, HRC.</summary>
    /// <param name="bar">Composition of the bar.</param>
    /// <param name="at">Temperature of the steel.</param>
    /// <param name="hours">Time at heat in all, h.</param>
    public static double Hrc(Chemistry bar, Temperature at, double hours)
    {
        var x = (HollomonJaffe.Of(at, hours) - 12) / 4;
        var (c, q) = (bar.CarbonPercent, Math.Sqrt(bar.CarbonPercent));
        return -7.756 - (4.975 * x) - (2.763 * x * x) + (0.260 * x * x * x) + (105.389 * q) - (27.224 * q * x) - (50.188 * c) + (14.120 * c * x)
            + (2.512 * bar.ManganesePercent) + ((3.276 + (0.552 * x)) * bar.SiliconPercent) + (0.242 * bar.NickelPercent)
            + ((3.633 + (3.687 * x)) * bar.ChromiumPercent) + ((8.772 + (10.583 * x)) * bar.MolybdenumPercent) + (9.521 * bar.VanadiumPercent);
    }

    /// <summary>How far it may be off, HRC.</summary>
    /// <param name="at">Temperature of the steel.</param>
    public static double BandHrc(Temperature at) => at.Celsius switch { < 230 => 1.9, < 460 => 1.7, _ => 2.5 };
}
