using System.Buffers.Binary;

namespace Tangwright.Inputs;

/// <summary>Kind and size of a picture, from its first bytes: PNG (W3C PNG, third edition, §5.2 and §11.2.1) or JPEG (ITU-T T.81, annex B).</summary>
/// <param name="IsPng">PNG; else JPEG.</param>
/// <param name="Wide">Pixels across.</param>
/// <param name="High">Pixels down.</param>
public sealed record PictureSize(bool IsPng, int Wide, int High)
{
    /// <summary>Most pixels along one side.</summary>
    public const int MostPixels = 30_000;

    /// <summary>Reads it; null when the bytes are no such picture or one too large.</summary>
    public static PictureSize? Of(ReadOnlySpan<byte> bytes)
    {
        var found = bytes is [0x89, (byte)'P', (byte)'N', (byte)'G', 13, 10, 26, 10, ..] ? OfPng(bytes) : OfJpeg(bytes);
        return found is { Wide: > 0 and <= MostPixels, High: > 0 and <= MostPixels } ? found : null;
    }

    private static PictureSize? OfPng(ReadOnlySpan<byte> bytes)
    {
        if (bytes.Length < 33 || !bytes[12..16].SequenceEqual("IHDR"u8)) return null;
        var (wide, high) = (BinaryPrimitives.ReadUInt32BigEndian(bytes[16..]), BinaryPrimitives.ReadUInt32BigEndian(bytes[20..]));
        return wide <= MostPixels && high <= MostPixels ? new(true, (int)wide, (int)high) : null;
    }

    private static PictureSize? OfJpeg(ReadOnlySpan<byte> bytes)
    {
        if (bytes is not [0xFF, 0xD8, 0xFF, ..]) return null;
        var at = 2;
        while (at + 9 < bytes.Length && bytes[at] == 0xFF)
        {
            var marker = bytes[at + 1];
            if (marker == 0xFF)
            {
                at++;
                continue;
            }

            // a frame header: SOF0 to SOF15, save the tables DHT, JPG and DAC among them
            if (marker is >= 0xC0 and <= 0xCF and not (0xC4 or 0xC8 or 0xCC)) return new(false, BinaryPrimitives.ReadUInt16BigEndian(bytes[(at + 7)..]), BinaryPrimitives.ReadUInt16BigEndian(bytes[(at + 5)..]));
            var length = BinaryPrimitives.ReadUInt16BigEndian(bytes[(at + 2)..]);
            if (length < 2 || marker is 0xD9 or 0xDA) return null;
            at += 2 + length;
        }

        return null;
    }
}
