using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>What a machine remembers from line to line while it reads a program; lengths in mm.</summary>
internal sealed class ProgramState
{
    /// <summary>The mode words that a program should say before it moves, by group.</summary>
    public static readonly string[] ToSay = ["G20 or G21", "G90", "G17", "G40", "G49", "G54", "G80", "G94"];

    /// <summary>Where the program has led the tip; not a number where not known.</summary>
    public SpacePoint At { get; set; }

    /// <summary>Where the tip stands, cutter compensation allowed for.</summary>
    public SpacePoint Stands { get; set; }

    /// <summary>Millimetres in one unit of the program.</summary>
    public double UnitMm { get; set; } = 1;

    public bool IsIncremental { get; set; }

    /// <summary>Motion word that holds: 0 to 3, 81 to 89; 80 for none.</summary>
    public int Motion { get; set; } = 80;

    public double FeedMmPerMin { get; set; }

    public double SetTurnsPerMin { get; set; }

    public bool IsTurning { get; set; }

    public double TurnsPerMin => IsTurning ? SetTurnsPerMin : 0;

    public int Tool { get; set; }

    /// <summary>Tool named by the last T.</summary>
    public int Next { get; set; }

    /// <summary>Tool whose length is allowed for; 0: none.</summary>
    public int LengthTool { get; set; }

    /// <summary>Drill cycles draw out to the height from which they began (G98), not to R.</summary>
    public bool ReturnsToOldZ { get; set; } = true;

    /// <summary>Widest rounding of corners; null at will.</summary>
    public double? BlendMm { get; set; }

    /// <summary>The drill cycle that holds; null when none.</summary>
    public DrillCycle? Cycle { get; set; }

    /// <summary>The path under cutter compensation that has not been run yet; null when compensation is off.</summary>
    public CompensatedPath? Compensated { get; set; }

    /// <summary>Mode words said so far, each as in <see cref="ToSay"/>.</summary>
    public HashSet<string> Said { get; } = new(StringComparer.Ordinal);
}
