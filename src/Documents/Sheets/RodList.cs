using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>Rods to cut, labels for the pairs of scales, and a tag for the wood's moisture.</summary>
public static class RodList
{
    /// <summary>Its key.</summary>
    public const string Key = "rods";

    /// <summary>Most pairs that get labels.</summary>
    public const int MostPairs = 60;

    private const string Title = "Rods and pair labels";
    private const double SawMm = 1.5, LabelMm = 13;

    /// <summary>Draws its sheets; none without scales.</summary>
    public static ImmutableArray<Sheet> Draw(SheetRequest request)
    {
        var p = request.Handle;
        if (p.Shape is null) return [];
        var first = SheetTop.New(request, Key, Title, Title, "Cut each rod 3 mm (0.12 in) long on both sides; break its ends and wipe it before it is glued. One letter a scale: A in front, B behind; the number is the piece's.");
        return Flow.Over(first, () => SheetTop.New(request, Key, Title, Title, "Continued."), head: null, Rows(p, request, first.Room.Width), after: Notes.Draw);
    }

    private static IEnumerable<FlowRow> Rows(HandlePlan p, SheetRequest request, double width)
    {
        var (units, pieces) = (request.Units, p.Wanted.Pieces);
        if (!p.Pins.IsEmpty)
        {
            yield return CardRows.Said($"Rod and tube{(p.Made.Rod is { } rod ? $", {rod.Name}" : "")}");
            foreach (var pin in p.Pins)
            {
                var tube = pin.Bore.Mm > 0 ? $" tube, bore {BevelWords.Fine(pin.Bore, units)}" : "";
                yield return CardRows.Big($"{pin.Hole.Name}, {BevelWords.Fine(pin.Diameter, units)}{tube}: cut {pieces} to", FigureText.Size(HandleWords.CutLength(pin), units), $"flush with both scales: {FigureText.Size(pin.Length, units)}", width);
            }

            foreach (var size in p.Pins.GroupBy(x => (x.Diameter, x.Bore)).OrderBy(g => g.Key.Diameter.Mm))
            {
                var all = Length.OfMm(pieces * size.Sum(x => HandleWords.CutLength(x).Mm + SawMm));
                yield return CardRows.Line($"{BevelWords.Fine(size.Key.Diameter, units)}: {size.Count() * pieces} to cut, {FigureText.Size(all, units)} in all with 1.5 mm (0.06 in) for each saw cut.", width);
            }
        }

        yield return CardRows.Said("Pairs");
        var labels = Enumerable.Range(1, Math.Min(pieces, MostPairs)).SelectMany(i => new[] { $"{i}A front", $"{i}B back" }).Chunk(4);
        foreach (var four in labels)
        {
            yield return new FlowRow(LabelMm, (canvas, box) =>
            {
                var w = box.Width / 4;
                for (var i = 0; i < four.Length; i++)
                {
                    var at = new Box(box.MinX + (i * w), box.MinY, box.MinX + ((i + 1) * w), box.MaxY);
                    canvas.Frame4(at, new Pen(0.25, LineKind.Dashed));
                    canvas.Fitted(four[i], new Point(at.MinX + 3, at.MaxY - 7), w - 5, Canvas.LargeMm, bold: true);
                    canvas.Fitted($"{request.Results.Plan.Name} {request.Results.Plan.Revision}", new Point(at.MinX + 3, at.MinY + 1.6), w - 5, Canvas.SmallMm);
                }
            });
        }

        if (pieces > MostPairs) yield return CardRows.Line($"Labels for the first {MostPairs} pairs only.", width);
        foreach (var w in p.Wood) yield return Tag(w);
    }

    private static FlowRow Tag(WoodChange w) => new(34, (canvas, box) =>
    {
        var frame = new Box(box.MinX, box.MinY + 1, box.MinX + Math.Min(110, box.Width), box.MaxY - 3);
        canvas.Frame4(frame, new Pen(0.25, LineKind.Dashed));
        var room = frame.Width - 6;
        canvas.Fitted($"Moisture tag: {w.Wood.Name}", new Point(frame.MinX + 3, frame.MaxY - 7), room, Canvas.LargeMm, bold: true);
        canvas.Fitted(w.ToPercent is { } to ? $"wanted before fitting: {HandleWords.Wanted(to.Value)}" : "wanted before fitting: ________ %", new Point(frame.MinX + 3, frame.MaxY - 13), room);
        canvas.Fitted("date ____________  weight ________  meter ______ %", new Point(frame.MinX + 3, frame.MaxY - 19.5), room);
        canvas.Fitted("date ____________  weight ________  meter ______ %", new Point(frame.MinX + 3, frame.MaxY - 26), room);
    });
}
