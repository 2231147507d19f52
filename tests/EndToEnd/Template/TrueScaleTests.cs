using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Documents;
using Tangwright.Formats;
using Tangwright.Foundation;

namespace Tangwright.Tests;

/// <summary>The template as printed by poppler (pdftoppm, 600 dots to the inch) and put together: hole centres and check bars to 0.05 mm.</summary>
public sealed class TrueScaleTests
{
    private const double Allowed = 0.05;

    public static TheoryData<string, string, bool, bool> Prints { get; } = new()
    {
        { "hatchet", "a4", false, false },
        { "hatchet", "letter", false, false },
        { "hatchet", "a3", false, false },
        { "hatchet", "roll", false, false },
        { "hatchet", "a5", false, false },
        { "hatchet", "a4", true, false },
        { "hatchet", "a4", false, true },
        { "kitchen", "a4", false, false },
        { "kitchen", "letter", true, false },
        { "paring", "a4", false, false },
    };

    [Theory]
    [MemberData(nameof(Prints))]
    public void Hole_centres_and_bars_are_true_over_the_assembled_sheets(string piece, string paper, bool mirror, bool drillOnly)
    {
        var (request, options) = Ask(piece, paper);
        options = options with { Mirror = mirror, DrillOnly = drillOnly };
        var sheets = TemplateSheets.Draw(request, options);
        var pages = Raster.Print(Pdf(request, sheets), sheets);
        var found = Holes(request, options, pages, 1, 1);
        Assert.Equal(request.Results.Holes.Length, found.Count);
        AssertTrue(request.Results, found, mirror, Allowed);
        AssertBars(sheets, pages, PrintScale.True, 1, 1);
    }

    [Fact]
    public void A_measured_printer_is_corrected()
    {
        // the printer shrinks to 97.2 mm across and 97.0 mm along; the sheets lie on their long side, so along is x
        const double across = 0.972;
        const double along = 0.970;
        var (request, options) = Ask("hatchet", "a4");
        options = options with { Scale = PrintScale.After(PrintScale.True, 97.2, 97.0) };
        var sheets = TemplateSheets.Draw(request, options);
        Assert.True(sheets[0].WidthMm > sheets[0].HeightMm);
        var pages = Raster.Print(Pdf(request, sheets), sheets, along, across);
        AssertTrue(request.Results, Holes(request, options, pages, along, across), mirror: false, Allowed);
        AssertBars(sheets, pages, options.Scale, along, across);

        // overall: the straight right side against the slanting left side at y = 20
        var plan = TemplateSheets.Tiles(request, options)!;
        double Side(Point at)
        {
            var tile = plan.Tiles.First(t => plan.Window.Holds(t.PlanToSheet.Map(at)));
            var p = tile.PlanToSheet.Map(at);
            var x = pages[tile.Number - 1].LineX(p.X * along, (p.Y * across) - 0.3, (p.Y * across) + 0.3);
            return x - (plan.Window.MinX * along) + (tile.Column * plan.StepXMm);
        }

        var leftOffset = 2 * (20 - 6) / (68.78 - 6);
        var overall = Side(new Point(275, 20)) - Side(new Point(leftOffset, 20)) + leftOffset;
        Assert.Equal(275, overall, 0.3);
    }

    [Fact]
    public void An_uncorrected_bad_printer_is_caught_by_the_bars()
    {
        var (request, options) = Ask("paring", "a4");
        var sheets = TemplateSheets.Draw(request, options);
        var pages = Raster.Print(Pdf(request, sheets), sheets, 0.97, 0.97);
        var bar = Bars(sheets[0]).First(b => Math.Abs(b.Start.To(b.End) - 100) < 1e-6);
        Assert.Equal(97.0, Measured(bar, pages[0], 0.97, 0.97), Allowed);
    }

    private static (SheetRequest Request, TemplateOptions Options) Ask(string piece, string paper)
    {
        var results = piece switch { "hatchet" => ExamplePieces.Hatchet, "kitchen" => ExamplePieces.Kitchen, _ => ExamplePieces.Paring };
        var size = paper switch { "a4" => PaperSize.A4, "letter" => PaperSize.Letter, "a3" => PaperSize.A3, "roll" => PaperSize.Roll(150), _ => new PaperSize("a5", "A5", 148, 210) };
        var request = ExamplePieces.Request(results, size);
        return (request, TemplateOptions.For(request));
    }

    private static byte[] Pdf(SheetRequest request, ImmutableArray<Sheet> sheets) => PdfWriter.Write(new SheetSet(request.Results.Plan.Name, request.Date, sheets));

