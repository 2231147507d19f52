using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>Measured holes: as built beside planned, how far each is out of place, what a rod allows, and what to do.</summary>
internal static class MeasuredSheet
{
    /// <summary>Its key.</summary>
    public const string Key = "measured";

    private const string Title = "Measured holes";
    private const double TickColumn = 9;
    private const double NameColumn = 21;
    private const double AlongColumn = 28;
    private const double SizeColumn = 24;
    private const double PositionColumn = 30;
    private const double LeastRowMm = 21;
    private const double WordsMm = 3;
    private const int MostLines = 8;

    /// <summary>Draws its sheets; none when nothing was measured.</summary>
    public static ImmutableArray<Sheet> Draw(SheetRequest request) => [.. request.Results.Measured.Where(p => p.Holes.Length > 0).SelectMany(p => Piece(request, p))];

    private static ImmutableArray<Sheet> Piece(SheetRequest request, PositionReport piece)
    {
        var heading = piece.IsGuide ? "Measured holes, guide piece" : $"Measured holes, piece {piece.Piece}";
        var first = SheetTop.New(request, Key, Title, heading, Words(request, piece));
        return Flow.Over(
            first with { Room = Summary(first.Canvas, first.Room, request, piece) },
            () => SheetTop.New(request, Key, Title, heading + ", continued", ""),
            Head(request),
            piece.Holes.Select(h => Row(first.Canvas.Frame.Content, request, h)),
            null,
            Notes.Draw);
    }

    private static string Words(SheetRequest request, PositionReport piece)
    {
        var guide = piece.IsGuide
            ? "These places take the planned ones' on every later sheet, program and scale, as they were measured from the edges. "
            : "Only the guide piece's places are carried on to later sheets; these are for judging this piece. ";
        var missing = piece.NotMeasured.IsEmpty ? "" : $"Not measured, so as planned: {string.Join(", ", piece.NotMeasured)}. ";
        return guide + missing + BenchView.Words(request)[0];
    }

    private static Box Summary(Canvas canvas, Box room, SheetRequest request, PositionReport piece)
    {
        var fit = piece.Fit;
        var y = room.MaxY;
        foreach (var line in (ReadOnlySpan<string>)
        [
            $"Laid on the holes as well as it goes the pattern is shifted by {FigureText.Size(Length.OfMm(fit.Shift.X), request.Units)} along, {FigureText.Size(Length.OfMm(fit.Shift.Y), request.Units)} across and turned by {Shown.Number(fit.Turn.Degrees, 3)}° about the plan's zero; rms left over {FigureText.Size(Length.OfMm(fit.RmsMm), request.Units)}.",
            $"Laid so that the worst {(piece.Holes.Any(h => h.Allowed is not null) ? "pin hole" : "hole")} comes off best, it is off by {FigureText.Size(Worst(piece), request.Units)}, as a diameter.",
            "⌀ from edges: twice the distance from the planned centre. In pattern: what is left of it when the whole pattern may shift and turn.",
        ])
        {
            y = canvas.Wrapped(line, new Point(room.MinX, y), room.Width, WordsMm) - 0.8;
        }

        return room with { MaxY = y - 1 };
    }

    private static Length Worst(PositionReport piece) => TruePosition.Of(new Point(piece.Passing.MostMm, 0));

    private static (double X, double Y, double Size, double Position, double Words) Columns(Box box)
    {
        var x = box.MinX + TickColumn + NameColumn;
        var size = x + AlongColumn + SizeColumn;
        return (x, x + AlongColumn, size, size + SizeColumn, size + SizeColumn + PositionColumn);
    }

    private static FlowRow Head(SheetRequest request) => new(10, (canvas, box) =>
    {
        var (x, y, size, position, words) = Columns(box);
        var unit = SizeBlock.InchFirst(request) ? "in" : "mm";
        void Two(double at, double width, string one, string two)
        {
            canvas.Fitted(one, new Point(at, box.MinY + 5.6), width - 1, WordsMm, bold: true);
            canvas.Fitted(two, new Point(at, box.MinY + 1.6), width - 1, Canvas.SmallMm);
        }

        Two(box.MinX + TickColumn, NameColumn, "Hole", "use");
        Two(x, AlongColumn, "x as built", $"{unit}, plan below");
        Two(y, SizeColumn, "y as built", $"{unit}, plan below");
        Two(size, SizeColumn, "⌀ as built", $"{unit}, plan below");
        Two(position, PositionColumn, "⌀ from edges", $"{unit}");
        Two(words, box.MaxX - words, "What to do", "tick when done");
        canvas.Line(new Point(box.MinX, box.MinY), new Point(box.MaxX, box.MinY), Pen.Wide);
    });

