using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Kind of saw; it decides how a cut can be made.</summary>
public enum SawKind
{
    /// <summary>Band saw with a table; the steel passes beside its frame.</summary>
    Band,

    /// <summary>Portable band saw; its frame stands in the way of the cut, not beside it.</summary>
    PortableBand,

    /// <summary>Hacksaw by hand.</summary>
    Hacksaw,

    /// <summary>Chop saw or horizontal band saw: cuts across the bar only.</summary>
    Chop,

    /// <summary>Angle grinder with a cut-off disc.</summary>
    Disc,

    /// <summary>Plasma torch along a straight guide.</summary>
    Plasma,
}

/// <summary>A saw.</summary>
/// <param name="Name">What the maker calls it.</param>
/// <param name="Kerf">Width removed.</param>
/// <param name="Throat">Throat depth; null when it does not matter.</param>
public sealed record Saw(string Name, Length Kerf, Length? Throat)
{
    /// <summary>Its kind.</summary>
    public SawKind Kind { get; init; } = SawKind.Band;

    /// <summary>Longest cut it makes; null when not said.</summary>
    public Length? LongestCut { get; init; }

    /// <summary>Greatest angle off a square cut across the bar; null: any, or square only for a chop saw.</summary>
    public Angle? MostAngle { get; init; }

    /// <summary>How far its cut strays to both sides together; null: by common practice for its kind.</summary>
    public Length? Wander { get; init; }

    /// <summary>Steel it parts in a minute, length of the cut times thickness, cm²/min; null: by common practice for its kind.</summary>
    public double? RateCm2PerMin { get; init; }

    /// <summary>Time to mark, clamp and start one cut, min; null: by common practice.</summary>
    public double? SetUpMinutes { get; init; }

    /// <summary>Teeth per inch of the blades owned, ascending.</summary>
    public ImmutableArray<double> TeethPerInch { get; init; } = [];

    /// <summary>Diameter of the disc; null when not said or none.</summary>
    public Length? DiscDiameter { get; init; }
}
