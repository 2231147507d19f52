using System.Collections.Immutable;
using System.Globalization;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Cutting speed of drills by the kind of steel, as a band, from data/tooling/cutting-speeds.csv.</summary>
[Formula("cutting speed of a drill, ft/min", "navy-14345", "annealed steel and high-speed steel drills; cobalt 1.1 to 1.3 times, carbide 2 to 3 times (common practice); hardened steel, 380 to about 660 HB, only with carbide")]
public static class CuttingSpeeds
{
    private static readonly Lazy<ImmutableDictionary<string, (double Low, double High, string Source)>> Table = new(Read);

    /// <summary>The band for a steel.</summary>
    /// <param name="steel">The steel; null when not known.</param>
    /// <param name="hardenedHb">Brinell hardness once hardened, for carbide; null: as delivered.</param>
    /// <param name="metal">What the drill is made of.</param>
    public static Estimate<CuttingSpeed> For(Steel? steel, double? hardenedHb, DrillMetal metal)
    {
        var group = hardenedHb switch { null => GroupOf(steel), <= 445 => "hardened to 445 HB", <= 505 => "hardened to 505 HB", _ => "hardened over 505 HB" };
        var (low, high, source) = Table.Value[group];
        var (slow, fast) = hardenedHb is not null ? (1, 1) : metal switch { DrillMetal.Carbide => (2, 3), DrillMetal.Cobalt => (1.1, 1.3), _ => (1.0, 1.0) };
        var (bottom, top) = (slow * low, fast * high);
        return new(CuttingSpeed.OfFeetPerMin((bottom + top) / 2), CuttingSpeed.OfFeetPerMin(bottom), CuttingSpeed.OfFeetPerMin(top), source, group == Unknown ? "the steel's composition is not known" : "");
    }

    private const string Unknown = "unknown";

    /// <summary>Kind of steel by its composition: chromium first, then carbon.</summary>
    public static string GroupOf(Steel? steel)
    {
        if (steel?.Composition is not { } c) return Unknown;
        double Percent(string element) => c.Value.FirstOrDefault(e => e.Element == element) is { } e ? e.NominalPercent ?? ((e.LowPercent + e.HighPercent) / 2) : 0;
        var (carbon, chromium, nickel) = (Percent("C"), Percent("Cr"), Percent("Ni"));
        if (chromium >= 10.5 && nickel >= 6) return "austenitic stainless";
        if (chromium >= 10.5) return carbon >= 1.2 ? "high-chromium tool" : "martensitic stainless";
        if (chromium >= 4.5) return "high-chromium tool";
        return carbon switch { >= 0.6 => "high-carbon", >= 0.3 => "medium-carbon", _ => "low-carbon" };
    }

    private static ImmutableDictionary<string, (double Low, double High, string Source)> Read()
        => DataRows.Of("cutting-speeds.csv").ToImmutableDictionary(c => c[0], c => (double.Parse(c[1], CultureInfo.InvariantCulture), double.Parse(c[2], CultureInfo.InvariantCulture), c[3]), StringComparer.Ordinal);
}
