using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Where martensite begins on cooling, °C. The formula that bends with carbon is used; straight ones come out 30 to 70 °C too low at 0.7 to 1 % carbon and are kept for comparison.</summary>
[Formula("martensite start Ms, °C (van Bohemen 2012; also Barbier, Ingber, Andrews, Steven and Haynes, Kung and Rayment, Trzaska)", "van-bohemen-2012", "Carbon in solution up to 1 %; about ±15 °C")]
public static class MartensiteStart
{
    /// <summary>Van Bohemen: the one used, °C.</summary>
    /// <param name="x">Composition in solution.</param>
    public static double Celsius(Chemistry x) => 565 - (31 * x.ManganesePercent) - (13 * x.SiliconPercent) - (10 * x.ChromiumPercent) - (18 * x.NickelPercent) - (12 * x.MolybdenumPercent) - (600 * (1 - Math.Exp(-0.96 * x.CarbonPercent)));

    /// <summary>Barbier, without the elements a blade steel has none of, °C.</summary>
    /// <param name="x">Composition in solution.</param>
    public static double BarbierCelsius(Chemistry x) => 545 - (601.2 * (1 - Math.Exp(-0.868 * x.CarbonPercent))) - (34.4 * x.ManganesePercent) - (13.7 * x.SiliconPercent) - (9.2 * x.ChromiumPercent) - (17.3 * x.NickelPercent) - (15.4 * x.MolybdenumPercent) + (10.8 * x.VanadiumPercent) + (4.7 * x.CobaltPercent) - (16.3 * x.CopperPercent);

    /// <summary>Ingber and Kunert, made for high carbon, °C.</summary>
    /// <param name="x">Composition in solution.</param>
    public static double IngberCelsius(Chemistry x) => 530.2 - (290.3 * x.CarbonPercent) - (35.5 * x.ManganesePercent) - (6.8 * x.SiliconPercent) - (17.2 * x.NickelPercent) - (20.8 * x.ChromiumPercent) - (10.4 * x.MolybdenumPercent) + (4.8 * x.CobaltPercent) - (75 * (1 - Math.Exp(-0.96 * x.CarbonPercent)));

    /// <summary>Andrews, straight in carbon, °C.</summary>
    /// <param name="x">Composition in solution.</param>
    public static double AndrewsCelsius(Chemistry x) => 539 - (423 * x.CarbonPercent) - (30.4 * x.ManganesePercent) - (12.1 * x.ChromiumPercent) - (17.7 * x.NickelPercent) - (7.5 * x.MolybdenumPercent);

    /// <summary>Andrews, with products, °C.</summary>
    /// <param name="x">Composition in solution.</param>
    public static double AndrewsProductCelsius(Chemistry x) => 512 - (453 * x.CarbonPercent) - (16.9 * x.NickelPercent) + (15 * x.ChromiumPercent) - (9.5 * x.MolybdenumPercent) + (217 * x.CarbonPercent * x.CarbonPercent) - (71.5 * x.CarbonPercent * x.ManganesePercent) - (67.6 * x.CarbonPercent * x.ChromiumPercent);

    /// <summary>Kung and Rayment: Andrews with cobalt and silicon, °C.</summary>
    /// <param name="x">Composition in solution.</param>
    public static double KungRaymentCelsius(Chemistry x) => AndrewsCelsius(x) + (10 * x.CobaltPercent) - (7.5 * x.SiliconPercent);

    /// <summary>Steven and Haynes, °C.</summary>
    /// <param name="x">Composition in solution.</param>
    public static double StevenHaynesCelsius(Chemistry x) => 561 - (474 * x.CarbonPercent) - (33 * x.ManganesePercent) - (17 * x.ChromiumPercent) - (17 * x.NickelPercent) - (21 * x.MolybdenumPercent);

    /// <summary>Trzaska, °C.</summary>
    /// <param name="x">Composition in solution.</param>
    public static double TrzaskaCelsius(Chemistry x) => 541 - (401 * x.CarbonPercent) - (36 * x.ManganesePercent) - (10.5 * x.SiliconPercent) - (14 * x.ChromiumPercent) - (18 * x.NickelPercent) - (17 * x.MolybdenumPercent);
}
