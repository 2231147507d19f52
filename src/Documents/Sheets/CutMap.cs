using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>How each bar is cut: to scale, with every piece's place from one end, and the drop.</summary>
public static class CutMap
{
    /// <summary>Its key.</summary>
    public const string Key = "cut-map";

    private const string Title = "Cut map";
    private const double RowMm = 9;

    // where the columns begin, as shares of the width
    private const double PieceAt = 0.06;
    private const double LeftAt = 0.13;
    private const double RightAt = 0.345;
    private const double UpAt = 0.56;
    private const double LiesAt = 0.755;

    /// <summary>Most pieces of one bar that get a line of their own.</summary>
    private const int MostRows = 60;

    /// <summary>Draws its sheets; none without a count of pieces.</summary>
    public static ImmutableArray<Sheet> Draw(SheetRequest request)
    {
        if (request.Stock is not { } s) return [];
        var line = s.Service is { } service ? $"Cut by {service.Words} from the drawing of the same name (tangwright stock --drawing --service {service.Name}). Places are of the finished pieces. At least {FigureText.Size(s.Room.Clearance, request.Units, brief: true)} between them." : $"Lay the template down at the places given: along from the {StockWords.Word(s)}'s left end, up from its lower long edge, both to the box around the piece. At least {FigureText.Size(s.Room.Clearance, request.Units, brief: true)} between pieces.";
        var first = SheetTop.New(request, Key, Title, Title, line);
        var scale = BarView.ScaleFor(s.Cuts.Max(c => c.Length.Mm), first.Room.Width);
        first.Canvas.Scale = ScaleName(scale);
        OpenSheet Next()
        {
            var sheet = SheetTop.New(request, Key, Title, Title, "Continued. Offcuts are hot and sharp; guard on, bar clamped.");
            sheet.Canvas.Scale = ScaleName(scale);
            return sheet;
        }

        return Flow.Over(first, Next, head: null, s.Cuts.SelectMany((c, i) => Rows(request, c, i + 1, scale)).Prepend(Cautions(request, first.Room.Width)), after: Notes.Draw);
    }

    private static FlowRow Cautions(SheetRequest request, double width)
    {
        var text = StockWords.Caution(request.Stock!);
        var lines = TextSpace.Lines(text, width - 4, Canvas.TextMm, bold: false, mostLines: 16);
        var height = (lines.Length * TextSpace.LineMm(Canvas.TextMm)) + 3;
        return new FlowRow(height + 2, (canvas, box) =>
        {
            canvas.Frame4(new Box(box.MinX, box.MaxY - height, box.MaxX, box.MaxY), Pen.Wide);
            canvas.Wrapped(text, new Point(box.MinX + 2, box.MaxY - 1), width - 4, mostLines: 16);
        });
    }

    private static string ScaleName(double scale) => "1:" + Shown.Trimmed(scale, 1);

    private static IEnumerable<FlowRow> Rows(SheetRequest request, BarCut cut, int number, double scale)
    {
        var s = request.Stock!;
        var height = cut.Width.Mm / scale;
        var bar = new FlowRow(height + 28, (canvas, box) =>
        {
            string Size(Length l) => FigureText.Size(l, request.Units, brief: true);
            var from = cut.Rack is { } rack ? "from the rack: " + rack.Name : cut.Count == 1 ? "new" : "new, all alike";
            canvas.Fitted($"{NumberedBar.Words(s, number - 1)}, {from}", new Point(box.MinX, box.MaxY - 8.5), box.Width, Canvas.LargeMm, bold: true);
            canvas.Fitted($"{(s.Patterns.Length > 1 ? $"{cut.Steel} {Size(cut.Thickness)} × " : "")}{Size(cut.Width)} × {Size(cut.Length)}: {StockWords.Pieces(s, cut)}", new Point(box.MinX, box.MaxY - 14.5), box.Width, Canvas.TextMm);
            canvas.Fitted($"{(s.IsOnSheets ? "pieces end" : s.Service is null ? "square cut past the row" : "row ends")} at {Size(cut.Row)}; drop {Size(cut.Drop)}", new Point(box.MinX, box.MaxY - 20), box.Width, Canvas.TextMm);
            BarView.Draw(canvas, s, cut, new Point(box.MinX, box.MaxY - 22.5 - height), scale);
        });
        var head = new FlowRow(5, (canvas, box) =>
        {
            foreach (var (text, share) in new[] { ("piece", PieceAt), ("left end at", LeftAt), ("right end at", RightAt), ("up", UpAt), ("lies", LiesAt) }) canvas.Text(text, new Point(box.MinX + (share * box.Width), box.MinY + 1), Canvas.SmallMm);
            canvas.Line(new Point(box.MinX, box.MinY), new Point(box.MaxX, box.MinY), Pen.Narrow);
        });
        for (var i = 0; i < Math.Min(MostRows, cut.Places.Length); i++)
        {
            var piece = Piece(request, cut.Places[i], i + 1);
            yield return i == 0 ? FlowRow.Together(bar, head, piece) : piece with { Again = head };
            if (i < cut.SawLines.Length) yield return Saw(request, cut.SawLines[i]) with { Again = head };
        }

        if (cut.Places.Length > MostRows) yield return new FlowRow(7, (canvas, box) => canvas.Fitted($"and {cut.Places.Length - MostRows} more in the same way; the command stock with --json lists every one", new Point(box.MinX, box.MinY + 2), box.Width));
    }

