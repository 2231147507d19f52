using Tangwright.Core;
using Tangwright.Documents;
using Tangwright.Formats;
using Tangwright.Foundation;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Core;

namespace Tangwright.Tests;

/// <summary>The template read back by two programs that did not write it: PdfPig and qpdf.</summary>
public sealed class PdfReadBackTests
{
    private const double MmPerPoint = 25.4 / 72;

    public static TheoryData<string> Papers { get; } = ["a4", "letter", "a3", "roll"];

    [Theory]
    [MemberData(nameof(Papers))]
    public void Pages_are_exactly_the_paper_and_carry_name_revision_date_and_number(string paper)
    {
        var size = paper switch { "a4" => PaperSize.A4, "letter" => PaperSize.Letter, "a3" => PaperSize.A3, _ => PaperSize.Roll(610) };
        var request = ExamplePieces.Request(ExamplePieces.Hatchet, size);
        var sheets = TemplateSheets.Draw(request, TemplateOptions.For(request));
        using var pdf = PdfDocument.Open(Write(request, sheets));
        Assert.Equal(sheets.Length, pdf.NumberOfPages);
        foreach (var page in pdf.GetPages())
        {
            if (paper == "roll") Assert.Equal(610, page.Width * MmPerPoint, 0.001);
            else Assert.Equal((size.HeightMm, size.WidthMm), (Math.Round(page.Width * MmPerPoint, 2), Math.Round(page.Height * MmPerPoint, 2)));
            var words = string.Join(' ', page.GetWords().Select(w => w.Text));
            Assert.Contains("Skeleton hatchet 275", words, StringComparison.Ordinal);
            Assert.Contains("Rev B", words, StringComparison.Ordinal);
            Assert.Contains("2025-11-25", words, StringComparison.Ordinal);
            Assert.Contains($"sheet {page.Number} of {sheets.Length}", words, StringComparison.Ordinal);
            Assert.Contains("Print at 100 % / actual size", words, StringComparison.Ordinal);
            Assert.Contains("along the feed", page.Text, StringComparison.Ordinal);
            Assert.Contains("across the sheet", page.Text, StringComparison.Ordinal);
        }

        var all = string.Join(' ', pdf.GetPages().SelectMany(p => p.GetWords()).Select(w => w.Text));
        foreach (var hole in request.Results.Holes) Assert.Contains($"{hole.Name} Ø{hole.Diameter.Mm}", all, StringComparison.Ordinal);
    }

    [Fact]
    public void The_outline_is_drawn_line_by_line_at_true_size_0_2_wide()
    {
        var request = ExamplePieces.Request(ExamplePieces.Hatchet, PaperSize.A4);
        var options = TemplateOptions.For(request);
        var map = TemplateSheets.Tiles(request, options)!.Tiles[0].PlanToSheet;
        using var pdf = PdfDocument.Open(Write(request, TemplateSheets.Draw(request, options)));
        var lines = pdf.GetPage(1).Paths
            .Where(p => p.IsStroked && Math.Abs((double)p.LineWidth * MmPerPoint - 0.2) < 0.001)
            .SelectMany(p => p).SelectMany(s => s.Commands).OfType<PdfSubpath.Line>()
            .Select(l => (A: Mm(l.From), B: Mm(l.To))).ToList();
        foreach (var s in request.Results.Plan.Outline.Segments.OfType<Line>())
        {
            var (a, b) = (map.Map(s.Start), map.Map(s.End));
            Assert.Contains(lines, l => l.A.To(a) < 0.001 && l.B.To(b) < 0.001);
        }
    }

    [Fact]
    public void Mirrored_and_corrected_sheets_say_so()
    {
        var request = ExamplePieces.Request(ExamplePieces.Kitchen, PaperSize.A4);
        var options = TemplateOptions.For(request) with { Mirror = true, Scale = PrintScale.After(PrintScale.True, 97.2, 97.0) };
        using var pdf = PdfDocument.Open(Write(request, TemplateSheets.Draw(request, options)));
        foreach (var page in pdf.GetPages())
        {
            var words = string.Join(' ', page.GetWords().Select(w => w.Text));
            Assert.Contains("MIRRORED – for the back face", words, StringComparison.Ordinal);
            Assert.Contains("across × 1.0288, along × 1.0309", words, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Qpdf_finds_nothing_wrong()
    {
        var file = System.IO.Path.GetTempFileName();
        try
        {
            File.WriteAllBytes(file, Kitchen());
            var (exit, said) = Raster.Start("qpdf", ["--check", file]);
            Assert.True(exit == 0, said);
        }
        finally
        {
            File.Delete(file);
        }
    }

    [Fact]
    public void Another_process_writes_the_same_bytes()
    {
        // this test program runs itself and lets one test write the file
        var file = WrittenElsewhere;
        File.Delete(file);
        var program = System.IO.Path.Combine(AppContext.BaseDirectory, System.Reflection.Assembly.GetExecutingAssembly().GetName().Name!);
        var (exit, said) = Raster.Start(program, ["-method", typeof(PdfReadBackTests).FullName + "." + nameof(Writes_a_template)]);
        Assert.True(exit == 0, said);
        Assert.True(File.ReadAllBytes(file).AsSpan().SequenceEqual(Kitchen()));
    }

    [Fact]
    public void Writes_a_template()
    {
        File.WriteAllBytes(WrittenElsewhere, Kitchen());
        Assert.True(new FileInfo(WrittenElsewhere).Length > 1000);
    }

    private static string WrittenElsewhere => System.IO.Path.Combine(AppContext.BaseDirectory, "written-elsewhere.pdf");

    private static Point Mm(PdfPoint p) => new(p.X * MmPerPoint, p.Y * MmPerPoint);

    private static byte[] Kitchen()
    {
        var request = ExamplePieces.Request(ExamplePieces.Kitchen, PaperSize.A4);
        return Write(request, TemplateSheets.Draw(request, TemplateOptions.For(request)));
    }

    private static byte[] Write(SheetRequest request, System.Collections.Immutable.ImmutableArray<Sheet> sheets)
        => PdfWriter.Write(new SheetSet(request.Results.Plan.Name, request.Date, sheets));
}
