using System.Collections.Immutable;
using Tangwright.Core;

namespace Tangwright.UseCases;

/// <summary>A series of drills with a tick for each that is owned.</summary>
/// <param name="Title">Name of the series.</param>
/// <param name="Sizes">Its sizes: name, whether it is owned.</param>
public sealed record DrillsOwned(string Title, ImmutableArray<(string Name, bool IsOwned)> Sizes)
{
    /// <summary>How many are owned.</summary>
    public int Owned => Sizes.Count(s => s.IsOwned);

    /// <summary>The usual series: fractions to 1 in, numbers, letters, metric to 13 mm by tenths and to 25 mm by halves, and what is owned besides.</summary>
    /// <param name="owned">The sizes owned.</param>
    public static ImmutableArray<DrillsOwned> Of(ImmutableArray<DrillSize> owned)
    {
        var names = owned.Select(d => d.Name).ToHashSet(StringComparer.Ordinal);
        (string Title, IEnumerable<DrillSize> Sizes)[] series =
        [
            ("Millimetres, by halves", DrillSeries.Metric.Where(d => IsStep(d, 0.5) && d.Diameter.Mm <= 25)),
            ("Millimetres, tenths between", DrillSeries.Metric.Where(d => IsStep(d, 0.1) && !IsStep(d, 0.5) && d.Diameter.Mm is >= 1 and <= 13)),
            ("Fractions of an inch", DrillSeries.Fractions.Where(d => d.Diameter.Inches <= 1)),
            ("Numbers", DrillSeries.NumbersAndLetters.Where(d => d.Name[0] == '#').Reverse()),
            ("Letters", DrillSeries.NumbersAndLetters.Where(d => d.Name[0] != '#')),
        ];
        var usual = series.Select(s => new DrillsOwned(s.Title, [.. s.Sizes.Select(d => (d.Name, names.Contains(d.Name)))])).ToImmutableArray();
        var listed = usual.SelectMany(s => s.Sizes.Select(d => d.Name)).ToHashSet(StringComparer.Ordinal);
        var rest = owned.Where(d => !listed.Contains(d.Name)).ToArray();
        return rest.Length == 0 ? usual : usual.Add(new("Others", [.. rest.Select(d => (d.Name, true))]));
    }

    private static bool IsStep(DrillSize d, double mm) => Math.Abs(Math.Round(d.Diameter.Mm / mm) - (d.Diameter.Mm / mm)) < 1e-6;
}
