using System.Text;
using CsCheck;
using Tangwright.Core;
using Tangwright.Formats;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.Tests;

/// <summary>Cut off, damaged, huge and hostile drawings: always one clear fault, never an exception, in bounded time and memory.</summary>
public class HostileDrawingTests
{
    private static readonly FlatDrawing Sound = new("x", [new("OUTLINE", RoundTripTests.EveryKind())], [new("HOLES", "a", new Point(20, 40), 6)]);
    private static readonly byte[] Dxf = Encoding.ASCII.GetBytes(DxfWriter.Write(Sound));
    private static readonly byte[] Svg = Encoding.UTF8.GetBytes(SvgWriter.Write(Sound));

    private static Checked<ImportedPiece> Read(byte[] bytes, LengthUnit? unit = LengthUnit.Mm) => DrawingReader.Read(bytes, "f", new ImportChoice(unit, []));

    private static Fault Refused(string text, string part, int? line = null)
    {
        var f = Assert.Single(Read(Encoding.UTF8.GetBytes(text)).Faults);
        Assert.Contains(part, f.Message, StringComparison.Ordinal);
        Assert.NotEmpty(f.Remedy);
        Assert.True(f.Message.Length < 400 && f.LineText.Length < 100, f.Message);
        if (line is { } l) Assert.Equal(l, f.Line);
        return f;
    }

    private static string Entities(string body) => $"0\nSECTION\n2\nENTITIES\n{body}0\nENDSEC\n0\nEOF\n";

    private static string Drawn(string body) => $"<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"100mm\" height=\"50mm\" viewBox=\"0 0 100 50\">\n{body}\n</svg>";

    private const string Plate = "<path d=\"M0 0H90V40H0Z\"/>";

    [Fact]
    public void Every_cut_off_DXF_is_refused()
    {
        Assert.True(Read(Dxf).IsGood);
        for (var n = 0; n < Dxf.Length - 4; n += 1 + (n / 97 % 29)) Assert.Single(Read(Dxf[..n]).Faults);
    }

    [Fact]
    public void Every_cut_off_SVG_is_refused()
    {
        Assert.True(Read(Svg).IsGood);
        for (var n = 0; n < Svg.Length - 8; n += 3) Assert.Single(Read(Svg[..n]).Faults);
    }

    [Fact]
    public void Damaged_bytes_give_a_piece_or_one_fault()
        => Gen.Select(Gen.Bool, Gen.Select(Gen.Int[0, 20000], Gen.Byte).Array[1, 12], Gen.Int[0, 3]).Sample((dxf, flips, how) =>
        {
            var b = (byte[])(dxf ? Dxf : Svg).Clone();
            foreach (var (at, value) in flips)
            {
                // how: any byte, or one that keeps the file's form and changes its numbers
                b[at % b.Length] = how == 0 ? value : (byte)"0123456789.-eE \n"[value % 16];
            }

            var r = Read(b);
            return r.IsGood ? r.Value.Outline.Closed && double.IsFinite(r.Value.Outline.Length) : r.Faults.Length == 1 && r.Faults[0].Message.Length > 5;
        }, iter: 1500);

    [Fact]
    public void Random_bytes_and_random_groups_are_refused()
    {
        Gen.Byte.Array[0, 300].Sample(b => !Read(b).IsGood, iter: 500);
        var types = new[] { "LINE", "ARC", "CIRCLE", "ELLIPSE", "SPLINE", "LWPOLYLINE", "POLYLINE", "VERTEX", "SEQEND", "INSERT", "TEXT", "BLOCK" };
        Gen.Select(Gen.Int[0, types.Length - 1], Gen.Select(Gen.Int[0, 17].Select(i => new[] { 10, 20, 11, 21, 40, 41, 42, 50, 51, 62, 67, 70, 71, 72, 73, 74, 210, 230 }[i]), Gen.OneOf(Gen.Double[-1e3, 1e3], Gen.Double, Gen.Int[-3, 30].Select(i => (double)i))).Array[0, 14]).Array[1, 12]
            .Sample(all =>
            {
                var s = new StringBuilder();
                foreach (var (type, groups) in all)
                {
                    s.Append($"0\n{types[type]}\n");
                    foreach (var (code, value) in groups) s.Append($"{code}\n{value:R}\n");
                }

                var r = Read(Encoding.ASCII.GetBytes(Entities(s.ToString())));
                return r.IsGood ? double.IsFinite(Moments.Of(r.Value.Outline).AreaMm2) : r.Faults.Length == 1;
            }, iter: 3000);
    }

    [Theory]
    [InlineData("nan")]
    [InlineData("inf")]
    [InlineData("-Infinity")]
    [InlineData("1e400")]
    [InlineData("1,5")]
    [InlineData("0x10")]
    [InlineData("")]
    public void A_DXF_number_that_is_none_is_named_with_its_line(string number)
    {
        var f = Refused(Entities($"0\nCIRCLE\n10\n0\n20\n{number}\n40\n5\n"), "should be a number", 10);
        Assert.Equal(number, f.LineText);
    }

