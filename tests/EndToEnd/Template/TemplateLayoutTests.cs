using Tangwright.Core;
using Tangwright.Documents;
using Tangwright.Foundation;

namespace Tangwright.Tests;

/// <summary>On ordinary paper words stand clear of the piece, of each other and inside what the printer reaches.</summary>
public sealed class TemplateLayoutTests
{
    public static TheoryData<string, string, bool> Sheets { get; } = Every();

    [Theory]
    [MemberData(nameof(Sheets))]
    public void Words_stand_clear(string piece, string paper, bool mirror)
    {
        var results = piece switch { "hatchet" => ExamplePieces.Hatchet, "kitchen" => ExamplePieces.Kitchen, _ => ExamplePieces.Paring };
        var size = paper switch { "a4" => PaperSize.A4, "letter" => PaperSize.Letter, "a3" => PaperSize.A3, _ => PaperSize.Roll(610) };
        var request = ExamplePieces.Request(results, size);
        var options = TemplateOptions.For(request) with { Mirror = mirror };
        var plan = TemplateSheets.Tiles(request, options)!;
        var sheets = TemplateSheets.Draw(request, options);
        foreach (var (tile, sheet) in plan.Tiles.Zip(sheets))
        {
            if (sheet.WidthMm != plan.WidthMm) continue;
            var words = sheet.Marks.OfType<TextMark>().Where(t => t.AngleDegrees is 0 or 90).Select(Room).ToList();
            Assert.All(words, w => Assert.True(plan.Window.Grown(0.3).Holds(new(w.Box.MinX, w.Box.MinY)) && plan.Window.Grown(0.3).Holds(new(w.Box.MaxX, w.Box.MaxY)), w.Text));
            var outline = results.Plan.Outline.Transformed(tile.PlanToSheet);
            var points = outline.Segments.SelectMany(s => Enumerable.Range(0, 1 + (int)(s.Length * 4)).Select(i => s.At(Math.Min(1, i / (s.Length * 4))))).ToList();
            foreach (var w in words)
            {
                Assert.DoesNotContain(points, p => w.Box.Holds(p));
                Assert.DoesNotContain(results.Holes, h => w.Box.DistanceTo(tile.PlanToSheet.Map(h.At)) < (h.Diameter.Mm / 2) + 0.1);
            }

            for (var i = 0; i < words.Count; i++)
            {
                // the small picture of the sheets has its numbers inside
                for (var j = i + 1; j < words.Count; j++) Assert.False(words[i].Box.Touches(words[j].Box), $"'{words[i].Text}' and '{words[j].Text}'");
            }
        }
    }

    [Fact]
    public void Every_sheet_has_both_bars_and_the_heavy_edges_run_from_border_to_border()
    {
        var request = ExamplePieces.Request(ExamplePieces.Hatchet, PaperSize.A4);
        var options = TemplateOptions.For(request);
        var plan = TemplateSheets.Tiles(request, options)!;
        var sheet = TemplateSheets.Draw(request, options).Single();
        var heavy = sheet.Marks.OfType<ClippedMarks>().Single().Marks.OfType<StrokeMark>().Where(s => s.Pen.WidthMm == 0.5).Select(s => s.Path.Bounds).ToList();
        Assert.Equal(2, heavy.Count);
        Assert.Contains(heavy, b => b.MinX == plan.Window.MinX && b.MaxX == plan.Window.MaxX && b.Height == 0);
        Assert.Contains(heavy, b => b.MinY == plan.Window.MinY && b.MaxY == plan.Window.MaxY && b.Width == 0);
    }

    [Fact]
    public void An_edge_that_falls_off_the_paper_is_stood_in_for_10_mm_inside()
    {
        // 5 mm to the sawn end: 280 mm would take a second sheet, so the edge gives way to a parallel line
        var hatchet = ExamplePieces.Hatchet;
        var far = hatchet with { Bench = hatchet.Bench with { Corner = new Point(-5, -1.1), StockBox = new Box(-5, -1.1, 280, 75.1) } };
        var request = ExamplePieces.Request(far, PaperSize.A4);
        var sheet = TemplateSheets.Draw(request, TemplateOptions.For(request)).Single();
        Assert.Contains(sheet.Marks.OfType<TextMark>(), t => t.Text.StartsWith("10 mm in from the sawn end", StringComparison.Ordinal));
        var plan = TemplateSheets.Tiles(request, TemplateOptions.For(request))!;
        var x = plan.Tiles[0].PlanToSheet.Map(new Point(5, 0)).X;
        Assert.Contains(sheet.Marks.OfType<ClippedMarks>().Single().Marks.OfType<StrokeMark>(), s => s.Path.Bounds.Width == 0 && Math.Abs(s.Path.Start.X - x) < 1e-9 && s.Pen.Kind == LineKind.LongDashDot);
    }

