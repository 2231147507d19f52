using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>What to do with a hole that was measured.</summary>
public enum HoleAction
{
    /// <summary>Leave it as it is.</summary>
    Accept,

    /// <summary>Open it up: ream or drill it larger.</summary>
    OpenUp,

    /// <summary>Use a thicker rod.</summary>
    ThickerRod,

    /// <summary>The piece cannot be saved by opening holes.</summary>
    Scrap,

    /// <summary>So far off that it was most likely mistyped or measured from other edges.</summary>
    MeasureAgain,
}

/// <summary>What to do with a measured hole, with the reason.</summary>
/// <param name="Action">What.</param>
/// <param name="To">The size to open it to or the rod to use; null when neither.</param>
/// <param name="Words">In a sentence, with numbers.</param>
/// <remarks>
/// Common practice: a rod passes when the hole is larger than it by the position error; up to 1.5 times the rod a tang hole may be opened, as for peened pins, while half the stock's thickness of steel stays round it;
/// a hole more than 0.2 mm over its plan takes the next thicker rod that passes, when one is sold.
/// </remarks>
public sealed record HoleVerdict(HoleAction Action, DrillSize? To, string Words)
{
    private const double MostOpenedRods = 1.5;
    private const double LooseMm = 0.2;

    /// <summary>What to do with one hole.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="shop">The shop: what it can open the hole with.</param>
    /// <param name="holes">All holes, those measured as built.</param>
    /// <param name="hole">The hole as built.</param>
    /// <param name="position">Its position error as a diameter.</param>
    /// <param name="allowed">What is allowed; null when no rod is named.</param>
    internal static HoleVerdict Of(Plan plan, Shop shop, ImmutableArray<PlacedHole> holes, PlacedHole hole, Length position, Length? allowed)
    {
        var far = hole.At.To(hole.MadeAt);
        if (far > HoleReport.FarOffMm) return new(HoleAction.MeasureAgain, null, $"{Both(far)} from its place: mistyped, or measured from other edges? Measure it again; it is not carried on");
        var (web, least) = (AsBuiltHoles.WebMm(plan.Outline, holes, hole), WebLimits.ErrorMm(plan.Stock.Thickness));
        if (web < least) return new(HoleAction.Scrap, null, $"only {Both(web)} of steel is left beside it, and {Both(least)} must be: scrap, or move the outline");
        if (hole.Pin is not { } rod || allowed is not { } room) return new(HoleAction.Accept, null, $"{Both(web)} of steel is left beside it: accept it as it is");
        if (position <= room) return Enters(hole, rod, position);
        var wanted = Math.Max(rod.Mm + position.Mm, hole.MadeDiameter.Mm);
        var size = shop.Reamers.Concat(shop.Drills).Where(d => d.Diameter.Mm >= wanted - 1e-9).OrderBy(d => d.Diameter).FirstOrDefault() ?? new DrillSize(Shown.Both(Length.OfMm(wanted)), Length.OfMm(wanted));
        var why = room.Mm < 0 ? $"the rod of {Shown.Both(rod)} does not go in" : $"it is {Shown.Both(position)} out of place and {Shown.Both(room)} is allowed";
        var left = web - (0.5 * (size.Diameter.Mm - hole.MadeDiameter.Mm));
        if (size.Diameter.Mm > MostOpenedRods * rod.Mm) return new(HoleAction.Scrap, null, $"{why}; it would have to be opened to {Both(wanted)}, more than one and a half times the rod: scrap");
        if (left < least) return new(HoleAction.Scrap, null, $"{why}; opened to {size.Name} only {Both(left)} of steel is left beside it: scrap");
        return new(HoleAction.OpenUp, size, $"{why}: {(shop.Reamers.Contains(size) ? "ream" : "open")} it to {size.Name}");
    }

    private static HoleVerdict Enters(PlacedHole hole, Length rod, Length position)
    {
        var over = hole.MadeDiameter - hole.Diameter;
        if (over.Mm <= LooseMm) return new(HoleAction.Accept, null, "the rod passes: accept it");
        var loose = $"it came out {Shown.Both(over)} over its size";
        var thicker = PinStock.Sizes.LastOrDefault(s => s.Diameter > rod && s.Diameter + position <= hole.MadeDiameter);
        return thicker is null
            ? new(HoleAction.Accept, null, $"{loose}; the rod passes and the scales keep it in place: accept it, glue fills the rest")
            : new(HoleAction.ThickerRod, thicker, $"{loose}: use {thicker.Name} rod, here and in the scales");
    }

    private static string Both(double mm) => Shown.Both(Length.OfMm(mm));
}
