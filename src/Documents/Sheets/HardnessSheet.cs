using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>The hardness sheet: where to test, what passes, boxes for readings, and what earlier readings have taught.</summary>
public static class HardnessSheet
{
    /// <summary>Its key.</summary>
    public const string Key = "hardness";

    private const string Title = "Hardness sheet";
    private const double PictureMm = 62;
    private const int FewestRows = 4;
    private const int MostRows = 40;

    /// <summary>Draws its sheets; none when nothing is known of the steel's hardening.</summary>
    public static ImmutableArray<Sheet> Draw(SheetRequest request)
    {
        if (request.Temper is not { } t) return [];
        var r = request.Results;
        var expected = t.Gives?.Value ?? (t.Wanted is { } w ? 0.5 * (w.LowHrc + w.HighHrc) : 58);
        var spots = TestSpots.Of(r, expected);
        var first = SheetTop.New(request, Key, Title, Title, t.Wanted is { } band ? $"Good: {TemperWords.Band(band)}, the mean of a piece's readings with what the tester reads wrong taken off." : "The plan names no hardness: write down what comes out.");
        var view = PieceView.Fit(r, r.Plan.Outline.Bounds, new Box(first.Room.MinX, first.Room.MaxY - PictureMm, first.Room.MaxX, first.Room.MaxY));
        view.DrawPiece(first.Canvas, Pen.Wide);
        Marks(first.Canvas, view, r, spots);
        first.Canvas.Scale = view.ScaleName;
        var rest = first with { Room = first.Room with { MaxY = first.Room.MaxY - PictureMm - 3 } };
        return Flow.Over(rest, () => SheetTop.New(request, Key, Title, Title, "Continued."), head: null, Rows(request, t, spots, expected, first.Room.Width), after: Notes.Draw);
    }

    private static void Marks(Canvas canvas, PieceView view, Results r, ImmutableArray<TestSpot> spots)
    {
        foreach (var line in BladeMarks.GrindLine(r.Plan)) canvas.Polyline([.. line.Select(view.On)], new Pen(0.18, LineKind.Dashed));
        foreach (var (s, i) in spots.Select((s, i) => (s, i)))
        {
            var at = view.On(s.At);
            canvas.Fill(Path.Circle(at, 2.6), Ink.White);
            canvas.Stroke(Path.Circle(at, 2.6), new Pen(0.5));
            canvas.Text(Letter(i), at + new Point(0, -1.2), Canvas.TextMm, bold: true, anchor: TextAnchor.Middle);
        }
    }

    private static string Letter(int i) => ((char)('A' + i)).ToString();

    private static IEnumerable<FlowRow> Rows(SheetRequest request, TemperPlan t, ImmutableArray<TestSpot> spots, double expected, double width)
    {
        string Size(Length l) => FigureText.Size(l, request.Units, brief: true);
        foreach (var (s, i) in spots.Select((s, i) => (s, i))) yield return CardRows.Line($"{Letter(i)}, {s.Where}: {Size(s.Thickness)} thick, {Size(s.Clear)} clear of rims{(s.IsHidden ? "; a scale hides it later" : "; it shows: on a test piece, or where it is polished out")}.", width);
        if (spots.IsEmpty) yield return CardRows.Line("No flat place of full thickness is far enough from rims, holes and bevel: test an offcut that went through with the batch.", width, bold: true);
        yield return CardRows.Line($"At {Shown.Number(expected, 0)} HRC the dent is {Shown.Number(IndentDepth.Of(expected).Mm, 3)} mm deep and {Size(IndentDepth.Diameter(expected))} across: steel at least {Size(TestSpots.LeastThickness)} thick, dents {Size(IndentDepth.Apart(expected))} apart, {Size(IndentDepth.FromEdge(expected))} from a rim. Grind scale and soft skin off both faces there; lay the piece flat and free on the anvil; first dent only to seat it (ISO 6508-1, from memory).", width, size: CardRows.NoteMm);
        yield return CardRows.Line(request.Results.Shop.HardnessTester is { } tester ? $"{tester.Name} {(tester.ReadsHighByHrc is { } off ? $"reads {Shown.Number(Math.Abs(off), 1)} HRC {(off < 0 ? "low: add" : "high: take off")} that" : "was never checked: read a test block first and write what it is off by into the shop file")}. No tester: hardness files in steps of 5 HRC tell only in which step it lies." : "The shop names no tester: hardness files in steps of 5 HRC tell only in which step it lies; a fresh file that skates says over about 60.", width, size: CardRows.NoteMm);
        yield return Boxes(request, t, Math.Max(spots.Length, 1));
        yield return CardRows.Boxed("Glasses at the tester and the grinder: hard steel chips. " + HeatWords.EveryCard, width);
        yield return CardRows.Line(TemperWords.Learned(t), width);
        if (t.Log.Readings.Length > 0)
        {
            yield return CardRows.Table(
                "Readings so far",
                [new("batch", 0.18), new("piece", 0.1), new("load", 0.1), new("steel at", 0.22), new("read", 0.12), new("true", 0.12), new("", 0.16)],
                [.. t.Log.Readings.TakeLast(12).Select(j => ImmutableArray.Create(j.Entry.Batch, j.Entry.Piece, j.Entry.Load, Shown.Both(j.Entry.TemperedAt!.Value), Shown.Number(j.Entry.ReadHrc, 1), Shown.Number(j.Hrc, 1), j.IsFarFromRest ? "far off" : j.IsOutsideBand ? "outside" : "good"))],
                width);
            foreach (var j in t.Log.Readings.Where(j => j.IsFlagged).TakeLast(4))
            {
                var lines = TemperWords.Flagged(j);
                yield return FlowRow.Together([.. lines.Select((l, i) => CardRows.Line(l, width, size: CardRows.NoteMm, bold: i == 0))]);
            }
        }
    }

    private static FlowRow Boxes(SheetRequest request, TemperPlan t, int spots)
    {
        const double RowMm = 8;
        var pieces = request.HeatPieces;
        var rows = Math.Clamp(pieces, FewestRows, MostRows / 2);
        string[] heads = ["piece", "load", "oil before", "steel at", .. Enumerable.Range(0, spots).SelectMany(i => new[] { $"{Letter(i)} 1", $"{Letter(i)} 2" }), "mean", t.Wanted is { } w ? $"in {Shown.Trimmed(w.LowHrc, 1)}–{Shown.Trimmed(w.HighHrc, 1)}" : "good"];
        return new FlowRow(7 + (rows * RowMm) + 3, (canvas, box) =>
        {
            var each = box.Width / heads.Length;
            for (var i = 0; i < heads.Length; i++) canvas.Fitted(heads[i], new Point(box.MinX + (i * each) + 0.5, box.MaxY - 5.5), each - 1, Canvas.SmallMm);
            for (var k = 0; k <= rows; k++)
            {
                var y = box.MaxY - 7 - (k * RowMm);
                canvas.Line(new Point(box.MinX, y), new Point(box.MaxX, y), new Pen(k == 0 ? 0.35 : 0.18));
                if (k < rows && pieces > 1) canvas.Text($"{k + 1}", new Point(box.MinX + 1, y - 5.4), Canvas.TextMm);
            }

            for (var i = 0; i <= heads.Length; i++) canvas.Line(new Point(box.MinX + (i * each), box.MaxY - 7), new Point(box.MinX + (i * each), box.MaxY - 7 - (rows * RowMm)), new Pen(0.18));
        });
    }
}
