using System.Collections.Immutable;
using Tangwright.UseCases;

namespace Tangwright.Desk;

/// <summary>Sheets of a plan as a PDF, straight to the browser.</summary>
internal static class SheetsPdf
{
    /// <summary>Its address.</summary>
    public static string Address(string stem, IEnumerable<string> sheets, PrintRequest print)
        => $"/plan/{Uri.EscapeDataString(stem)}/sheets.pdf" + QueryString.Create(new KeyValuePair<string, string?>[]
        {
            new("sheets", string.Join(',', sheets)),
            new("paper", print.Paper),
            new("measured", print.Measured),
            new("units", print.Units),
            new("mirror", print.Mirror ? "yes" : null),
        });

    /// <summary>Puts it under its address.</summary>
    public static void Map(WebApplication app) => app.MapGet(
        "/plan/{stem}/sheets.pdf",
        (string stem, string? sheets, string? paper, string? measured, string? units, string? mirror, DeskFolder folder, TimeProvider clock) =>
        {
            ImmutableArray<string> kinds = [.. (sheets ?? "").Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)];
            var print = new PrintRequest(Said(paper), Said(measured), mirror == "yes", Said(units), DateOnly.FromDateTime(clock.GetLocalNow().Date));
            var pdf = folder.Plan(stem).Then(plan => DeskSheets.Pdf(plan, kinds, print));
            return pdf.IsGood
                ? Results.Bytes(pdf.Value.Bytes, "application/pdf")
                : Results.Text($"{pdf.Faults[0].Message}: {pdf.Faults[0].Remedy}", statusCode: StatusCodes.Status422UnprocessableEntity);
        });

    private static string? Said(string? text) => string.IsNullOrWhiteSpace(text) ? null : text.Trim();
}
