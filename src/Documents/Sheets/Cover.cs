using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>The cover: the dimensioned drawing, the key figures, what the plan wants beside what was found, and what else is in the packet.</summary>
internal static class Cover
{
    /// <summary>Its key.</summary>
    public const string Key = "cover";

    /// <summary>Draws the sheet.</summary>
    public static ImmutableArray<Sheet> Draw(SheetRequest request)
    {
        var results = request.Results;
        var (canvas, room) = SheetTop.New(request, Key, "Cover and drawing", results.Plan.Name, Summary(request));
        var y = CoverDrawing.Draw(canvas, request, room with { MinY = room.MaxY - Math.Min(108, room.Height * 0.47) });
        var left = room with { MaxY = y };
        ImmutableArray<FlowRow> Blocks(double rowMm, bool contents) => [Figures(request, rowMm), Weights(request, rowMm), .. Targets(request, rowMm), Bench(request, room.Width, contents)];

        // roomy if it all goes on one sheet; else closer, then without the list of sheets
        var tight = Blocks(TextTable.RowsMm[^1], contents: false);
        var blocks = TextTable.RowsMm.Select(r => Blocks(r, contents: true)).FirstOrDefault(b => b.Sum(r => r.HeightMm) <= left.Height, tight);
        return Flow.Over(
            new OpenSheet(canvas, left),
            () => SheetTop.New(request, Key, "Cover, continued", results.Plan.Name, "Continued."),
            head: null,
            blocks);
    }

    private static FlowRow Figures(SheetRequest request, double rowMm)
    {
        var lines = FigureLine.OfPiece(request.Results, request.Units);
        var section = request.Results.Plan.Bevel is not null;
        return new FlowRow(Math.Max(TextTable.HeightMm(lines.Length, head: false, rowMm), section ? SectionView.HeightMm : 0), (canvas, box) =>
        {
            var left = section ? box.Width * 0.53 : box.Width;
            TextTable.Draw(canvas, new Point(box.MinX, box.MaxY), left, "Figures", [new("", 0.40), new("", 0.60, TextAnchor.Right)], lines.Select(l => ImmutableArray.Create(l.Name, l.Value)), rowMm);
            if (section) SectionView.Draw(canvas, request, box with { MinX = box.MinX + left + 5 });
        });
    }

    private static string Summary(SheetRequest request)
    {
        var r = request.Results;
        int Count(Severity s) => r.Findings.Count(f => f.Severity == s);
        var (errors, warnings, notes) = (Count(Severity.Error), Count(Severity.Warning), Count(Severity.Note));
        var where = request.SheetNumbers.TryGetValue(FindingsSheet.Key, out var n) ? $" ({n.InWords})" : "";
        return errors + warnings + notes == 0
            ? $"No findings{where}: a pass is not proof."
            : $"Findings{where}: {string.Join(", ", new[] { Number(errors, "error"), Number(warnings, "warning"), Number(notes, "note") }.Where(n => n.Length > 0))}." + (errors > 0 ? " MEND ERRORS FIRST." : "");
    }

    private static string Number(int n, string word) => n == 0 ? "" : n == 1 ? $"1 {word}" : $"{n} {word}s";

    private static FlowRow Weights(SheetRequest request, double rowMm)
    {
        var (units, name, stages) = (request.Units, request.Results.Plan.Datum.Name, request.Results.Stages);
        var title = "Weight and balance by stage, balance from the datum" + (name.Length > 0 ? ": " + name : "");
        return new FlowRow(TextTable.HeightMm(stages.Length, head: true, rowMm), (canvas, box) => TextTable.Draw(
            canvas,
            new Point(box.MinX, box.MaxY),
            box.Width,
            title,
            [new("Stage", 0.24), new("Weight", 0.24, TextAnchor.Right), new("Balance along", 0.27, TextAnchor.Right), new("Balance across", 0.25, TextAnchor.Right)],
            stages.Select(s => ImmutableArray.Create(
                FigureText.Of(s.Stage),
                s.Mass is { } m ? FigureText.Weight(m, units) : "density not known",
                FigureText.Size(s.BalanceFromDatum, units),
                FigureText.Size(s.BalanceAcrossFromDatum, units))),
            rowMm));
    }

    private static IEnumerable<FlowRow> Targets(SheetRequest request, double rowMm)
    {
        var lines = FigureLine.OfTargets(request.Results, request.Units);
        if (lines.IsEmpty) return [];
        return [new FlowRow(TextTable.HeightMm(lines.Length, head: true, rowMm), (canvas, box) => TextTable.Draw(
            canvas,
            new Point(box.MinX, box.MaxY),
            box.Width,
            "Wanted and found",
            [new("", 0.23), new("Wanted", 0.36, TextAnchor.Right), new("Found", 0.26, TextAnchor.Right), new("", 0.15)],
            lines.Select(l => ImmutableArray.Create(l.Name, l.Wanted, l.Found, l.Within switch { true => "✓ within", false => "✗ OUTSIDE", _ => "" })),
            rowMm))];
    }

    private static FlowRow Bench(SheetRequest request, double width, bool contents)
    {
        const double Left = 24;
        var plan = request.Results.Plan;
        var stock = plan.Stock;
        var bar = string.Join(" × ", new[] { stock.Thickness, stock.Width, stock.Length }.OfType<Length>().Select(l => FigureText.Size(l, request.Units, brief: true)));
        (string Name, string Value)[] lines =
        [
            ("Stock", $"{stock.Steel}, {bar}{(stock.Condition.Length > 0 ? ", " + stock.Condition : "")}"),
            ("Shop", (request.Results.Shop.IsAssumed ? "ASSUMED SHOP: the built-in one; write your own shop file. " : $"{request.Results.Shop.Name} ({request.ShopUsed}). ") + $"Drilled {FigureText.Of(request.Results.Bench.State)}."),
            .. contents ? [("Sheets", Contents(request))] : Array.Empty<(string, string)>(),
        ];
        var heights = lines.Select(l => Math.Min(3, Lettering.Wrap(TextSpace.Clean(l.Value), width - Left, 3).Length) * TextSpace.LineMm(3)).ToArray();

        // the list of sheets is not known before they are counted: always room for two lines
        return new FlowRow(heights[0] + heights[1] + (contents ? (2 * TextSpace.LineMm(Canvas.SmallMm)) + 2 : 0) + 1, (canvas, box) =>
        {
            var y = box.MaxY - 1;
            for (var i = 0; i < lines.Length; i++)
            {
                canvas.Text(lines[i].Name, new Point(box.MinX, y - 3.6), 3, bold: true);
                if (i < 2) canvas.Wrapped(lines[i].Value, new Point(box.MinX + Left, y), width - Left, 3, mostLines: 3);
                else canvas.Wrapped(lines[i].Value, new Point(box.MinX + Left, y - 0.6), width - Left, Canvas.SmallMm, mostLines: 2);
                y -= heights[i];
            }
        });
    }

    private static string Contents(SheetRequest request)
        => string.Join(" · ", SheetKinds.All.Where(k => k.Key != Key && request.SheetNumbers.ContainsKey(k.Key)).Select(k => $"{k.Title} {request.SheetNumbers[k.Key]}"));
}