    [Fact]
    public void DXF_entities_that_make_no_sense_are_refused_with_their_line()
    {
        Refused(Entities("0\nCIRCLE\n10\n0\n20\n0\n"), "lacks its radius (group 40)", 6);
        Refused(Entities("0\nCIRCLE\n10\n0\n20\n0\n40\n-5\n"), "not above zero");
        Refused(Entities("0\nCIRCLE\n10\n1e300\n20\n0\n40\n5\n"), "farther out");
        Refused(Entities("0\nCIRCLE\n10\n1e308\n20\n0\n40\n1e308\n"), "farther out");
        Refused(Entities("0\nLINE\n10\n0\n20\n0\n11\n5\n"), "lacks its last point (group 21)");
        Refused(Entities("0\nELLIPSE\n10\n0\n20\n0\n11\n5\n21\n0\n40\n0\n"), "axis without length");
        Refused(Entities("0\nSPLINE\n71\n3\n40\n0\n10\n0\n20\n0\n"), "control points");
        Refused(Entities("0\nSPLINE\n71\n1\n40\n0\n40\n2\n40\n1\n40\n3\n10\n0\n20\n0\n10\n1\n20\n1\n"), "do not rise");
        Refused(Entities("0\nSPLINE\n71\n90\n10\n0\n20\n0\n"), "degree 90");
        Refused(Entities("0\nPOLYLINE\n70\n1\n0\nLINE\n10\n0\n20\n0\n11\n1\n21\n1\n"), "SEQEND");
        Refused(Entities("0\nINSERT\n2\nNO SUCH\n10\n0\n20\n0\n"), "NO SUCH");
        Refused(Entities(""), "no lines or curves");
        Refused("0\nSECTION\n2\nHEADER\n9\n$INSUNITS\n70\nmm\n0\nENDSEC\n0\nEOF\n", "$INSUNITS", 8);
        Refused("999\nhello\nfive\n", "group code", 3);
        Refused("0\nEOF\n", "no section");
        Refused("0\nLINE\n0\nEOF\n", "SECTION");
        Refused("5 apples", "group code", 1);
        Refused("0\nSECTION", "cut off");
        Refused("hello", "neither SVG nor");
        Refused("   ", "empty");
        Refused("Some Binary DXF\r\n\u001a\0", "binary");
    }

    [Fact]
    public void Blocks_that_hold_themselves_or_multiply_are_refused()
    {
        string File(string blocks, string entities) => $"0\nSECTION\n2\nBLOCKS\n{blocks}0\nENDSEC\n{Entities(entities)}";
        string Insert(string name, string more = "") => $"0\nINSERT\n2\n{name}\n10\n0\n20\n0\n{more}";
        string Block(string name, string body) => $"0\nBLOCK\n2\n{name}\n10\n0\n20\n0\n{body}0\nENDBLK\n";
        Refused(File(Block("A", Insert("A")), Insert("A")), "holds itself");
        Refused(File(Block("A", Insert("B")) + Block("B", Insert("A")), Insert("A")), "holds itself");
        var bomb = string.Concat(Enumerable.Range(0, 14).Select(i => Block($"B{i}", string.Concat(Enumerable.Repeat(Insert($"B{i + 1}"), 10))))) + Block("B14", "0\nCIRCLE\n10\n0\n20\n0\n40\n1\n");
        Refused(File(bomb, Insert("B0")), "more than");
        Refused(File(Block("A", "0\nCIRCLE\n10\n0\n20\n0\n40\n1\n"), Insert("A", "70\n30000\n71\n30000\n44\n1\n45\n1\n")), "more than");
        Refused(File(Block("A", "0\nCIRCLE\n10\n0\n20\n0\n40\n1\n"), Insert("A", "41\n0\n")), "scale 0");
        Refused(File(Block("A", ""), Insert("A", "70\n2000000000\n71\n2000000000\n")), "more than");
    }

