namespace Tangwright.Core;

/// <summary>The finish wanted, as far as the maker says it.</summary>
/// <param name="Last">Last grit, in any series; null when not said.</param>
public sealed record FinishWish(Grit? Last);
