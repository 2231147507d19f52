using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Documents;
using Tangwright.Formats;
using Tangwright.Foundation;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Core;
using Path = Tangwright.Foundation.Path;

namespace Tangwright.Tests;

/// <summary>Shapes of any kind at true scale: as printed by poppler (600 dots to the inch) and as read back by PdfPig, neither of which wrote them.</summary>
public sealed class TrueScaleShapesTests
{
    private const double Allowed = 0.05;
    private const double MmPerPoint = 25.4 / 72;
    private static readonly (double Width, double Height)[] Sizes = [(120, 60), (90, 55), (150, 14), (40, 40), (25, 31.75)];

    public static TheoryData<string, bool> Papers { get; } = new()
    {
        { "a4", false },
        { "letter", false },
        { "a3", false },
        { "roll", false },
        { "a4", true },
        { "letter", true },
        { "roll", true },
    };

    [Theory]
    [MemberData(nameof(Papers))]
    public void Every_shape_is_printed_once_and_true(string paper, bool shrunk)
    {
        var request = Ask(paper, shrunk);
        var sheets = TrueScaleSheets.Draw(request, "shapes", "Shapes", Rectangles(mayTurn: true));
        var (across, along) = shrunk ? (0.972, 0.970) : (1.0, 1.0);
        var seen = new List<(double Width, double Height)>();
        for (var i = 0; i < sheets.Length; i++)
        {
            var lying = paper != "roll" && sheets[i].WidthMm > sheets[i].HeightMm;
            var (fx, fy) = lying ? (along, across) : (across, along);
            var page = Raster.Print(Pdf(request, [sheets[i]]), [sheets[i]], fx, fy)[0];
            foreach (var box in Closed(sheets[i]).Select(p => p.Bounds))
            {
                var (x0, x1, y0, y1) = (box.MinX * fx, box.MaxX * fx, box.MinY * fy, box.MaxY * fy);
                var (wide, tall) = (y0 + ((y1 - y0) * 0.3), x0 + ((x1 - x0) * 0.3));
                var (w, h) = (page.LineX(x1, wide - 0.5, wide + 0.5) - page.LineX(x0, wide - 0.5, wide + 0.5), page.LineY(y1, tall - 0.5, tall + 0.5) - page.LineY(y0, tall - 0.5, tall + 0.5));
                seen.Add(Sizes.MinBy(s => Math.Min(Math.Abs(s.Width - w) + Math.Abs(s.Height - h), Math.Abs(s.Width - h) + Math.Abs(s.Height - w))));
                var (a, b) = seen[^1];
                Assert.True((Math.Abs(a - w) <= Allowed && Math.Abs(b - h) <= Allowed) || (Math.Abs(a - h) <= Allowed && Math.Abs(b - w) <= Allowed), $"{w} × {h}");
            }

            foreach (var bar in Bars(sheets[i], request.Scale))
            {
                var upright = bar.Start.X == bar.End.X;
                var (from, to) = upright
                    ? (page.LineY(bar.Start.Y * fy, (bar.Start.X * fx) - 1.5, (bar.Start.X * fx) - 0.5), page.LineY(bar.End.Y * fy, (bar.Start.X * fx) - 1.5, (bar.Start.X * fx) - 0.5))
                    : (page.LineX(bar.Start.X * fx, (bar.Start.Y * fy) + 0.5, (bar.Start.Y * fy) + 1.5), page.LineX(bar.End.X * fx, (bar.Start.Y * fy) + 0.5, (bar.Start.Y * fy) + 1.5));
                Assert.Equal(100, Math.Abs(to - from), Allowed);
            }
        }

        Assert.Equal(Sizes.Order(), seen.Order());
    }

