namespace Tangwright.Core;

/// <summary>Which work a program does.</summary>
public enum ProgramWork
{
    /// <summary>Holes, then the profile, in one clamping.</summary>
    All,

    /// <summary>The holes alone: the first of two clampings.</summary>
    Holes,

    /// <summary>The profile alone: the second of two clampings, the piece on pins through two of its holes.</summary>
    Profile,
}

/// <summary>What a program is asked to do.</summary>
/// <param name="Work">Which work.</param>
/// <param name="ZeroHole">Name of the hole whose centre is the program's zero; null: the corner of the stock, or the first pin.</param>
public sealed record ProgramChoice(ProgramWork Work, string? ZeroHole)
{
    /// <summary>All in one clamping, from the corner of the stock.</summary>
    public static ProgramChoice Usual { get; } = new(ProgramWork.All, null);
}
