using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>How far the near limit of a class lies from the size; holes from the mirrored pin, with the shift Delta where the standard gives one.</summary>
[Formula("near limit of a class, µm; hole = -pin, K M N to IT8 and P to IT7 + (IT(n) - IT(n-1))", "iso-286-1", "sizes up to 50 mm; pins f g h js k m n p r s, holes F G H JS K M N P")]
public static class FundamentalDeviation
{
    private static readonly Lazy<StepTable> Table = new(() => StepTable.Read("shaft-deviations.csv"));

    /// <summary>Lower and upper limit from the size; null outside the tables.</summary>
    public static (Length Lower, Length Upper)? Of(Length size, ToleranceClass wanted)
    {
        if (ToleranceGrade.Width(size, wanted.Grade) is not { } width) return null;
        if (wanted.Letters is "js" or "JS") return (-width / 2, width / 2);
        if (wanted.IsHole) return Hole(size, wanted, width);
        return wanted.Letters switch
        {
            "h" => (-width, Length.Zero),
            "f" or "g" => (Pin(size, wanted.Letters) - width, Pin(size, wanted.Letters)),
            "k" when wanted.Grade > 7 => (Length.Zero, width),
            _ => (Pin(size, wanted.Letters), Pin(size, wanted.Letters) + width),
        };
    }

    private static (Length Lower, Length Upper) Hole(Length size, ToleranceClass wanted, Length width)
    {
        var letter = wanted.Letters.ToLowerInvariant();
        if (letter == "h") return (Length.Zero, width);
        if (letter is "f" or "g") return (-Pin(size, letter), width - Pin(size, letter));
        var isSmall = size.Mm <= 3 + 1e-9;
        var upper = letter switch
        {
            // coarser than these grades the standard gives no Delta: K lies at the size, N too over 3 mm
            "k" when wanted.Grade > 8 => Length.Zero,
            "n" when wanted.Grade > 8 && !isSmall => Length.Zero,
            _ when wanted.Grade <= (letter == "p" ? 7 : 8) => ToleranceGrade.Delta(size, wanted.Grade) - Pin(size, letter),
            _ => -Pin(size, letter),
        };
        return (upper - width, upper);
    }

    private static Length Pin(Length size, string letter) => Length.OfMm(Table.Value.At(size.Mm, letter)!.Value / 1000);
}
