using System.Globalization;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>How wide a size may vary by its grade, IT5 to IT13, from data/fits/tolerance-grades.csv.</summary>
[Formula("width of a tolerance by its grade, µm", "iso-286-1", "sizes up to 50 mm, IT5 to IT13; table, rounded as the standard rounds")]
public static class ToleranceGrade
{
    /// <summary>Finest grade.</summary>
    public const int Finest = 5;

    /// <summary>Coarsest grade.</summary>
    public const int Coarsest = 13;

    private static readonly Lazy<StepTable> Table = new(() => StepTable.Read("tolerance-grades.csv"));

    /// <summary>Greatest size the table holds.</summary>
    public static Length Largest => Length.OfMm(Table.Value.Most);

    /// <summary>The width; null outside sizes over 0 to 50 mm or grades 5 to 13.</summary>
    public static Length? Width(Length size, int grade) => grade is >= Finest and <= Coarsest ? WidthOrNext(size, grade) : null;

    /// <summary>What a hole's limit is shifted by against the mirrored shaft's: the width less that of the next finer grade, over 3 mm.</summary>
    internal static Length Delta(Length size, int grade)
        => size.Mm <= 3 + 1e-9 ? Length.Zero : (WidthOrNext(size, grade) - WidthOrNext(size, grade - 1)) ?? Length.Zero;

    private static Length? WidthOrNext(Length size, int grade)
        => Table.Value.At(size.Mm, "IT" + grade.ToString(CultureInfo.InvariantCulture)) is { } um ? Length.OfMm(um / 1000) : null;
}
