using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>What to know of a plan of bars, in words.</summary>
internal static class BarNotes
{
    /// <summary>The notes that apply.</summary>
    public static ImmutableArray<string> Of(ImmutableArray<StockItem> items, ImmutableArray<YieldGuess> yields, BarRoom room, IReadOnlyList<BarCut> cuts)
    {
        var (notes, many) = (ImmutableArray.CreateBuilder<string>(), items.Length > 1);
        var bySaw = items[0].Wanted.StraightCuts;
        foreach (var y in yields.Distinct()) notes.Add($"Yield {Percent(y.Share)}, {y.Says}. Chances hold for pieces that fail one by one; a whole load spoilt at once is not in them.");
        notes.Add($"Between pieces at least {Shown.Both(room.Clearance)}: {room.Says}. At a bar's end {Shown.Both(room.End)}, at its long edges {Shown.Both(room.Edge)}.");
        if (!many && cuts.All(c => c.IsShortest) && !(bySaw && cuts.All(c => c.SawLines.All(l => l.LowMm == l.HighMm)))) notes.Add(bySaw ? "No row of these pieces that straight cuts can part is shorter, on heights half a millimetre apart." : "No row of these pieces is shorter, as long as they lie along the bar on heights half a millimetre apart and can be slid apart along it.");
        if (items[0].Wanted.Service is { } service)
        {
            notes.Add($"The drawing for the service holds each outline {Shown.Both(service.Edge)} larger all round, to be ground off: a cut edge is hard, tapered or rough. The kerf lies outside the outlines and inside the holes; it is usually {Shown.Both(service.Kerf)} wide, {Shown.Both(service.LeastKerf)} to {Shown.Both(service.MostKerf)} ({HiredCut.Source}). Ask for the service's own.");
            notes.Add("The outermost cuts may run along the very edge of the bar, where a service may want steel to spare, and strips between pieces may be thin: ask before ordering, or give more with --clearance or a wider bar.");
            notes.Add($"Holes smaller than the steel is thick are marked to be drilled later ({SourceTag.CommonPractice}).");
        }
        else if (bySaw) notes.Add(Lines(cuts, room, items[0].Results.Shop.Saws.FirstOrDefault()));
        else if (cuts.Any(c => Overlap(c, items))) notes.Add("Where pieces overlap along the bar no square cut parts them: the saw must follow the gap between them. See that its throat and blade can.");
        if (many) notes.Add("The cut map places all patterns; template, hole card and rough cuts of each come from its own packet.");
        if (cuts.Any(c => c.Places.Any(p => Lies.IsOver(p.Lie)))) notes.Add("Some pieces lie with the back face up: mark them from a mirrored template.");
        if (items.Any(i => i.Results.Plan.Layout.DrilledIn == DrilledIn.Bar) && cuts.Any(c => c.Places.Any(p => p.Lie != Lie.Plain))) notes.Add("The hole table measures a piece that lies plain in its bar. Part turned pieces first, then drill them.");
        foreach (var cut in cuts.DistinctBy(c => (c.Steel, c.Thickness.Mm, c.Width.Mm)))
        {
            var lowest = cuts.Where(c => c.Width == cut.Width && c.Steel == cut.Steel).SelectMany(c => c.Places).Select(p => p.Pattern).Distinct().Select(p => items[p].Results.Outline.Height).ToArray();
            var where = many ? $"a bar {Shown.Both(cut.Width)} wide" : "this bar";
            if (cut.Width.Mm - (2 * room.Edge.Mm) >= (2 * lowest.Min().Mm) + room.Clearance.Mm) notes.Add($"Two rows would fit side by side in {where}; this is one row. Ask for the bar as a sheet, --sheet \"{Shown.Trimmed(cut.Width.Mm, 2)} mm x {Shown.Trimmed(cut.Length.Mm, 2)} mm\", to have both rows laid.");
            if (cut.Thickness.Mm >= BarTolerance.LeastThicknessMm && BarTolerance.WidthWorst(cut.Width) is { } worst && cut.Width.Mm - worst.Under.Mm < lowest.Max().Mm + (2 * room.Edge.Mm))
            {
                notes.Add($"A rolled bar sold as {Shown.Both(cut.Width)} may be {Shown.Both(worst.Under)} narrower ({worst.Source}): measure it before laying out.");
            }
        }

        return notes.ToImmutable();
    }

    /// <summary>"1 piece", "14 pieces".</summary>
    public static string Pieces(int count) => count == 1 ? "1 piece" : $"{count} pieces";

    private static string Lines(IReadOnlyList<BarCut> cuts, BarRoom room, Saw? saw)
    {
        var lines = cuts.SelectMany(c => c.SawLines.Select(l => (l.RoomMm, Lean: Math.Atan2(Math.Abs(l.HighMm - l.LowMm), c.Width.Mm)))).ToArray();
        var (none, lean) = (lines.Count(l => l.RoomMm < room.Kerf.Mm - 1e-6), 180 / Math.PI * lines.Select(l => l.Lean).DefaultIfEmpty(0).Max());
        var longest = cuts.SelectMany(c => c.SawLines.Select(l => Math.Sqrt(((l.HighMm - l.LowMm) * (l.HighMm - l.LowMm)) + (c.Width.Mm * c.Width.Mm)))).DefaultIfEmpty(0).Max();
        if (lines.Length == 0) return "One piece a bar: no cut between pieces.";
        return none > 0
            ? $"{(none == 1 ? "One cut has" : $"{none} cuts have")} less room than the kerf where a third piece is in the way: saw there along the gap, or leave one piece out."
            : lean < 0.05 ? "Square cuts part all pieces."
            : saw?.Throat is { } throat && longest > throat.Mm ? $"Straight cuts part all pieces, the most slanted {Shown.Number(lean, 0)}° off square, the longest {Shown.Both(Length.OfMm(longest))}: longer than the {saw.Name} reaches, {Shown.Both(throat)}. Saw in from both ends, cut the bar in two first, or leave one piece out of the bar for square cuts."
            : $"Straight cuts part all pieces, the most slanted {Shown.Number(lean, 0)}° off square, the longest {Shown.Both(Length.OfMm(longest))}: see that vise and throat take it.";
    }

    private static bool Overlap(BarCut cut, ImmutableArray<StockItem> items)
    {
        var end = double.NegativeInfinity;
        foreach (var p in cut.Places)
        {
            if (p.AlongMm < end) return true;
            end = Math.Max(end, p.AlongMm + items[p.Pattern].Results.Outline.Length.Mm);
        }

        return false;
    }

    private static string Percent(double share) => Shown.Trimmed(100 * share, 1) + " %";
}
