using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>What the drills are made of.</summary>
public enum DrillMetal
{
    /// <summary>High-speed steel.</summary>
    HighSpeedSteel,

    /// <summary>High-speed steel with cobalt.</summary>
    Cobalt,

    /// <summary>Solid carbide.</summary>
    Carbide,
}

/// <summary>How long the drills are for their size.</summary>
public enum DrillReach
{
    /// <summary>Short and stiff (stub).</summary>
    Stub,

    /// <summary>The usual length (jobber).</summary>
    Jobber,

    /// <summary>Long.</summary>
    Long,
}

/// <summary>How the drills owned are ground and made; one answer for all of them.</summary>
/// <param name="Metal">What they are made of.</param>
/// <param name="Point">Point angle, inclusive.</param>
/// <param name="IsSplitPoint">Split point: no wide chisel edge.</param>
/// <param name="Reach">How long they are.</param>
public sealed record DrillGrind(DrillMetal Metal, Angle Point, bool IsSplitPoint, DrillReach Reach)
{
    /// <summary>High-speed steel, 118 degrees, not split, usual length.</summary>
    public static DrillGrind Usual { get; } = new(DrillMetal.HighSpeedSteel, Angle.OfDegrees(118), false, DrillReach.Jobber);
}

/// <summary>A short stiff drill to start holes, or a countersink for their rims.</summary>
/// <param name="Name">What the maker calls it.</param>
/// <param name="Diameter">Diameter of its body.</param>
/// <param name="Point">Point angle, inclusive.</param>
public sealed record PointedTool(string Name, Length Diameter, Angle Point);

/// <summary>An end mill.</summary>
/// <param name="Name">What the maker calls it.</param>
/// <param name="Diameter">Diameter.</param>
/// <param name="Flutes">Cutting edges.</param>
/// <param name="CuttingLength">Length that cuts; null when not said.</param>
/// <param name="IsCarbide">Solid carbide, not high-speed steel.</param>
/// <param name="FeedPerTooth">Feed of one tooth in the usual steel; null: by rule.</param>
public sealed record EndMill(string Name, Length Diameter, int Flutes, Length? CuttingLength, bool IsCarbide, Length? FeedPerTooth);

/// <summary>A clamp that holds the stock under the mill, seen as a box.</summary>
/// <param name="Name">What the maker calls it.</param>
/// <param name="Width">Along the edge of the stock it holds.</param>
/// <param name="Depth">How far it reaches onto the stock.</param>
/// <param name="Height">How far it stands above the stock's upper face.</param>
public sealed record Clamp(string Name, Length Width, Length Depth, Length Height);

/// <summary>What a machine's program may use, RS-274/NGC. The path is always that of the tool's centre, offset here.</summary>
/// <param name="Units">Unit the program is written in.</param>
/// <param name="HasDrillCycles">Whether it knows G81, G82 and G83; else they are written out as single moves.</param>
/// <param name="HasArcs">Whether it knows G2 and G3; else arcs are written as short straight moves.</param>
/// <param name="HasHelix">Whether an arc may go down at the same time; else helices are written as short straight moves.</param>
/// <param name="HasToolChange">Whether M6 stops for the next tool; else each tool gets a program stop M0 with a remark.</param>
public sealed record ProgramWays(LengthUnit Units, bool HasDrillCycles, bool HasArcs, bool HasHelix, bool HasToolChange)
{
    /// <summary>Millimetres, drill cycles, arcs, helices and tool change.</summary>
    public static ProgramWays Usual { get; } = new(LengthUnit.Mm, true, true, true, true);
}

/// <summary>Ways of putting a hole where it belongs, coarse to fine.</summary>
public enum PlacingWay
{
    /// <summary>Scribed, punched, drilled.</summary>
    Punch,

    /// <summary>Scribed and pricked under a magnifier, spotted, piloted, drilled.</summary>
    CarefulPunch,

    /// <summary>Transfer punch, or drilled through the other part.</summary>
    ThroughOtherPart,

    /// <summary>Drilled through a finished piece as guide, with locating pins.</summary>
    GuidePiece,

    /// <summary>Two parts pinned together and drilled at once: the place of one against the other.</summary>
    DrilledTogether,

    /// <summary>Mill with a digital readout, spotted, drilled.</summary>
    Readout,

    /// <summary>Mill under computer control, spotted, drilled.</summary>
    Cnc,

    /// <summary>Mill under computer control, bored with an end mill on a helix.</summary>
    CncBored,
}

/// <summary>How well a way of placing holes places them: the circle that 99 of 100 centres fall in.</summary>
/// <param name="Way">The way.</param>
/// <param name="Machine">Name of the machine it holds for; empty for any.</param>
/// <param name="Zone">Diameter of the circle that 99 in 100 centres fall in, as written down or by common practice.</param>
/// <param name="MeasuredSigma">Scatter along one axis that measured holes prove with 95 in 100, wider the fewer they are; null when never measured.</param>
/// <param name="MeasuredHoles">How many holes it was learnt from.</param>
/// <param name="IsOwn">Whether it stands in the maker's own shop file.</param>
public sealed record PlacingCapability(PlacingWay Way, string Machine, Length Zone, Length? MeasuredSigma, int MeasuredHoles, bool IsOwn);