    [Fact]
    public void Drill_only_leaves_the_outline_out()
    {
        var request = ExamplePieces.Request(ExamplePieces.Hatchet, PaperSize.A4);
        var full = Lines(TemplateSheets.Draw(request, TemplateOptions.For(request)).Single());
        var drill = Lines(TemplateSheets.Draw(request, TemplateOptions.For(request, drillOnly: true)).Single());
        Assert.Contains(full, p => p.Segments.Length > 10);
        Assert.DoesNotContain(drill, p => p.Segments.Length > 10);
        Assert.Equal(2 * request.Results.Holes.Length, drill.Count(p => p.Closed));

        static List<Tangwright.Foundation.Path> Lines(Sheet s) => [.. s.Marks.OfType<ClippedMarks>().Single().Marks.OfType<StrokeMark>().Select(m => m.Path)];
    }

    /// <summary>Pieces of every size and shape, some with pointless bevels and grips, on every paper: sheets or a reason, never a crash.</summary>
    [Fact]
    public void Any_piece_gives_sheets_or_a_reason()
    {
        var random = new Random(20251125);
        for (var i = 0; i < 60; i++)
        {
            var model = i % 2 == 0 ? ExamplePieces.Hatchet : ExamplePieces.Paring;
            var (fx, fy) = (Math.Pow(10, (random.NextDouble() * 3) - 2), Math.Pow(10, (random.NextDouble() * 3) - 2));
            var map = new Transform(fx, 0, 0, fy, random.Next(-500, 500), random.Next(-500, 500)).Then(i % 3 == 0 ? Transform.QuarterTurn : Transform.None);
            var plan = model.Plan with
            {
                Name = new string('W', 1 + (i * 7)),
                Outline = model.Plan.Outline.Transformed(map),
                Edge = i % 5 == 0 ? new SharpenedPart(map.Map(new(0, 9)), map.Map(new(0, 9))) : new SharpenedPart(map.Map(model.Plan.Edge!.From), map.Map(model.Plan.Edge.To)),
                Grip = i % 4 == 0 ? new Grip(new(0, 0), new(0, 0)) : new Grip(map.Map(new(100, 10)), map.Map(new(150, 11))),
                Bevel = model.Plan.Bevel! with { Plunge = i % 2 == 0 ? new PlungeLine(new(0, 0), new(0, 0)) : new PlungeLine(map.Map(new(85, 0)), map.Map(new(84, 30))) },
            };
            var results = model with
            {
                Plan = plan,
                Holes = i % 7 == 0 ? [] : [.. model.Holes.Select(h => h with { At = map.Map(h.At), Name = h.Name + new string('x', i) })],
                Bench = model.Bench with { Corner = map.Map(model.Bench.Corner), AlongSign = i % 2 == 0 ? 1 : -1, AlongFrom = i % 6 == 0 ? "" : "sawn end" },
            };
            var paper = (i % 5) switch { 0 => PaperSize.A4, 1 => PaperSize.Letter, 2 => PaperSize.Roll(300), 3 => PaperSize.Roll(100), _ => new PaperSize("a5", "A5", 148, 210) };
            var request = ExamplePieces.Request(results, paper);
            foreach (var drillOnly in new[] { false, true })
            {
                var options = TemplateOptions.For(request, drillOnly) with { Mirror = i % 2 == 1, SurroundMm = i % 4 };
                var sheets = TemplateSheets.Draw(request, options);
                Assert.Equal(TemplateSheets.Trouble(request, options) is null, !sheets.IsEmpty);
                Assert.All(sheets, s => Assert.InRange(s.WidthMm, 90, 3001));
                if (!sheets.IsEmpty && sheets.Length < 8) Assert.NotEmpty(Tangwright.Formats.PdfWriter.Write(new SheetSet(plan.Name, request.Date, sheets)));
            }
        }
    }

    private static (string Text, Box Box) Room(TextMark t)
    {
        var w = Lettering.Width(t.Text, t.HeightMm, t.Bold);
        var from = t.Anchor switch { TextAnchor.Left => 0, TextAnchor.Middle => -w / 2, _ => -w };
        return (t.Text, t.AngleDegrees == 90
            ? new Box(t.At.X - t.HeightMm, t.At.Y + from, t.At.X, t.At.Y + from + w)
            : new Box(t.At.X + from, t.At.Y, t.At.X + from + w, t.At.Y + t.HeightMm));
    }

    private static TheoryData<string, string, bool> Every()
    {
        var all = new TheoryData<string, string, bool>();
        foreach (var piece in new[] { "hatchet", "kitchen", "paring" })
        {
            foreach (var paper in new[] { "a4", "letter", "a3", "roll" })
            {
                all.Add(piece, paper, false);
                all.Add(piece, paper, true);
            }
        }

        return all;
    }
}
