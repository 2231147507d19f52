using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Formats;

/// <summary>Lengths of dashes and gaps in line widths (ISO 128-2:2020).</summary>
internal static class DashPattern
{
    /// <summary>Dash 12, gap 3 (line type 02).</summary>
    private static readonly ImmutableArray<double> Dashed = [12, 3];

    /// <summary>Long dash 24, gap 3, dot half a width, gap 3 (line type 04).</summary>
    private static readonly ImmutableArray<double> LongDashDot = [24, 3, 0.5, 3];

    /// <summary>The pattern of a line that is not solid.</summary>
    public static ImmutableArray<double> Of(LineKind kind) => kind == LineKind.Dashed ? Dashed : LongDashDot;
}
