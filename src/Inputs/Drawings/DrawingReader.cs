using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>Reads a drawing, SVG or ASCII DXF, and finds the piece in it.</summary>
public static class DrawingReader
{
    /// <summary>The piece in a drawing, or one fault that says where and why not.</summary>
    /// <param name="bytes">The whole file.</param>
    /// <param name="fileName">Its name as the person gave it.</param>
    /// <param name="choice">What the person said.</param>
    public static Checked<ImportedPiece> Read(byte[] bytes, string fileName, ImportChoice choice)
        => Tray(bytes, fileName, choice).Then(tray => tray.MmPerUnit is null ? Bad(AskForUnits(tray)) : new LoopSorter(tray, choice).Sort());

    /// <summary>Every closed loop of a drawing, to choose the outline from; or one fault that says why there is none. A drawing that does not say its unit is taken as mm and says so.</summary>
    /// <param name="bytes">The whole file.</param>
    /// <param name="fileName">Its name as the person gave it.</param>
    /// <param name="choice">What the person said.</param>
    public static Checked<FoundLoops> Loops(byte[] bytes, string fileName, ImportChoice choice) => Tray(bytes, fileName, choice).Then(tray => new LoopSorter(tray, choice).Find());

    private static Checked<CurveTray> Tray(byte[] bytes, string fileName, ImportChoice choice)
    {
        if (bytes.Length > CurveTray.MostBytes)
            return Bad(Fault.OfFile(fileName, $"The file has {bytes.Length / 1e6:F0} MB; drawings up to {CurveTray.MostBytes / 1_000_000} MB are read.", "Save only the piece into a file of its own."));
        if (!(choice.JoinMm is >= 0 and <= 5)) return Bad(Fault.OfFile(fileName, "The join tolerance should be 0 to 5 mm.", "Leave it out for 0.05 mm."));
        if (DxfReader.IsBinary(bytes)) return Bad(Fault.OfFile(fileName, "This is the binary form of DXF.", "Save the drawing as ASCII DXF."));
        if (Starts(bytes) is not { } first) return Bad(Fault.OfFile(fileName, "The file is empty.", "Save the drawing again."));
        var wide = bytes.Length > 1 && bytes[0] >= 0xFE && bytes[1] >= 0xFE;
        var tray = first == (byte)'<' || wide ? SvgReader.Read(bytes, fileName, choice)
            : char.IsAsciiDigit((char)first) ? DxfReader.Read(bytes, fileName, choice)
            : null;
        if (tray is null) return Bad(Fault.OfFile(fileName, "This is neither SVG nor ASCII DXF.", "Save the drawing as SVG or as ASCII DXF (R12 to 2018)."));
        if (tray.Fault is { } fault) return Bad(fault);
        if (tray.Curves.Count == 0) return Bad(Fault.OfFile(fileName, "The drawing holds no lines or curves." + NothingBut(tray), "Draw the outline with lines, arcs or curves and save it again."));
        return Checked<CurveTray>.Good(tray);

        static Checked<CurveTray> Bad(Fault fault) => Checked<CurveTray>.Bad(fault);
    }

    private static string NothingBut(CurveTray tray)
        => tray.LeftOut.Count == 0 ? "" : " Only: " + string.Join(", ", tray.LeftOut.Take(8).Select(l => $"{l.Value} {l.Key}")) + ".";

    private static Fault AskForUnits(CurveTray tray)
    {
        var box = tray.Curves.Aggregate(Box.Nothing, (b, c) => b.With(c.Path.Bounds));
        string Size(double f, int decimals) => $"{Shown.Trimmed(box.Width * f, decimals)} x {Shown.Trimmed(box.Height * f, decimals)}";
        return Fault.OfFile(
            tray.File,
            $"The drawing does not say its unit. All of it measures {Size(1, 3)}: if that is mm, it is {Size(1 / 25.4, 3)} in; if that is inches, it is {Size(25.4, 2)} mm.",
            "Say which: --units mm or --units in.");
    }

    private static byte? Starts(ReadOnlySpan<byte> bytes)
    {
        if (bytes.StartsWith("\uFEFF"u8)) bytes = bytes[3..];
        foreach (var b in bytes)
        {
            if (b is not ((byte)' ' or (byte)'\t' or (byte)'\r' or (byte)'\n')) return b;
        }

        return null;
    }

    private static Checked<ImportedPiece> Bad(Fault fault) => Checked<ImportedPiece>.Bad(fault);
}
