using System.Security.Cryptography;

namespace Tangwright.Formats;

/// <summary>Puts in the place of everything PDFsharp draws by lot (file identifier, XMP identifiers, tags of font subsets) a name of the same length made from the rest of the file, so that the same sheets give the same bytes and different sheets different names.</summary>
internal static class CanonicalPdf
{
    private const int TagLength = 6;

    /// <summary>The file with its drawn names replaced in place; nothing moves, so its table of offsets stays right.</summary>
    /// <param name="pdf">As saved, uncompressed; changed.</param>
    public static byte[] Of(byte[] pdf)
    {
        var tags = new List<(int At, int Number)>();
        var seen = new List<byte[]>();
        for (var at = Next(pdf, 0, "+DejaVu"u8); at >= 0; at = Next(pdf, at + 1, "+DejaVu"u8))
        {
            var from = at - TagLength;
            if (from < 1 || pdf[from - 1] != '/') continue;
            var tag = pdf.AsSpan(from, TagLength).ToArray();
            var number = seen.FindIndex(s => s.AsSpan().SequenceEqual(tag));
            if (number < 0)
            {
                number = seen.Count;
                seen.Add(tag);
            }

            tags.Add((from, number));
            pdf.AsSpan(from, TagLength).Fill((byte)'A');
        }

        var hex = new List<(int At, int Length)>();
        Blank(pdf, "<xmpMM:DocumentID>uuid:"u8, 36, hex);
        Blank(pdf, "<xmpMM:InstanceID>uuid:"u8, 36, hex);
        var id = pdf.AsSpan().LastIndexOf("/ID[<"u8);
        if (id >= 0) Blank(pdf.AsSpan(0, id + 39), id + 5, 32, hex);
        if (id >= 0) Blank(pdf.AsSpan(0, id + 73), id + 39, 32, hex);

        var name = SHA256.HashData(pdf);
        foreach (var (at, number) in tags)
        {
            for (var i = 0; i < TagLength; i++) pdf[at + i] = (byte)('A' + ((name[i] + (number * (i == 0 ? 1 : 0))) % 26));
        }

        foreach (var (at, length) in hex) Name(pdf.AsSpan(at, length), name);
        return pdf;
    }

    private static int Next(ReadOnlySpan<byte> pdf, int from, ReadOnlySpan<byte> what)
    {
        var at = pdf[from..].IndexOf(what);
        return at < 0 ? -1 : from + at;
    }

    private static void Blank(Span<byte> pdf, ReadOnlySpan<byte> after, int length, List<(int At, int Length)> found)
    {
        var at = pdf.LastIndexOf(after);
        if (at >= 0) Blank(pdf, at + after.Length, length, found);
    }

    private static void Blank(Span<byte> pdf, int at, int length, List<(int At, int Length)> found)
    {
        // dashes of a uuid stay
        foreach (ref var b in pdf.Slice(at, length)) b = b == '-' ? b : (byte)'0';
        found.Add((at, length));
    }

    private static void Name(Span<byte> place, ReadOnlySpan<byte> name)
    {
        var digit = 0;
        foreach (ref var b in place)
        {
            if (b == '-') continue;
            var value = name[digit / 2];
            b = "0123456789ABCDEF"u8[digit % 2 == 0 ? value >> 4 : value & 15];
            digit++;
        }
    }
}
