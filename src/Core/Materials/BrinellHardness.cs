namespace Tangwright.Core;

/// <summary>Brinell hardness of hardened steel for the drilling rules, by the table of <see cref="RockwellTable"/> with its ends held.</summary>
public static class BrinellHardness
{
    private const double SoftestHrc = 40;
    private const double HardestHrc = 65;

    /// <summary>The Brinell hardness, HB.</summary>
    /// <param name="hrc">Rockwell C hardness; a softer one is taken as 40, a harder one as 65.</param>
    public static double OfRockwellC(double hrc) => RockwellTable.Hb(Math.Clamp(hrc, SoftestHrc, HardestHrc))!.Value;
}
