using System.Collections.Immutable;
using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text;
using Tangwright.Core;
using Tangwright.Documents;
using Tangwright.Formats;
using Tangwright.Foundation;
using Tangwright.UseCases;

namespace Tangwright.Tests;

public class BenchPacketTests
{
    /// <summary>The sheets with a title block; the true-scale ones have tests of their own.</summary>
    private static ImmutableArray<string> OwnKinds { get; } = ["cover", "order", "findings", "holes", "hole-card", "readout", "guide", "setup", "layout", "furnace", "run", "cooling", "temper", "straightening", "hardness", "cautions"];

    public static TheoryData<string, string, UnitsShown> Cases()
    {
        var data = new TheoryData<string, string, UnitsShown>();
        foreach (var piece in Pieces.Keys)
        {
            foreach (var paper in Papers.Keys)
            {
                foreach (var units in Enum.GetValues<UnitsShown>()) data.Add(piece, paper, units);
            }
        }

        return data;
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Text_stays_inside_the_margins_and_never_overlaps(string piece, string paper, UnitsShown units)
        => AssertTidy(BenchPacket.Of(Request(Pieces[piece](), Papers[paper], units), OwnKinds));

    [Theory]
    [InlineData("a4", UnitsShown.Both, false, null)]
    [InlineData("letter", UnitsShown.Inch, true, null)]
    [InlineData("a4", UnitsShown.Mm, false, "laser")]
    [InlineData("letter", UnitsShown.Both, false, "waterjet")]
    public void Sheets_of_bars_are_tidy_for_an_order_of_three_plans(string paper, UnitsShown units, bool straight, string? service)
    {
        var hatchet = ExamplePieces.Hatchet();
        hatchet = hatchet with { Shop = hatchet.Shop with { Bars = [new PricedBar("80CrV2", Length.OfMm(6.35), Length.OfMm(76.2), Length.OfInches(48), 42, null)], Money = "EUR" } };
        Results In(Results r, string name) => r with { Plan = r.Plan with { Stock = hatchet.Plan.Stock, Name = name } };
        var wanted = new StockWanted(9) { StraightCuts = straight, Service = HiredCut.All.FirstOrDefault(c => c.Name == service) };
        var stock = OrderPlan.Of([new(hatchet, wanted), new(In(ExamplePieces.Kitchen(), "A knife with a name that is far too long for any tag that one ties to a bar"), wanted with { Good = 5 }), new(In(ExamplePieces.Paring(), "Paring knife"), wanted with { Good = 7 })], new Planners.BarSolver()).Value;
        var set = BenchPacket.Of(Request(hatchet, Papers[paper], units) with { Stock = stock }, ["buy", "cut-map", "tags"]);
        Assert.Equal(3, set.Sheets.Select(t => t.Kind).Distinct().Count());
        AssertTidy(set);
        Assert.Equal(stock.Cuts.Sum(c => c.Count), set.Sheets.SelectMany(t => t.Marks.OfType<TextMark>()).Count(t => t.Text == "heat number") - stock.Cuts.Sum(c => c.DropHoldsPiece || c.Drop.Mm >= BarTags.ShortestDropMm ? c.Count : 0));
    }

    [Theory]
    [InlineData("a4", UnitsShown.Both, SheathKind.Leather)]
    [InlineData("letter", UnitsShown.Both, SheathKind.Sheet)]
    [InlineData("letter", UnitsShown.Inch, SheathKind.Leather)]
    public void The_words_of_a_sheath_are_tidy_and_on_one_sheet(string paper, UnitsShown units, SheathKind kind)
    {
        var paring = ExamplePieces.Paring();
        var sheath = new SheathPlan(kind) { BeltLoop = Length.OfMm(38), MaterialThickness = Length.OfMm(3) };
        var set = BenchPacket.Of(Request(paring with { Plan = paring.Plan with { Sheath = sheath } }, Papers[paper], units), ["sheath"]);
        AssertTidy(set with { Sheets = set.Sheets[..1] });
        Assert.Contains(set.Sheets[0].Marks.OfType<TextMark>(), t => t.Text == $"1 of {set.Sheets.Length}");
        Assert.DoesNotContain(set.Sheets[0].Marks.OfType<TextMark>(), t => t.Text.EndsWith('…'));
        Assert.Equal(2, set.Sheets.Length);
        Assert.Contains(set.Sheets[1].Marks.OfType<TextMark>(), t => t.Text == "Packet sheet 2 of 2");
    }

    [Theory]
    [InlineData("hatchet", 5000)]
    [InlineData("hatchet", 40)]
    [InlineData("assumed", 0)]
    public void Many_holes_or_none(string piece, int count)
    {
        var results = WithHoles(Pieces[piece](), count, i => $"H{i}");
        var set = BenchPacket.Of(Request(results), OwnKinds);
        AssertTidy(set);
        var names = set.Sheets.Where(s => s.Kind == "holes").SelectMany(s => s.Marks.OfType<TextMark>()).Select(t => t.Text).ToHashSet();
        for (var i = 0; i < count; i++) Assert.Contains($"H{i}", names);
        if (count == 0) Assert.DoesNotContain(set.Sheets, s => s.Kind == "holes");
    }

    [Fact]
    public void Errors_lie_on_top()
    {
        var hatchet = ExamplePieces.Hatchet();
        Assert.Equal("cover", BenchPacket.Of(Request(hatchet), []).Sheets[0].Kind);
        var grave = hatchet with { Findings = [new("hole.overlap", Severity.Error, "holes", null, "Two holes run into one another.", "", "", "", "")] };
        var sheets = BenchPacket.Of(Request(grave), []).Sheets;
        Assert.Equal(["findings", "cover"], sheets.Take(2).Select(t => t.Kind));
        Assert.Contains(sheets[1].Marks.OfType<TextMark>(), t => t.Text.StartsWith("Findings (sheet 1)", StringComparison.Ordinal));
    }

    [Fact]
    public void The_template_names_holes_in_the_unit_asked_for()
    {
        string[] Words(UnitsShown units) => [.. BenchPacket.Of(Request(ExamplePieces.Hatchet(), units: units), ["template"]).Sheets[0].Marks.OfType<TextMark>().Select(t => t.Text)];
        Assert.Contains("L1 Ø16", Words(UnitsShown.Both));
        Assert.Contains("L1 Ø0.6299 in", Words(UnitsShown.Inch));
    }

    [Fact]
    public void Very_long_and_strange_words_do_not_leave_their_place()
    {
        var longest = string.Concat(Enumerable.Repeat("a very long name \u0007 without end ", 4000));
        var results = WithHoles(ExamplePieces.Hatchet(), 5, i => new string('W', 300) + i);
        results = results with
        {
            Plan = results.Plan with { Name = longest, Revision = longest, Datum = results.Plan.Datum with { Name = longest }, Stock = results.Plan.Stock with { Steel = longest, Condition = longest } },
            Order = [.. results.Order.Select(s => s with { What = longest, On = longest, Gate = longest, Why = longest })],
            Findings = [new("x", Severity.Error, longest, new Point(10, 10), longest, longest, longest, longest, longest)],
            Bench = results.Bench with { AlongFrom = longest, AcrossFrom = longest, Remark = longest },
        };
        AssertTidy(BenchPacket.Of(Request(results), OwnKinds));
    }

    [Fact]
    public void Sheets_are_numbered_through_and_the_order_of_work_names_the_right_ones()
    {
        var set = BenchPacket.Of(Request(ExamplePieces.Hatchet()), []);
        for (var i = 0; i < set.Sheets.Length; i++)
        {
            var wanted = set.Sheets[i].Kind is "template" or "drill-template" or "sheath" ? $"Packet sheet {i + 1} of {set.Sheets.Length}" : $"{i + 1} of {set.Sheets.Length}";
            Assert.Contains(set.Sheets[i].Marks.OfType<TextMark>(), t => t.Text == wanted);
        }

        var holes = set.Sheets.Select((s, i) => (s.Kind, Number: i + 1)).First(s => s.Kind == "holes").Number;
        var order = set.Sheets.Where(s => s.Kind == "order").SelectMany(s => s.Marks.OfType<TextMark>()).Select(t => t.Text).ToList();
        Assert.Contains($"sheet {holes}", order);
    }

    [Fact]
    public void Kinds_can_be_asked_for_and_keep_the_order_of_the_packet()
    {
        var set = BenchPacket.Of(Request(ExamplePieces.Hatchet()), ["template", "holes", "no such sheet"]);
        Assert.Equal(["holes", "template"], set.Sheets.Select(s => s.Kind).Distinct());
        Assert.Equal(SheetKinds.All.Length, SheetKinds.All.Select(k => k.Key).Distinct().Count());
    }

    [Fact]
    public void The_same_request_gives_the_same_bytes()
    {
        var request = Request(ExamplePieces.Kitchen());
        Assert.Equal(PdfWriter.Write(BenchPacket.Of(request, [])), PdfWriter.Write(BenchPacket.Of(request, [])));
    }

    [Theory]
    [InlineData("hatchet", UnitsShown.Both)]
    [InlineData("kitchen", UnitsShown.Mm)]
    [InlineData("paring", UnitsShown.Inch)]
    [InlineData("skeleton-knife", UnitsShown.Both)]
    public void What_is_printed_is_what_was_looked_through(string piece, UnitsShown units)
    {
        var set = BenchPacket.Of(Request(Pieces[piece](), units: units), OwnKinds);
        var text = new StringBuilder();
        foreach (var sheet in set.Sheets)
        {
            text.Append("== ").Append(sheet.Kind).Append('\n');
            foreach (var line in sheet.Marks.OfType<TextMark>().GroupBy(t => Math.Round(t.At.Y, 1)).OrderByDescending(g => g.Key))
                text.AppendJoin(" | ", line.OrderBy(t => t.At.X).Select(t => t.Text)).Append('\n');
        }

        var path = System.IO.Path.Combine(Here(), "..", "..", "..", "expected", "sheets", piece + ".txt");
        if (GeneratedPage.Writing) File.WriteAllText(path, text.ToString());
        Assert.Equal(File.ReadAllText(path), text.ToString());
    }

    [Fact]
    public void Running_dimensions_start_at_the_bench_datum()
    {
        // hole L1 lies 100 mm from the piece's left end, which lies 3 mm, the shop's end allowance, from the sawn end; 103 mm = 4.055 in, nearest 4 1/16 in = 103.19 mm
        var layout = BenchPacket.Of(Request(ExamplePieces.Hatchet()), ["layout"]).Sheets[0].Marks.OfType<TextMark>().ToList();
        Assert.Contains(layout, t => t.Text == "103.00" && t.AngleDegrees == 90);
        Assert.Contains(layout, t => t.Text == "4.055");
        Assert.Contains(layout, t => t.Text == "4 1/16");
    }

    private static Dictionary<string, Func<Results>> Pieces { get; } = new(StringComparer.Ordinal)
    {
        ["hatchet"] = ExamplePieces.Hatchet,
        ["kitchen"] = ExamplePieces.Kitchen,
        ["paring"] = ExamplePieces.Paring,
        ["skeleton-knife"] = ExamplePieces.SkeletonKnife,
        ["assumed"] = ExamplePieces.Assumed,
        ["turned"] = () => Turned(ExamplePieces.Kitchen()),
    };

    private static Dictionary<string, PaperSize> Papers { get; } = new(StringComparer.Ordinal)
    {
        ["a4"] = PaperSize.A4,
        ["letter"] = PaperSize.Letter,
        ["a3"] = PaperSize.A3,
        ["roll"] = PaperSize.Roll(610),
    };

    private static SheetRequest Request(Results results, PaperSize? paper = null, UnitsShown units = UnitsShown.Both)
        => new(results, paper ?? PaperSize.A4, 5, PrintScale.True, false, new DateOnly(2026, 1, 15), units, "shop.toml beside the plan") { Programs = new(() => MakeProgram.Reports(results, "piece")) };

    /// <summary>Measured from the right end and the upper edge.</summary>
    private static Results Turned(Results results)
    {
        var plan = results.Plan with { Datum = new Datum(new DatumMark(DatumSide.Right, default), new DatumMark(DatumSide.Top, default), "butt") };
        return results with { Plan = plan, Bench = BenchEdges.Of(plan, results.Shop) };
    }

    private static Results WithHoles(Results results, int count, Func<int, string> name)
        => results with { Holes = [.. Enumerable.Range(0, count).Select(i => new PlacedHole(name(i), new Point(3 + (i * 170.0 / Math.Max(1, count)), 8 + (i % 7)), Length.OfMm(1 + (i % 3)), "", HoleUse.Lightening, HoleMake.Drill, null))] };

    private static void AssertTidy(SheetSet set)
    {
        Assert.NotEmpty(set.Sheets);
        foreach (var sheet in set.Sheets)
        {
            var inside = new Box(10, 10, sheet.WidthMm - 10, sheet.HeightMm - 10).Grown(0.05);
            var texts = sheet.Marks.OfType<TextMark>().Select(t => (t.Text, Box: TextSpace.Of(t))).ToList();
            foreach (var (text, box) in texts)
            {
                if (!inside.Holds(new Point(box.MinX, box.MinY)) || !inside.Holds(new Point(box.MaxX, box.MaxY))) Assert.Fail($"{sheet.Kind}: '{Short(text)}' leaves the paper: {box}");
            }

            for (var i = 0; i < texts.Count; i++)
            {
                var box = texts[i].Box.Grown(-0.01);
                for (var j = i + 1; j < texts.Count; j++)
                {
                    if (box.Touches(texts[j].Box)) Assert.Fail($"{sheet.Kind}: '{Short(texts[i].Text)}' {box} overlaps '{Short(texts[j].Text)}' {texts[j].Box}");
                }
            }
        }
    }

    private static string Short(string text) => text.Length < 60 ? text : text[..60];

    private static string Here([CallerFilePath] string path = "") => System.IO.Path.GetDirectoryName(path)!;
}
