using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>How a length was written.</summary>
public enum LengthWriting
{
    /// <summary>A bare number in the file's own unit.</summary>
    Bare,

    /// <summary>With mm, cm or m.</summary>
    Metric,

    /// <summary>A fraction of an inch.</summary>
    InchFraction,

    /// <summary>Decimal inches.</summary>
    InchDecimal,

    /// <summary>A drill by number or letter.</summary>
    Drill,
}

/// <summary>A length with how it was written.</summary>
/// <param name="Length">The length.</param>
/// <param name="Writing">How it was written.</param>
public readonly record struct WrittenLength(Length Length, LengthWriting Writing);

/// <summary>Lengths as a maker writes them: <c>6.35 mm</c>, <c>1/4 in</c>, <c>1 1/8"</c>, <c>#30</c>, <c>F</c>, or a bare number in the file's unit.</summary>
public static class LengthText
{
    /// <summary>Longest length read, mm: 100 m.</summary>
    public const double GreatestMm = 100_000;

    /// <summary>Reads a length.</summary>
    /// <param name="text">The text.</param>
    /// <param name="unitMm">Unit of a bare number, mm.</param>
    /// <param name="drills">Whether drill numbers and letters are allowed.</param>
    public static Reading<WrittenLength> Read(string text, double unitMm, bool drills = false)
    {
        text = text.Trim();
        if (text.Length == 0) return Bad("an empty length", "write a length as 6.35 mm or 1/4 in");
        if (text[0] == '#' || (text.Length == 1 && char.IsAsciiLetter(text[0])))
        {
            var drill = drills ? DrillSeries.Named(text) : null;
            if (drill is not null) return Good(drill.Diameter, LengthWriting.Drill);
            return Bad($"'{NumberText.Clip(text)}' is no length", drills ? "drill numbers run from #80 to #1, letters from A to Z" : "a drill size stands for diameters only; write the length as 6.35 mm or 1/4 in");
        }

        var (number, unit) = NumberText.Split(text);
        if (number.Length == 0 && unit is "inf" or "nan" or "+inf" or "-inf") return Bad($"'{unit}' is no length", "write a number as 6.35 mm");
        var name = unit.ToLowerInvariant() switch
        {
            "" => "",
            "mm" or "millimetre" or "millimetres" or "millimeter" or "millimeters" => "mm",
            "cm" => "cm",
            "m" => "m",
            "in" or "in." or "inch" or "inches" or "\"" or "″" or "”" or "''" => "in",
            _ => "?",
        };
        var value = NumberText.Read(number, name is "?" ? "" : unit, out var isFraction);
        if (name == "?" && number.Length > 0) return Bad($"'{NumberText.Clip(unit)}' is no unit of length", $"write mm or in, as {(isFraction ? "1/4 in" : "6.35 mm")}");
        if (!value.IsGood) return Bad(value.Message, value.Remedy);
        if (isFraction && name == "") return Bad("a fraction without its unit", $"write {number} in");
        if (isFraction && name != "in") return Bad($"a fraction of {name}", "fractions are of an inch; write decimals with mm");
        var mm = value.Value * (name switch { "mm" => 1, "cm" => 10, "m" => 1000, "in" => Length.MmPerInch, _ => unitMm });
        if (!(Math.Abs(mm) <= GreatestMm)) return Bad("a length of more than 100 m", "check the number and the unit");
        return Good(Length.OfMm(mm), name switch { "" => LengthWriting.Bare, "in" => isFraction ? LengthWriting.InchFraction : LengthWriting.InchDecimal, _ => LengthWriting.Metric });
    }

    /// <summary>Writes a length the way another was written: a fraction when it is a whole number of 1/64 in, a drill's name when it is one, else decimals.</summary>
    /// <param name="length">The new length.</param>
    /// <param name="like">How the old one was written.</param>
    /// <param name="unitMm">Unit of a bare number, mm.</param>
    /// <param name="old">The old text, for its unit's spelling; null when there is none.</param>
    public static string Write(Length length, LengthWriting like, double unitMm, string? old = null)
    {
        var unit = old is null ? "" : NumberText.Split(old.Trim()).After;
        switch (like)
        {
            case LengthWriting.Drill when DrillSeries.NumbersAndLetters.FirstOrDefault(d => Math.Abs(d.Diameter.Mm - length.Mm) < 1e-9) is { } drill:
                return drill.Name;
            case LengthWriting.InchFraction or LengthWriting.InchDecimal or LengthWriting.Drill:
                var mark = unit.Length == 0 || like == LengthWriting.Drill ? " in" : unit[0] is '"' or '″' or '”' or '\'' ? unit : " " + unit;
                var nearest = SixtyFourths.Nearest(length);
                if (like == LengthWriting.InchFraction && Math.Abs(nearest.Error.Mm) < 1e-9) return nearest + mark;
                return PathData.Number(length.Mm, Length.MmPerInch) + mark;
            case LengthWriting.Metric:
                var (name, scale) = unit.ToLowerInvariant() switch { "cm" => (unit, 10.0), "m" => (unit, 1000.0), "" => ("mm", 1.0), _ => (unit, 1.0) };
                return $"{PathData.Number(length.Mm, scale)} {name}";
            default:
                return PathData.Number(length.Mm, unitMm);
        }
    }

    private static Reading<WrittenLength> Good(Length length, LengthWriting writing) => Reading<WrittenLength>.Of(new(length, writing));

    private static Reading<WrittenLength> Bad(string message, string remedy) => Reading<WrittenLength>.Bad(message, remedy);
}
