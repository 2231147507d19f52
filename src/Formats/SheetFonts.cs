namespace Tangwright.Formats;

/// <summary>The two faces sheets are lettered in, which travel with the program.</summary>
public static class SheetFonts
{
    /// <summary>Family name.</summary>
    public const string Family = "DejaVu Sans Condensed";

    /// <summary>File name of the plain face.</summary>
    public const string Regular = "DejaVuSansCondensed.ttf";

    /// <summary>File name of the bold face.</summary>
    public const string Bold = "DejaVuSansCondensed-Bold.ttf";

    /// <summary>The bytes of a face, TrueType.</summary>
    /// <param name="fileName">One of the two names.</param>
    public static byte[] Of(string fileName)
    {
        using var stream = typeof(SheetFonts).Assembly.GetManifestResourceStream(fileName)
            ?? throw new InvalidOperationException($"the font {fileName} is not in the program");
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }
}
