using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Documents;
using Tangwright.Formats;
using Tangwright.Foundation;

namespace Tangwright.UseCases;

/// <summary>A printer of the shop, as it is offered.</summary>
/// <param name="Name">What the maker calls it.</param>
/// <param name="Paper">Paper it holds, in words.</param>
/// <param name="Correction">Its correction, in words.</param>
public sealed record PrinterOnDesk(string Name, string Paper, string Correction);

/// <summary>Setting a printer up: the bar sheet it prints, and the printers there are.</summary>
public static class PrinterSetUp
{
    /// <summary>Papers that can be chosen: key and name.</summary>
    public static ImmutableArray<(string Key, string Name)> Papers => [("a4", "A4"), ("letter", "US Letter"), ("a3", "A3"), ("roll", "roll")];

    /// <summary>The printers of a shop.</summary>
    public static ImmutableArray<PrinterOnDesk> Of(Shop shop) => [.. shop.Printers.Select(p => new PrinterOnDesk(p.Name, Paper(p).Name, Correction(p)))];

    /// <summary>The printer of a name; null when there is none.</summary>
    public static Printer? Named(Shop shop, string name) => shop.Printers.FirstOrDefault(p => p.Name == name);

    /// <summary>Adds a printer, measured never.</summary>
    public static ImmutableArray<Fault> Add(ShopOnDesk shop, string name, string paper, string rollWidth, string margin)
    {
        name = name.Trim();
        if (name.Length is 0 or > 60) return [Fault.OfFile("printer", name.Length == 0 ? "the printer has no name" : "that name is too long", "write what you call it, as office printer")];
        if (shop.File.Count("printer") > 0 && Named(shop.Shop, name) is not null) return [Fault.OfFile("printer", $"there is a printer called {name} already", "choose it above, or give this one another name")];
        return shop.Make(new AddToShop("printer", [("name", name), ("paper", paper), ("roll_width", paper == "roll" ? rollWidth : ""), ("margin", margin)]));
    }

    /// <summary>Whether the bars on its paper are of 50 mm, so that twice what they measure counts.</summary>
    public static bool IsHalf(Printer printer) => BarSheet.IsHalf(Paper(printer), printer.Margin.Mm, PrintRequest.ScaleOf(printer));

    /// <summary>The bar sheet as a picture.</summary>
    public static DrawnSheet Drawn(Printer printer, DateOnly date) => DrawnSheet.Of(Sheet(printer, date), "Bar sheet: " + printer.Name);

    /// <summary>The bar sheet as a PDF.</summary>
    public static byte[] Pdf(Printer printer, DateOnly date) => PdfWriter.Write(new SheetSet("Bar sheet: " + printer.Name, date, [Sheet(printer, date)]));

    /// <summary>What its bars measured, in words: "across 97.2, along 97 mm, corrected" or "not measured yet".</summary>
    internal static string Correction(Printer? printer) => printer is null || (printer.BarAcrossMm == 100 && printer.BarAlongMm == 100)
        ? "not measured yet"
        : $"bars measured {Shown.Trimmed(printer.BarAcrossMm, 2)} across and {Shown.Trimmed(printer.BarAlongMm, 2)} mm along: corrected";

    private static Sheet Sheet(Printer printer, DateOnly date) => BarSheet.Draw(printer.Name, Paper(printer), printer.Margin.Mm, PrintRequest.ScaleOf(printer), date);

    private static PaperSize Paper(Printer printer) => PrintRequest.PaperOf(printer.Paper, printer.RollWidth)!;
}
