namespace Tangwright.Foundation;

/// <summary>Circular arcs by chord and bow, the height of the arc's middle over its chord.</summary>
public static class Bow
{
    /// <summary>A bow of less than this part of the chord is nearly straight.</summary>
    public const double LeastPart = 1e-4;

    /// <summary>The arc from a point to another whose middle lies a bow to the left of the chord, mm; to the right when negative. R = (c²/4 + h²) / (2 h), the intersecting chords of Euclid III.35. Null when it is nearly straight.</summary>
    public static Arc? Over(Point start, Point end, double bow)
    {
        var chord = start.To(end);
        if (!(Math.Abs(bow) >= LeastPart * chord) || chord <= 0) return null;
        var radius = ((chord * chord / 4) + (bow * bow)) / (2 * Math.Abs(bow));
        return Arc.Through(start, end, radius, large: Math.Abs(bow) > chord / 2, counterClockwise: bow < 0);
    }

    /// <summary>How far a place lies to the left of a chord, mm.</summary>
    public static double At(Point start, Point end, Point place) => (end - start).Unit.Cross(place - start);
}
