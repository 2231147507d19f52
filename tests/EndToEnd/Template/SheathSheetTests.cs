using Tangwright.Core;
using Tangwright.Documents;
using Tangwright.Formats;
using Tangwright.Foundation;

namespace Tangwright.Tests;

/// <summary>The sheath pattern as printed by poppler, held against the blade it is for.</summary>
public sealed class SheathSheetTests
{
    private const double Allowed = 0.05;

    [Theory]
    [InlineData("a4", SheathKind.Leather, false)]
    [InlineData("a4", SheathKind.Leather, true)]
    [InlineData("letter", SheathKind.Sheet, false)]
    [InlineData("a3", SheathKind.Leather, false)]
    [InlineData("roll", SheathKind.Sheet, true)]
    public void The_blank_is_printed_true(string paper, SheathKind kind, bool shrunk)
    {
        // the paring knife, 1.6 thick: 85 mm of it go in; its width is worked out below
        var size = paper switch { "a4" => PaperSize.A4, "letter" => PaperSize.Letter, "a3" => PaperSize.A3, _ => PaperSize.Roll(305) };
        var paring = ExamplePieces.Paring;
        var plan = paring.Plan with { Sheath = new SheathPlan(kind), Stock = paring.Plan.Stock with { Thickness = Length.OfMm(1.6) } };
        var request = ExamplePieces.Request(paring with { Plan = plan }, size);
        if (shrunk) request = request with { Scale = PrintScale.After(PrintScale.True, 97.2, 97.0) };
        var sheet = SheathSheet.Draw(request).Single(s => s.Title.StartsWith("Sheath pattern", StringComparison.Ordinal));
        var (across, along) = shrunk ? (0.972, 0.970) : (1.0, 1.0);
        var (fx, fy) = paper != "roll" && sheet.WidthMm > sheet.HeightMm ? (along, across) : (across, along);
        var page = Raster.Print(PdfWriter.Write(new SheetSet("Sheath", request.Date, [sheet])), [sheet], fx, fy)[0];
        var cut = sheet.Marks.OfType<ClippedMarks>().SelectMany(c => c.Marks).OfType<StrokeMark>().Where(s => s.Path.Closed && s.Pen.Kind == LineKind.Solid).MaxBy(s => s.Path.Bounds.Width * s.Path.Bounds.Height)!.Path.Bounds;
        var (w, h) = (cut.Width * fx, cut.Height * fy);

        // spine at the mouth, x 85: from (88, 20.5) to (60, 20.2)
        var widest = 20.2 + (0.3 * 25 / 28);
        var (seam, thick) = kind == SheathKind.Leather ? (15, 3.4) : (25, 2.0);
        var (length, width) = (85 + seam, (2 * (widest + seam)) + (Math.PI / 2 * (1.6 + thick)));
        var turned = Math.Abs(w - width) < Math.Abs(w - length);
        Assert.Equal(turned ? width : length, w, 0.001);
        Assert.Equal(turned ? length : width, h, 0.001);

        // the mouth is straight, and so is the end beside the fold
        var middle = turned ? cut.Centre.X * fx : cut.Centre.Y * fy;
        var near = turned ? page.LineY(cut.MinY * fy, middle + 1.5, middle + 2.5) : page.LineX(cut.MinX * fx, middle + 1.5, middle + 2.5);
        var far = turned ? page.LineY(cut.MaxY * fy, middle + 1.5, middle + 2.5) : page.LineX(cut.MaxX * fx, middle + 1.5, middle + 2.5);
        Assert.Equal(length, far - near, Allowed);
        Assert.Equal(2, sheet.Marks.OfType<StrokeMark>().SelectMany(s => s.Path.Segments).OfType<Line>().Count(l => Math.Abs(l.Length - (100 * request.Scale.Across)) < 1e-6 || Math.Abs(l.Length - (100 * request.Scale.Along)) < 1e-6));
    }
}
