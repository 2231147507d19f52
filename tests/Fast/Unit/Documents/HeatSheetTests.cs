using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Documents;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.Tests;

/// <summary>What stands on the sheets of temper, straightening and hardness.</summary>
public class HeatSheetTests
{
    private static Results Piece(string steel, HardnessBand wanted, Func<Shop, Shop>? shop = null)
    {
        var r = ExamplePieces.Hatchet();
        return WorkUp.Of(r.Plan with { Target = r.Plan.Target with { Hardness = wanted }, Stock = r.Plan.Stock with { Steel = steel } }, shop is null ? r.Shop : shop(r.Shop), SteelList.BuiltIn.Find(steel));
    }

    private static string Words(Results r, string kind)
        => string.Join(' ', BenchPacket.Of(new(r, PaperSize.A4, 5, PrintScale.True, false, new DateOnly(2026, 1, 15), UnitsShown.Both, "shop.toml"), [kind]).Sheets.SelectMany(s => s.Marks.OfType<TextMark>()).Select(t => t.Text));

    /// <summary>O1 at 59 HRC after 2 h, by its two printed tables near 260 °C; a dial that reads 14 °C high is set that much higher.</summary>
    [Fact]
    public void Temper_card_counts_the_ovens_error_in()
    {
        var r = Piece("O1", new HardnessBand(60, 62), s => s with { TemperOven = new Oven("bench oven", null, null, null, 14) { SwingC = 3 } });
        var t = TemperPlan.Of(r)!;
        var words = Words(r, "temper");
        Assert.Equal(t.SetPoint!.Steel!.Value.Celsius + 14, t.Set!.Value.Celsius, 1e-9);
        Assert.Contains(Shown.Both(t.Set.Value), words, StringComparison.Ordinal);
        Assert.Contains("bench oven reads 14 °C (25 °F) high", words, StringComparison.Ordinal);
        Assert.Contains("data-sheet-o1-a", words, StringComparison.Ordinal);
        Assert.Contains("food", words, StringComparison.Ordinal);
    }

    [Fact]
    public void Trouble_and_want_of_data_are_said_plainly()
    {
        Assert.Contains("Aim for", Words(Piece("80CrV2", new HardnessBand(55, 57)), "temper"), StringComparison.Ordinal);
        Assert.Contains("test pieces", Words(Piece("52100", new HardnessBand(60, 61)), "temper"), StringComparison.Ordinal);
    }

    [Fact]
    public void Straightening_stays_under_the_last_temper()
    {
        var r = Piece("8670", new HardnessBand(57, 59));
        Assert.Contains(Shown.Both(TemperPlan.Of(r)!.StraightenAtMost!.Value), Words(r, "straightening"), StringComparison.Ordinal);
        Assert.Contains("face shield", Words(r, "straightening"), StringComparison.Ordinal);
    }

    [Fact]
    public void Hardness_sheet_names_the_reading_that_is_off_and_what_to_look_at()
    {
        HardnessEntry Read(double hrc, string piece, string load, double oil) => new(null, "autumn", "8670", "", Temperature.OfCelsius(250), 2, 2, hrc, null, piece, load, "", Temperature.OfCelsius(oil));
        ImmutableArray<HardnessEntry> log = [Read(57, "1", "1", 50), Read(58, "2", "1", 52), Read(58, "3", "1", 55), Read(54, "4", "2", 71)];
        var words = Words(Piece("8670", new HardnessBand(57, 59), s => s with { HardnessLog = log, HardnessTester = new HardnessTester("bench", 0) }), "hardness");
        Assert.Contains("autumn, piece 4, load 2: 54.0 HRC is far from the rest of its batch", words, StringComparison.Ordinal);
        Assert.Contains("1. oil too hot at the quench", words, StringComparison.Ordinal);
        Assert.Contains("3 readings of 8670", words, StringComparison.Ordinal);
    }

    /// <summary>Nothing is drawn for a steel of which nothing is known.</summary>
    [Fact]
    public void No_sheet_without_data()
    {
        var r = Piece("8670", new HardnessBand(57, 59));
        var bare = WorkUp.Of(r.Plan, r.Shop, r.Steel! with { Heat = SteelHeat.None });
        Assert.Empty(TemperCard.Draw(new(bare, PaperSize.A4, 5, PrintScale.True, false, new DateOnly(2026, 1, 15), UnitsShown.Both, "shop.toml")));
        Assert.Empty(HardnessSheet.Draw(new(bare, PaperSize.A4, 5, PrintScale.True, false, new DateOnly(2026, 1, 15), UnitsShown.Both, "shop.toml")));
    }
}
