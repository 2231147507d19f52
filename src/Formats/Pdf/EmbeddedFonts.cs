using PdfSharp.Fonts;

namespace Tangwright.Formats;

/// <summary>Hands PDFsharp the two faces that travel with the program, so that no font of the machine is ever looked for.</summary>
internal sealed class EmbeddedFonts : IFontResolver
{
    /// <summary>Family name the sheets are lettered in.</summary>
    public const string Family = "DejaVu Sans Condensed";

    private const string Regular = "DejaVuSansCondensed.ttf";
    private const string Bold = "DejaVuSansCondensed-Bold.ttf";

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
    public FontResolverInfo ResolveTypeface(string familyName, bool isBold, bool isItalic) => new(isBold ? Bold : Regular);

    /// <inheritdoc/>
    public byte[] GetFont(string faceName)
    {
        using var stream = typeof(EmbeddedFonts).Assembly.GetManifestResourceStream(faceName)
            ?? throw new InvalidOperationException($"the font {faceName} is not in the program");
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }
}
