using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>A tool put into the spindle.</summary>
/// <param name="Line">Line of the program, from 1.</param>
/// <param name="Tool">Number of the tool.</param>
/// <param name="At">Where the tool before it stood.</param>
/// <param name="TurnsPerMin">Spindle speed at that moment, rpm; 0 when it stands.</param>
public sealed record ToolChange(int Line, int Tool, SpacePoint At, double TurnsPerMin);

/// <summary>Words of RS-274/NGC that not every machine knows.</summary>
public enum ProgramWord
{
    /// <summary>Drill cycles G81 to G89.</summary>
    DrillCycle,

    /// <summary>Arcs G2 and G3.</summary>
    Arc,

    /// <summary>An arc that goes down or up at the same time.</summary>
    Helix,

    /// <summary>Cutter compensation G41 or G42.</summary>
    Compensation,

    /// <summary>Tool change M6.</summary>
    ToolChange,

    /// <summary>Inches G20.</summary>
    Inches,

    /// <summary>Millimetres G21.</summary>
    Millimetres,

    /// <summary>Tool length G43.</summary>
    ToolLength,
}

/// <summary>Where a program first uses a word.</summary>
/// <param name="Word">The word.</param>
/// <param name="Line">Line of the program, from 1.</param>
public sealed record WordUse(ProgramWord Word, int Line);

/// <summary>What a machine does when it reads a program.</summary>
/// <param name="Motions">Its motions in order; a coordinate that is not known yet is not a number.</param>
/// <param name="Changes">Its tool changes in order.</param>
/// <param name="Uses">Words it uses that not every machine knows, each once.</param>
/// <param name="Unsaid">What it leaves to chance before its first motion, as words of the program: "G90".</param>
/// <param name="BlendMm">Widest distance by which the machine may round corners, mm; null when it may round them at will.</param>
/// <param name="EndLine">Line that ends it; 0 when nothing does.</param>
/// <param name="Troubles">What could not be read, or is not lawful; the reading stops at the first of a line.</param>
public sealed record ProgramReading(
    ImmutableArray<Motion> Motions,
    ImmutableArray<ToolChange> Changes,
    ImmutableArray<WordUse> Uses,
    ImmutableArray<string> Unsaid,
    double? BlendMm,
    int EndLine,
    ImmutableArray<ProgramTrouble> Troubles);