    /// <summary>Centres measured on paper, put together by column and row: true mm from the lower left of the assembled sheets.</summary>
    private static List<(PlacedHole Hole, Point At)> Holes(SheetRequest request, TemplateOptions options, List<Raster> pages, double shrinkX, double shrinkY)
    {
        var plan = TemplateSheets.Tiles(request, options)!;
        var turned = plan.FeedIsLevel && options.Paper.Key == "roll";
        var found = new List<(PlacedHole, Point)>();
        foreach (var hole in request.Results.Holes)
        {
            var tile = plan.Tiles.First(t => plan.Window.Grown(-3).Holds(t.PlanToSheet.Map(hole.At)));
            var page = pages[tile.Number - 1];
            var asLookedAt = tile.PlanToSheet.Map(hole.At);
            var p = turned ? new Point(plan.HeightMm - asLookedAt.Y, asLookedAt.X) : asLookedAt;
            p = new Point(p.X * shrinkX, p.Y * shrinkY);
            Point measured = new(
                0.5 * (page.LineX(p.X, p.Y + 1, p.Y + 2.4) + page.LineX(p.X, p.Y - 2.4, p.Y - 1)),
                0.5 * (page.LineY(p.Y, p.X + 1, p.X + 2.4) + page.LineY(p.Y, p.X - 2.4, p.X - 1)));
            if (turned) measured = new Point(measured.Y, plan.HeightMm - measured.X);
            var corner = new Point(plan.Window.MinX * shrinkX, plan.Window.MinY * shrinkY);
            found.Add((hole, measured - corner + new Point(tile.Column * plan.StepXMm, (plan.Rows - 1 - tile.Row) * plan.StepYMm)));
        }

        return found;
    }

    /// <summary>Steps from the first hole against those of the plan.</summary>
    private static void AssertTrue(Results results, List<(PlacedHole Hole, Point At)> found, bool mirror, double allowed)
    {
        foreach (var (hole, at) in found)
        {
            var step = hole.At - results.Holes[0].At;
            var expected = mirror ? new Point(step.X, -step.Y) : step;
            var got = at - found[0].At;
            Assert.True((got - expected).Length <= allowed, $"{hole.Name}: {got - expected}");
        }
    }

    private static void AssertBars(ImmutableArray<Sheet> sheets, List<Raster> pages, PrintScale scale, double shrinkX, double shrinkY)
    {
        for (var i = 0; i < sheets.Length; i++)
        {
            var bars = Bars(sheets[i]);
            Assert.Equal(4, bars.Count);
            Assert.Equal(2, bars.Count(b => b.Start.X == b.End.X));
            foreach (var bar in bars)
            {
                var drawn = bar.Start.To(bar.End) / (Math.Abs(bar.Start.X - bar.End.X) > 1 == sheets[i].WidthMm > sheets[i].HeightMm ? scale.Along : scale.Across);
                Assert.True(Math.Abs(drawn - 100) < 1e-6 || Math.Abs(drawn - 101.6) < 1e-6, drawn.ToString());
                Assert.Equal(drawn, Measured(bar, pages[i], shrinkX, shrinkY), Allowed);
            }
        }
    }

    /// <summary>The long lines of the check bars: of about 100 mm, level or upright, drawn outside the true-scale window.</summary>
    private static List<Line> Bars(Sheet sheet) =>
        [.. sheet.Marks.OfType<StrokeMark>().SelectMany(m => m.Path.Segments.Length == 1 ? m.Path.Segments : [])
            .OfType<Line>().Where(l => (l.Start.X == l.End.X || l.Start.Y == l.End.Y) && l.Length is > 99 and < 106)];

    /// <summary>Distance between the ticks at the ends of a bar on paper, mm.</summary>
    private static double Measured(Line bar, Raster page, double shrinkX, double shrinkY)
    {
        var (a, b) = (new Point(bar.Start.X * shrinkX, bar.Start.Y * shrinkY), new Point(bar.End.X * shrinkX, bar.End.Y * shrinkY));
        double At(Point p) => bar.Start.Y == bar.End.Y
            ? 0.5 * (page.LineX(p.X, p.Y + 0.5, p.Y + 1.8) + page.LineX(p.X, p.Y - 1.8, p.Y - 0.5))
            : 0.5 * (page.LineY(p.Y, p.X + 0.5, p.X + 1.8) + page.LineY(p.Y, p.X - 1.8, p.X - 0.5));
        return Math.Abs(At(b) - At(a));
    }
}
