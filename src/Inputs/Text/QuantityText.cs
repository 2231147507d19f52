using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>A value with plus or minus.</summary>
/// <typeparam name="T">The quantity.</typeparam>
/// <param name="Value">The value.</param>
/// <param name="PlusMinus">Plus or minus; null when not said.</param>
public readonly record struct Toleranced<T>(T Value, T? PlusMinus)
    where T : struct;

/// <summary>Masses, hardness, angles and temperatures as a maker writes them, and values with their tolerance.</summary>
public static class QuantityText
{
    private static readonly string[] PlusMinusSigns = ["+/-", "±", "+-"];

    /// <summary>A length with or without tolerance: <c>110 +/- 5</c>, <c>4 1/4 in +/- 1/8</c>. The tolerance takes the unit of the value when it has none.</summary>
    /// <param name="text">The text.</param>
    /// <param name="unitMm">Unit of bare numbers, mm.</param>
    public static Reading<Toleranced<Length>> LengthAndTolerance(string text, double unitMm)
        => WithTolerance(text, t => LengthText.Read(t, unitMm).As(l => l.Length), "110 mm +/- 5");

    /// <summary>A mass with or without tolerance, in g, kg, oz or lb: <c>450 g +/- 15</c>, <c>1 lb</c>.</summary>
    public static Reading<Toleranced<Mass>> MassAndTolerance(string text) => WithTolerance(text, OneMass, "450 g +/- 15");

    /// <summary>A hardness band: <c>57 HRC +/- 1</c>, <c>55 to 57 HRC</c>, <c>58 HRC</c>.</summary>
    public static Reading<HardnessBand> Hardness(string text)
    {
        const string example = "57 HRC +/- 1";
        var to = text.IndexOf(" to ", StringComparison.Ordinal);
        if (to > 0)
        {
            var (lowNumber, lowUnit) = NumberText.Split(text[..to].Trim());
            var low = OneHardness($"{lowNumber} {(lowUnit.Length == 0 ? "HRC" : lowUnit)}");
            var high = OneHardness(text[(to + 4)..].Trim());
            if (!low.IsGood) return Reading<HardnessBand>.Bad(low.Message, low.Remedy);
            if (!high.IsGood) return Reading<HardnessBand>.Bad(high.Message, high.Remedy);
            return low.Value <= high.Value ? Band(low.Value, high.Value) : Reading<HardnessBand>.Bad("the lower hardness is above the higher", "write the lower one first, as 55 to 57 HRC");
        }

        var read = WithTolerance(text, OneHardness, example);
        if (!read.IsGood) return Reading<HardnessBand>.Bad(read.Message, read.Remedy);
        var tolerance = read.Value.PlusMinus ?? 0;
        return Band(read.Value.Value - tolerance, read.Value.Value + tolerance);

        static Reading<HardnessBand> Band(double low, double high) => low >= 10 && high <= 72
            ? Reading<HardnessBand>.Of(new HardnessBand(low, high))
            : Reading<HardnessBand>.Bad("a hardness outside 10 to 72 HRC", "the scale holds from about 20 to 70 HRC");
    }

    /// <summary>An angle in degrees: <c>16</c>, <c>16 deg</c>, <c>16°</c>.</summary>
    public static Reading<Angle> Degrees(string text)
    {
        var (number, unit) = NumberText.Split(text.Trim());
        var value = NumberText.Read(number, unit, out var isFraction);
        if (number.Length > 0 && unit.ToLowerInvariant() is not ("" or "deg" or "degrees" or "°")) return Reading<Angle>.Bad($"'{NumberText.Clip(unit)}' is no unit of angle", "write degrees, as 16 or 16 deg");
        if (value.IsGood && isFraction) return Reading<Angle>.Bad("a fraction of a degree", "write decimals, as 16.5");
        return value.As(Angle.OfDegrees);
    }

