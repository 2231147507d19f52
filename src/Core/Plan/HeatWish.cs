using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>How the piece is to be hardened and tempered, as far as the maker says it.</summary>
public sealed record HeatWish
{
    /// <summary>Temperature of the last temper; null when not said.</summary>
    public Temperature? Temper { get; init; }
}
