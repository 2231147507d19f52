using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>Quantities that only shop, steel and material files use.</summary>
internal static class OtherTexts
{
    // one pound-force on a square inch
    private const double MpaPerPsi = Force.NewtonsPerPound / (Length.MmPerInch * Length.MmPerInch);

    /// <summary>A difference of temperatures in °C: <c>14 C</c>, <c>25 F</c>.</summary>
    public static Reading<double> TemperatureDifferenceC(string text)
    {
        var read = One(text, "14 C", u => u.Replace("°", "", StringComparison.Ordinal).Trim().ToUpperInvariant() switch { "C" => 1, "F" => 1 / 1.8, _ => null });
        return read.IsGood && Math.Abs(read.Value) > 500 ? Reading<double>.Bad("a difference of more than 500 C", "check the number") : read;
    }

    /// <summary>A difference of hardness in HRC: <c>-0.8 HRC</c>.</summary>
    public static Reading<double> HardnessDifferenceHrc(string text)
    {
        var read = One(text, "-0.8 HRC", u => u.ToUpperInvariant() is "HRC" ? 1 : null);
        return read.IsGood && Math.Abs(read.Value) > 10 ? Reading<double>.Bad("a tester more than 10 HRC wrong", "check the number, or have the tester mended") : read;
    }

    /// <summary>A volume in litres: <c>15 L</c>, <c>4 gal</c> (US gallon, 3.785411784 L exactly).</summary>
    public static Reading<double> Litres(string text)
        => Positive(One(text, "15 L", u => u.ToLowerInvariant() switch { "l" or "litre" or "litres" or "liter" or "liters" => 1, "gal" or "gallon" or "gallons" => 3.785411784, _ => null }), 100_000);

    /// <summary>A density in g/cm³: <c>7.85 g/cm3</c>, <c>7850 kg/m3</c>.</summary>
    public static Reading<double> GramsPerCm3(string text)
        => Positive(One(text, "7.85 g/cm3", u => u switch { "g/cm3" or "g/cm³" => 1, "kg/m3" or "kg/m³" => 1e-3, _ => null }), 25);

    /// <summary>A force in N: <c>1500 N</c>, <c>1.5 kN</c>, <c>340 lb</c>.</summary>
    public static Reading<double> Newtons(string text)
        => Positive(One(text, "1500 N", u => u.ToLowerInvariant() switch { "n" => 1, "kn" => 1000, "lb" or "lbf" or "lbs" => Force.NewtonsPerPound, _ => null }), 1_000_000);

    /// <summary>A Brinell hardness: <c>240 HB</c>.</summary>
    public static Reading<double> Brinell(string text)
        => Positive(One(text, "240 HB", u => u.ToUpperInvariant() is "HB" or "HBW" ? 1 : null), 700);

    /// <summary>A time in minutes: <c>10 min</c>, <c>2 h</c>, <c>30 s</c>.</summary>
    public static Reading<double> Minutes(string text)
        => Positive(One(text, "10 min", u => u.ToLowerInvariant() switch { "min" or "minutes" or "minute" => 1, "h" or "hour" or "hours" => 60, "s" or "seconds" => 1.0 / 60, _ => null }), 100_000);

    /// <summary>A heat conductivity in W/(m·K): <c>26 W/mK</c>.</summary>
    public static Reading<double> WPerMK(string text)
        => Positive(One(text, "26 W/mK", u => u.Replace("·", "", StringComparison.Ordinal).Replace("(", "", StringComparison.Ordinal).Replace(")", "", StringComparison.Ordinal) == "W/mK" ? 1 : null), 500);

    /// <summary>A strength in MPa: <c>180 MPa</c>, <c>3500 psi</c>, <c>26 ksi</c>.</summary>
    public static Reading<double> Megapascals(string text, double most)
        => Positive(One(text, "180 MPa", u => u.ToLowerInvariant() switch { "mpa" or "n/mm2" or "n/mm²" => 1, "gpa" => 1000, "psi" => MpaPerPsi, "ksi" => 1000 * MpaPerPsi, _ => null }), most);

    /// <summary>A stiffness in GPa: <c>11.6 GPa</c>, <c>1600 ksi</c>.</summary>
    public static Reading<double> Gigapascals(string text, double most) => Megapascals(text, 1000 * most).As(m => m / 1000);

    /// <summary>A speed at the rim of a tool: <c>60 m/min</c>, <c>200 ft/min</c>.</summary>
    public static Reading<CuttingSpeed> SurfaceSpeed(string text)
        => Positive(One(text, "60 m/min", u => u.ToLowerInvariant() switch { "m/min" => 1, "ft/min" => CuttingSpeed.OfFeetPerMin(1).MetresPerMin, _ => null }), 2000).As(CuttingSpeed.OfMetresPerMin);

    private static Reading<double> One(string text, string example, Func<string, double?> factor)
    {
        var (number, unit) = NumberText.Split(text.Trim());
        if (number.Length > 0 && factor(unit) is null) return Reading<double>.Bad(unit.Length == 0 ? "a number without its unit" : $"'{NumberText.Clip(unit)}' is no unit known here", $"write it as {example}");
        return NumberText.Read(number, unit, out _).As(v => v * factor(unit)!.Value);
    }

    private static Reading<double> Positive(Reading<double> read, double most)
        => read.IsGood && read.Value is not > 0 || read.IsGood && read.Value > most ? Reading<double>.Bad($"a number that is not above 0 and at most {most}", "check the number and the unit") : read;
}
