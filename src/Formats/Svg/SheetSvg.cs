using System.Text;
using Tangwright.Foundation;

namespace Tangwright.Formats;

/// <summary>A sheet as SVG at true size: user unit 1 mm, paper the size of the sheet, drawn as <see cref="PdfWriter"/> draws it. Lettering asks for the faces of <see cref="SheetFonts"/>; where they are missing it is still as long as computed.</summary>
public static class SheetSvg
{
    /// <summary>The element, to stand in a page. The same for the same sheet.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="label">What it is, for those who do not see it.</param>
    public static string Write(Sheet sheet, string label)
    {
        var s = new StringBuilder();
        s.Append($"<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"sheet\" role=\"img\" aria-label=\"{SvgText.Escaped(label)}\" width=\"{SvgText.Mm(sheet.WidthMm)}mm\" height=\"{SvgText.Mm(sheet.HeightMm)}mm\" viewBox=\"0 0 {SvgText.Mm(sheet.WidthMm)} {SvgText.Mm(sheet.HeightMm)}\" fill=\"none\" stroke-linejoin=\"round\" text-rendering=\"geometricPrecision\" font-family=\"'Sheet lettering','{SheetFonts.Family}',sans-serif\" style=\"font-kerning:none;font-variant-ligatures:none\">\n");
        new SvgInk(s, sheet.HeightMm).Draw(sheet.Marks);
        return s.Append("</svg>\n").ToString();
    }
}
