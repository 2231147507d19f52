using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>The finish ladder: each grit with ticks for both faces, what it takes off, the edge when it is done, time; then the heat limit, the grits in all series and lines for the log.</summary>
public static class FinishCard
{
    /// <summary>Its key.</summary>
    public const string Key = "finish";

    private const string Title = "Finish ladder";
    private const double NoteMm = CardRows.NoteMm;
    private const double WordsAt = 62;
    private const int LogLines = 5;

    /// <summary>Draws its sheets; none for a plan without a bevel when nobody asks for one.</summary>
    public static ImmutableArray<Sheet> Draw(SheetRequest request)
    {
        var planned = FinishSteps.Of(request.Results, request.Finish, request.RoughCuts);
        if (!planned.IsGood || planned.Value.Steps.IsEmpty) return [];
        var f = planned.Value;
        var first = SheetTop.New(request, Key, Title, Title, $"To {FinishWords.Grain(new FinishTool("", f.Last, GritScale.Micron(f.Last)!.Value, null))}. {FinishWords.DoneWhen}");
        return Flow.Over(first, () => SheetTop.New(request, Key, Title, Title, "Continued. Guard and rest set, eyes, ears and breath covered, no gloves at the belt."), head: null, Rows(request, f, first.Room.Width), after: Notes.Draw);
    }

    private static IEnumerable<FlowRow> Rows(SheetRequest request, FinishPlan f, double width)
    {
        var head = Head();
        FinishStage? stage = null;
        foreach (var s in f.Steps)
        {
            var row = Step(request, s, width);
            yield return s.Stage == stage ? row with { Again = head } : FlowRow.Together(CardRows.Said(s.Stage == FinishStage.Soft ? "In soft steel, before hardening" : "In hard steel"), head, row);
            stage = s.Stage;
        }

        foreach (var line in new[] { FinishWords.StopCoarse(f, request.Units), FinishWords.All(f) }.Where(l => l.Length > 0)) yield return CardRows.Line(line, width, bold: true);
        if (!f.Heat.IsEmpty)
        {
            yield return FlowRow.Together([CardRows.Said("Between dips"), CardRows.Line(FinishWords.HeatHead(f), width), .. f.Heat.Select(h => CardRows.Line(FinishWords.Heat(h, request.Units), width))]);
        }

        yield return Crossovers(request, f, width);
        yield return CardRows.Boxed(FinishWords.Caution, width);
        yield return CardRows.Line(FinishWords.Sources, width, size: NoteMm);
        foreach (var n in f.Notes) yield return CardRows.Line(n, width);
        yield return Log(width);
    }

    private static FlowRow Head() => new(6, (canvas, box) =>
    {
        canvas.Text("front", new Point(box.MinX, box.MinY + 1.4), Canvas.SmallMm);
        canvas.Text("back", new Point(box.MinX + 10, box.MinY + 1.4), Canvas.SmallMm);
        canvas.Text("grit", new Point(box.MinX + 20, box.MinY + 1.4), Canvas.SmallMm);
        canvas.Text("what it does, and the edge when it is done", new Point(box.MinX + WordsAt, box.MinY + 1.4), Canvas.SmallMm);
        canvas.Line(new Point(box.MinX, box.MinY), new Point(box.MaxX, box.MinY), Pen.Wide);
    });

    private static FlowRow Step(SheetRequest request, FinishStep s, double width)
    {
        var shop = request.Results.Shop;
        string[] lines =
        [
            FinishWords.Does(s, request.Units),
            string.Join("; ", new[] { FinishWords.Edge(s, request.Units), FinishWords.Time(s) }.Where(t => t.Length > 0)),
            string.Join("; ", new[] { s.Speed is { } v ? FinishWords.Speed(v, request.Units) : "by hand", FinishWords.SpeedTrouble(s, shop), FinishWords.Roughness(s) }.Where(t => t.Length > 0)),
        ];
        var room = width - WordsAt;
        var height = lines.Sum(l => TextSpace.WrappedMm(l, room, NoteMm)) + 3.5;
        return new FlowRow(Math.Max(17, height), (canvas, box) =>
        {
            canvas.TickBox(box.MinX, box.Centre.Y);
            canvas.TickBox(box.MinX + 10, box.Centre.Y);
            canvas.Fitted(s.Tool.Grain.Words, new Point(box.MinX + 20, box.Centre.Y + 0.2), WordsAt - 23, Canvas.LargeMm, bold: true);
            canvas.Fitted($"{s.Tool.Name}, {FinishWords.Micron(s.Tool.Micron)}", new Point(box.MinX + 20, box.Centre.Y - 5.2), WordsAt - 23, NoteMm);
            var y = box.MaxY - 1.2;
            foreach (var l in lines) y = canvas.Wrapped(l, new Point(box.MinX + WordsAt, y), room, NoteMm);
            canvas.Line(new Point(box.MinX, box.MinY), new Point(box.MaxX, box.MinY), new Pen(0.18));
        });
    }

    private static FlowRow Crossovers(SheetRequest request, FinishPlan f, double width)
    {
        var tools = f.Steps.Select(s => s.Tool).DistinctBy(t => t.Name).ToArray();
        ImmutableArray<Column> columns = [new("belt or paper", 0.23), new("grain", 0.25), new("FEPA P (ISO 6344)", 0.18), new("CAMI", 0.18), new("JIS", 0.16)];
        string Near(GritSeries series, FinishTool t) => t.Grain.Series == series ? t.Grain.Words : GritScale.Nearest(series, t.Micron) is { } g ? "near " + g.Words : "";
        return CardRows.Table(
            "The same grain in other series: numbers of one series are not those of another",
            columns,
            [.. tools.Select(t => ImmutableArray.Create(t.Name, $"{FinishWords.Micron(t.Micron)}{(request.Units == UnitsShown.Mm ? "" : $" ({Shown.Number(t.Micron / 25400, 4)} in)")}", Near(GritSeries.FepaP, t), Near(GritSeries.Cami, t), Near(GritSeries.Jis, t)))],
            width);
    }

    private static FlowRow Log(double width)
    {
        double[] at = [0, 0.3, 0.44, 0.6, 0.76, 0.88];
        string[] heads = ["belt or paper", "pieces", "grams before", "grams after", "minutes", "belts"];
        return new FlowRow(13 + (LogLines * 9), (canvas, box) =>
        {
            var drawn = canvas.Text("For the log", new Point(box.MinX, box.MaxY - 6), Canvas.TextMm, bold: true);
            canvas.Fitted("from three batches on the times above are your own: tangwright finish --ground, or the page of the finish", new Point(drawn.MaxX + 3, box.MaxY - 6), box.MaxX - drawn.MaxX - 3, NoteMm);
            for (var i = 0; i < heads.Length; i++) canvas.Text(heads[i], new Point(box.MinX + (at[i] * width), box.MaxY - 11), Canvas.SmallMm);
            for (var k = 0; k <= LogLines; k++)
            {
                var y = box.MaxY - 12 - (k * 9);
                for (var i = 0; i < at.Length; i++) canvas.Line(new Point(box.MinX + (at[i] * width), y), new Point(box.MinX + ((i + 1 < at.Length ? at[i + 1] : 1) * width) - 2, y), new Pen(0.18));
            }
        });
    }
}
