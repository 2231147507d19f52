using System.Globalization;
using System.Xml.Linq;
using Tangwright.Formats;
using Tangwright.Foundation;
using Path = Tangwright.Foundation.Path;

namespace Tangwright.Tests;

/// <summary>A sheet as SVG: read back with the reader of path data, every line lies where the sheet has it.</summary>
public sealed class SheetSvgTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    [Fact]
    public void Lines_curves_and_arcs_lie_where_the_sheet_has_them()
    {
        var shape = new Path(
            [
                new Line(new(10, 20), new(40.1234, 20)),
                Arc.OfCircle(new(40.1234, 35), 15, -Math.PI / 2, Math.PI),
                new Bezier(new(40.1234, 50), new(30, 60), new(20, 60), new(10, 20)),
            ],
            closed: true);
        var sheet = new Sheet("kind", "Title", 100, 80, [new StrokeMark(shape, new Pen(0.25, LineKind.LongDashDot))]);
        var path = Assert.Single(Read(sheet).Descendants(Svg + "path"));
        var back = Assert.Single(PathData.Read(path.Attribute("d")!.Value, 1).Paths).Transformed(Transform.Scale(1, -1).Then(Transform.Shift(new(0, 80))));
        foreach (var (drawn, meant) in new[] { (back, shape), (shape, back) })
        {
            foreach (var s in drawn.Segments)
            {
                for (var t = 0.0; t <= 1; t += 0.125) Assert.InRange(Nearest.Distance(meant, s.At(t)), 0, 2e-4);
            }
        }

        Assert.Equal("6 0.75 0.125 0.75", path.Attribute("stroke-dasharray")!.Value);
        Assert.Equal("0.25", path.Attribute("stroke-width")!.Value);
    }

    [Fact]
    public void The_paper_is_in_millimetres_and_words_are_as_long_as_computed()
    {
        var sheet = new Sheet("kind", "Title", 215.9, 279.4, [new TextMark("3 < 4 & \"5\"", new(100, 50), 3.5, Bold: true, TextAnchor.Right, AngleDegrees: 90)]);
        var svg = Read(sheet);
        Assert.Equal(("215.9mm", "279.4mm", "0 0 215.9 279.4"), (svg.Attribute("width")!.Value, svg.Attribute("height")!.Value, svg.Attribute("viewBox")!.Value));
        var text = Assert.Single(svg.Descendants(Svg + "text"));
        var width = Lettering.Width("3 < 4 & \"5\"", 3.5, bold: true);
        Assert.Equal("3 < 4 & \"5\"", text.Value);
        Assert.Equal(width, Number(text, "textLength"), 1e-4);
        Assert.Equal(100 - width, Number(text, "x"), 1e-4);
        Assert.Equal(3.5 * 2048 / 1493, Number(text, "font-size"), 1e-4);
        Assert.Equal("rotate(-90 100 229.4)", text.Attribute("transform")!.Value);
    }

    [Fact]
    public void Clipped_marks_show_in_their_box_alone()
    {
        var line = new StrokeMark(new Path([new Line(new(0, 0), new(100, 80))], closed: false), Pen.Wide);
        var inner = Assert.Single(Read(new Sheet("kind", "Title", 100, 80, [new ClippedMarks(new Box(10, 20, 40, 60), [line])])).Elements(Svg + "svg"));
        Assert.Equal(("10", "20", "30", "40", "10 20 30 40", "hidden"), (inner.Attribute("x")!.Value, inner.Attribute("y")!.Value, inner.Attribute("width")!.Value, inner.Attribute("height")!.Value, inner.Attribute("viewBox")!.Value, inner.Attribute("overflow")!.Value));
    }

    private static XElement Read(Sheet sheet) => XElement.Parse(SheetSvg.Write(sheet, "a < b"));

    private static double Number(XElement of, string name) => double.Parse(of.Attribute(name)!.Value, CultureInfo.InvariantCulture);
}
