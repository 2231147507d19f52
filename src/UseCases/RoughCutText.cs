using Tangwright.Core;
using Tangwright.Documents;
using Tangwright.Foundation;

namespace Tangwright.UseCases;

/// <summary>Rough cuts in words, the same on the command line and the desk.</summary>
public static class RoughCutText
{
    /// <summary>Cautions for a saw.</summary>
    public static string Caution(RoughCutPlan p) => RoughCutWords.Caution(p);

    /// <summary>A length, mm, ending zeros dropped.</summary>
    public static string Size(double mm, UnitsShown units) => FigureText.Size(Length.OfMm(mm), units, brief: true);

    /// <summary>A share as "74 %".</summary>
    public static string Percent(double share) => StockWords.Percent(share);

    /// <summary>A mass.</summary>
    public static string Weight(Mass mass, UnitsShown units) => FigureText.Weight(mass, units);

    /// <summary>A time.</summary>
    public static string Minutes(double minutes) => RoughCutWords.Minutes(minutes);

    /// <summary>A time with its band.</summary>
    public static string Band(double low, double high) => RoughCutWords.Band(low, high);

    /// <summary>Where a cut is marked.</summary>
    public static string Marks(SawCut c, UnitsShown units)
        => string.Join(" to ", c.Marks.Select((m, i) => $"{RoughCutWords.MarkName(c, i)} {RoughCutWords.Mark(m, units)}")) + (c.Pocket is { } pocket ? $" to the relief hole of hollow {pocket}" : "");

    /// <summary>How a cut runs.</summary>
    public static string Run(SawCut c, UnitsShown units) => RoughCutWords.Run(c, units);

    /// <summary>What falls off.</summary>
    public static string Offcut(SawCut c, UnitsShown units) => RoughCutWords.Offcut(c, units);

    /// <summary>Where a relief hole is drilled.</summary>
    public static string Relief(ReliefHole h, RoughBlank blank, UnitsShown units)
        => $"{(h.Drill is { } d ? $"drill {d.Name}" : "pierce")} at {RoughCutWords.Fine(Length.OfMm(h.FromCorner.X), units)} from the {blank.EndWords}, {RoughCutWords.Fine(Length.OfMm(h.FromCorner.Y), units)} from the {blank.EdgeWords} (hollow {h.Pocket})";

    /// <summary>Both ways.</summary>
    public static (string Sawn, string GrindOnly) Both(RoughCutPlan p, UnitsShown units) => RoughCutWords.Both(p, units);

    /// <summary>What a hollow could be done with.</summary>
    public static string Hollow(HollowLeft h, UnitsShown units) => RoughCutWords.Hollow(h, units);

    /// <summary>What is left to grind.</summary>
    public static string Left(GrindingWork g, UnitsShown units) => RoughCutWords.Left(g, units);

    /// <summary>Belts worn.</summary>
    public static string Belts(GrindingWork g) => RoughCutWords.Belts(g);
}
