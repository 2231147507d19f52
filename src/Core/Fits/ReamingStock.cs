using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Steel left on the diameter for the reamer. Two rules: the handbook's by inch, and that of the shops by mm, with what a drill cuts over counted; a drill that suits either is good.</summary>
[Formula("steel left on the diameter for a reamer", "machinerys-handbook-31", "high-speed steel reamers, holes to 2.5 in, from data/fits/reaming-stock.csv; and by mm 0.15 to 0.25 up to 5, 0.2 to 0.35 up to 20, 0.3 to 0.55 above (common practice)")]
public static class ReamingStock
{
    /// <summary>Smallest hole of the handbook's table, in.</summary>
    private const double SmallestInches = 0.090;

    private static readonly Lazy<StepTable> Table = new(() => StepTable.Read("reaming-stock.csv"));

    /// <summary>The handbook's; null outside its holes.</summary>
    public static (Length Least, Length Most)? Handbook(Length hole)
        => hole.Inches >= SmallestInches - 1e-9 && Table.Value.At(hole.Inches, "least_in") is { } least
            ? (Length.OfInches(least), Length.OfInches(Table.Value.At(hole.Inches, "most_in")!.Value))
            : null;

    /// <summary>The shops' by mm.</summary>
    public static (Length Least, Length Most) ByMm(Length hole)
    {
        var (least, most) = hole.Mm <= 5 + 1e-9 ? (0.15, 0.25) : hole.Mm <= 20 + 1e-9 ? (0.2, 0.35) : (0.3, 0.55);
        return (Length.OfMm(least), Length.OfMm(most));
    }

    /// <summary>Least and most that one of the two rules allows.</summary>
    public static (Length Least, Length Most) For(Length hole)
    {
        var rule = ByMm(hole);
        return Handbook(hole) is { } book ? (Length.Min(rule.Least, book.Least), Length.Max(rule.Most, book.Most)) : rule;
    }
}
