using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>What to know of pieces laid on sheets, in words.</summary>
internal static class SheetNotes
{
    /// <summary>The notes that apply.</summary>
    public static ImmutableArray<string> Of(ImmutableArray<StockItem> items, ImmutableArray<YieldGuess> yields, BarRoom room, ImmutableArray<BarCut> cuts, SheetSearch sheet, double piecesMm2, bool isStopped)
    {
        var notes = ImmutableArray.CreateBuilder<string>();
        foreach (var y in yields.Distinct()) notes.Add($"Yield {Shown.Trimmed(100 * y.Share, 1)} %, {y.Says}. Chances hold for pieces that fail one by one; a whole load spoilt at once is not in them.");
        notes.Add($"Between pieces at least {Shown.Both(room.Clearance)}: {room.Says}. At the ends of a sheet {Shown.Both(room.End)}, at its long edges {Shown.Both(room.Edge)}.");
        var used = cuts.Sum(c => c.Count * c.Width.Mm * c.Row.Mm);
        notes.Add($"Pieces take {Shown.Trimmed(100 * piecesMm2 / used, 1)} % of the steel up to the drop. Found by search{(isStopped ? ", stopped early" : sheet.Effort.ClockShare is null ? $", again the same on this machine for seed {sheet.Effort.Seed} and {Shown.Trimmed(sheet.Effort.Work / 1e6, 1)} million places weighed up" : " within the time given")}: a closer layout may exist, and a longer search may find it.");
        notes.Add(sheet.MayLieAcross ? "Some pieces may lie across the sheet: only where the way it was rolled does not matter." : "All pieces lie along the sheet, the way it was rolled. See that its mark of rolling runs so.");
        notes.Add("No straight cut parts pieces that lie into one another: for a jigsaw, a laser, waterjet or plasma. Leave small bridges where a piece could tip into the cut.");
        if (cuts.Any(c => c.Places.Any(p => Lies.IsOver(p.Lie)))) notes.Add("Some pieces lie with the back face up: mark them from a mirrored template.");
        if (items.Any(i => i.Results.Plan.Layout.DrilledIn == DrilledIn.Bar)) notes.Add("The hole table measures a piece that lies plain in its bar: cut the pieces out first, then drill them.");
        return notes.ToImmutable();
    }
}