    private static FlowRow Piece(SheetRequest request, LanePlace p, int number) => new(RowMm, (canvas, box) =>
    {
        var y = box.MinY + 2;
        double At(double share) => box.MinX + (share * box.Width);
        canvas.TickBox(box.MinX, box.Centre.Y);
        canvas.Text($"{number}", new Point(At(PieceAt), y), Canvas.LargeMm, bold: true);
        Figure(canvas, request, p.AlongMm, At(LeftAt), At(RightAt) - At(LeftAt) - 1, y);
        Figure(canvas, request, p.AlongMm + Lies.Size(p.Lie, request.Stock!.Patterns[p.Pattern].Results.Plan.Outline.Bounds).Along, At(RightAt), At(UpAt) - At(RightAt) - 1, y);
        Figure(canvas, request, p.UpMm, At(UpAt), At(LiesAt) - At(UpAt) - 1, y);
        var name = request.Stock!.Patterns.Length > 1 ? request.Stock.Patterns[p.Pattern].Results.Plan.Name : "";
        if (name.Length > 0)
        {
            canvas.Fitted(name, new Point(At(LiesAt), y + 2.6), box.MaxX - At(LiesAt), Canvas.TextMm, bold: true);
            canvas.Fitted(Lies.Words(p.Lie), new Point(At(LiesAt), y - 1.4), box.MaxX - At(LiesAt), Canvas.SmallMm);
        }
        else canvas.Fitted(Lies.Words(p.Lie), new Point(At(LiesAt), y), box.MaxX - At(LiesAt), Canvas.TextMm);
        canvas.Line(new Point(box.MinX, box.MinY), new Point(box.MaxX, box.MinY), new Pen(0.18));
    });

    /// <summary>The straight cut after a piece.</summary>
    private static FlowRow Saw(SheetRequest request, SawLine line) => new(RowMm, (canvas, box) =>
    {
        string Size(double mm) => FigureText.Size(Length.OfMm(mm), request.Units, brief: true);
        canvas.TickBox(box.MinX, box.Centre.Y);
        canvas.Fitted(line.RoomMm < request.Stock!.Room.Kerf.Mm - 1e-6 ? "no straight cut here: follow the gap between the pieces" : $"saw from {Size(line.LowMm)} on the lower edge to {Size(line.HighMm)} on the upper edge", new Point(box.MinX + (PieceAt * box.Width), box.MinY + 2.6), box.Width * (1 - PieceAt), Canvas.TextMm);
        canvas.Line(new Point(box.MinX, box.MinY), new Point(box.MaxX, box.MinY), new Pen(0.18));
    });

    /// <summary>The first unit large, the other small behind it.</summary>
    private static void Figure(Canvas canvas, SheetRequest request, double mm, double x, double width, double y)
    {
        var length = Length.OfMm(mm);
        var (metric, inch) = (Shown.Number(mm, 1), Shown.Number(length.Inches, 2));
        var drawn = canvas.Text(request.Units == UnitsShown.Inch ? inch : metric, new Point(x, y), Canvas.LargeMm, bold: true);
        if (request.Units == UnitsShown.Both) canvas.Fitted(inch + " in", new Point(drawn.MaxX + 1, y), Math.Max(4, x + width - drawn.MaxX - 1), Canvas.SmallMm);
    }
}
