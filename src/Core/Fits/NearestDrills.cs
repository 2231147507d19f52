using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>The drills of one series beside a size.</summary>
/// <param name="Series">What the series is called.</param>
/// <param name="Below">Largest not over the size; null when all are over.</param>
/// <param name="Above">Smallest not under the size; null when all are under.</param>
/// <param name="ToReam">Largest that leaves enough for the reamer and not too much; null when the series has none.</param>
public sealed record DrillsOfSeries(string Series, DrillSize? Below, DrillSize? Above, DrillSize? ToReam);

/// <summary>The drills beside a size in each series of the trade.</summary>
public static class NearestDrills
{
    private static ImmutableArray<(string Name, ImmutableArray<DrillSize> Sizes)> Series { get; } =
    [
        ("fraction", DrillSeries.Fractions),
        ("number", [.. DrillSeries.NumbersAndLetters.Where(d => d.Name[0] == '#')]),
        ("letter", [.. DrillSeries.NumbersAndLetters.Where(d => d.Name[0] != '#')]),
        ("metric", DrillSeries.Metric),
    ];

    /// <summary>All four.</summary>
    public static ImmutableArray<DrillsOfSeries> Of(Length size)
        => [.. Series.Select(s => new DrillsOfSeries(s.Name, DrillSeries.SmallerOrEqual(s.Sizes, size), DrillSeries.LargerOrEqual(s.Sizes, size), ToReam(s.Sizes, size)))];

    /// <summary>Of a list the largest that leaves the reamer enough and not too much; null when there is none.</summary>
    public static DrillSize? ToReam(IEnumerable<DrillSize> sizes, Length reamed)
    {
        var (least, most) = ReamingStock.For(reamed);
        return sizes.Where(d => (reamed - d.Diameter).Mm >= least.Mm - 1e-6 && (reamed - d.Diameter).Mm <= most.Mm + 1e-6).MaxBy(d => d.Diameter);
    }
}
