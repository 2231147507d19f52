using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>How far a blank that is held by two pins can lie beside the guide piece at some place.</summary>
[Formula("Shift at a place of a piece held by two pins, at most, mm: (c1 |L - a| + c2 |a|) / 2L", "similar-triangles", "Pins L apart, a the place's distance along their line from the first, c1 and c2 their clearances; turns too small for their cosine to matter")]
public static class PinnedPlay
{
    /// <summary>The shift, square to the line of the pins; along it no more.</summary>
    /// <param name="first">Middle of the first pin, mm.</param>
    /// <param name="second">Middle of the second pin, mm.</param>
    /// <param name="firstClearance">Play of the first pin, on the diameter: in guide and blank together.</param>
    /// <param name="secondClearance">Play of the second pin.</param>
    /// <param name="place">The place, mm.</param>
    public static Length Of(Point first, Point second, Length firstClearance, Length secondClearance, Point place)
    {
        var line = second - first;
        var share = (place - first).Dot(line) / line.Dot(line);
        return ((firstClearance * Math.Abs(1 - share)) + (secondClearance * Math.Abs(share))) / 2;
    }
}
