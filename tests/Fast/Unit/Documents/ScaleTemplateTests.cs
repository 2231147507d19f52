using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Documents;
using Tangwright.Foundation;

namespace Tangwright.Tests;

/// <summary>Scale template and section gauges: true size on the sheet, mirrored for the back, only holes that are drilled.</summary>
public class ScaleTemplateTests
{
    private static SheetRequest Request(PrintScale scale) => new(ExamplePieces.Kitchen(), PaperSize.A4, 10, scale, false, new DateOnly(2026, 1, 15), UnitsShown.Both, "shop.toml");

    private static IEnumerable<StrokeMark> Strokes(IEnumerable<Mark> marks) => marks.SelectMany(m => m switch { StrokeMark s => [s], ClippedMarks c => Strokes(c.Marks), _ => (IEnumerable<StrokeMark>)[] });

    private static Point[] Drilled(Sheet sheet, double stretch)
        => [.. Strokes(sheet.Marks).Where(s => s.Pen.Kind == LineKind.Solid && s.Path.Closed && s.Path.Segments.Length == 2 && Math.Abs(s.Path.Bounds.Width - (4.97 * stretch)) < 0.2).Select(s => s.Path.Bounds.Centre)];

    [Theory]
    [InlineData(1, 1)]
    [InlineData(1.03, 1.02)]
    public void Pin_crosses_lie_true(double across, double along)
    {
        var sheets = ScaleTemplate.Draw(Request(new PrintScale(across, along)));
        var holes = sheets.SelectMany(s => Drilled(s, 0.5 * (across + along)).Select(p => (s.WidthMm > s.HeightMm ? new Point(p.X / along, p.Y / across) : new Point(p.X / across, p.Y / along), s.Title))).ToArray();
        Assert.Equal(6, holes.Length);

        // pins at 222, 34 and 310, 33: 88.0057 mm apart, on the front scale and on the mirrored one
        var apart = holes.SelectMany(a => holes.Where(b => b.Title == a.Title).Select(b => a.Item1.To(b.Item1))).Count(d => Math.Abs(d - Math.Sqrt((88 * 88) + 1)) < 0.05);
        Assert.Equal(4, apart);
    }

    [Fact]
    public void The_back_is_the_front_mirrored()
    {
        var p = HandlePlan.Of(ExamplePieces.Kitchen(), new HandleWanted(1, null));
        var shapes = ScaleTemplate.Shapes(p, p.Shape!, UnitsShown.Mm);
        Assert.Equal(2, shapes.Length);
        Assert.All(shapes[0].Strokes.Zip(shapes[1].Strokes), pair =>
        {
            Assert.Equal(pair.First.Path.Start.X, pair.Second.Path.Start.X, 9);
            Assert.Equal(pair.First.Path.Start.Y, -pair.Second.Path.Start.Y, 9);
        });
        Assert.Contains(shapes[0].Labels, l => l.Text.StartsWith("P1", StringComparison.Ordinal));
        Assert.Equal("drill P1, P2, P3 Ø4.97 mm", Assert.Single(shapes[0].Labels, l => l.Text.StartsWith("drill", StringComparison.Ordinal)).Text);
    }

    [Fact]
    public void Gauges_are_half_the_section()
    {
        var p = HandlePlan.Of(ExamplePieces.Kitchen(), new HandleWanted(1, null));
        var gauges = SectionGauges.Shapes(p, UnitsShown.Mm);
        Assert.Equal(p.Cuts.Length, gauges.Length);
        foreach (var (gauge, cut) in gauges.Zip(p.Cuts))
        {
            var card = gauge.Strokes[0].Path;
            var box = card.Bounds;
            Assert.Equal(0.5 * Math.Abs(Moments.Of(cut.Outline).AreaMm2), (box.Width * box.Height) - Math.Abs(Moments.Of(card).AreaMm2), 1e-3);
        }
    }
}
