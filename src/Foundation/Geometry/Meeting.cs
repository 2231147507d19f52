namespace Tangwright.Foundation;

/// <summary>How two strands meet.</summary>
public enum MeetingKind
{
    /// <summary>They pass through one another.</summary>
    Crossing,

    /// <summary>They meet with a common direction, or at a corner, without passing through.</summary>
    Touch,

    /// <summary>They run along one another.</summary>
    Overlap,
}

/// <summary>One place where a path meets itself or another path.</summary>
/// <param name="Kind">How they meet.</param>
/// <param name="At">The point, mm; for an overlap its first end on the first strand.</param>
/// <param name="Until">The same point; for an overlap its other end.</param>
/// <param name="First">Spot on the first strand.</param>
/// <param name="Second">Spot on the second strand.</param>
public readonly record struct Meeting(MeetingKind Kind, Point At, Point Until, PathSpot First, PathSpot Second);
