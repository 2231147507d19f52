using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>What came of making a program: one that passed the check, or why there is none.</summary>
/// <param name="Machine">The mill.</param>
/// <param name="FileName">Name of the program's file.</param>
/// <param name="Program">What it does; null when it could not be made or failed the check.</param>
/// <param name="Tools">Its tools with their time, in order.</param>
/// <param name="Moves">Moves that were checked.</param>
/// <param name="Refusals">Why there is none; empty when there is one.</param>
public sealed record ProgramReport(Machine Machine, string FileName, MachineProgram? Program, ImmutableArray<ToolTime> Tools, int Moves, ImmutableArray<Fault> Refusals)
{
    /// <summary>Running time, s.</summary>
    public double RunningSeconds => Tools.Sum(t => t.CuttingSeconds + t.CrossingSeconds);

    /// <summary>Time to put the tools in, s.</summary>
    public double ChangeSeconds => Tools.Length * (Machine.ToolChangeSeconds ?? DrillTime.UsualChangeSeconds);
}
