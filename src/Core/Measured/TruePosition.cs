using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>How far a hole is out of place, as the diameter of the circle round its planned centre that its centre lies on.</summary>
[Formula("Position error as a diameter, 2 hypot(dx, dy), mm", "asme-y14.5", "Any. Exact")]
public static class TruePosition
{
    /// <summary>The diameter.</summary>
    /// <param name="off">Measured less planned centre, mm.</param>
    public static Length Of(Point off) => Length.OfMm(2 * off.Length);
}
