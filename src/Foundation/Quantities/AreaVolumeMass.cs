namespace Tangwright.Foundation;

/// <summary>An area in mm².</summary>
public readonly record struct Area
{
    private Area(double mm2) => Mm2 = mm2;

    /// <summary>The area in mm².</summary>
    public double Mm2 { get; }

    /// <summary>An area of so many mm².</summary>
    public static Area OfMm2(double mm2) => new(mm2);

    /// <summary>Sum.</summary>
    public static Area operator +(Area a, Area b) => new(a.Mm2 + b.Mm2);

    /// <summary>Difference.</summary>
    public static Area operator -(Area a, Area b) => new(a.Mm2 - b.Mm2);

    /// <summary>The volume of a plate.</summary>
    public static Volume operator *(Area a, Length thickness) => Volume.OfMm3(a.Mm2 * thickness.Mm);

    /// <inheritdoc/>
    public override string ToString() => $"{Mm2} mm2";
}

/// <summary>A volume in mm³.</summary>
public readonly record struct Volume
{
    private Volume(double mm3) => Mm3 = mm3;

    /// <summary>The volume in mm³.</summary>
    public double Mm3 { get; }

    /// <summary>A volume of so many mm³.</summary>
    public static Volume OfMm3(double mm3) => new(mm3);

    /// <summary>Sum.</summary>
    public static Volume operator +(Volume a, Volume b) => new(a.Mm3 + b.Mm3);

    /// <summary>Difference.</summary>
    public static Volume operator -(Volume a, Volume b) => new(a.Mm3 - b.Mm3);

    /// <summary>The mass of the volume.</summary>
    public static Mass operator *(Volume v, Density d) => Mass.OfGrams(v.Mm3 * 1e-3 * d.GramsPerCm3);

    /// <inheritdoc/>
    public override string ToString() => $"{Mm3} mm3";
}

/// <summary>A density in g/cm³.</summary>
public readonly record struct Density
{
    private Density(double gramsPerCm3) => GramsPerCm3 = gramsPerCm3;

    /// <summary>The density in g/cm³.</summary>
    public double GramsPerCm3 { get; }

    /// <summary>A density of so many g/cm³.</summary>
    public static Density OfGramsPerCm3(double gramsPerCm3) => new(gramsPerCm3);

    /// <inheritdoc/>
    public override string ToString() => $"{GramsPerCm3} g/cm3";
}

/// <summary>A mass in grams. The ounce is 28.349523125 g exactly (international avoirdupois pound of 1959).</summary>
public readonly record struct Mass
{
    /// <summary>Grams in one avoirdupois ounce, exact.</summary>
    public const double GramsPerOunce = 28.349523125;

    private Mass(double grams) => Grams = grams;

    /// <summary>The mass in g.</summary>
    public double Grams { get; }

    /// <summary>The mass in avoirdupois ounces.</summary>
    public double Ounces => Grams / GramsPerOunce;

    /// <summary>A mass of so many g.</summary>
    public static Mass OfGrams(double grams) => new(grams);

    /// <summary>Sum.</summary>
    public static Mass operator +(Mass a, Mass b) => new(a.Grams + b.Grams);

    /// <summary>Difference.</summary>
    public static Mass operator -(Mass a, Mass b) => new(a.Grams - b.Grams);

    /// <inheritdoc/>
    public override string ToString() => $"{Grams} g";
}
