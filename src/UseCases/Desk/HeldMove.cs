using Tangwright.Inputs;

namespace Tangwright.UseCases;

/// <summary>A move in hand: who holds it, how the plan was when it began, and the last place asked for.</summary>
/// <param name="by">The page that holds it.</param>
internal sealed class HeldMove(object? by)
{
    /// <summary>The plan as it was; null before the first step.</summary>
    public PlanFile? From { get; set; }

    /// <summary>The last step asked for and not worked up yet; null when there is none.</summary>
    public PlanChange? Wanted { get; set; }

    /// <summary>Whether a page holds it.</summary>
    public bool IsOf(object? page) => ReferenceEquals(by, page);
}
