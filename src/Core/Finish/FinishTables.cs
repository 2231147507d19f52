using System.Collections.Immutable;
using System.Globalization;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Roughness a grit leaves on steel, a range over published tables that differ by two to three times, from data/tooling/roughness.csv.</summary>
[Formula("roughness Ra a grit leaves on steel, µm, from least to most", "roughness-charts", "P36 to P3000; a range over charts that differ by two to three times, belts and papers alike")]
public static class GritRoughness
{
    private static readonly Lazy<ImmutableArray<(double From, double To, double Low, double High)>> Table = new(() => [.. DataRows.Of("roughness.csv").Select(c => (Value(c[0]), Value(c[1]), Value(c[2]), Value(c[3])))]);

    /// <summary>Ra, µm, from least to most; null outside P36 to P3000.</summary>
    /// <param name="micron">Grain size, µm.</param>
    public static (double LowUm, double HighUm)? Ra(double micron)
    {
        if (GritScale.Number(GritSeries.FepaP, micron) is not { } p) return null;
        (double LowUm, double HighUm)? found = null;
        foreach (var row in Table.Value)
        {
            if (p >= row.From - 0.5 && p <= row.To + 0.5) return (row.Low, row.High);
            if (p > row.To) found = (row.Low, row.High);
            else if (found is { } before) return (Math.Min(before.LowUm, row.Low), Math.Max(before.HighUm, row.High));
        }

        return null;
    }

    private static double Value(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}

/// <summary>Belt speed for steel, from data/tooling/belt-speeds.csv.</summary>
/// <param name="Work">Roughing, smoothing, fine or finishing hardened steel.</param>
/// <param name="Low">Lower end.</param>
/// <param name="High">Upper end.</param>
/// <param name="Source">Where from.</param>
[Formula("belt speed for steel, ft/min", "machinerys-handbook-31", "Roughing, smoothing and fine work on carbon and stainless steel, P24 to P500; hardened blades 1000 to 3000 ft/min (common practice)")]
public sealed record BeltSpeed(string Work, CuttingSpeed Low, CuttingSpeed High, string Source)
{
    private static readonly Lazy<ImmutableArray<string[]>> Table = new(() => DataRows.Of("belt-speeds.csv"));

    /// <summary>The speed for a grit.</summary>
    /// <param name="steel">The steel; null when not known.</param>
    /// <param name="micron">Grain size, µm.</param>
    /// <param name="isHard">Hardened already.</param>
    public static BeltSpeed Of(Steel? steel, double micron, bool isHard)
    {
        var p = GritScale.Number(GritSeries.FepaP, micron) ?? (micron > 100 ? 12 : 3000);
        var group = isHard ? "hardened" : CuttingSpeeds.GroupOf(steel).Contains("stainless", StringComparison.Ordinal) ? "stainless" : "carbon";
        var rows = Table.Value.Where(r => r[0] == group).ToArray();
        var row = rows.FirstOrDefault(r => p <= double.Parse(r[3], CultureInfo.InvariantCulture) + 0.5) ?? rows[^1];
        return new BeltSpeed(row[1], CuttingSpeed.OfFeetPerMin(double.Parse(row[4], CultureInfo.InvariantCulture)), CuttingSpeed.OfFeetPerMin(double.Parse(row[5], CultureInfo.InvariantCulture)), row[6]);
    }
}
