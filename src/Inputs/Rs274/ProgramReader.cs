using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>Reads a program line by line as the machine does, in the standard's order of work within a line (NIST IR 6556, table 8), and says each motion. Numbers only: what differs from one machine's memory to another's is refused in words.</summary>
public static class ProgramReader
{
    /// <summary>Nothing known about where the tool stands.</summary>
    public static readonly SpacePoint Anywhere = new(double.NaN, double.NaN, double.NaN);

    /// <summary>Reads a program.</summary>
    /// <param name="text">Its text.</param>
    /// <param name="tools">The tools it may call.</param>
    /// <param name="hasToolChange">Whether M6 changes the tool; else it is put in by hand at M0.</param>
    /// <param name="start">Where the tool stands at first.</param>
    public static ProgramReading Read(string text, ImmutableArray<ProgramTool> tools, bool hasToolChange, SpacePoint start)
    {
        var run = new ProgramReadingRun(tools, hasToolChange, start);
        var lines = text.Split('\n');
        for (var i = 0; i < lines.Length && run.EndLine == 0; i++)
        {
            var block = ProgramBlock.Of(lines[i].TrimEnd('\r'), i + 1);
            if (!block.IsGood) run.No(i + 1, "reading", block.Message, block.Remedy);
            else run.Take(block.Value);
        }

        return run.Done(lines.Length);
    }
}
