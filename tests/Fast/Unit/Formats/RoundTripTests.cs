using System.Text;
using CsCheck;
using Tangwright.Core;
using Tangwright.Formats;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.Tests;

/// <summary>What is written as DXF, SVG or a plan and read again has moved nothing by more than 1e-6 mm.</summary>
public class RoundTripTests
{
    private const double MovedMm = 1e-6;

    /// <summary>A piece with every kind of segment: lines, arcs both ways round, a near half turn, a Bézier, arcs of upright, turned and skewed ellipses.</summary>
    public static Foundation.Path EveryKind(double turn = 0.3, double size = 1)
    {
        var b = new List<Segment>();
        void To(Func<Point, Segment> make) => b.Add(make(b.Count == 0 ? default : b[^1].End));
        To(_ => new Line(new Point(0, 0), new Point(120, 0)));
        To(p => Arc.Through(p, new Point(120, 30), 15.0000001, large: false, counterClockwise: true));
        To(p => new Line(p, new Point(100, 30)));
        To(p => Arc.Through(p, new Point(90, 40), 10, large: false, counterClockwise: false));
        To(p => new Bezier(p, new Point(85, 50), new Point(70, 35), new Point(60, 42)));
        To(p => Arc.Through(p, new Point(40, 42), Point.Direction(0.4) * 14, Point.Direction(0.4).Left * 9, large: false, counterClockwise: true));
        To(p => Arc.Through(p, new Point(20, 45), new Point(13, 2), new Point(4, 8), large: false, counterClockwise: false));
        To(p => Arc.Through(p, new Point(-5, 30), 20, large: true, counterClockwise: true));
        To(p => new Line(p, default));
        return new Foundation.Path([.. b], closed: true).Transformed(Transform.Turn(turn).Then(Transform.Scale(size, size)).Then(Transform.Shift(new Point(-31.7, 12.3))));
    }

    private static FlatDrawing Drawing(Foundation.Path outline) => new(
        "Skeleton <hatchet> & \"7\" ü",
        [new("OUTLINE", outline), new("EDGE", new Foundation.Path([outline.Segments[1].Part(0.2, 0.8)], closed: false)), new("STOCK", Foundation.Path.Polygon(new(-300, -300), new(500, -300), new(500, 400), new(-300, 400)))],
        [new("HOLES", "L1", outline.Bounds.Centre, 2.2), new("HOLES", "<&>", outline.Bounds.Centre + new Point(-0.1 * outline.Bounds.Width, 0), 25.4 / 64 * 3)]);

    private static void Same(Foundation.Path a, ImportedPiece piece)
    {
        Assert.Equal(Moments.Of(a).AreaMm2, Moments.Of(piece.Outline).AreaMm2, 1e-5);
        foreach (var (from, to) in new[] { (a, piece.Outline), (piece.Outline, a) })
        {
            foreach (var s in from.Segments)
            {
                for (var i = 0; i <= 20; i++)
                {
                    var d = Nearest.Distance(to, s.At(i / 20.0));
                    Assert.True(d <= MovedMm, $"moved by {d} mm at {s.At(i / 20.0)}");
                }
            }
        }
    }

    private static ImportedPiece Read(string text, string name)
    {
        var r = DrawingReader.Read(Encoding.UTF8.GetBytes(text), name, ImportChoice.None);
        Assert.True(r.IsGood, string.Join("; ", r.Faults));
        return r.Value;
    }

    [Theory]
    [InlineData(0, 1)]
    [InlineData(0.3, 1)]
    [InlineData(-2.1, 0.2)]
    [InlineData(1.5707963267948966, 8)]
    public void Nothing_moves_by_DXF_SVG_or_a_plan(double turn, double size)
    {
        var outline = EveryKind(turn, size);
        var drawing = Drawing(outline);
        foreach (var (text, name) in new[] { (DxfWriter.Write(drawing), "a.dxf"), (SvgWriter.Write(drawing), "a.svg") })
        {
            var piece = Read(text, name);
            Same(outline, piece);
            Assert.Equal(2, piece.Holes.Length);
            if (name == "a.dxf") Assert.Equal(outline.Segments.Count(s => s is Arc { IsCircle: false }), piece.Outline.Segments.Count(s => s is Arc { IsCircle: false }));
            foreach (var unit in new[] { LengthUnit.Mm, LengthUnit.Inch })
            {
                var plan = ImportedPlanText.For(piece, "a", unit, "80CrV2", Length.OfMm(5));
                var path = plan.Split('\n').Single(l => l.StartsWith("path", StringComparison.Ordinal)).Split('"')[1];
                var again = PathData.Read(path, unit == LengthUnit.Mm ? 1 : 25.4);
                Assert.Null(again.Fault);
                Same(outline, piece with { Outline = Assert.Single(again.Paths) });
            }
        }
    }

