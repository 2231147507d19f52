using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Share of started pieces that come out good.</summary>
/// <param name="Share">What is counted with, above 0 to 1.</param>
/// <param name="LowShare">Lower end of the band; the same when the maker said it.</param>
/// <param name="HighShare">Upper end of the band.</param>
/// <param name="Says">Where it comes from, in words.</param>
public sealed record YieldGuess(double Share, double LowShare, double HighShare, string Says)
{
    /// <summary>Until a shop has counted its own.</summary>
    public static YieldGuess Prior { get; } = new(0.9, 0.8, 0.95, "assumed until you have counted your own (" + SourceTag.CommonPractice + ": 80 to 95 %)");

    /// <summary>Whether it is the assumed one.</summary>
    public bool IsPrior => LowShare < HighShare;

    /// <summary>What the maker said.</summary>
    /// <param name="share">The yield.</param>
    /// <param name="says">Where it was said.</param>
    public static YieldGuess Said(double share, string says) => new(share, share, share, says);
}
