using System.Text;
using Tangwright.Foundation;

namespace Tangwright.UseCases;

/// <summary>A file's text, or one plain reason why it cannot be read.</summary>
internal static class TextFile
{
    /// <summary>Largest text file read, bytes. A plan of 5 000 holes is under 1 MB.</summary>
    private const long LargestText = 8_000_000;

    /// <summary>Largest drawing read, bytes.</summary>
    private const long LargestDrawing = 100_000_000;

    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>The text of a UTF-8 file.</summary>
    public static Checked<string> Read(string file)
        => ReadBytes(file, LargestText).Then(bytes =>
        {
            try
            {
                var text = Strict.GetString(bytes);
                return Checked<string>.Good(text is ['\uFEFF', ..] ? text[1..] : text);
            }
            catch (DecoderFallbackException e)
            {
                return Checked<string>.Bad(Fault.OfFile(file, $"not plain text: byte {e.Index} is not UTF-8", "save it as plain text, UTF-8"));
            }
        });

    /// <summary>The bytes of a drawing.</summary>
    public static Checked<byte[]> ReadDrawing(string file) => ReadBytes(file, LargestDrawing);

    private static Checked<byte[]> ReadBytes(string file, long largest)
    {
        if (string.IsNullOrWhiteSpace(file)) return Bad("file", "no file was named", "give its name");
        try
        {
            var info = new System.IO.FileInfo(file);
            if (System.IO.Directory.Exists(file)) return Bad(file, "is a folder, not a file", "give the file itself");
            if (!info.Exists) return Bad(file, "no such file", "check the name and the folder");
            if (info.Length > largest) return Bad(file, $"is too large ({info.Length:N0} bytes; the most read is {largest:N0})", "give a smaller file");
            return Checked<byte[]>.Good(System.IO.File.ReadAllBytes(file));
        }
        catch (Exception e) when (e is System.IO.IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return Bad(file, "cannot be read: " + e.Message, "check the name and that you may read it");
        }
    }

    private static Checked<byte[]> Bad(string file, string message, string remedy) => Checked<byte[]>.Bad(Fault.OfFile(file, message, remedy));
}
