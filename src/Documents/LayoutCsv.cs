using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>The lines and centres to lay out as rows of a table, from the two edges measured from: mm, decimal inch, and the nearest 1/64 in with its error.</summary>
public static class LayoutCsv
{
    /// <summary>The rows, the heading first.</summary>
    public static ImmutableArray<ImmutableArray<string>> Rows(Results results)
        =>
        [
            ["line", "punched", "x_mm", "x_in", "x_64ths", "x_64ths_error_mm", "x_64ths_flagged", "y_mm", "y_in", "y_64ths", "y_64ths_error_mm", "y_64ths_flagged"],
            .. LayoutStation.Of(results).Select(s => (ImmutableArray<string>)[s.Name, s.IsPunched ? "yes" : "no", .. Size(s.X), .. Size(s.Y)]),
        ];

    private static ImmutableArray<string> Size(double mm)
    {
        var near = SixtyFourths.Nearest(Length.OfMm(mm));
        return [Shown.Trimmed(mm, 4), Shown.Trimmed(mm / Length.MmPerInch, 5), near.ToString(), Shown.Trimmed(near.Error.Mm, 3), SizeBlock.IsFlagged(near) ? "yes" : "no"];
    }
}
