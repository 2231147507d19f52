using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>How much narrower than its nominal width a hot-rolled flat bar may be delivered.</summary>
[Formula("How much narrower than nominal a rolled flat bar may be, mm", "en-10058", "Widths 10 to 150 mm (ASTM A29: to 200 mm) and thickness 5 mm up, hot-rolled flats; strip and ground stock are excluded")]
public static class BarTolerance
{
    /// <summary>Thinnest bar both tables hold for, mm (ASTM A29; for EN 10058 from memory).</summary>
    public const double LeastThicknessMm = 5;

    /// <summary>EN 10058:2018, hot-rolled flat bars, width tolerance; 10 to 150 mm; null outside.</summary>
    public static Length? En10058Width(Length width) => width.Mm switch
    {
        < 10 => null,
        <= 40 => Length.OfMm(0.75),
        <= 80 => Length.OfMm(1),
        <= 100 => Length.OfMm(1.5),
        <= 120 => Length.OfMm(2),
        <= 150 => Length.OfMm(2.5),
        _ => null,
    };

    /// <summary>ASTM A29, hot-wrought flats, width under nominal; up to 200 mm; null outside.</summary>
    public static Length? AstmA29WidthUnder(Length width) => width.Mm switch
    {
        <= 0 => null,
        <= 25 => Length.OfMm(0.5),
        <= 100 => Length.OfMm(1),
        <= 150 => Length.OfMm(1.5),
        <= 200 => Length.OfMm(2.5),
        _ => null,
    };

    /// <summary>The larger of the two with its standard; null when the width is outside both.</summary>
    public static (Length Under, string Source)? WidthWorst(Length width)
    {
        var (en, astm) = (En10058Width(width), AstmA29WidthUnder(width));
        if (en is { } e && (astm is null || e >= astm.Value)) return (e, "EN 10058:2018, width of hot-rolled flat bars");
        return astm is { } a ? (a, "ASTM A29, width of hot-wrought flats") : null;
    }
}
