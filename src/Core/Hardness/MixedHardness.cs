using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>What quenched steel is made of, shares of 1.</summary>
/// <param name="MartensiteShare">Martensite.</param>
/// <param name="AusteniteShare">Austenite that stayed.</param>
/// <param name="PearliteShare">Fine pearlite, ferrite counted with it.</param>
/// <param name="BainiteShare">Bainite.</param>
public readonly record struct SteelParts(double MartensiteShare, double AusteniteShare, double PearliteShare, double BainiteShare);

/// <summary>Hardness of steel out of the quench, from what it is made of: each part counts by its share, in Vickers hardness.</summary>
[Formula("hardness out of the quench from shares of martensite, austenite, pearlite and bainite, HV and HRC", "rule-of-mixtures", "Dissolved carbon from 0.10 %; martensite by ASTM A255 to 0.69 % C, 865 HV above; austenite 220 HV; fine pearlite 250 to 420 HV; ±1.5 HRC where it hardened through, worse where it did not")]
public static class MixedHardness
{
    /// <summary>Martensite of more carbon than ASTM A255 goes, HV.</summary>
    public const double HardestHv = 865;

    /// <summary>Austenite that stayed, HV; an engineering figure.</summary>
    public const double AusteniteHv = 220;

    /// <summary>Fine pearlite at least, HV; an engineering figure.</summary>
    public const double LeastPearliteHv = 250;

    /// <summary>Fine pearlite at most, HV; an engineering figure.</summary>
    public const double MostPearliteHv = 420;

    /// <summary>How far it may be off, HRC.</summary>
    public const double BandHrc = 1.5;

    /// <summary>Hardness of the mixture, HV.</summary>
    /// <param name="dissolved">Composition with the carbon and chromium that are dissolved at heat.</param>
    /// <param name="parts">Its parts; they need not add up to 1, their ratio counts.</param>
    /// <param name="ratePerHour">Cooling rate at 700 °C, °C/h.</param>
    public static double Hv(Chemistry dissolved, SteelParts parts, double ratePerHour)
    {
        var rate = Math.Max(1, ratePerHour);
        var martensite = dissolved.CarbonPercent > InitialHardness.MostCarbonPercent ? HardestHv : RockwellTable.Hv(InitialHardness.Hrc(dissolved.CarbonPercent))!.Value;
        var pearlite = Math.Clamp(MaynierHardness.PearliteHv(dissolved, rate), LeastPearliteHv, MostPearliteHv);
        var bainite = Math.Clamp(MaynierHardness.BainiteHv(dissolved, rate), LeastPearliteHv, martensite);
        var all = parts.MartensiteShare + parts.AusteniteShare + parts.PearliteShare + parts.BainiteShare;
        return ((parts.MartensiteShare * martensite) + (parts.AusteniteShare * AusteniteHv) + (parts.PearliteShare * pearlite) + (parts.BainiteShare * bainite)) / all;
    }

    /// <summary>Hardness of the mixture with its band, HRC; null when it is too soft for the scale.</summary>
    /// <param name="dissolved">Composition with the carbon and chromium that are dissolved at heat.</param>
    /// <param name="parts">Its parts.</param>
    /// <param name="ratePerHour">Cooling rate at 700 °C, °C/h.</param>
    public static Estimate<double>? Hrc(Chemistry dissolved, SteelParts parts, double ratePerHour)
        => RockwellTable.HrcOfHv(Hv(dissolved, parts, ratePerHour)) is { } hrc
            ? new Estimate<double>(hrc, hrc - BandHrc, hrc + BandHrc, "rule-of-mixtures", dissolved.CarbonPercent < InitialHardness.LeastCarbonPercent ? "less than 0.10 % carbon dissolved" : "")
            : null;
}
