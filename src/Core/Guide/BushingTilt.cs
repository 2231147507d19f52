using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>How far a drill that leans in its guide hole ends up beside its place: it touches opposite rims at the two ends of the guide.</summary>
[Formula("Walk of a drill in a guide hole, at most, mm: clearance/length x (gap + depth) + clearance/2", "similar-triangles", "A stiff drill, clearance well under its diameter and the length of the guide; bending of the drill is not counted")]
public static class BushingTilt
{
    /// <summary>The walk at a depth in the work.</summary>
    /// <param name="clearance">Guide hole less drill, on the diameter.</param>
    /// <param name="guide">Length of the guide hole.</param>
    /// <param name="gap">Between guide and work.</param>
    /// <param name="depth">Depth in the work; its thickness where the drill comes out.</param>
    public static Length Of(Length clearance, Length guide, Length gap, Length depth)
        => (clearance / guide * (gap + depth)) + (clearance / 2);
}