    [Fact]
    public void Any_outline_of_lines_and_arcs_comes_back()
        => Gen.Select(Gen.Double[-3, 3].Array[3, 12], Gen.Double[20, 200], Gen.Double[-0.9, 0.9].Array[12]).Sample((shift, size, bulge) =>
        {
            // a star-shaped outline: corners round a centre, sides bent in or out by a bulge
            var n = shift.Length;
            var corners = Enumerable.Range(0, n).Select(i => Point.Direction(i * 2 * Math.PI / n) * (size * (1 + (0.1 * shift[i])))).ToArray();
            var sides = new List<Segment>();
            for (var i = 0; i < n; i++)
            {
                var (a, b) = (corners[i], corners[(i + 1) % n]);
                var h = Math.Abs(bulge[i]) * 0.2;
                sides.Add(h < 0.01 ? new Line(a, b) : Arc.Through(a, b, a.To(b) * (1 + (h * h)) / (4 * h), large: false, bulge[i] > 0));
            }

            var outline = new Foundation.Path([.. sides], closed: true);
            var drawing = new FlatDrawing("x", [new("OUTLINE", outline)], []);
            Same(outline, Read(DxfWriter.Write(drawing), "a.dxf"));
            Same(outline, Read(SvgWriter.Write(drawing), "a.svg"));
        }, iter: 60);

    [Fact]
    public void The_same_drawing_gives_the_same_bytes_and_LF_line_ends()
    {
        var drawing = Drawing(EveryKind());
        Assert.Equal(DxfWriter.Write(drawing), DxfWriter.Write(drawing));
        Assert.Equal(SvgWriter.Write(drawing), SvgWriter.Write(drawing));
        Assert.DoesNotContain('\r', DxfWriter.Write(drawing) + SvgWriter.Write(drawing));
        Assert.Contains("&lt;hatchet&gt; &amp; &quot;7&quot; ü", SvgWriter.Write(drawing), StringComparison.Ordinal);
        Assert.All(DxfWriter.Write(drawing), c => Assert.True(c < 128));
    }

    [Fact]
    public void SVG_mirrors_y_and_flips_the_sweep_of_an_unsymmetric_arc()
    {
        // from (0,0) to (30,10) about a centre above the chord, counter-clockwise with y up: dips below the chord
        var arc = Arc.Through(new Point(0, 0), new Point(30, 10), 25, large: false, counterClockwise: true);
        Assert.True(arc.At(0.5).Y < 5);
        var outline = new Foundation.Path([arc, new Line(arc.End, new Point(0, 40)), new Line(new Point(0, 40), arc.Start)], closed: true);
        var svg = SvgWriter.Write(new FlatDrawing("x", [new("OUTLINE", outline)], []));
        Assert.Contains("d=\"M 0 0 A 25 25 0 0 0 30 -10 L 0 -40 Z\"", svg, StringComparison.Ordinal);
        var back = Assert.IsType<Arc>(Read(svg, "x.svg").Outline.Segments[0]);
        Assert.True(back.IsCounterClockwise);
        Assert.True(back.Centre.To(arc.Centre) < 1e-9);
    }

    [Theory]
    [InlineData(6.35, LengthUnit.Mm, "\"1/4 in\"")]
    [InlineData(6.0, LengthUnit.Inch, "\"6 mm\"")]
    [InlineData(6.0, LengthUnit.Mm, "6")]
    [InlineData(6.12345, LengthUnit.Mm, "6.12345")]
    public void A_diameter_is_written_as_the_maker_writes_it(double mm, LengthUnit unit, string text)
    {
        var piece = new ImportedPiece(EveryKind(), [new(new Point(1, 2), mm, "0\n\"")], unit, [], [], []);
        Assert.Contains($"\ndiameter = {text}\n", ImportedPlanText.For(piece, "a\"\\\n", unit, "s", Length.OfMm(5)), StringComparison.Ordinal);
    }
}
