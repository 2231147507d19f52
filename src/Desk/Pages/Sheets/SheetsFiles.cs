using Microsoft.AspNetCore.Http.HttpResults;
using Tangwright.Foundation;
using Tangwright.UseCases;

namespace Tangwright.Desk;

/// <summary>What the sheets pages give out besides themselves: PDFs, pages to print, pictures, lettering and the files of a packet. Nothing outside the folder that lies open.</summary>
internal static class SheetsFiles
{
    /// <summary>Puts all under their addresses.</summary>
    public static void Map(WebApplication app)
    {
        app.MapGet("/plan/{stem}/sheets.pdf", (string stem, string? sheets, string? paper, string? printer, string? mirror, DeskFolder folder, TimeProvider clock)
            => Answer(folder.Plan(stem).Then(plan => DeskSheets.Pdf(plan, SheetsQuery.Kinds(sheets), SheetsQuery.Of(paper, printer, mirror, clock))), pdf => Results.Bytes(pdf.Bytes, "application/pdf")));

        app.MapGet("/plan/{stem}/print/{kinds}", (string stem, string kinds, string? paper, string? printer, string? mirror, string? now, DeskFolder folder, TimeProvider clock)
            => Answer(
                folder.Plan(stem).Then(plan => DeskSheets.Drawn(plan, SheetsQuery.Kinds(kinds), SheetsQuery.Of(paper, printer, mirror, clock)).Then(s => Checked<PageToPrint>.Good(new PageToPrint(plan.Results.Plan.Name, s, now == "yes")))),
                Printed));

        app.MapGet("/plan/{stem}/sheets/{kind}/first.svg", (string stem, string kind, string? paper, string? printer, string? mirror, DeskFolder folder, TimeProvider clock)
            => Answer(folder.Plan(stem).Then(plan => DeskSheets.First(plan, kind, SheetsQuery.Of(paper, printer, mirror, clock))), s => Results.Text(s.Svg, "image/svg+xml")));

        app.MapGet("/plan/{stem}/packet/{file}", (string stem, string file, DeskFolder folder)
            => Answer(folder.Plan(stem).Then(plan => PacketOnDesk.Open(plan, folder, file)), bytes => PacketFileAnswer(stem, file, bytes), StatusCodes.Status404NotFound));

        app.MapGet("/printer/bars.pdf", (string? shop, string? printer, DeskFolder folder, TimeProvider clock)
            => Answer(PrinterOf(folder, shop, printer), p => Results.Bytes(PrinterSetUp.Pdf(p, Today(clock)), "application/pdf")));

        app.MapGet("/printer/bars", (string? shop, string? printer, string? now, DeskFolder folder, TimeProvider clock)
            => Answer(PrinterOf(folder, shop, printer), p => Printed(new PageToPrint("Bar sheet", new DrawnSheets([PrinterSetUp.Drawn(p, Today(clock))]), now == "yes"))));

        app.MapGet("/lettering/{face}.ttf", (string face, HttpContext context) =>
        {
            if (DrawnSheet.Lettering(face) is not { } bytes) return Results.NotFound();
            context.Response.Headers.CacheControl = "public, max-age=86400";
            return Results.Bytes(bytes, "font/ttf");
        });
    }

    /// <summary>Address of a printer's bar sheet.</summary>
    public static string Bars(string ending, string shop, string printer) => "/printer/bars" + ending + QueryString.Create("shop", shop).Add("printer", printer);

    private static DateOnly Today(TimeProvider clock) => DateOnly.FromDateTime(clock.GetLocalNow().Date);

    private static Checked<Core.Printer> PrinterOf(DeskFolder folder, string? shop, string? printer)
        => folder.Shop(shop ?? "").Then(s => PrinterSetUp.Named(s.Shop, printer ?? "") is { } p
            ? Checked<Core.Printer>.Good(p)
            : Checked<Core.Printer>.Bad(Fault.OfFile(s.FileName, "has no printer of that name", "choose one on the printer page")));

    private static IResult Printed(PageToPrint page) => new RazorComponentResult<PrintedPage>(new Dictionary<string, object?>(StringComparer.Ordinal) { [nameof(PrintedPage.Content)] = page });

    private static IResult PacketFileAnswer(string stem, string file, byte[] bytes) => System.IO.Path.GetExtension(file) switch
    {
        ".pdf" => Results.Bytes(bytes, "application/pdf"),
        ".csv" or ".json" => Results.Bytes(bytes, "text/plain; charset=utf-8"),
        _ => Results.Bytes(bytes, "application/octet-stream", $"{stem}-{file}"),
    };

    private static IResult Answer<T>(Checked<T> found, Func<T, IResult> give, int otherwise = StatusCodes.Status422UnprocessableEntity)
        where T : class
        => found.IsGood ? give(found.Value) : Results.Text($"{found.Faults[0].Message}: {found.Faults[0].Remedy}", statusCode: otherwise);
}
