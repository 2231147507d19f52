using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.UseCases;

/// <summary>What stands small beside a value that was typed: the same in the other unit, and the nearest 1/64 in with what it costs.</summary>
public static class BesideLength
{
    private const double Nothing = 0.0005;

    /// <summary>Beside a length as written, in any writing; empty when it is none.</summary>
    /// <param name="written">As written.</param>
    /// <param name="units">Unit of bare numbers.</param>
    public static string Of(string written, LengthUnit units)
    {
        var read = LengthText.Read(written, units == LengthUnit.Inch ? Length.MmPerInch : 1, drills: true);
        if (!read.IsGood) return "";
        var (length, writing) = (read.Value.Length, read.Value.Writing);
        var inches = writing is LengthWriting.InchDecimal or LengthWriting.InchFraction || (writing == LengthWriting.Bare && units == LengthUnit.Inch);
        return writing switch
        {
            LengthWriting.InchFraction => Shown.Mm(length),
            LengthWriting.Drill => Shown.Both(length),
            _ => $"{(inches ? Shown.Mm(length) : Shown.Inch(length))}{Nearest(length, inches)}",
        };
    }

    /// <summary>A length as written in the other unit alone; empty when it is none.</summary>
    internal static string OtherUnit(string written, LengthUnit units)
        => LengthText.Read(written, units == LengthUnit.Inch ? Length.MmPerInch : 1) is { IsGood: true, Value: var w }
            ? w.Writing is LengthWriting.InchDecimal or LengthWriting.InchFraction || (w.Writing == LengthWriting.Bare && units == LengthUnit.Inch) ? Shown.Mm(w.Length) : Shown.Inch(w.Length)
            : "";

    /// <summary>Beside a length itself, in the other unit than the plan's.</summary>
    public static string Of(Length length, LengthUnit units) => (units == LengthUnit.Inch ? Shown.Mm(length) : Shown.Inch(length)) + Nearest(length, units == LengthUnit.Inch);

    private static string Nearest(Length length, bool inches)
    {
        var near = SixtyFourths.Nearest(length);
        if (near.Sixtyfourths == 0) return "";
        if (Math.Abs(near.Error.Mm) < Nothing) return $", {near} in";
        var off = inches ? Shown.Inch(Length.OfMm(Math.Abs(near.Error.Mm)), 4) : Shown.Mm(Length.OfMm(Math.Abs(near.Error.Mm)));
        return $"; {near} in is {off} {(near.Error.Mm > 0 ? "more" : "less")}";
    }
}
