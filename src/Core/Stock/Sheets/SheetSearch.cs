using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>That pieces are to be laid by search on sheets, or on bars wide enough for more than one row.</summary>
/// <param name="Width">Width of a sheet that can be had, across the grain.</param>
/// <param name="Length">Its length, along the grain.</param>
public sealed record SheetSearch(Length Width, Length Length)
{
    /// <summary>Places weighed up when nobody says another, millions: a few seconds.</summary>
    public const int UsualMillions = 20;

    /// <summary>Searches side by side when the work is bounded, however many cores there are: asked again, the answer is the same.</summary>
    public const int UsualSearches = 4;

    /// <summary>Pieces may lie across the sheet.</summary>
    public bool MayLieAcross { get; init; }

    /// <summary>How long to search.</summary>
    public SearchEffort Effort { get; init; } = new(UsualMillions * 1_000_000L, UsualSearches, 1);
}