    private static FlowRow Row(Box content, SheetRequest request, HoleReport hole)
    {
        var lines = TextSpace.Lines(hole.Verdict.Words, content.MaxX - Columns(content).Words, WordsMm, bold: false, MostLines).Length;
        var height = Math.Max(LeastRowMm, 10 + (lines * TextSpace.LineMm(WordsMm)));
        return new FlowRow(height, (canvas, box) =>
        {
            var (x, y, size, position, words) = Columns(box);
            var bench = request.Results.Bench;
            var (built, planned) = (bench.ToBench(hole.Built.At), bench.ToBench(hole.Hole.At));
            canvas.TickBox(box.MinX, box.MaxY - 2 - (Canvas.TickMm / 2));
            canvas.Fitted(hole.Hole.Name, new Point(box.MinX + TickColumn, box.MaxY - 6.8), NameColumn - 1, Canvas.LargeMm, bold: true);
            canvas.Fitted(DrillText.Purpose(hole.Hole), new Point(box.MinX + TickColumn, box.MaxY - 12), NameColumn - 1, WordsMm);
            Beside(canvas, request, box with { MinX = x, MaxX = y }, Length.OfMm(built.X), Length.OfMm(planned.X));
            Beside(canvas, request, box with { MinX = y, MaxX = size }, Length.OfMm(built.Y), Length.OfMm(planned.Y));
            Beside(canvas, request, box with { MinX = size, MaxX = position }, hole.Built.Diameter, hole.Hole.Diameter);
            DrawPosition(canvas, request, box with { MinX = position }, hole);
            canvas.Fitted(Name(hole.Verdict.Action), new Point(words, box.MaxY - 6.8), box.MaxX - words, 3.5, bold: true);
            canvas.Wrapped(hole.Verdict.Words, new Point(words, box.MaxY - 8), box.MaxX - words, WordsMm, mostLines: MostLines);
            canvas.Line(new Point(box.MinX, box.MinY), new Point(box.MaxX, box.MinY), new Pen(0.18));
        });
    }

    private static void Beside(Canvas canvas, SheetRequest request, Box box, Length? built, Length planned)
    {
        var inch = SizeBlock.InchFirst(request);
        canvas.Fitted(built is { } b ? FigureText.Figure(b, inch) : "–", new Point(box.MinX, box.MaxY - 6.8), box.Width - 2, Canvas.LargeMm, bold: true);
        if (built is { } c && request.Units == UnitsShown.Both) canvas.Fitted(FigureText.Figure(c, !inch) + (inch ? " mm" : " in"), new Point(box.MinX, box.MaxY - 12), box.Width - 2, WordsMm);
        canvas.Fitted("plan " + FigureText.Figure(planned, inch), new Point(box.MinX, box.MaxY - 16.8), box.Width - 2, WordsMm);
    }

    private static void DrawPosition(Canvas canvas, SheetRequest request, Box box, HoleReport hole)
    {
        var inch = SizeBlock.InchFirst(request);
        canvas.Fitted("⌀" + FigureText.Figure(hole.Position, inch), new Point(box.MinX, box.MaxY - 6.8), PositionColumn - 2, Canvas.LargeMm, bold: true);
        canvas.Fitted("in pattern ⌀" + FigureText.Figure(hole.PositionPassing, inch), new Point(box.MinX, box.MaxY - 12), PositionColumn - 2, WordsMm);
        canvas.Fitted(hole.Allowed is { } allowed ? "allowed ⌀" + FigureText.Figure(Length.Max(allowed, Length.Zero), inch) : "no rod named", new Point(box.MinX, box.MaxY - 16.8), PositionColumn - 2, WordsMm);
    }

    private static string Name(HoleAction action) => action switch
    {
        HoleAction.Accept => "ACCEPT",
        HoleAction.OpenUp => "OPEN UP",
        HoleAction.ThickerRod => "THICKER ROD",
        HoleAction.MeasureAgain => "MEASURE AGAIN",
        _ => "SCRAP",
    };
}
