namespace Tangwright.Foundation;

/// <summary>How quantities are written for people: always with the unit, mm and inch together, decimals fixed by what the bench can read.</summary>
public static class Shown
{
    /// <summary>"6.21 mm".</summary>
    public static string Mm(Length length, int decimals = 2) => Number(length.Mm, decimals) + " mm";

    /// <summary>"0.244 in".</summary>
    public static string Inch(Length length, int decimals = 3) => Number(length.Inches, decimals) + " in";

    /// <summary>"6.21 mm (0.244 in)".</summary>
    public static string Both(Length length) => $"{Mm(length)} ({Inch(length)})";

    /// <summary>"549 g (19.4 oz)"; under 100 g with a decimal.</summary>
    public static string Both(Mass mass) => $"{Number(mass.Grams, Math.Abs(mass.Grams) < 100 ? 1 : 0)} g ({Number(mass.Ounces, Math.Abs(mass.Grams) < 100 ? 2 : 1)} oz)";

    /// <summary>"16° per side (32° inclusive)".</summary>
    public static string PerSide(Angle perSide, int decimals = 2) => $"{Trimmed(perSide.Degrees, decimals)}° per side ({Trimmed(perSide.Doubled().Degrees, decimals)}° inclusive)";

    /// <summary>"815 °C (1499 °F)".</summary>
    public static string Both(Temperature t) => $"{Number(t.Celsius, 0)} °C ({Number(t.Fahrenheit, 0)} °F)";

    /// <summary>A number with so many decimals and no negative zero.</summary>
    public static string Number(double value, int decimals)
    {
        var s = value.ToString("F" + decimals, System.Globalization.CultureInfo.InvariantCulture);
        return s.StartsWith('-') && s.AsSpan(1).IndexOfAnyExcept('0', '.') < 0 ? s[1..] : s;
    }

    /// <summary>A number with at most so many decimals, ending zeros dropped.</summary>
    public static string Trimmed(double value, int decimals)
    {
        var s = Number(value, decimals);
        return s.Contains('.') ? s.TrimEnd('0').TrimEnd('.') : s;
    }
}
