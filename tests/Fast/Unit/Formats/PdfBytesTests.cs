using System.Collections.Immutable;
using System.Text;
using CsCheck;
using Tangwright.Formats;
using Tangwright.Foundation;
using Path = Tangwright.Foundation.Path;

namespace Tangwright.Tests;

public sealed class PdfBytesTests
{
    [Fact]
    public void The_same_sheets_give_the_same_bytes()
    {
        var first = PdfWriter.Write(Set("A & <b> ö", "words Ø 16"));
        var second = PdfWriter.Write(Set("A & <b> ö", "words Ø 16"));
        Assert.True(first.AsSpan().SequenceEqual(second));
    }

    [Fact]
    public void Other_sheets_get_another_file_identifier()
        => Assert.NotEqual(Identifier(Set("T", "one")), Identifier(Set("T", "two")));

    [Fact]
    public void Viewers_are_asked_not_to_scale_and_the_date_is_the_one_given()
    {
        var text = Encoding.Latin1.GetString(PdfWriter.Write(Set("T", "x")));
        Assert.Contains("/PrintScaling/None", text, StringComparison.Ordinal);
        Assert.Contains("/PickTrayByPDFSize true", text, StringComparison.Ordinal);
        Assert.Contains("/CreationDate(D:20250203", text, StringComparison.Ordinal);
        Assert.DoesNotContain("/Filter", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("")]
    [InlineData("\uD800 lone \uDC00")]
    [InlineData("\0\t\r\n\u001b")]
    [InlineData("漢字 עברית 😀 \uFFFF")]
    [InlineData("/ABCDEF+DejaVu /ID[<0 uuid:")]
    public void No_words_break_the_file(string words)
    {
        var pdf = PdfWriter.Write(Set(words, words));
        Assert.EndsWith("%%EOF", Encoding.Latin1.GetString(pdf).TrimEnd(), StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_sheet_there_is_no_file()
        => Assert.Throws<ArgumentException>(() => PdfWriter.Write(new SheetSet("T", new DateOnly(2025, 2, 3), [])));

    [Fact]
    public void Beziers_follow_circles_and_ellipses_to_a_ten_thousandth()
    {
        var arcs = Gen.Select(Gen.Double[0.01, 3000], Gen.Double[0.05, 1], Gen.Double[-6.2, 6.2], Gen.Double[-6.28, 6.28], Gen.Double[-1.5, 1.5]);
        arcs.Sample((radius, flat, start, sweep, turn) =>
        {
            if (Math.Abs(sweep) < 1e-3) return;
            var u = Point.Direction(turn) * radius;
            var arc = Arc.OfEllipse(new Point(3, -7), u, u.Left * flat, start, sweep);
            var pieces = ArcPieces.Of(arc).ToArray();
            Assert.Equal(arc.Start, pieces[0].Start);
            Assert.Equal(arc.End, pieces[^1].End);
            foreach (var piece in pieces)
            {
                for (var i = 0; i <= 8; i++)
                {
                    // distance from the ellipse, to first order: the implicit function over its gradient
                    var p = piece.At(i / 8.0) - arc.Centre;
                    var (x, y) = (p.Dot(u) / (radius * radius), p.Dot(u.Left) / (radius * radius * flat));
                    var f = Math.Sqrt((x * x) + (y * y)) - 1;
                    Assert.True(Math.Abs(f) * radius < 1e-4, $"{f * radius} mm");
                }
            }
        });
    }

    private static string Identifier(SheetSet set)
    {
        var text = Encoding.Latin1.GetString(PdfWriter.Write(set));
        return text.Substring(text.LastIndexOf("/ID[<", StringComparison.Ordinal), 37);
    }

    private static SheetSet Set(string title, string words)
    {
        ImmutableArray<Mark> marks =
        [
            new StrokeMark(Path.Circle(new Point(50, 50), 20), Pen.Template),
            new FillMark([Path.Circle(new Point(50, 50), 20), Path.Circle(new Point(50, 50), 10)], Ink.Pale),
            new TextMark(words, new Point(10, 10), 3.5),
            new TextMark(words, new Point(60, 60), 5, Bold: true, TextAnchor.Middle, 30),
            new ClippedMarks(new Box(10, 10, 20, 20), [new StrokeMark(new Path([new Line(new(0, 0), new(100, 100))], closed: false), Pen.Centre)]),
        ];
        return new SheetSet(title, new DateOnly(2025, 2, 3), [new Sheet("x", title, 210, 297, marks), new Sheet("y", title, 297, 210, marks)]);
    }
}
