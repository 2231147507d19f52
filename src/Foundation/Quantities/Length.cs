namespace Tangwright.Foundation;

/// <summary>A length in millimetres. The inch is 25.4 mm exactly (ISO 80000-3; international inch of 1959).</summary>
public readonly record struct Length : IComparable<Length>
{
    /// <summary>Millimetres in one inch, exact.</summary>
    public const double MmPerInch = 25.4;

    private Length(double mm) => Mm = mm;

    /// <summary>The length in mm.</summary>
    public double Mm { get; }

    /// <summary>The length in inches.</summary>
    public double Inches => Mm / MmPerInch;

    /// <summary>No length.</summary>
    public static Length Zero => default;

    /// <summary>A length of so many mm.</summary>
    public static Length OfMm(double mm) => new(mm);

    /// <summary>A length of so many inches.</summary>
    public static Length OfInches(double inches) => new(inches * MmPerInch);

    /// <summary>The longer of two.</summary>
    public static Length Max(Length a, Length b) => a.Mm >= b.Mm ? a : b;

    /// <summary>The shorter of two.</summary>
    public static Length Min(Length a, Length b) => a.Mm <= b.Mm ? a : b;

    /// <inheritdoc/>
    public int CompareTo(Length other) => Mm.CompareTo(other.Mm);

    /// <summary>Sum.</summary>
    public static Length operator +(Length a, Length b) => new(a.Mm + b.Mm);

    /// <summary>Difference.</summary>
    public static Length operator -(Length a, Length b) => new(a.Mm - b.Mm);

    /// <summary>The same length, turned about.</summary>
    public static Length operator -(Length a) => new(-a.Mm);

    /// <summary>So many times the length.</summary>
    public static Length operator *(Length a, double factor) => new(a.Mm * factor);

    /// <summary>So many times the length.</summary>
    public static Length operator *(double factor, Length a) => new(a.Mm * factor);

    /// <summary>A share of the length.</summary>
    public static Length operator /(Length a, double divisor) => new(a.Mm / divisor);

    /// <summary>How often b goes into a.</summary>
    public static double operator /(Length a, Length b) => a.Mm / b.Mm;

    /// <summary>The area of a rectangle.</summary>
    public static Area operator *(Length a, Length b) => Area.OfMm2(a.Mm * b.Mm);

    /// <summary>Whether a is longer.</summary>
    public static bool operator >(Length a, Length b) => a.Mm > b.Mm;

    /// <summary>Whether a is shorter.</summary>
    public static bool operator <(Length a, Length b) => a.Mm < b.Mm;

    /// <summary>Whether a is not shorter.</summary>
    public static bool operator >=(Length a, Length b) => a.Mm >= b.Mm;

    /// <summary>Whether a is not longer.</summary>
    public static bool operator <=(Length a, Length b) => a.Mm <= b.Mm;

    /// <inheritdoc/>
    public override string ToString() => $"{Mm} mm";
}
