using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Which change of austenite on cooling.</summary>
public enum Product
{
    /// <summary>Ferrite, in steel well below the eutectoid.</summary>
    Ferrite,

    /// <summary>Pearlite: soft.</summary>
    Pearlite,

    /// <summary>Bainite: between pearlite and martensite.</summary>
    Bainite,
}

/// <summary>How long austenite takes to turn at one temperature: factor of the steel over undercooling and diffusion, times <see cref="TransformationShare"/>.</summary>
/// <remarks>The paper prints kcal where 27 500 cal/mol is meant: that is what gives its own tables. Good to a factor of 2 in the critical rate; ferrite is left out from 0.70 % carbon in solution, bainite counts for little above 0.65 %.</remarks>
[Formula("time of an isothermal change, s: factor / (2^(nG) ΔT^m exp(-27500 / RT)) · S(X)", "li-1998", "Low-alloy steel, the paper's up to 0.6 % carbon; with ferrite switched off and carbon in solution used up to 0.77 %; factor of 2 (2 sigma about 3)")]
public static class TransformationTime
{
    private const double EnergyCalPerMol = 27_500, GasCalPerMolK = 1.987;

    /// <summary>Factor of the steel, by product.</summary>
    /// <param name="product">Product.</param>
    /// <param name="x">Composition in solution.</param>
    public static double SteelFactor(Product product, Chemistry x)
    {
        var (c, mn, si, ni, cr, mo) = (x.CarbonPercent, x.ManganesePercent, x.SiliconPercent, x.NickelPercent, x.ChromiumPercent, x.MolybdenumPercent);
        return Math.Exp(product switch
        {
            Product.Ferrite => 1.00 + (6.31 * c) + (1.78 * mn) + (0.31 * si) + (1.12 * ni) + (2.70 * cr) + (4.06 * mo),
            Product.Pearlite => -4.25 + (4.12 * c) + (4.36 * mn) + (0.44 * si) + (1.71 * ni) + (3.33 * cr) + (5.19 * Math.Sqrt(mo)),
            _ => -10.23 + (10.18 * c) + (0.85 * mn) + (0.55 * ni) + (0.90 * cr) + (0.36 * mo),
        });
    }

    /// <summary>Time for a share, less the share's own factor S, s; infinite where the product cannot form.</summary>
    /// <param name="product">Product.</param>
    /// <param name="factor">Factor of the steel.</param>
    /// <param name="topCelsius">Where it can begin: Ae3, Ae1 or Bs, °C.</param>
    /// <param name="celsius">Temperature, °C.</param>
    /// <param name="grain">ASTM grain size number.</param>
    public static double UnitSeconds(Product product, double factor, double topCelsius, double celsius, double grain)
    {
        var under = topCelsius - celsius;
        if (under <= 0) return double.PositiveInfinity;
        var (n, m) = product switch { Product.Ferrite => (0.41, 3), Product.Pearlite => (0.32, 3), _ => (0.29, 2) };
        var power = m == 3 ? under * under * under : under * under;
        return factor / (Math.Pow(2, n * grain) * power * Math.Exp(-EnergyCalPerMol / (GasCalPerMolK * (celsius + 273.15))));
    }
}
