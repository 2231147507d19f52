using System.Collections.Immutable;

namespace Tangwright.Core;

/// <summary>One way of filling a bar.</summary>
/// <param name="Kind">Which kind of bar.</param>
/// <param name="Counts">Pieces of each pattern.</param>
/// <param name="Cost">What the bar costs, in any whole unit.</param>
public readonly record struct BarFilling(int Kind, ImmutableArray<int> Counts, long Cost);

/// <summary>Which fillings, how often, so that there are pieces enough.</summary>
/// <param name="Wanted">Pieces of each pattern, at least.</param>
/// <param name="Fillings">The fillings to choose from.</param>
public sealed record FillingProblem(ImmutableArray<int> Wanted, ImmutableArray<BarFilling> Fillings)
{
    /// <summary>Most bars of each kind; empty or null in it: any number.</summary>
    public ImmutableArray<int?> MostBars { get; init; } = [];

    /// <summary>A cost that is good enough: the search ends there; null: the least is looked for.</summary>
    public long? GoodEnough { get; init; }

    /// <summary>Of the choices of the least cost, that of the fewest bars.</summary>
    public bool FewestBars { get; init; }

    /// <summary>How much work is spent, in the solver's own measure, which does not hang on the clock: about so many seconds.</summary>
    public int MostWork { get; init; } = 10;
}

/// <summary>What was chosen.</summary>
/// <param name="Times">How often each filling is cut.</param>
/// <param name="Cost">What it costs.</param>
/// <param name="IsLeast">Whether no choice costs less.</param>
public sealed record FillingChoice(ImmutableArray<int> Times, long Cost, bool IsLeast);

/// <summary>How the search ended.</summary>
public enum FillingEnd
{
    /// <summary>Something was chosen.</summary>
    Found,

    /// <summary>There is proof that nothing can be chosen.</summary>
    None,

    /// <summary>The work or the patience ran out before anything was found.</summary>
    Unknown,
}

/// <summary>Solves what the planning of bars comes down to: linear and whole-number programs over fillings.</summary>
public interface IBarSolver
{
    /// <summary>Chooses; the same every time.</summary>
    /// <param name="problem">What to choose from.</param>
    /// <param name="choice">The choice; null when none was found.</param>
    /// <param name="stop">Ends the search early; what was found by then is kept.</param>
    FillingEnd Choose(FillingProblem problem, out FillingChoice? choice, CancellationToken stop = default);

    /// <summary>Begins the same in broken numbers of bars, each costing 1: what a piece is worth.</summary>
    /// <param name="wanted">Pieces of each pattern.</param>
    IPieceWorths Worths(ImmutableArray<int> wanted);
}

/// <summary>What each piece is worth, in bars, over the fillings known so far.</summary>
public interface IPieceWorths : IDisposable
{
    /// <summary>Adds a filling.</summary>
    /// <param name="counts">Pieces of each pattern.</param>
    void Add(ImmutableArray<int> counts);

    /// <summary>The worths.</summary>
    ImmutableArray<double> Now();

    /// <summary>How often each filling is cut, in broken numbers, in the order they were added; after <see cref="Now"/>.</summary>
    ImmutableArray<double> Bars();
}
