using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>How many to start and which bars to buy or take from the rack, with a tick for each.</summary>
public static class BuyList
{
    /// <summary>Its key.</summary>
    public const string Key = "buy";

    private const string Title = "Buy list";
    private const double Left = 10;
    private const double NoteMm = 3;

    /// <summary>Draws its sheets; none without a count of pieces.</summary>
    public static ImmutableArray<Sheet> Draw(SheetRequest request)
    {
        if (request.Stock is not { } s) return [];
        var stock = request.Results.Plan.Stock;
        var first = s.Patterns.Length > 1
            ? SheetTop.New(request, Key, Title, Title, $"{s.Patterns.Length} patterns in one order. Write the heat number on every bar before it is cut.")
            : SheetTop.New(request, Key, Title, Title, $"{s.Good} good pieces of {stock.Steel}, {FigureText.Size(stock.Thickness, request.Units, brief: true)} thick{(stock.Condition.Length > 0 ? ", " + stock.Condition : "")}. Write the heat number on every bar before it is cut.");
        return Flow.Over(first, () => SheetTop.New(request, Key, Title, Title, "Continued."), head: null, Rows(request, s, first.Room.Width), after: Notes.Draw);
    }

    private static IEnumerable<FlowRow> Rows(SheetRequest request, StockPlan s, double width)
    {
        string Size(Length l) => FigureText.Size(l, request.Units, brief: true);
        string Steel(string steel, Length thickness) => s.Patterns.Length > 1 ? $"{steel} {Size(thickness)} × " : "";
        if (s.Patterns.Length > 1)
        {
            foreach (var p in s.Patterns) yield return Said($"Start {p.Starts}", $"{p.Results.Plan.Name}, revision {p.Results.Plan.Revision}: {StockWords.Percent(p.ChanceShare)} chance of {p.Good} good{(p.Yield.IsPrior ? $", {StockWords.Percent(p.LowChanceShare)} to {StockWords.Percent(p.HighChanceShare)} over the band of the assumed yield" : "")}{(p.SteelPrice is { } own ? $"; new steel {StockWords.Money(own, s.Money)} in each good one" : "")}", width);
        }
        else yield return Said($"Start {s.Starts}", $"{StockWords.Percent(s.Chosen.ChanceShare)} chance of {s.Good} good{(s.Yield.IsPrior ? $", {StockWords.Percent(s.Chosen.LowChanceShare)} to {StockWords.Percent(s.Chosen.HighChanceShare)} over the band of the assumed yield" : "")}", width);
        foreach (var c in s.Cuts.Where(c => c.Rack is not null)) yield return Ticked($"Rack: {c.Rack!.Name}", $"{Steel(c.Steel, c.Thickness)}{Size(c.Width)} × {Size(c.Length)}: {StockWords.Pieces(s, c)}");
        foreach (var b in s.Buy) yield return Ticked($"Buy {b.Count} ×  {Steel(b.Steel, b.Thickness)}{Size(b.Width)} × {Size(b.Length)}", $"{(s.Patterns.Length > 1 || b.StraightInBar == 0 ? $"up to {b.MostInBar} in a bar laid as on the cut map" : $"{b.MostInBar} in a bar laid as on the cut map, {b.StraightInBar} end to end")}{(b.Price is { } each ? $"; {StockWords.Money(each, s.Money)} each" : "")}");
        if (s.Buy.IsEmpty) yield return Said("Buy nothing", "the rack holds it", width);
        if (s.Mass is { } mass && s.Buy.Length > 0) yield return Said(StockWords.Weight(mass, request.Units), "of new steel" + (s.StraightBars is { } straight ? $"; end to end it would take {straight} {(straight == 1 ? "bar" : "bars")}" : ""), width);
        if (s.Price is { } price && s.Buy.Length > 0) yield return Said(StockWords.Money(price, s.Money), s.Patterns.Length > 1 ? "for the new steel" : $"for the new steel, {StockWords.Money(s.Patterns[0].SteelPrice!.Value, s.Money)} in each good piece", width);
        if (s.Patterns.Length == 1 && s.Rows.Length > 1) yield return Table(s, width);
        var drops = s.Cuts.Where(BarTags.IsKept).ToArray();
        if (drops.Length > 0) foreach (var row in Lines("Drops to tag and put in the rack", drops.Select(c => $"{c.Count} ×  {Steel(c.Steel, c.Thickness)}{Size(c.Width)} × {Size(c.Drop)}, {(c.DropHoldsPiece ? "long enough for another of these" : "too short for another of these")}"), width)) yield return row;
        foreach (var row in Lines("Good to know", s.Notes, width)) yield return row;
    }

    private static FlowRow Ticked(string what, string more) => new(16, (canvas, box) =>
    {
        canvas.TickBox(box.MinX, box.Centre.Y);
        canvas.Fitted(what, new Point(box.MinX + Left, box.MaxY - 7), box.Width - Left, Canvas.LargeMm, bold: true);
        canvas.Fitted(more, new Point(box.MinX + Left, box.MaxY - 12.5), box.Width - Left, Canvas.TextMm);
        canvas.Line(new Point(box.MinX, box.MinY), new Point(box.MaxX, box.MinY), new Pen(0.18));
    });

    private static FlowRow Said(string what, string more, double width)
    {
        var lines = TextSpace.WrappedMm(more, width - 52, Canvas.TextMm);
        return new FlowRow(Math.Max(11, lines + 4), (canvas, box) =>
        {
            canvas.Fitted(what, new Point(box.MinX, box.MaxY - 7), 50, Canvas.LargeMm, bold: true);
            canvas.Wrapped(more, new Point(box.MinX + 52, box.MaxY - 2.6), width - 52);
            canvas.Line(new Point(box.MinX, box.MinY), new Point(box.MaxX, box.MinY), new Pen(0.18));
        });
    }

    private static FlowRow Table(StockPlan s, double width)
    {
        ImmutableArray<Column> columns = [new("start", 0.15), new($"chance of {s.Good} good", 0.3), new("new bars", 0.2), new("", 0.35)];
        return new FlowRow(TextTable.HeightMm(s.Rows.Length, head: true, 5.6) + 4, (canvas, box) => TextTable.Draw(
            canvas,
            new Point(box.MinX, box.MaxY - 2),
            width,
            "Starts, chance and steel",
            columns,
            s.Rows.Select(r => ImmutableArray.Create($"{r.Starts}", StockWords.Percent(r.ChanceShare), $"{r.NewBars}", r.Starts == s.Starts ? "laid out here" : r.IsFree ? "no more steel" : "")),
            5.6));
    }

    private static IEnumerable<FlowRow> Lines(string title, IEnumerable<string> lines, double width)
    {
        var head = 9.0;
        foreach (var line in lines)
        {
            var (text, above) = (TextSpace.WrappedMm(line, width - 5, NoteMm) + 0.8, head);
            head = 0;
            yield return new FlowRow(above + text, (canvas, box) =>
            {
                if (above > 0) canvas.Text(title, new Point(box.MinX, box.MaxY - 6), Canvas.TextMm, bold: true);
                var y = box.MaxY - above;
                canvas.Fill(Path.Circle(new Point(box.MinX + 1.5, y - 2.2), 0.7));
                canvas.Wrapped(line, new Point(box.MinX + 5, y), width - 5, NoteMm);
            });
        }
    }
}
