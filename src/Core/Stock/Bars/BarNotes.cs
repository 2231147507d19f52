using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>What to know of a plan of bars, in words.</summary>
internal static class BarNotes
{
    /// <summary>The notes that apply.</summary>
    public static ImmutableArray<string> Of(Results r, StockWanted wanted, BarRoom room, YieldGuess yield, IReadOnlyList<BarCut> cuts)
    {
        var (notes, width) = (ImmutableArray.CreateBuilder<string>(), r.Plan.Stock.Width!.Value);
        notes.Add($"Yield {Percent(yield.Share)}, {yield.Says}. Chances hold for pieces that fail one by one; a whole load spoilt at once is not in them.");
        notes.Add($"Between pieces at least {Shown.Both(room.Clearance)}: {room.Says}. At a bar's end {Shown.Both(room.End)}, at its long edges {Shown.Both(room.Edge)}.");
        if (cuts.All(c => c.IsShortest)) notes.Add("No row of these pieces is shorter, as long as they lie along the bar on heights half a millimetre apart and can be slid apart along it.");
        if (cuts.Any(c => Overlap(c, r.Outline.Length.Mm))) notes.Add("Where pieces overlap along the bar no square cut parts them: the saw must follow the gap between them. See that its throat and blade can.");
        if (cuts.Any(c => c.Places.Any(p => p.Lie is Lie.Over or Lie.OverTurned))) notes.Add("Some pieces lie with the back face up: mark them from a mirrored template.");
        if (r.Plan.Layout.DrilledIn == DrilledIn.Bar && cuts.Any(c => c.Places.Any(p => p.Lie != Lie.Plain))) notes.Add("The hole table measures a piece that lies plain in its bar. Saw turned pieces off first, then drill them.");
        if (width.Mm - (2 * room.Edge.Mm) >= (2 * r.Outline.Height.Mm) + room.Clearance.Mm) notes.Add("Two rows would fit side by side in this bar; this is one row.");
        if (r.Plan.Stock.Thickness.Mm >= BarTolerance.LeastThicknessMm && BarTolerance.WidthWorst(width) is { } worst && width.Mm - worst.Under.Mm < r.Outline.Height.Mm + (2 * room.Edge.Mm))
        {
            notes.Add($"A rolled bar sold as {Shown.Both(width)} may be {Shown.Both(worst.Under)} narrower ({worst.Source}): measure it before laying out.");
        }

        return notes.ToImmutable();
    }

    private static bool Overlap(BarCut cut, double lengthMm)
    {
        for (var i = 1; i < cut.Places.Length; i++)
        {
            if (cut.Places[i].AlongMm < cut.Places[i - 1].AlongMm + lengthMm) return true;
        }

        return false;
    }

    private static string Percent(double share) => Shown.Trimmed(100 * share, 1) + " %";
}
