using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>The rough-cut card: the blank to scale with numbered cuts, how each is marked and made, what is left to grind, cautions.</summary>
public static class RoughCutCard
{
    /// <summary>Its key.</summary>
    public const string Key = "rough-cut";

    private const string Title = "Rough-cut card";
    private const double NoteMm = 3;
    private const double NumberAt = 10;
    private const double MarksAt = 20;

    /// <summary>Draws its sheets; none when the shop has no saw or the piece no blank.</summary>
    public static ImmutableArray<Sheet> Draw(SheetRequest request)
    {
        var planned = request.RoughCuts;
        if (!planned.IsGood) return [];
        var p = planned.Value;
        var first = SheetTop.New(request, Key, Title, Title, Line(request, p));
        var (canvas, room) = first;
        var picture = Math.Min(78, (p.Blank.Box.Height * (room.Width - (2 * RoughCutView.RimMm)) / p.Blank.Box.Width) + (2 * RoughCutView.RimMm));
        var place = new Box(room.MinX + RoughCutView.RimMm, room.MaxY - picture + RoughCutView.RimMm, room.MaxX - RoughCutView.RimMm, room.MaxY - RoughCutView.RimMm);
        var view = PieceView.Fit(request.Results, p.Blank.Box, place);
        var spare = place.MaxY - view.On(p.Blank.Box).MaxY;
        view = PieceView.Fit(request.Results, p.Blank.Box, place with { MinY = place.MinY + spare, MaxY = place.MaxY + spare });
        canvas.Scale = view.ScaleName;
        var drawn = view.On(p.Blank.Box);
        RoughCutView.Draw(canvas, p, view);
        var left = room with { MaxY = drawn.MinY - (p.Cuts.Any(c => c.Marks.Any(m => m.On == "lower edge")) ? RoughCutView.RimMm - 1 : 4) };
        return Flow.Over(new OpenSheet(canvas, left), () => SheetTop.New(request, Key, Title, Title, "Continued. Offcuts are hot and sharp; guard on, work clamped."), head: null, Rows(request, p, room.Width), after: Notes.Draw);
    }

    private static string Line(SheetRequest request, RoughCutPlan p)
    {
        string Size(double mm) => FigureText.Size(Length.OfMm(mm), request.Units, brief: true);
        var blank = $"{char.ToUpperInvariant(p.Saw.Name[0])}{p.Saw.Name[1..]}; blank {Size(p.Blank.Box.Width)} × {Size(p.Blank.Box.Height)}, {Size(request.Results.Plan.Stock.Thickness.Mm)} thick.";
        return p.Cuts.IsEmpty
            ? $"{blank} {RoughCutPlan.NoCut}"
            : $"{blank} Scribe every line on the whole blank first, measured from the black corner. Then cut in order, in the waste, outside the line.";
    }

    private static IEnumerable<FlowRow> Rows(SheetRequest request, RoughCutPlan p, double width)
    {
        if (p.BladeSays.Length > 0 && !p.Cuts.IsEmpty) yield return TickedLine.Of(p.BladeSays, width, NoteMm);
        foreach (var h in p.Reliefs) yield return Relief(request, p, h);
        foreach (var c in p.Cuts) yield return Cut(request, c);
        yield return Table(request, p, width);
        yield return CardRows.Boxed(RoughCutWords.Caution(p), width, gapMm: 1.5);
        foreach (var row in Lines(request, p, width)) yield return row;
    }

    private static FlowRow Relief(SheetRequest request, RoughCutPlan p, ReliefHole h) => new(13, (canvas, box) =>
    {
        canvas.TickBox(box.MinX, box.Centre.Y);
        canvas.Fitted(h.Drill is { } d ? $"First drill {d.Name} through, hollow {h.Pocket}" : $"Pierce here, hollow {h.Pocket}", new Point(box.MinX + NumberAt, box.MaxY - 5.5), box.Width - NumberAt, Canvas.TextMm, bold: true);
        canvas.Fitted($"{RoughCutWords.Fine(Length.OfMm(h.FromCorner.X), request.Units)} from the {p.Blank.EndWords}, {RoughCutWords.Fine(Length.OfMm(h.FromCorner.Y), request.Units)} from the {p.Blank.EdgeWords}", new Point(box.MinX + NumberAt, box.MaxY - 10.6), box.Width - NumberAt, Canvas.TextMm);
        Rule(canvas, box);
    });

