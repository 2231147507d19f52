using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>Room for pencil notes: grey lines 9 mm apart.</summary>
internal static class Notes
{
    private const double PitchMm = 9;

    /// <summary>Rules a box; nothing when it is too low for two lines.</summary>
    public static void Draw(Canvas canvas, Box box)
    {
        if (box.Height < 6 + (2 * PitchMm)) return;
        canvas.Text("Notes", new Point(box.MinX, box.MaxY - 4.5), 3, bold: true);
        for (var y = box.MaxY - 6 - PitchMm; y >= box.MinY; y -= PitchMm) canvas.Line(new Point(box.MinX, y), new Point(box.MaxX, y), new Pen(0.18, LineKind.Solid, Ink.Grey));
    }
}
