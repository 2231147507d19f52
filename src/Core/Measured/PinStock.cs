using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Rod that is commonly sold for pins; common practice.</summary>
public static class PinStock
{
    /// <summary>Sizes, ascending.</summary>
    public static ImmutableArray<DrillSize> Sizes { get; } =
    [
        .. ((ReadOnlySpan<(string Name, double Mm)>)
        [
            ("1/16 in", 25.4 / 16), ("2 mm", 2), ("3/32 in", 25.4 * 3 / 32), ("2.5 mm", 2.5), ("3 mm", 3), ("1/8 in", 25.4 / 8), ("5/32 in", 25.4 * 5 / 32), ("4 mm", 4),
            ("3/16 in", 25.4 * 3 / 16), ("5 mm", 5), ("6 mm", 6), ("1/4 in", 25.4 / 4), ("5/16 in", 25.4 * 5 / 16), ("8 mm", 8), ("3/8 in", 25.4 * 3 / 8), ("10 mm", 10),
        ]).ToArray().Select(s => new DrillSize(s.Name, Length.OfMm(s.Mm))).OrderBy(s => s.Diameter),
    ];
}