    private static FlowRow Cut(SheetRequest request, SawCut c) => new(17.5, (canvas, box) =>
    {
        canvas.TickBox(box.MinX, box.Centre.Y);
        canvas.Text($"{c.Number}", new Point(box.MinX + NumberAt, box.Centre.Y - 3.2), Canvas.HeadingMm, bold: true);
        var half = (box.Width - MarksAt) / 2;
        for (var i = 0; i < 2; i++)
        {
            var x = box.MinX + MarksAt + (i * half);
            if (i < c.Marks.Length) Mark(canvas, request, c.Marks[i], RoughCutWords.MarkName(c, i), x, box.MaxY - 5.9, half - 3);
            else canvas.Fitted($"to the relief hole of hollow {c.Pocket}", new Point(x, box.MaxY - 5.9), half - 3, Canvas.TextMm);
        }

        canvas.Fitted($"{RoughCutWords.Run(c, request.Units)}; {RoughCutWords.Offcut(c, request.Units)}; {RoughCutWords.Minutes(c.Minutes)}", new Point(box.MinX + MarksAt, box.MaxY - 15.6), box.Width - MarksAt, Canvas.TextMm);
        Rule(canvas, box);
    });

    /// <summary>Name, distance large, then the side it lies on under it.</summary>
    private static void Mark(Canvas canvas, SheetRequest request, RimMark m, string name, double x, double y, double width)
    {
        var (mm, inch) = (Shown.Number(m.Distance.Mm, 1), Shown.Number(m.Distance.Inches, 2) + " in");
        var label = canvas.Text(name, new Point(x, y), Canvas.LargeMm, bold: true);
        var big = canvas.Text(request.Units == UnitsShown.Inch ? inch : mm, new Point(label.MaxX + 2.5, y), Canvas.LargeMm, bold: true);
        if (request.Units != UnitsShown.Inch) canvas.Fitted(request.Units == UnitsShown.Both ? $"mm  ({inch})" : "mm", new Point(big.MaxX + 1, y), x + width - big.MaxX - 1, 3);
        canvas.Fitted($"on the {m.On}, from the {m.Measured}", new Point(x, y - 5), width, Canvas.TextMm);
    }

    private static FlowRow Table(SheetRequest request, RoughCutPlan p, double width)
    {
        ImmutableArray<Column> columns = [new("", 0.2), new("sawing", 0.13), new("left to grind", 0.27), new("grinding", 0.13), new("belts", 0.1), new("in all, with its band", 0.17)];
        return new FlowRow(TextTable.HeightMm(2, head: true, 6.2) + 3, (canvas, box) => TextTable.Draw(
            canvas,
            new Point(box.MinX, box.MaxY - 1.5),
            width,
            $"With the saw and without; {p.Belt.Belt.Name}, {Shown.Trimmed(p.Belt.GramsPerMinute, 1)} g a minute ({p.Belt.Says})",
            columns,
            [
                ["saw, then grind", RoughCutWords.Minutes(p.SawMinutes), RoughCutWords.Left(p.Sawn, request.Units), RoughCutWords.Minutes(p.Sawn.Minutes), Shown.Number(p.Sawn.Belts, 2), All(p.Minutes, p.LowSawMinutes + p.Sawn.LowMinutes, p.HighSawMinutes + p.Sawn.HighMinutes)],
                ["grind only", "", RoughCutWords.Left(p.GrindOnly, request.Units), RoughCutWords.Minutes(p.GrindOnly.Minutes), Shown.Number(p.GrindOnly.Belts, 2), All(p.GrindOnly.Minutes, p.GrindOnly.LowMinutes, p.GrindOnly.HighMinutes)],
            ],
            6.2));
    }

    private static string All(double minutes, double low, double high) => $"{RoughCutWords.Minutes(minutes)} ({Shown.Number(low, 0)} to {Shown.Number(high, 0)})";

    private static IEnumerable<FlowRow> Lines(SheetRequest request, RoughCutPlan p, double width)
        => p.Notes.Where(t => t != RoughCutPlan.NoCut).Concat(p.Hollows.Where(h => h.IsWorthMore).Select(h => $"A hollow stays for the grinder: {RoughCutWords.Hollow(h, request.Units)}.")).Select(line => new FlowRow(
            TextSpace.WrappedMm(line, width - 5, NoteMm) + 0.8,
            (canvas, box) =>
            {
                canvas.Fill(Path.Circle(new Point(box.MinX + 1.5, box.MaxY - 2.2), 0.7));
                canvas.Wrapped(line, new Point(box.MinX + 5, box.MaxY), width - 5, NoteMm);
            }));

    private static void Rule(Canvas canvas, Box box) => canvas.Line(new Point(box.MinX, box.MinY), new Point(box.MaxX, box.MinY), new Pen(0.18));
}
