using CsCheck;
using Tangwright.Documents;
using Tangwright.Foundation;

namespace Tangwright.Tests;

public sealed class TilePlanTests
{
    /// <summary>Counted by hand from 1, or 1 + ceil((L − u)/(u − overlap)): 10 mm margins and 15 mm overlap.</summary>
    [Theory]
    [InlineData(275, 277, 1)]
    [InlineData(277, 277, 1)]
    [InlineData(277.1, 277, 2)]
    [InlineData(275, 259.4, 2)]
    [InlineData(295, 277, 2)]
    [InlineData(330, 277, 2)]
    [InlineData(1219, 277, 5)]
    [InlineData(539, 277, 2)]
    [InlineData(539.1, 277, 3)]
    public void Sheets_for_a_length(double length, double usable, int sheets) => Assert.Equal(sheets, TilePlan.SheetsFor(length, usable, 15));

    /// <summary>The 275 mm skeleton hatchet with 1 mm to the sawn end.</summary>
    [Theory]
    [InlineData("a4", 0, 1)]
    [InlineData("letter", 0, 2)]
    [InlineData("a4", 10, 2)]
    [InlineData("a3", 10, 1)]
    public void Sheets_for_the_hatchet(string paper, double surround, int sheets)
    {
        var size = paper switch { "a4" => PaperSize.A4, "letter" => PaperSize.Letter, _ => PaperSize.A3 };
        var plan = TilePlan.Of(new Box(-1, -1.1, 275, 74), [], true, true, new TemplateOptions(size, 10, PrintScale.True, SurroundMm: surround))!;
        Assert.Equal(sheets, plan.Tiles.Length);
    }

    [Fact]
    public void The_paper_stands_where_that_takes_fewer_sheets()
    {
        var tall = TilePlan.Of(new Box(0, 0, 100, 270), [], true, true, new TemplateOptions(PaperSize.A4, 10, PrintScale.True))!;
        Assert.Single(tall.Tiles);
        Assert.Equal((210.0, 297.0, false), (tall.WidthMm, tall.HeightMm, tall.FeedIsLevel));
        var narrow = TilePlan.Of(new Box(0, 0, 275, 75), [], true, true, new TemplateOptions(PaperSize.Roll(100), 10, PrintScale.True))!;
        Assert.Single(narrow.Tiles);
        Assert.Equal((100.0, true), (narrow.HeightMm, narrow.FeedIsLevel));
    }

    [Fact]
    public void Sheets_cover_the_piece_neighbours_overlap_and_every_point_is_in_its_place()
    {
        var cases = Gen.Select(Gen.Double[1, 2000], Gen.Double[1, 700], Gen.Bool, Gen.Bool, Gen.Bool, Gen.Double[0.9, 1.1]);
        cases.Sample((w, h, mirror, left, bottom, scale) =>
        {
            var content = new Box(-37, 11, -37 + w, 11 + h);
            var options = new TemplateOptions(PaperSize.A4, 7, new PrintScale(scale, 1.01), mirror);
            var plan = TilePlan.Of(content, [], left, bottom, options);
            if (plan is null) return;
            var spots = new[] { new Point(content.MinX, content.MinY), new Point(content.MaxX, content.MaxY), new Point(content.MinX, content.MaxY), content.Centre };
            foreach (var p in spots)
            {
                var seen = plan.Tiles.Where(t => plan.Window.Grown(1e-6).Holds(t.PlanToSheet.Map(p))).ToArray();
                Assert.NotEmpty(seen);
                foreach (var t in seen)
                {
                    var assembled = plan.AssembledToSheet(t).Map(plan.PlanToAssembled.Map(p));
                    Assert.True(assembled.To(t.PlanToSheet.Map(p)) < 1e-9);
                }
            }

            // a millimetre of the piece is a millimetre on paper times the correction, mirrored only across
            var first = plan.Tiles[0].PlanToSheet;
            Assert.Equal(plan.Stretch.X, first.MapStep(new Point(1, 0)).X, 1e-12);
            Assert.Equal(mirror ? -plan.Stretch.Y : plan.Stretch.Y, first.MapStep(new Point(0, 1)).Y, 1e-12);
            Assert.True(plan.FeedIsLevel ? plan.Stretch == new Point(1.01, scale) : plan.Stretch == new Point(scale, 1.01));
        });
    }

    [Fact]
    public void Joins_keep_off_holes_where_there_is_slack()
    {
        // centred on the place the first join would take: 277 − 15/2 less the 7 mm kept beside the datum
        var hole = new Box(255, 30, 270, 45);
        var plan = TilePlan.Of(new Box(0, 0, 330, 60), [hole], true, true, new TemplateOptions(PaperSize.A4, 10, PrintScale.True))!;
        Assert.Equal(2, plan.Columns);
        var onAssembled = plan.PlanToAssembled.Map(new Point(255, 30)).X;
        var (joinFrom, joinTo) = (plan.StepXMm, plan.UsableWidthMm);
        Assert.True(onAssembled >= joinTo - 1e-9 || onAssembled + 15 <= joinFrom + 1e-9, $"hole from {onAssembled}, overlap {joinFrom} to {joinTo}");
    }

    [Fact]
    public void Paper_that_cannot_serve_is_refused_with_a_reason()
    {
        var good = new TemplateOptions(PaperSize.A4, 10, PrintScale.True);
        Assert.Null(TilePlan.Trouble(good));
        Assert.NotNull(TilePlan.Trouble(good with { MarginMm = 90 }));
        Assert.NotNull(TilePlan.Trouble(good with { MarginMm = double.NaN }));
        Assert.NotNull(TilePlan.Trouble(good with { Scale = new PrintScale(2, 1) }));
        Assert.NotNull(TilePlan.Trouble(good with { OverlapMm = -1 }));
        Assert.NotNull(TilePlan.Trouble(good with { Paper = PaperSize.Roll(50) }));
        Assert.Null(TilePlan.Of(new Box(0, 0, 1e9, 1e9), [], true, true, good));
    }
}
