using Tangwright.UseCases;

namespace Tangwright.Desk;

/// <summary>Sheets on a plain page, to be printed at their true size.</summary>
/// <param name="Title">Whose sheets.</param>
/// <param name="Drawn">The sheets.</param>
/// <param name="Now">Whether the print dialog is to open by itself.</param>
public sealed record PageToPrint(string Title, DrawnSheets Drawn, bool Now)
{
    /// <summary>The rules of paper: each size of sheet has its own page, without margin.</summary>
    public string Rules => string.Concat(Drawn.Sheets.Select(s => (s.WidthMm, s.HeightMm)).Distinct()
        .Select(size => FormattableString.Invariant($"@page {Paper(size.WidthMm, size.HeightMm)} {{ size: {size.WidthMm:0.###}mm {size.HeightMm:0.###}mm; margin: 0 }}\n")));

    /// <summary>What lays one sheet on its paper. The box ends a little above the paper's edge, so that rounding never starts a page more.</summary>
    public static string Lay(DrawnSheet s) => FormattableString.Invariant($"page: {Paper(s.WidthMm, s.HeightMm)}; width: {s.WidthMm:0.###}mm; height: {s.HeightMm - 0.5:0.###}mm");

    private static string Paper(double widthMm, double heightMm) => FormattableString.Invariant($"p{widthMm * 1000:0}x{heightMm * 1000:0}");
}
