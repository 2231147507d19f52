using PdfSharp.Drawing;
using PdfSharp.Pdf;
using Tangwright.Foundation;

namespace Tangwright.Formats;

/// <summary>Sheets as a PDF: exact paper sizes, coordinates to a thousandth of a millimetre, both faces embedded, viewers asked not to scale. The same sheets give the same bytes.</summary>
public static class PdfWriter
{
    /// <summary>Writes the sheets, in order.</summary>
    /// <param name="set">The sheets; at least one.</param>
    public static byte[] Write(SheetSet set)
    {
        if (set.Sheets.IsEmpty) throw new ArgumentException("a PDF needs a sheet", nameof(set));
        EmbeddedFonts.Install();
        using var document = new PdfDocument();

        // compressed streams lack the end mark and checksum of zlib (qpdf warns), plain ones are clean and small enough
        document.Options.NoCompression = true;
        document.Options.CompressContentStreams = false;
        document.Options.ColorMode = PdfColorMode.Undefined;
        document.Info.Title = PlainTitle(set.Title);
        document.Info.Creator = "Tangwright";
        var date = set.Date.ToDateTime(TimeOnly.MinValue, DateTimeKind.Utc);
        document.Info.CreationDate = date;
        document.ViewerPreferences.Elements.SetName("/PrintScaling", "/None");
        document.ViewerPreferences.Elements.SetBoolean("/PickTrayByPDFSize", true);
        var fonts = new PdfFonts();
        foreach (var sheet in set.Sheets)
        {
            var page = document.AddPage();
            page.Width = XUnit.FromPoint(PdfInk.Points(sheet.WidthMm));
            page.Height = XUnit.FromPoint(PdfInk.Points(sheet.HeightMm));
            using var paper = XGraphics.FromPdfPage(page);
            new PdfInk(paper, sheet.HeightMm, fonts).Draw(sheet.Marks);
        }

        using var stream = new System.IO.MemoryStream();
        document.Save(stream, closeStream: false);
        return CanonicalPdf.Of(stream.ToArray());
    }

    /// <summary>The title without the characters PDFsharp would carry raw into the file's XML description.</summary>
    private static string PlainTitle(string title)
        => string.Concat(title.Select(c => c switch { '&' => '+', '<' => '‹', '>' => '›', _ when char.IsControl(c) || char.IsSurrogate(c) => ' ', _ => c }));
}
