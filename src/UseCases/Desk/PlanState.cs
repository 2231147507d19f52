using Tangwright.Core;
using Tangwright.Inputs;

namespace Tangwright.UseCases;

/// <summary>A plan at one moment: what is shown and the version it is, always of one piece.</summary>
public sealed record PlanState
{
    internal PlanState(PlanFile file, OpenedWork work, Results results, int version) => (File, Work, Results, Version) = (file, work, results, version);

    /// <summary>Everything computed from it.</summary>
    public Results Results { get; }

    /// <summary>Counts up with every change.</summary>
    public int Version { get; }

    /// <summary>The plan with its text.</summary>
    internal PlanFile File { get; }

    /// <summary>The plan with its shop and steel.</summary>
    internal OpenedWork Work { get; }

    /// <summary>The same plan, to be shown anew.</summary>
    internal PlanState Again() => new(File, Work, Results, Version + 1);
}
