using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>Reads a program as the machine would and sweeps its tools through stock, clamps and spoil board. Places are from the program's zero, which is that of G54; z of a tool is that of its tip. On a machine without tool change the tool named by the last T is put in at the next M0.</summary>
public static class ProgramCheck
{
    /// <summary>Everything wrong with a program; empty when it may be written.</summary>
    /// <param name="program">The program's text, RS-274/NGC.</param>
    /// <param name="tools">The tools it may call.</param>
    /// <param name="setUp">How the stock lies.</param>
    /// <param name="wanted">What it must leave behind.</param>
    public static ImmutableArray<ProgramTrouble> Of(string program, ImmutableArray<ProgramTool> tools, ProgramSetUp setUp, WantedPart wanted)
        => ProgramSweep.Of(ProgramReader.Read(program, tools, setUp.Machine.ProgramWays.HasToolChange, ProgramReader.Anywhere), tools, setUp, wanted);
}
