using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>What kind of thing a piece is cooled in.</summary>
public enum QuenchKind
{
    /// <summary>Oil: it can burn.</summary>
    Oil,

    /// <summary>Water, brine or polymer.</summary>
    Water,

    /// <summary>Between metal plates.</summary>
    Plates,

    /// <summary>Still air.</summary>
    Air,
}

/// <summary>A quenchant, from its data file.</summary>
/// <param name="Name">Name in trade words: "fast oil".</param>
/// <param name="OtherNames">Other names.</param>
/// <param name="Kind">Kind.</param>
/// <param name="Description">One plain line.</param>
/// <param name="Transfer">Heat taken, W/(m²·K), by temperature of the surface, °C, coldest first; null for still air, which is worked out.</param>
/// <param name="Severity">Grossmann's H, 1/in, least and greatest; null when it has no meaning.</param>
/// <param name="Bath">Window of the bath; null when there is none.</param>
/// <param name="Cautions">What to watch for.</param>
public sealed record QuenchMedium(
    string Name,
    ImmutableArray<string> OtherNames,
    QuenchKind Kind,
    string Description,
    Sourced<ImmutableArray<TransferPoint>>? Transfer,
    Sourced<(double LowPerInch, double HighPerInch)>? Severity,
    Sourced<(Temperature From, Temperature To)>? Bath,
    ImmutableArray<string> Cautions)
{
    /// <summary>Whether a name is one of its own; capitals do not matter.</summary>
    /// <param name="name">The name.</param>
    public bool IsCalled(string name) => string.Equals(Name, name, StringComparison.OrdinalIgnoreCase) || OtherNames.Contains(name, StringComparer.OrdinalIgnoreCase);

    /// <summary>Heat taken at a surface temperature, W/(m²·K).</summary>
    /// <param name="surfaceCelsius">Surface, °C.</param>
    /// <param name="bathCelsius">Bath or air, °C.</param>
    public double TransferWPerM2K(double surfaceCelsius, double bathCelsius)
    {
        if (Transfer is not { Value: { Length: > 0 } rows }) return AirCooling.TransferWPerM2K(surfaceCelsius, bathCelsius);
        if (surfaceCelsius <= rows[0].SurfaceCelsius) return rows[0].HeatWPerM2K;
        for (var i = 1; i < rows.Length; i++)
        {
            var (a, b) = (rows[i - 1], rows[i]);
            if (surfaceCelsius <= b.SurfaceCelsius) return a.HeatWPerM2K + ((b.HeatWPerM2K - a.HeatWPerM2K) * (surfaceCelsius - a.SurfaceCelsius) / (b.SurfaceCelsius - a.SurfaceCelsius));
        }

        return rows[^1].HeatWPerM2K;
    }
}

/// <summary>Heat taken at one temperature of the surface.</summary>
/// <param name="SurfaceCelsius">Surface, °C.</param>
/// <param name="HeatWPerM2K">Heat taken, W/(m²·K).</param>
public readonly record struct TransferPoint(double SurfaceCelsius, double HeatWPerM2K);
