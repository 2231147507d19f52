using System.Collections.Immutable;
using System.Globalization;

namespace Tangwright.Core;

/// <summary>One measure of hands by a survey, mm.</summary>
/// <param name="Key">length, breadth or girth.</param>
/// <param name="Words">How it is measured.</param>
/// <param name="SmallMm">One woman in twenty has less.</param>
/// <param name="WomanMm">Middle woman.</param>
/// <param name="ManMm">Middle man.</param>
/// <param name="LargeMm">One man in twenty has more.</param>
/// <param name="SourceKey">Key in <c>data/sources.toml</c>, or "from memory".</param>
public sealed record HandMeasure(string Key, string Words, double SmallMm, double WomanMm, double ManMm, double LargeMm, string SourceKey);

/// <summary>Hands of grown people, from <c>data/handles/hands.csv</c>.</summary>
public static class HandSurvey
{
    /// <summary>All measures.</summary>
    public static ImmutableArray<HandMeasure> All { get; } = [.. DataRows.Of("hands.csv").Select(c => new HandMeasure(c[0], c[1], Mm(c[2]), Mm(c[3]), Mm(c[4]), Mm(c[5]), c[6]))];

    /// <summary>Length of the hand.</summary>
    public static HandMeasure Length { get; } = All.First(m => m.Key == "length");

    /// <summary>Breadth of the hand.</summary>
    public static HandMeasure Breadth { get; } = All.First(m => m.Key == "breadth");

    private static double Mm(string text) => double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture);
}