    [Fact]
    public void A_million_entities_and_a_huge_file_are_refused()
    {
        Refused(Entities(string.Concat(Enumerable.Repeat("0\nPOINT\n10\n0\n20\n0\n", 1_000_000))), "more than 100,000 entities");
        Refused(Drawn(string.Concat(Enumerable.Repeat("<path d=\"M0 0H1\"/>", 1_000_000))), "more than 100,000 elements");
        var many = new StringBuilder("0\nLWPOLYLINE\n");
        for (var i = 0; i < 400_000; i++) many.Append($"10\n{i % 1000}\n20\n{i / 1000}\n");
        Refused(Entities(many.ToString()), "more than 50,000 lines");
        Assert.Contains("MB", Assert.Single(Read(new byte[60_000_000]).Faults).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public void Many_curves_of_one_kind_end_in_good_time(int kind)
    {
        // within the limits, but made to slow a careless search down: one spot, one line, one column, one net
        var s = new StringBuilder();
        for (var i = 0; i < 20_000; i++)
        {
            s.Append(kind switch
            {
                1 => $"0\nLINE\n10\n0\n20\n0\n11\n{Math.Cos(i)}\n21\n{Math.Sin(i)}\n",
                2 => $"0\nLINE\n10\n0\n20\n{i * 3}\n11\n0\n21\n{(i * 3) + 1}\n",
                3 when i < 4_000 => $"0\nCIRCLE\n10\n0\n20\n{i}\n40\n0.3\n",
                4 => $"0\nLINE\n10\n{i % 200}\n20\n{i / 200 / 2}\n11\n{(i % 200) + ((i / 200) % 2)}\n21\n{(i / 200 / 2) + 1 - ((i / 200) % 2)}\n",
                _ => "",
            });
        }

        var r = Read(Encoding.ASCII.GetBytes(Entities(s.ToString())));
        Assert.True(r.IsGood || r.Faults.Length == 1);
    }

    [Fact]
    public void SVG_that_reaches_outside_or_carries_more_than_a_drawing_is_refused_with_its_line()
    {
        Refused("<!DOCTYPE svg [\n<!ENTITY a \"aaaa\">]>\n" + Drawn(Plate), "entities of its own", 1);
        Refused("<?xml version=\"1.0\"?>\n<!DOCTYPE svg [<!ENTITY a SYSTEM \"file:///etc/passwd\">]>\n" + Drawn("<text>&a;</text>"), "entities of its own", 2);
        Refused("<!DOCTYPE svg SYSTEM \"file:///etc/passwd\">\n" + Drawn("&a;" + Plate), "no sound XML");
        Refused("<!DOCTYPE svg SYSTEM \"a\"><!DOCTYPE svg [<!ENTITY a \"b\">]>\n" + Drawn(Plate), "no sound XML");
        Refused(Drawn("<script>alert(1)</script>" + Plate), "script", 2);
        Refused(Drawn("<path onclick=\"x()\" d=\"M0 0H1\"/>"), "script", 2);
        Refused(Drawn("<image href=\"file:///etc/passwd\"/>"), "another file", 2);
        Refused(Drawn("<use xmlns:xlink=\"http://www.w3.org/1999/xlink\" xlink:href=\"other.svg#a\"/>"), "another file", 2);
        Refused(Drawn("<style>@import url(x.css);</style>"), "another file");
        Refused(Drawn("<path style=\"fill:url(http://x/y)\" d=\"M0 0H1\"/>"), "another file");
        Refused("<?xml-stylesheet href=\"x.css\"?>" + Drawn(Plate), "style sheet");
        Refused(Drawn("<use href=\"#a\"/>"), "not in the drawing");
        Refused(Drawn("<g id=\"a\"><use href=\"#a\"/></g>"), "uses itself");
        Refused(Drawn(string.Concat(Enumerable.Range(0, 20).Select(i => $"<g id=\"b{i}\">" + string.Concat(Enumerable.Repeat($"<use href=\"#b{i + 1}\"/>", 10)) + "</g>")) + $"<g id=\"b20\">{Plate}</g>"), "more than");
        Refused(Drawn(string.Concat(Enumerable.Repeat("<g>", 100_000))), "deep");
        Refused(Drawn("<path d=\"M0 0L1e400 0\"/>"), "path data");
        Refused(Drawn("<path transform=\"spin(4)\" d=\"M0 0H1\"/>"), "transform");
        Refused(Drawn("<path transform=\"scale(1e300)\" d=\"M0 0H1\"/>"), "no lines or curves");
        Refused(Drawn("<path transform=\"scale(1e30)\" d=\"M0 0H1\"/>"), "farther out");
        Refused(Drawn("<circle r=\"5%\"/>"), "no fixed length");
        Refused(Drawn("<circle r=\"nan\"/>"), "should be a number");
        Refused(Drawn("<polygon points=\"0 0 5\"/>"), "pairs of numbers");
        Refused("<svg viewBox=\"0 0 0 5\"/>", "viewBox");
        Refused("<svg width=\"wide\"/>", "width");
        Refused("<html/>", "<html>");
        Refused(Drawn("<path d=\"M0 0"), "no sound XML");
        Refused("<svg><a></svg>", "no sound XML");
    }

    [Fact]
    public void A_plain_document_type_is_passed_over()
        => Assert.True(Read(Encoding.UTF8.GetBytes("<?xml version=\"1.0\"?>\n<!DOCTYPE svg PUBLIC \"-//W3C//DTD SVG 1.1//EN\"\n \"http://www.w3.org/Graphics/SVG/1.1/DTD/svg11.dtd\">\n" + Drawn(Plate)), null).IsGood);
}
