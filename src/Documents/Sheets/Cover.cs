using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>The cover: the dimensioned drawing, the key figures, what the plan wants beside what was found, and what else is in the packet.</summary>
public static class Cover
{
    /// <summary>Its key.</summary>
    public const string Key = "cover";

    private const double GapMm = 2;

    /// <summary>Draws the sheet.</summary>
    public static ImmutableArray<Sheet> Draw(SheetRequest request)
    {
        var results = request.Results;
        var (canvas, room) = SheetTop.New(request, Key, "Cover and drawing", results.Plan.Name, Summary(request));
        var drawing = room with { MinY = room.MaxY - Math.Min(108, room.Height * 0.47) };
        var y = CoverDrawing.Draw(canvas, request, drawing);

        var units = request.Units;
        var section = results.Plan.Bevel is not null;
        var left = section ? room.Width * 0.60 : room.Width;
        var top = y;
        y = TextTable.Draw(canvas, new Point(room.MinX, top), left, "Figures", [new("", 0.50), new("", 0.50, TextAnchor.Right)], FigureLine.OfPiece(results, units).Select(l => ImmutableArray.Create(l.Name, l.Value)));
        if (section) SectionView.Draw(canvas, request, new Box(room.MinX + left + 5, Math.Min(y, top - 48), room.MaxX, top));
        y = Math.Min(y, section ? top - 48 : y);
        y = Weights(canvas, request, room, y - GapMm);
        y = Targets(canvas, request, room, y - GapMm);
        Bench(canvas, request, room, y - GapMm);
        return [canvas.Done()];
    }

    private static string Summary(SheetRequest request)
    {
        var r = request.Results;
        int Count(Severity s) => r.Findings.Count(f => f.Severity == s);
        var (errors, warnings, notes) = (Count(Severity.Error), Count(Severity.Warning), Count(Severity.Note));
        var where = request.SheetNumbers.TryGetValue(FindingsSheet.Key, out var n) ? $", sheet {n}" : "";
        return errors + warnings + notes == 0
            ? $"No findings{where}. Revision {r.Plan.Revision}."
            : $"Findings{where}: {Number(errors, "error")}, {Number(warnings, "warning")}, {Number(notes, "note")}." + (errors > 0 ? " MEND THE ERRORS BEFORE CUTTING STEEL." : "");
    }

    private static string Number(int n, string word) => n == 1 ? $"1 {word}" : $"{n} {word}s";

    private static double Weights(Canvas canvas, SheetRequest request, Box room, double y)
    {
        var units = request.Units;
        var name = request.Results.Plan.Datum.Name;
        return TextTable.Draw(canvas, new Point(room.MinX, y), room.Width, "Weight and balance by stage" + (name.Length > 0 ? $", balance from the datum: {name}" : ", balance from the datum"), [new("Stage", 0.24), new("Weight", 0.24, TextAnchor.Right), new("Balance along", 0.27, TextAnchor.Right), new("Balance across", 0.25, TextAnchor.Right)],
            request.Results.Stages.Select(s => ImmutableArray.Create(
                FigureText.Of(s.Stage),
                s.Mass is { } m ? FigureText.Weight(m, units) : "density not known",
                FigureText.Size(s.BalanceFromDatum, units),
                FigureText.Size(s.BalanceAcrossFromDatum, units))));
    }

    private static double Targets(Canvas canvas, SheetRequest request, Box room, double y)
    {
        var lines = FigureLine.OfTargets(request.Results, request.Units);
        if (lines.IsEmpty) return y;
        return TextTable.Draw(canvas, new Point(room.MinX, y), room.Width, "Wanted and found", [new("", 0.22), new("Wanted", 0.34, TextAnchor.Right), new("Found", 0.30, TextAnchor.Right), new("", 0.14)],
            lines.Select(l => ImmutableArray.Create(l.Name, l.Wanted, l.Found, l.Within switch { true => "✓ within", false => "✗ OUTSIDE", _ => "" })));
    }

    private static void Bench(Canvas canvas, SheetRequest request, Box room, double y)
    {
        var plan = request.Results.Plan;
        var stock = plan.Stock;
        var bar = string.Join(" × ", new[] { stock.Thickness, stock.Width, stock.Length }.OfType<Length>().Select(l => FigureText.Size(l, request.Units, brief: true)));
        var lines = new List<(string Name, string Value)>
        {
            ("Stock", $"{stock.Steel}, {bar}{(stock.Condition.Length > 0 ? ", " + stock.Condition : "")}"),
            ("Shop", request.Results.Shop.IsAssumed ? "ASSUMED SHOP: the built-in one. Write your own shop file and print again." : $"{request.Results.Shop.Name} ({request.ShopUsed})"),
            ("Laid out and drilled", FigureText.Of(request.Results.Bench.State)),
            ("In this packet", Contents(request)),
        };
        foreach (var (name, value) in lines)
        {
            if (value.Length == 0) continue;
            var width = room.Width - 42;
            var needed = TextSpace.WrappedMm(value, width, 3) + 1;
            if (y - needed < room.MinY) return;
            canvas.Text(name, new Point(room.MinX, y - 3.6), 3, bold: true);
            y = canvas.Wrapped(value, new Point(room.MinX + 42, y), width, 3) - 1;
        }
    }

    private static string Contents(SheetRequest request)
        => string.Join(" · ", SheetKinds.All.Where(k => k.Key != Key && request.SheetNumbers.ContainsKey(k.Key)).Select(k => $"{k.Title} {request.SheetNumbers[k.Key]}"));
}
