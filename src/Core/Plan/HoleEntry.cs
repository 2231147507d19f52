using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>What a hole is for.</summary>
public enum HoleUse
{
    /// <summary>To save weight.</summary>
    Lightening,

    /// <summary>For a pin.</summary>
    Pin,

    /// <summary>For a cord or its tube.</summary>
    Lanyard,

    /// <summary>Lets resin join both scales.</summary>
    Glue,

    /// <summary>To locate the piece on pins.</summary>
    Locating,

    /// <summary>To hang it from.</summary>
    Hanging,
}

/// <summary>How a hole is brought to size.</summary>
public enum HoleMake
{
    /// <summary>Drilled.</summary>
    Drill,

    /// <summary>Drilled and reamed.</summary>
    Ream,

    /// <summary>Bored.</summary>
    Bore,
}

/// <summary>A <c>[[hole]]</c> or a <c>[[hole_row]]</c> as written.</summary>
/// <param name="Name">Its name; unique in the plan.</param>
/// <param name="Use">What for.</param>
/// <param name="Make">How.</param>
public abstract record HoleEntry(string Name, HoleUse Use, HoleMake Make);

/// <summary>One hole.</summary>
/// <param name="Name">Name.</param>
/// <param name="At">Centre, plan's axes, mm.</param>
/// <param name="Diameter">Diameter.</param>
/// <param name="DiameterAsWritten">As the maker wrote it: "#30", "1/4 in", "8".</param>
/// <param name="Use">What for.</param>
/// <param name="Make">How.</param>
public sealed record Hole(string Name, Point At, Length Diameter, string DiameterAsWritten, HoleUse Use, HoleMake Make) : HoleEntry(Name, Use, Make)
{
    /// <summary>Diameter of the rod or tube that goes through the hole; null when not said.</summary>
    public Length? Pin { get; init; }

    /// <summary>Bore of the tube that goes through the hole; null: a rod.</summary>
    public Length? Tube { get; init; }

    /// <summary>Drilled after hardening, not before.</summary>
    public bool IsDrilledHard { get; init; }
}

/// <summary>How a row is spaced.</summary>
public enum RowSpacing
{
    /// <summary>Equal steel between neighbours.</summary>
    EqualWebs,

    /// <summary>Equal distance from centre to centre.</summary>
    EqualPitch,
}

/// <summary>A row of holes, first and last centre at its ends; its holes are named Name1, Name2, ...</summary>
/// <param name="Name">Name of the row.</param>
/// <param name="From">Centre of the first hole; on the midline: the nearest point of it; null: the grip's front end.</param>
/// <param name="To">Centre of the last hole; on the midline: the nearest point of it; null: the grip's rear end.</param>
/// <param name="OnMidline">Along the medial curve of the grip instead of a straight line.</param>
/// <param name="Count">How many, at least 2.</param>
/// <param name="Diameters">One: all alike; two: graded evenly; as many as the count: as written.</param>
/// <param name="Spacing">Equal webs or equal pitch.</param>
/// <param name="Use">What for.</param>
/// <param name="Make">How.</param>
public sealed record HoleRow(
    string Name,
    Point? From,
    Point? To,
    bool OnMidline,
    int Count,
    ImmutableArray<Length> Diameters,
    RowSpacing Spacing,
    HoleUse Use,
    HoleMake Make) : HoleEntry(Name, Use, Make);
