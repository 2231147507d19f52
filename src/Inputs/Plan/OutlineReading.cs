using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>Reads the outline: one closed loop that encloses something.</summary>
internal static class OutlineReading
{
    public static Path? Read(Fields f, double unitMm)
    {
        if (f.Node("path") is not { } node) return null;
        if (node is not TomlText text)
        {
            f.Fault("path", $"path is {node.Kind} where path data in quotes is wanted", "write path = \"M 0 0 L 100 0 L 100 30 L 0 30 Z\"");
            return null;
        }

        var read = PathData.Read(text.Value, unitMm);
        if (read.Fault is { } fault)
        {
            f.FaultAt(text.ContentOffset >= 0 ? text.ContentOffset + fault.Offset : text.Offset, $"path: {fault.Message}", fault.Remedy);
            return null;
        }

        if (read.Paths.Length == 0)
        {
            f.Fault("path", "the outline has no length", "write its corners, as M 0 0 L 100 0 L 100 30 L 0 30 Z");
            return null;
        }

        var outline = read.Paths[0];
        if (read.Paths.Length > 1)
        {
            f.Fault("path", $"the outline has {read.Paths.Length} loops; one is wanted", "leave the outer loop here; round holes are written as [[hole]]");
            return null;
        }

        if (!outline.Closed)
        {
            var (start, end) = (outline.Start, outline.End);
            f.Fault("path", $"the outline is open: its ends are {Shown.Both(Length.OfMm(start.To(end)))} apart, from {At(end)} to {At(start)}", "end the path with Z, which closes it with a straight line, or with the first point");
            return null;
        }

        var box = outline.Bounds;
        if (Math.Max(Math.Max(-box.MinX, box.MaxX), Math.Max(-box.MinY, box.MaxY)) > LengthText.GreatestMm)
        {
            f.Fault("path", "the outline reaches more than 100 m from the origin", "check the numbers and the unit");
            return null;
        }

        if (Math.Abs(Moments.Of(outline).AreaMm2) < 0.01)
        {
            f.Fault("path", "the outline encloses nothing", "check the order of its points");
            return null;
        }

        return outline;
    }

    private static string At(Point p) => $"x {Shown.Mm(Length.OfMm(p.X))} y {Shown.Mm(Length.OfMm(p.Y))}";
}
