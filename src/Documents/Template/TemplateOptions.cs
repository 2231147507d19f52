namespace Tangwright.Documents;

/// <summary>How a true-scale template is laid on paper.</summary>
/// <param name="Paper">Paper.</param>
/// <param name="MarginMm">Margin the printer cannot print, mm.</param>
/// <param name="Scale">Correction for the printer; the check bars are stretched with the rest, so that they come out at 100.0 mm.</param>
/// <param name="Mirror">Mirrored, for the back face: the bar is rolled over about its long axis, the sawn end stays on its side.</param>
/// <param name="DrillOnly">Only hole centres, datum edges and check bars.</param>
/// <param name="OverlapMm">How much neighbouring sheets share, mm.</param>
/// <param name="SurroundMm">Blank paper asked for around the piece, mm.</param>
public sealed record TemplateOptions(
    PaperSize Paper,
    double MarginMm,
    PrintScale Scale,
    bool Mirror = false,
    bool DrillOnly = false,
    double OverlapMm = 15,
    double SurroundMm = 0)
{
    /// <summary>As a request for sheets asks for it.</summary>
    public static TemplateOptions For(SheetRequest request, bool drillOnly = false)
        => new(request.Paper, request.MarginMm, request.Scale, request.Mirror, drillOnly);
}
