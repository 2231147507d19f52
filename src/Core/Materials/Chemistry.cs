using System.Collections.Immutable;

namespace Tangwright.Core;

/// <summary>What a heat of steel is made of, mass per cent. What is not said is 0.</summary>
public readonly record struct Chemistry
{
    /// <summary>Carbon, mass per cent.</summary>
    public double CarbonPercent { get; init; }

    /// <summary>Manganese, mass per cent.</summary>
    public double ManganesePercent { get; init; }

    /// <summary>Silicon, mass per cent.</summary>
    public double SiliconPercent { get; init; }

    /// <summary>Nickel, mass per cent.</summary>
    public double NickelPercent { get; init; }

    /// <summary>Chromium, mass per cent.</summary>
    public double ChromiumPercent { get; init; }

    /// <summary>Molybdenum, mass per cent.</summary>
    public double MolybdenumPercent { get; init; }

    /// <summary>Vanadium, mass per cent.</summary>
    public double VanadiumPercent { get; init; }

    /// <summary>Tungsten, mass per cent.</summary>
    public double TungstenPercent { get; init; }

    /// <summary>Copper, mass per cent.</summary>
    public double CopperPercent { get; init; }

    /// <summary>Cobalt, mass per cent.</summary>
    public double CobaltPercent { get; init; }

    /// <summary>Nitrogen, mass per cent.</summary>
    public double NitrogenPercent { get; init; }

    /// <summary>Whether it is a carbon or low-alloy steel, which the printed formulas of the trade were made for: no more than 2 % chromium, 4 % nickel, 0.6 % molybdenum, 1 % tungsten.</summary>
    public bool IsLowAlloy => ChromiumPercent <= 2 && NickelPercent <= 4 && MolybdenumPercent <= 0.6 && TungstenPercent <= 1;

    /// <summary>The nominal contents of a composition: the nominal one when given, else the middle of the range.</summary>
    public static Chemistry Nominal(ImmutableArray<ElementContent> elements) => Of(elements, e => e.NominalPercent ?? (0.5 * (e.LowPercent + e.HighPercent)));

    /// <summary>One content taken out of each range.</summary>
    /// <param name="elements">The composition.</param>
    /// <param name="pick">Which of a range, mass per cent.</param>
    public static Chemistry Of(ImmutableArray<ElementContent> elements, Func<ElementContent, double> pick)
    {
        double Percent(string element) => elements.FirstOrDefault(e => e.Element == element) is { } found ? pick(found) : 0;
        return new Chemistry
        {
            CarbonPercent = Percent("C"),
            ManganesePercent = Percent("Mn"),
            SiliconPercent = Percent("Si"),
            NickelPercent = Percent("Ni"),
            ChromiumPercent = Percent("Cr"),
            MolybdenumPercent = Percent("Mo"),
            VanadiumPercent = Percent("V"),
            TungstenPercent = Percent("W"),
            CopperPercent = Percent("Cu"),
            CobaltPercent = Percent("Co"),
            NitrogenPercent = Percent("N"),
        };
    }
}
