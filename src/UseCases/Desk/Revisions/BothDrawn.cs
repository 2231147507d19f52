using System.Globalization;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.UseCases;

/// <summary>Two plans on one drawing, path data in mm, y up.</summary>
/// <param name="ViewBox">Left, upper (negative: the drawing is turned over), width and height of what is shown.</param>
/// <param name="Was">The other plan, outline and holes.</param>
/// <param name="Now">The open plan.</param>
public sealed record BothDrawn(string ViewBox, string Was, string Now)
{
    private const double RoomMm = 4;

    /// <summary>Draws both.</summary>
    public static BothDrawn Of(Results was, Results now)
    {
        var (a, b) = (was.Plan.Outline.Bounds, now.Plan.Outline.Bounds);
        var (left, right) = (Math.Min(a.MinX, b.MinX) - RoomMm, Math.Max(a.MaxX, b.MaxX) + RoomMm);
        var (low, high) = (Math.Min(a.MinY, b.MinY) - RoomMm, Math.Max(a.MaxY, b.MaxY) + RoomMm);
        return new(string.Join(' ', new[] { left, -high, right - left, high - low }.Select(v => v.ToString("F3", CultureInfo.InvariantCulture))), Lines(was), Lines(now));
    }

    /// <summary>Outline and holes of a plan as one path.</summary>
    public static string Lines(Results r)
        => PathData.Write(r.Plan.Outline, 1) + string.Concat(r.Holes.Select(h => " " + PathData.Write(Path.Circle(h.At, h.Diameter.Mm / 2), 1)));
}
