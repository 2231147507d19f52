namespace Tangwright.Foundation;

/// <summary>The two tags a value may carry instead of a published source.</summary>
public static class SourceTag
{
    /// <summary>From memory: believed right, not looked up.</summary>
    public const string FromMemory = "from memory";

    /// <summary>A shop rule without a published source.</summary>
    public const string CommonPractice = "common practice";
}

/// <summary>A number that comes from a fit, a table or a rule, with its band and its source.</summary>
/// <typeparam name="T">The quantity.</typeparam>
/// <param name="Value">The best single answer.</param>
/// <param name="Low">Lower end of the band.</param>
/// <param name="High">Upper end of the band.</param>
/// <param name="SourceKey">Key in <c>data/sources.toml</c>, or one of the tags of <see cref="SourceTag"/>.</param>
/// <param name="OutsideRange">What lay outside the source's range, in words; empty when all was inside.</param>
public sealed record Estimate<T>(T Value, T Low, T High, string SourceKey, string OutsideRange = "");