    [Theory]
    [MemberData(nameof(Papers))]
    public void Shapes_stand_apart_words_stand_clear_and_every_sheet_has_both_bars(string paper, bool shrunk)
    {
        var request = Ask(paper, shrunk);
        var sheets = TrueScaleSheets.Draw(request, "shapes", "Shapes", Rectangles(mayTurn: false));
        foreach (var sheet in sheets)
        {
            var boxes = Closed(sheet).Select(p => p.Bounds).ToList();
            var least = 6 * Math.Min(request.Scale.Across, request.Scale.Along);
            for (var i = 0; i < boxes.Count; i++) Assert.DoesNotContain(boxes.Skip(i + 1), b => boxes[i].Grown(least - 1e-6).Touches(b));
            Assert.Equal(2, Bars(sheet, request.Scale).Count());
            var words = sheet.Marks.OfType<TextMark>().Select(Room).ToList();
            for (var i = 0; i < words.Count; i++)
            {
                Assert.DoesNotContain(words.Skip(i + 1), w => w.Touches(words[i]));
                Assert.DoesNotContain(boxes, b => words[i].Touches(b) && !(b.Grown(-0.1).Holds(new(words[i].MinX, words[i].MinY)) && b.Grown(-0.1).Holds(new(words[i].MaxX, words[i].MaxY))));
            }
        }
    }

    [Theory]
    [InlineData("a4", false)]
    [InlineData("letter", false)]
    [InlineData("a3", false)]
    [InlineData("a4", true)]
    public void A_long_shape_is_joined_true_over_its_sheets(string paper, bool shrunk)
    {
        // ticks 5 mm apart, each of a length of its own, so that a sheet's ticks are known one by one
        const int ticks = 130;
        var strokes = Enumerable.Range(0, ticks).Select(i => new PlanStroke(new Path([new Line(new(i * 5, 0), new(i * 5, 5 + (i * 0.2)))], closed: false), Pen.Template));
        var small = new TrueScaleShape("small", [new PlanStroke(Path.Polygon(new(0, 0), new(30, 0), new(30, 20), new(0, 20)), Pen.Template)], []);
        var request = Ask(paper, shrunk);
        var sheets = TrueScaleSheets.Draw(request, "shapes", "Shapes", [new TrueScaleShape("long", [.. strokes], []), small]);
        using var pdf = PdfDocument.Open(Pdf(request, sheets));
        var tiled = sheets.Length - 1;
        Assert.True(tiled > 1);
        double? last = null;
        var (before, end) = (new Dictionary<int, double>(), 0.0);
        for (var n = 1; n <= tiled; n++)
        {
            var page = pdf.GetPage(n);
            var (width, height) = (page.Width * MmPerPoint, page.Height * MmPerPoint);
            var feedLevel = width > height;
            var (fx, fy) = feedLevel ? (request.Scale.Along, request.Scale.Across) : (request.Scale.Across, request.Scale.Along);
            var here = new Dictionary<int, double>();
            foreach (var (a, b) in Lines(page, 0.2))
            {
                if (Math.Abs(a.X - b.X) > 1e-3 || a.X < 10 || a.X > width - 10) continue;
                var i = ((Math.Abs(a.Y - b.Y) / fy) - 5) / 0.2;
                if (i < -0.1 || Math.Abs(i - Math.Round(i)) > 0.05) continue;
                here[(int)Math.Round(i)] = a.X / fx;
            }

            if (n > 1)
            {
                var both = here.Keys.Intersect(before.Keys).ToList();
                Assert.True(both.Count >= 2, "neighbours share ticks");
                var shift = before[both[0]] - here[both[0]];
                Assert.All(both, i => Assert.Equal(before[i], here[i] + shift, 0.002));
                here = here.ToDictionary(p => p.Key, p => p.Value + shift);
            }

            last ??= here[0];
            before = here;
            end = here.TryGetValue(ticks - 1, out var x) ? x : end;
            var text = string.Join(' ', page.GetWords().Select(w => w.Text));
            Assert.Contains($"sheet {n} of {sheets.Length}", text, StringComparison.Ordinal);
            Assert.Contains("how the sheets go together", text, StringComparison.Ordinal);
            if (n == 1 || n == tiled) Assert.Contains("check line", text, StringComparison.Ordinal);
        }

        Assert.Equal((ticks - 1) * 5, end - last!.Value, 0.01);
    }

    [Fact]
    public void A_shape_may_be_turned_only_when_it_says_so()
    {
        var upright = new TrueScaleShape("mast", [new PlanStroke(Path.Polygon(new(0, 0), new(12, 0), new(12, 250), new(0, 250)), Pen.Template)], []);
        var wide = new TrueScaleShape("boom", [new PlanStroke(Path.Polygon(new(0, 0), new(250, 0), new(250, 12), new(0, 12)), Pen.Template)], []);
        var request = Ask("a4", false);
        Assert.Equal(2, TrueScaleSheets.Draw(request, "shapes", "Shapes", [upright, wide]).Length);
        Assert.Single(TrueScaleSheets.Draw(request, "shapes", "Shapes", [upright with { MayTurn = true }, wide]));
    }

