using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>The glue-up card: what must be ready before anything is mixed, mixes and pieces in each, times, and when the clamps come off.</summary>
public static class GlueUpCard
{
    /// <summary>Its key.</summary>
    public const string Key = "glue-up";

    private const string Title = "Glue-up card";
    private const double RowMm = 9;

    /// <summary>Draws its sheets; none without scales.</summary>
    public static ImmutableArray<Sheet> Draw(SheetRequest request)
    {
        if (request.Handle is not { Glue: { } glue, Shape: not null } p) return [];
        var first = SheetTop.New(request, Key, Title, Title, "Nothing is mixed before every box of the first part is ticked.");
        return Flow.Over(first, () => SheetTop.New(request, Key, Title, Title, "Continued."), head: null, Rows(p, glue, request, first.Room.Width), after: Notes.Draw);
    }

    private static IEnumerable<FlowRow> Rows(HandlePlan p, GlueUp g, SheetRequest request, double width)
    {
        var units = request.Units;
        yield return CardRows.Said("Before mixing");
        string[] before =
        [
            "Blade finished but for sharpening, taped; front ends of the scales finished and polished: they cannot be reached afterwards.",
            $"Dry fit with all {p.Pins.Length} pins: no gap takes a 0.05 mm (0.002 in) feeler; every pin slips in by hand. Pairs and numbers checked: A in front, B behind.",
            "Both faces abraded, not more than hours ago; wiped with solvent until the cloth stays clean; not touched again.",
            $"Ready to hand: {(g.Shop.ClampsPerPiece * (g.Batches.PiecesEach.IsEmpty ? 1 : g.Batches.PiecesEach.Max()))} clamps, pins, sticks, gloves, cloths, wax or tape where no glue may stay.",
            .. p.Wood.Any(w => w.IsFelt) ? ["Wood brought to the moisture it will live at: see the handle card."] : (string[])[],
        ];
        foreach (var line in before) yield return Ticked(line, width);
        yield return CardRows.Said("Mixes");
        foreach (var line in HandleWords.Glue(g, units)) yield return CardRows.Line(char.ToUpperInvariant(line[0]) + line[1..] + ".", width, size: CardRows.NoteMm);
        foreach (var row in Mixes(g)) yield return row;
        yield return CardRows.Said("Order for each piece");
        string[] order =
        [
            "Thin coat on both faces of every joint; glue holes filled; pins wetted.",
            "Front scale, pins through, back scale; seat by hand, then the clamps just tight: glue shows all round and is not all pressed out.",
            "Front end wiped clean with a little solvent on a stick before it sets. Rest of the mix stays in its pot as witness.",
        ];
        foreach (var line in order) yield return Ticked(line, width);
        yield return Ticked($"Witness hard to the fingernail, {Shown.Trimmed(g.Shop.CureHours, 1)} h over: clamps off, shape with care: hot pins burn a ring, dip often.", width);
        yield return CardRows.Boxed(HandleWords.GlueCaution, width);
    }

    private static FlowRow Ticked(string text, double width) => new(Math.Max(8.5, TextSpace.WrappedMm(text, width - 11, Canvas.TextMm) + 1.5), (canvas, box) =>
    {
        canvas.TickBox(box.MinX, box.MaxY - 4);
        canvas.Wrapped(text, new Point(box.MinX + 10, box.MaxY - 0.4), width - 11);
    });

    private static IEnumerable<FlowRow> Mixes(GlueUp g)
    {
        string[] heads = ["mix", "pieces", "mix, ml (g)", "mixed at", $"last clamp by, {Shown.Number(g.Shop.PotLifeMinutes * GlueBatches.UsedShare, 0)} min", $"clamps off, {Shown.Trimmed(g.Shop.CureHours, 1)} h later"];
        double[] share = [0, 0.08, 0.28, 0.45, 0.6, 0.8, 1];
        double X(Box box, int i) => box.MinX + (share[i] * box.Width);
        var head = new FlowRow(7, (canvas, box) =>
        {
            for (var i = 0; i < heads.Length; i++) canvas.Fitted(heads[i], new Point(X(box, i), box.MaxY - 5.5), X(box, i + 1) - X(box, i) - 1, Canvas.SmallMm);
        });
        yield return head;
        var next = 1;
        for (var k = 0; k < g.Batches.Mixes; k++)
        {
            var (number, from, n) = (k + 1, next, g.Batches.PiecesEach[k]);
            next += n;
            yield return new FlowRow(RowMm, (canvas, box) =>
            {
                var y = box.MinY;
                canvas.Text($"{number}", new Point(X(box, 0), y + 2.6), Canvas.LargeMm, bold: true);
                canvas.Fitted(n == 1 ? $"{from}" : $"{from} to {from + n - 1}", new Point(X(box, 1), y + 2.6), X(box, 2) - X(box, 1) - 2, Canvas.LargeMm, bold: true);
                canvas.Fitted($"{Shown.Number(n * g.Each.ToMix.Mm3 / 1000, 1)} ({Shown.Number(n * g.Each.MassToMix.Grams, 1)} g)", new Point(X(box, 2), y + 2.6), X(box, 3) - X(box, 2) - 2);
                for (var i = 3; i < heads.Length; i++) canvas.Line(new Point(X(box, i), y + 1), new Point(X(box, i + 1) - 2, y + 1), new Pen(0.18));
                canvas.Line(new Point(box.MinX, y), new Point(box.MaxX, y), new Pen(0.18));
            })
            { Again = head };
        }
    }
}
