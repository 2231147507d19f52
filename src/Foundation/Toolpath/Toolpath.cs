using System.Collections.Immutable;

namespace Tangwright.Foundation;

/// <summary>A point in space, mm; z up, 0 at the upper face of the stock.</summary>
/// <param name="X">Along the table.</param>
/// <param name="Y">Across the table.</param>
/// <param name="Z">Up.</param>
public readonly record struct SpacePoint(double X, double Y, double Z)
{
    /// <summary>Seen from above.</summary>
    public Point Flat => new(X, Y);
}

/// <summary>Form of a rotating tool.</summary>
public enum ToolForm
{
    /// <summary>Spot drill: cone, then cylinder.</summary>
    SpotDrill,

    /// <summary>Twist drill: cone, then cylinder.</summary>
    TwistDrill,

    /// <summary>Reamer: cylinder.</summary>
    Reamer,

    /// <summary>End mill: cylinder with a flat end.</summary>
    EndMill,

    /// <summary>Countersink: cone.</summary>
    Countersink,
}

/// <summary>A tool of a program.</summary>
/// <param name="Number">Number T, from 1.</param>
/// <param name="Name">As the trade calls it.</param>
/// <param name="Form">Form.</param>
/// <param name="DiameterMm">Diameter, mm.</param>
/// <param name="PointDegrees">Point angle, inclusive, degrees; 180 for a flat end.</param>
/// <param name="CuttingLengthMm">Length that cuts, mm; null when not known.</param>
public sealed record ProgramTool(int Number, string Name, ToolForm Form, double DiameterMm, double PointDegrees, double? CuttingLengthMm);

/// <summary>One step of a toolpath; places in mm from the program's zero.</summary>
public abstract record ToolpathStep;

/// <summary>Words for the one at the machine.</summary>
/// <param name="Text">Plain text in one line.</param>
public sealed record RemarkStep(string Text) : ToolpathStep;

/// <summary>Next tool, spindle on clockwise.</summary>
/// <param name="Tool">The tool.</param>
/// <param name="TurnsPerMin">Spindle speed, rpm.</param>
public sealed record ToolStep(ProgramTool Tool, double TurnsPerMin) : ToolpathStep;

/// <summary>Waits where it is.</summary>
/// <param name="Seconds">How long, s.</param>
public sealed record DwellStep(double Seconds) : ToolpathStep;

/// <summary>A move that does not cut, straight.</summary>
/// <param name="To">End.</param>
public sealed record RapidStep(SpacePoint To) : ToolpathStep;

/// <summary>A straight cutting move.</summary>
/// <param name="To">End.</param>
/// <param name="MmPerMin">Feed of the tool's centre, mm/min.</param>
public sealed record FeedStep(SpacePoint To, double MmPerMin) : ToolpathStep;

/// <summary>A cutting move on an arc seen from above, or on a helix when z changes; a full turn when it ends where it began.</summary>
/// <param name="To">End.</param>
/// <param name="Centre">Centre, seen from above.</param>
/// <param name="IsCounterClockwise">Seen from above.</param>
/// <param name="MmPerMin">Feed of the tool's centre, mm/min.</param>
public sealed record ArcStep(SpacePoint To, Point Centre, bool IsCounterClockwise, double MmPerMin) : ToolpathStep;

/// <summary>One hole drilled: over it, down to the retract height, feed to the bottom, out again to the retract height.</summary>
/// <param name="Name">Name of the hole.</param>
/// <param name="At">Centre.</param>
/// <param name="RetractZMm">Height from which it feeds, mm.</param>
/// <param name="BottomZMm">Deepest place of the tip, mm.</param>
/// <param name="MmPerMin">Feed, mm/min.</param>
/// <param name="PeckMm">Bite after which it is drawn out, mm; null: in one go.</param>
/// <param name="DwellSeconds">Wait at the bottom, s; 0: none.</param>
/// <param name="IsFedOut">Drawn out at feed, as a reamer.</param>
public sealed record DrillStep(string Name, Point At, double RetractZMm, double BottomZMm, double MmPerMin, double? PeckMm, double DwellSeconds, bool IsFedOut) : ToolpathStep;

/// <summary>A whole toolpath, tools in order.</summary>
/// <param name="Title">What it makes.</param>
/// <param name="SafeZMm">Height at which the tool crosses the work freely, mm.</param>
/// <param name="Tools">Its tools, by number.</param>
/// <param name="Steps">Its steps.</param>
public sealed record Toolpath(string Title, double SafeZMm, ImmutableArray<ProgramTool> Tools, ImmutableArray<ToolpathStep> Steps);

/// <summary>Kind of a motion that a program makes.</summary>
public enum MotionKind
{
    /// <summary>At full speed, not cutting.</summary>
    Rapid,

    /// <summary>Straight at feed.</summary>
    Feed,

    /// <summary>Arc or helix at feed.</summary>
    Arc,
}

/// <summary>One motion as a machine makes it when it reads a program; mm.</summary>
/// <param name="Line">Line of the program, from 1.</param>
/// <param name="Kind">Kind.</param>
/// <param name="From">Start.</param>
/// <param name="To">End.</param>
/// <param name="Centre">Centre of an arc, seen from above; else 0, 0.</param>
/// <param name="IsCounterClockwise">Sense of an arc, seen from above.</param>
/// <param name="MmPerMin">Feed, mm/min; 0 for a rapid.</param>
/// <param name="Tool">Number of the tool in the spindle; 0: none.</param>
/// <param name="TurnsPerMin">Spindle speed, rpm; 0 when it stands.</param>
public sealed record Motion(int Line, MotionKind Kind, SpacePoint From, SpacePoint To, Point Centre, bool IsCounterClockwise, double MmPerMin, int Tool, double TurnsPerMin);
