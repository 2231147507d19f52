using PdfSharp.Fonts;

namespace Tangwright.Formats;

/// <summary>Hands PDFsharp the two faces that travel with the program, so that no font of the machine is ever looked for.</summary>
internal sealed class EmbeddedFonts : IFontResolver
{
    private static readonly Lock Gate = new();

    /// <summary>Makes sure PDFsharp asks here; cheap when it already does.</summary>
    public static void Install()
    {
        lock (Gate)
        {
            if (GlobalFontSettings.FontResolver is null) GlobalFontSettings.FontResolver = new EmbeddedFonts();
        }
    }

    /// <inheritdoc/>
    public FontResolverInfo ResolveTypeface(string familyName, bool isBold, bool isItalic) => new(isBold ? SheetFonts.Bold : SheetFonts.Regular);

    /// <inheritdoc/>
    public byte[] GetFont(string faceName) => SheetFonts.Of(faceName);
}