    [Fact]
    public void Paper_that_is_too_small_is_said()
    {
        var request = ExamplePieces.Request(ExamplePieces.Paring, new PaperSize("a6", "A6", 105, 148));
        var shapes = Rectangles(mayTurn: true);
        Assert.Contains("a template needs", TrueScaleSheets.Trouble(request, shapes), StringComparison.Ordinal);
        var huge = new TrueScaleShape("sail", [new PlanStroke(Path.Polygon(new(0, 0), new(9000, 0), new(9000, 9000)), Pen.Template)], []);
        Assert.Contains("sail would take more than 100 sheets", TrueScaleSheets.Trouble(Ask("a4", false), [huge]), StringComparison.Ordinal);
        Assert.Single(TrueScaleSheets.Draw(Ask("a4", false), "shapes", "Shapes", [huge]));
        Assert.Null(TrueScaleSheets.Trouble(Ask("a4", false), shapes));
        Assert.Empty(TrueScaleSheets.Draw(request, "shapes", "Shapes", []));
    }

    private static ImmutableArray<TrueScaleShape> Rectangles(bool mayTurn)
        => [.. Sizes.Select((s, i) => new TrueScaleShape($"part {i + 1}", [new PlanStroke(Path.Polygon(new(3, -7), new(3 + s.Width, -7), new(3 + s.Width, s.Height - 7), new(3, s.Height - 7)), Pen.Template)], [new PlanLabel("grain", new Point(3 + (s.Width / 2), -7), 2, 2.5)]) { MayTurn = mayTurn })];

    private static SheetRequest Ask(string paper, bool shrunk)
    {
        var size = paper switch { "a4" => PaperSize.A4, "letter" => PaperSize.Letter, "a3" => PaperSize.A3, _ => PaperSize.Roll(305) };
        var request = ExamplePieces.Request(ExamplePieces.Paring, size);
        return shrunk ? request with { Scale = PrintScale.After(PrintScale.True, 97.2, 97.0) } : request;
    }

    private static byte[] Pdf(SheetRequest request, ImmutableArray<Sheet> sheets) => PdfWriter.Write(new SheetSet("Shapes", request.Date, sheets));

    private static IEnumerable<Path> Closed(Sheet sheet)
        => sheet.Marks.OfType<ClippedMarks>().SelectMany(c => c.Marks).OfType<StrokeMark>().Select(s => s.Path).Where(p => p.Closed);

    /// <summary>The 100 mm bars.</summary>
    private static IEnumerable<Line> Bars(Sheet sheet, PrintScale scale)
        => sheet.Marks.OfType<StrokeMark>().SelectMany(s => s.Path.Segments).OfType<Line>().Where(l => Math.Abs(l.Length - (100 * scale.Across)) < 1e-6 || Math.Abs(l.Length - (100 * scale.Along)) < 1e-6);

    private static List<(Point A, Point B)> Lines(UglyToad.PdfPig.Content.Page page, double width)
        => [.. page.Paths.Where(p => p.IsStroked && Math.Abs((double)p.LineWidth * MmPerPoint - width) < 0.001).SelectMany(p => p).SelectMany(s => s.Commands).OfType<PdfSubpath.Line>().Select(l => (Mm(l.From), Mm(l.To)))];

    private static Point Mm(PdfPoint p) => new(p.X * MmPerPoint, p.Y * MmPerPoint);

    private static Box Room(TextMark t)
    {
        var w = Lettering.Width(t.Text, t.HeightMm, t.Bold);
        var from = t.Anchor switch { TextAnchor.Left => 0, TextAnchor.Middle => -w / 2, _ => -w };
        return t.AngleDegrees == 90
            ? new Box(t.At.X - t.HeightMm, t.At.Y + from, t.At.X, t.At.Y + from + w)
            : new Box(t.At.X + from, t.At.Y, t.At.X + from + w, t.At.Y + t.HeightMm);
    }
}
