using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>How figures are worded, the same on the sheets and on the command line.</summary>
public static class FigureText
{
    /// <summary>A length in the units asked for: "275.00 mm", "10.827 in", or both; short drops ending zeros.</summary>
    public static string Size(Length length, UnitsShown units, bool brief = false)
    {
        var mm = (brief ? Shown.Trimmed(length.Mm, 2) : Shown.Number(length.Mm, 2)) + " mm";
        var inch = (brief ? Shown.Trimmed(length.Inches, 3) : Shown.Number(length.Inches, 3)) + " in";
        return units switch { UnitsShown.Mm => mm, UnitsShown.Inch => inch, _ => $"{mm} ({inch})" };
    }

    /// <summary>The bare figure of a length in one unit: "124.00" or "4.882".</summary>
    public static string Figure(Length length, bool inch) => inch ? Shown.Number(length.Inches, 3) : Shown.Number(length.Mm, 2);

    /// <summary>The bare figure of an error with its sign: "+0.22" or "−0.002".</summary>
    public static string Off(Length off, bool inch)
    {
        var figure = Figure(Length.OfMm(Math.Abs(off.Mm)), inch);
        return (figure.AsSpan().IndexOfAnyExcept('0', '.') < 0 ? "±" : off.Mm > 0 ? "+" : "−") + figure;
    }

    /// <summary>A mass: "549 g", "19.4 oz" or both.</summary>
    public static string Weight(Mass mass, UnitsShown units)
    {
        var fine = Math.Abs(mass.Grams) < 100 ? 1 : 0;
        return units switch
        {
            UnitsShown.Mm => Shown.Number(mass.Grams, fine) + " g",
            UnitsShown.Inch => Shown.Number(mass.Ounces, fine + 1) + " oz",
            _ => Shown.Both(mass),
        };
    }

    /// <summary>An area: "11 010 mm²", "17.07 in²" or both.</summary>
    public static string Surface(Area area, UnitsShown units)
    {
        var mm = Grouped(area.Mm2) + " mm²";
        var inch = Shown.Number(area.Mm2 / (Length.MmPerInch * Length.MmPerInch), area.Mm2 < 645 ? 3 : 2) + " in²";
        return units switch { UnitsShown.Mm => mm, UnitsShown.Inch => inch, _ => $"{mm} ({inch})" };
    }

    /// <summary>A stage in the maker's words.</summary>
    public static string Of(Stage stage) => stage switch
    {
        Stage.Blank => "as sawn",
        Stage.Profiled => "profiled",
        Stage.Drilled => "drilled",
        Stage.BeforeHardening => "before hardening",
        Stage.Assembled => "assembled",
        _ => "finished steel",
    };

    /// <summary>A grave word.</summary>
    public static string Of(Severity severity) => severity switch
    {
        Severity.Error => "ERROR",
        Severity.Warning => "WARNING",
        _ => "note",
    };

    /// <summary>What a hole is for.</summary>
    public static string Of(HoleUse use) => use switch
    {
        HoleUse.Lightening => "lightening",
        HoleUse.Pin => "pin",
        HoleUse.Lanyard => "lanyard",
        HoleUse.Glue => "glue",
        HoleUse.Locating => "locating",
        _ => "hanging",
    };

    /// <summary>How a hole is made.</summary>
    public static string Of(HoleMake make) => make switch
    {
        HoleMake.Ream => "drill and ream",
        HoleMake.Bore => "bore",
        _ => "drill",
    };

    /// <summary>The state the work is in when it is laid out and drilled.</summary>
    public static string Of(DrilledIn state) => state switch
    {
        DrilledIn.Bar => "in the uncut bar",
        DrilledIn.Rectangle => "in the sawn rectangle",
        _ => "in the profiled piece",
    };

    /// <summary>A whole number with a space between thousands.</summary>
    private static string Grouped(double value)
    {
        var s = Shown.Number(value, 0);
        for (var i = s.Length - 3; i > (s.StartsWith('-') ? 1 : 0); i -= 3) s = s.Insert(i, " ");
        return s;
    }
}
