namespace Tangwright.Foundation;

/// <summary>A length as the nearest 1/64 in, reduced, with what the rounding costs.</summary>
/// <param name="Sixtyfourths">How many 1/64 in, signed.</param>
/// <param name="Error">The 1/64 size less the true length.</param>
public readonly record struct SixtyFourths(long Sixtyfourths, Length Error)
{
    /// <summary>The nearest 1/64 in; a tie goes away from zero.</summary>
    public static SixtyFourths Nearest(Length length)
    {
        var n = (long)Math.Round(length.Inches * 64, MidpointRounding.AwayFromZero);
        return new SixtyFourths(n, Length.OfInches(n / 64.0) - length);
    }

    /// <summary>As the trade writes it: "7 31/64", "4 7/8", "0".</summary>
    public override string ToString()
    {
        var n = Math.Abs(Sixtyfourths);
        var (whole, num, den) = (n / 64, n % 64, 64L);
        while (num > 0 && num % 2 == 0)
        {
            num /= 2;
            den /= 2;
        }

        var sign = Sixtyfourths < 0 ? "-" : "";
        if (num == 0) return $"{sign}{whole}";
        return whole == 0 ? $"{sign}{num}/{den}" : $"{sign}{whole} {num}/{den}";
    }
}
