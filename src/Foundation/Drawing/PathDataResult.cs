using System.Collections.Immutable;

namespace Tangwright.Foundation;

/// <summary>What was read from path data: the paths, or the fault that stopped the reading.</summary>
/// <param name="Paths">One path for each subpath that has a length, in the order written; none when there is a fault. mm.</param>
/// <param name="Fault">What is wrong; null when all was read.</param>
/// <param name="Steps">Every step as written, also those without a length, for writing a moved point back.</param>
/// <param name="Numbers">Every number as written, step by step.</param>
/// <param name="Makers">Index of the step that made each segment, through all paths in order; the closing line of a Z is made by the Z.</param>
public sealed record PathDataResult(ImmutableArray<Path> Paths, PathDataFault? Fault, ImmutableArray<PathStep> Steps, ImmutableArray<PathNumber> Numbers, ImmutableArray<int> Makers);

/// <summary>What is wrong in path data.</summary>
/// <param name="Offset">Character of the text, from 0.</param>
/// <param name="Message">What is wrong.</param>
/// <param name="Remedy">What to write instead.</param>
public sealed record PathDataFault(int Offset, string Message, string Remedy);

/// <summary>A number where it stands in the text.</summary>
/// <param name="Offset">First character, from 0.</param>
/// <param name="Length">Characters.</param>
public readonly record struct PathNumber(int Offset, int Length)
{
    /// <summary>Value, in the text's own unit.</summary>
    internal double Value { get; init; }
}

/// <summary>One step of path data: a command with one set of its numbers.</summary>
/// <param name="Command">Command letter; small when its numbers count from the step's start. An implied line after a move is L or l.</param>
/// <param name="CommandOffset">Where the letter stands; -1 when it is implied by the step before.</param>
/// <param name="FirstNumber">Index of its first number.</param>
/// <param name="NumberCount">How many numbers it has.</param>
/// <param name="StartStep">Index of the step whose end it starts from; -1 for the very first.</param>
/// <param name="Subpath">Count of moves before it, from 0.</param>
/// <param name="End">Where it ends, mm.</param>
public readonly record struct PathStep(char Command, int CommandOffset, int FirstNumber, int NumberCount, int StartStep, int Subpath, Point End)
{
    /// <summary>Whether its numbers count from the step's start.</summary>
    public bool IsRelative => char.IsAsciiLetterLower(Command);

    /// <summary>The command as a capital letter.</summary>
    public char Kind => char.ToUpperInvariant(Command);
}
