using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>Where on a paper the drawing, the title block and the notes go, mm from the lower left corner.</summary>
/// <param name="WidthMm">Width of the paper.</param>
/// <param name="HeightMm">Height of the paper.</param>
/// <param name="Inside">The paper less its margins.</param>
internal sealed record SheetFrame(double WidthMm, double HeightMm, Box Inside)
{
    /// <summary>Least margin of a sheet, mm: 10 mm, the border of ISO 5457 for the sides that are not filed (from memory).</summary>
    public const double LeastMarginMm = 10;

    /// <summary>Space kept above the title block, mm.</summary>
    private const double AboveTitleBlockMm = 4;

    /// <summary>The box for the contents: all inside the margins and above the title block.</summary>
    public Box Content => Inside with { MinY = Inside.MinY + TitleBlock.HeightMm + AboveTitleBlockMm };

    /// <summary>The box of the title block along the bottom.</summary>
    public Box Title => Inside with { MaxY = Inside.MinY + TitleBlock.HeightMm };

    /// <summary>The frame of a request's paper, upright; a roll gets A4 for the sheets that are not true-scale.</summary>
    public static SheetFrame For(SheetRequest request)
    {
        var paper = string.Equals(request.Paper.Key, "roll", StringComparison.Ordinal) ? PaperSize.A4 : request.Paper;
        return Of(paper.WidthMm, paper.HeightMm, request.MarginMm);
    }

    /// <summary>The frame of a sheet of given size; a margin is never more than a fifth of the short side.</summary>
    public static SheetFrame Of(double widthMm, double heightMm, double marginMm)
    {
        var most = 0.2 * Math.Min(widthMm, heightMm);
        var margin = Math.Min(Math.Max(double.IsFinite(marginMm) ? marginMm : 0, LeastMarginMm), most);
        return new SheetFrame(widthMm, heightMm, new Box(margin, margin, widthMm - margin, heightMm - margin));
    }
}