    /// <summary>A temperature: <c>815 C</c>, <c>1500 F</c>; from absolute zero to 2000 °C.</summary>
    public static Reading<Temperature> Temperature(string text)
    {
        var (number, unit) = NumberText.Split(text.Trim());
        var value = NumberText.Read(number, unit, out var isFraction);
        var scale = unit.Replace("°", "", StringComparison.Ordinal).Trim().ToUpperInvariant();
        if (number.Length > 0 && scale is not ("C" or "F")) return Reading<Temperature>.Bad(scale.Length == 0 ? "a temperature without its unit" : $"'{NumberText.Clip(unit)}' is no unit of temperature", $"write {number} C or {number} F");
        if (!value.IsGood) return Reading<Temperature>.Bad(value.Message, value.Remedy);
        if (isFraction) return Reading<Temperature>.Bad("a fraction of a degree", "write decimals");
        var t = scale == "F" ? Foundation.Temperature.OfFahrenheit(value.Value) : Foundation.Temperature.OfCelsius(value.Value);
        return t.Celsius is >= -273.15 and <= 2000
            ? Reading<Temperature>.Of(t)
            : Reading<Temperature>.Bad("a temperature below absolute zero or above 2000 C", "check the number and C or F");
    }

    /// <summary>A time in minutes: <c>10 min</c>, <c>2 h</c>, <c>30 s</c>.</summary>
    public static Reading<double> Minutes(string text) => OtherTexts.Minutes(text);

    private static Reading<double> OneHardness(string text)
    {
        var (number, unit) = NumberText.Split(text.Trim());
        if (number.Length > 0 && !string.Equals(unit, "HRC", StringComparison.OrdinalIgnoreCase)) return Reading<double>.Bad(unit.Length == 0 ? "a hardness without its scale" : $"'{NumberText.Clip(unit)}' is no scale known here", $"write {number} HRC");
        return NumberText.Read(number, unit, out _);
    }

    private static Reading<Mass> OneMass(string text)
    {
        var (number, unit) = NumberText.Split(text.Trim());
        double? grams = unit.ToLowerInvariant() switch
        {
            "g" or "gram" or "grams" => 1,
            "kg" => 1000,
            "oz" or "ounce" or "ounces" => Mass.GramsPerOunce,
            "lb" or "lbs" or "pound" or "pounds" => 16 * Mass.GramsPerOunce,
            _ => null,
        };
        var value = NumberText.Read(number, unit, out _);
        if (number.Length > 0 && grams is null) return Reading<Mass>.Bad(unit.Length == 0 ? "a weight without its unit" : $"'{NumberText.Clip(unit)}' is no unit of weight", $"write {number} g, or kg, oz, lb");
        if (!value.IsGood) return Reading<Mass>.Bad(value.Message, value.Remedy);
        var mass = Mass.OfGrams(value.Value * grams!.Value);
        return mass.Grams is > 0 and <= 1e6 ? Reading<Mass>.Of(mass) : Reading<Mass>.Bad("a weight that is not above 0 and at most 1000 kg", "check the number and the unit");
    }

    private static Reading<Toleranced<T>> WithTolerance<T>(string text, Func<string, Reading<T>> one, string example)
        where T : struct
    {
        text = text.Trim();
        foreach (var sign in PlusMinusSigns)
        {
            var at = text.IndexOf(sign, StringComparison.Ordinal);
            if (at < 0) continue;
            var left = text[..at].Trim();
            var right = text[(at + sign.Length)..].Trim();
            if (left.Length == 0 || right.Length == 0 || right[0] is '+' or '-') return Reading<Toleranced<T>>.Bad("plus or minus without a number on both sides", $"write {example}");
            var value = one(left);
            if (!value.IsGood) return Reading<Toleranced<T>>.Bad(value.Message, value.Remedy);
            var (number, unit) = NumberText.Split(right);
            var tolerance = one(unit.Length == 0 ? $"{number} {NumberText.Split(left).After}".Trim() : right);
            return tolerance.IsGood ? Reading<Toleranced<T>>.Of(new(value.Value, tolerance.Value)) : Reading<Toleranced<T>>.Bad(tolerance.Message, tolerance.Remedy);
        }

        return one(text).As(v => new Toleranced<T>(v, null));
    }
}
