using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Vickers hardness of what a steel has turned into, by its composition and how fast it cooled.</summary>
[Formula("hardness of martensite, bainite, and ferrite with pearlite by composition and cooling rate, HV", "maynier-1978", "Carbon and low-alloy steel; the martensite line only to 0.5 % C, above it comes out harder than any martensite is; rate at 700 °C in °C/h")]
public static class MaynierHardness
{
    /// <summary>Most carbon for the martensite line, mass per cent.</summary>
    public const double MostCarbonOfMartensitePercent = 0.5;

    /// <summary>Hardness of martensite, HV; null above 0.5 % carbon.</summary>
    /// <param name="a">Composition.</param>
    /// <param name="ratePerHour">Cooling rate at 700 °C, °C/h.</param>
    public static double? MartensiteHv(Chemistry a, double ratePerHour) => a.CarbonPercent > MostCarbonOfMartensitePercent
        ? null
        : 127 + (949 * a.CarbonPercent) + (27 * a.SiliconPercent) + (11 * a.ManganesePercent) + (8 * a.NickelPercent) + (16 * a.ChromiumPercent) + (21 * Math.Log10(ratePerHour));

    /// <summary>Hardness of bainite, HV.</summary>
    /// <param name="a">Composition.</param>
    /// <param name="ratePerHour">Cooling rate at 700 °C, °C/h.</param>
    public static double BainiteHv(Chemistry a, double ratePerHour)
        => -323 + (185 * a.CarbonPercent) + (330 * a.SiliconPercent) + (153 * a.ManganesePercent) + (65 * a.NickelPercent) + (144 * a.ChromiumPercent) + (191 * a.MolybdenumPercent)
            + ((89 + (53 * a.CarbonPercent) - (55 * a.SiliconPercent) - (22 * a.ManganesePercent) - (10 * a.NickelPercent) - (20 * a.ChromiumPercent) - (33 * a.MolybdenumPercent)) * Math.Log10(ratePerHour));

    /// <summary>Hardness of ferrite with pearlite, HV.</summary>
    /// <param name="a">Composition.</param>
    /// <param name="ratePerHour">Cooling rate at 700 °C, °C/h.</param>
    public static double PearliteHv(Chemistry a, double ratePerHour)
        => 42 + (223 * a.CarbonPercent) + (53 * a.SiliconPercent) + (30 * a.ManganesePercent) + (12.6 * a.NickelPercent) + (7 * a.ChromiumPercent) + (19 * a.MolybdenumPercent)
            + ((10 - (19 * a.SiliconPercent) + (4 * a.NickelPercent) + (8 * a.ChromiumPercent) + (130 * a.VanadiumPercent)) * Math.Log10(ratePerHour));
}
