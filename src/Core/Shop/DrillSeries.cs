using System.Collections.Immutable;
using System.Globalization;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>The drill sizes of the trade: numbers #80 to #1 and letters A to Z (ASME B94.11M), sixty-fourths of an inch, and the preferred metric sizes (ISO 235).</summary>
public static class DrillSeries
{
    private static readonly Lazy<ImmutableArray<DrillSize>> Listed = new(ReadListed);

    /// <summary>Number and letter sizes, ascending; inch values of ASME B94.11M, from data/tooling/drills.csv.</summary>
    public static ImmutableArray<DrillSize> NumbersAndLetters => Listed.Value;

    /// <summary>Fractional sizes 1/64 in to 1 3/4 in by 1/64, to 2 1/4 in by 1/32, to 3 in by 1/16 (ASME B94.11M; steps from memory).</summary>
    public static ImmutableArray<DrillSize> Fractions { get; } =
        [.. Enumerable.Range(1, 192).Where(n => n <= 112 || (n <= 144 ? n % 2 == 0 : n % 4 == 0)).Select(Fraction)];

    /// <summary>Preferred metric sizes, from memory of ISO 235: 0.2 to 1 mm by 0.02, to 3 by 0.05, to 14 by 0.1, to 32 by 0.25, to 50 by 0.5.</summary>
    public static ImmutableArray<DrillSize> Metric { get; } =
        [.. Hundredths().Select(h => OfMm(h / 100.0))];

    /// <summary>All of them, ascending.</summary>
    public static ImmutableArray<DrillSize> All { get; } =
        [.. Fractions.Concat(NumbersAndLetters).Concat(Metric).OrderBy(d => d.Diameter.Mm).ThenBy(d => d.Name, StringComparer.Ordinal)];

    /// <summary>A metric size by its mm.</summary>
    public static DrillSize OfMm(double mm) => new($"{Shown.Trimmed(mm, 3)} mm", Length.OfMm(mm));

    /// <summary>A size of so many 1/64 in.</summary>
    public static DrillSize Fraction(int sixtyFourths)
        => new($"{new SixtyFourths(sixtyFourths, Length.Zero)} in", Length.OfInches(sixtyFourths / 64.0));

    /// <summary>A number or letter size by its name, "#30", "f"; null when there is none.</summary>
    public static DrillSize? Named(string name)
    {
        foreach (var d in NumbersAndLetters)
        {
            if (string.Equals(d.Name, name, StringComparison.OrdinalIgnoreCase)) return d;
        }

        return null;
    }

    /// <summary>What the trade calls a diameter: the first of 1/64 in, number, letter and metric size within a tolerance; null when it is no size of any series.</summary>
    /// <param name="diameter">The diameter.</param>
    /// <param name="toleranceMm">How far off it may be, mm.</param>
    public static DrillSize? NameOf(Length diameter, double toleranceMm = 1e-6)
    {
        foreach (var series in (ReadOnlySpan<ImmutableArray<DrillSize>>)[Fractions, NumbersAndLetters, Metric])
        {
            foreach (var d in series)
            {
                if (Math.Abs(d.Diameter.Mm - diameter.Mm) <= toleranceMm) return d;
            }
        }

        return null;
    }

    /// <summary>The nearest size of a list that is not larger than a diameter, to 1e-6 mm; null when all are larger.</summary>
    public static DrillSize? SmallerOrEqual(IEnumerable<DrillSize> sizes, Length diameter)
        => sizes.Where(d => d.Diameter.Mm <= diameter.Mm + 1e-6).MaxBy(d => d.Diameter.Mm);

    /// <summary>The nearest size of a list that is not smaller than a diameter, to 1e-6 mm; null when all are smaller.</summary>
    public static DrillSize? LargerOrEqual(IEnumerable<DrillSize> sizes, Length diameter)
        => sizes.Where(d => d.Diameter.Mm >= diameter.Mm - 1e-6).MinBy(d => d.Diameter.Mm);

    private static IEnumerable<int> Hundredths()
    {
        for (var h = 20; h <= 5000; h += h < 100 ? 2 : h < 300 ? 5 : h < 1400 ? 10 : h < 3200 ? 25 : 50) yield return h;
    }

    private static ImmutableArray<DrillSize> ReadListed()
        => [.. DataRows.Of("drills.csv").Select(c => new DrillSize(c[0], Length.OfInches(double.Parse(c[1], CultureInfo.InvariantCulture)))).OrderBy(d => d.Diameter.Mm)];
}
