using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>What a sheath is made of.</summary>
public enum SheathKind
{
    /// <summary>Leather folded along the spine, with a welt, stitched.</summary>
    Leather,

    /// <summary>Plastic sheet folded hot along the spine, riveted.</summary>
    Sheet,

    /// <summary>Two plastic sheets pressed hot, one on each face, riveted on both sides.</summary>
    TwoSheets,
}

/// <summary>The sheath wanted. What was left out is null and follows common practice.</summary>
/// <param name="Kind">What it is made of.</param>
public sealed record SheathPlan(SheathKind Kind)
{
    /// <summary>Thickness of the leather or sheet; null: common practice.</summary>
    public Length? MaterialThickness { get; init; }

    /// <summary>From the blade's outline to the cut edge; null: common practice.</summary>
    public Length? Seam { get; init; }

    /// <summary>From the finished edge of the sheath to the line of stitches or rivets; null: common practice.</summary>
    public Length? StitchFromEdge { get; init; }

    /// <summary>From stitch to stitch, or from rivet to rivet; null: common practice.</summary>
    public Length? Pitch { get; init; }

    /// <summary>x of the plan where the sheath ends; null: it follows from edge, plunge line and grip.</summary>
    public Length? Mouth { get; init; }

    /// <summary>Width of the belt that a loop is wanted for; null: no loop.</summary>
    public Length? BeltLoop { get; init; }
}
