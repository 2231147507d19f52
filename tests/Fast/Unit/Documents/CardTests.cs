using Tangwright.Core;
using Tangwright.Documents;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.Tests;

/// <summary>What stands on the cards for layout, readout and guide piece.</summary>
public class CardTests
{
    private static Results Hatchet(Func<Plan, Plan>? plan = null, Func<Machine, Machine>? machine = null, params MeasuredHole[] measured)
    {
        var r = ExamplePieces.Hatchet();
        var shop = machine is null ? r.Shop : r.Shop with { Machines = [.. r.Shop.Machines.Select(machine)] };
        return WorkUp.Of(plan is null ? r.Plan : plan(r.Plan), shop, SteelList.BuiltIn.Find(r.Plan.Stock.Steel), [.. measured]);
    }

    private static Plan Profiled(Plan p) => p with { Layout = p.Layout with { DrilledIn = DrilledIn.Profile } };

    private static List<TextMark> Texts(Results r, string kind, UnitsShown units = UnitsShown.Both)
        => [.. BenchPacket.Of(new(r, PaperSize.A4, 5, PrintScale.True, false, new DateOnly(2026, 1, 15), units, "shop.toml"), [kind]).Sheets.SelectMany(s => s.Marks.OfType<TextMark>())];

    private static string Words(Results r, string kind, UnitsShown units = UnitsShown.Both) => string.Join(' ', Texts(r, kind, units).Select(t => t.Text));

    /// <summary>Worked by hand: 4 7/8 in is 123.825 mm, 0.175 short; 7 31/64 in is 190.103 mm, 0.103 over.</summary>
    [Fact]
    public void Sixty_fourths_stand_with_their_error_and_a_flag()
    {
        var words = Words(Hatchet(Profiled), "layout");
        Assert.Contains("124.00 4.882 4 7/8 ▲ −0.175", words, StringComparison.Ordinal);
        Assert.Contains("190.00 7.480 7 31/64 ▲ +0.103", words, StringComparison.Ordinal);
        Assert.Contains("not by sixty-fourths", words, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(DrilledIn.Bar, "sawn end at the left", "103.00")]
    [InlineData(DrilledIn.Rectangle, "left end of the sawn rectangle", "103.00")]
    [InlineData(DrilledIn.Profile, "left end of the profiled piece", "100.00")]
    public void Layout_and_readout_measure_from_what_can_be_touched(DrilledIn state, string from, string x)
    {
        var r = Hatchet(p => p with { Layout = p.Layout with { DrilledIn = state } });
        foreach (var kind in new[] { "layout", "readout" })
        {
            var words = Words(r, kind);
            Assert.Contains(from, words, StringComparison.Ordinal);
            Assert.Contains(x, words, StringComparison.Ordinal);
            Assert.Equal(state == DrilledIn.Bar, words.Contains("Piece 2: add 283.50 mm", StringComparison.Ordinal));
        }

        Assert.Contains("half the edge finder's diameter", Words(r, "readout"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_measured_guide_hole_stands_on_every_card()
    {
        var r = Hatchet(Profiled, null, new MeasuredHole("guide", "L3", new Point(147.22, 17.55), null, MeasuredEdges.OfPlan, null), new MeasuredHole("guide", "L7", new Point(229.14, 18.06), Length.OfMm(10.03), MeasuredEdges.OfPlan, null));
        Assert.Contains("147.22", Words(r, "layout"), StringComparison.Ordinal);
        Assert.Contains("147.22", Words(r, "readout"), StringComparison.Ordinal);
        Assert.Contains(LayoutCsv.Rows(r), row => row[0] == "L3" && row[2] == "147.22");
        Assert.Contains(ReadoutCsv.Rows(r), row => row[7] == "L3" && row[8] == "147.22");
    }

    [Fact]
    public void The_play_is_told_in_numbers_and_gone_past()
    {
        var words = Words(Hatchet(Profiled, m => m with { Backlash = Length.OfMm(0.3) }), "readout");
        Assert.Contains("the play of the screws is 0.3 mm (0.012 in)", words, StringComparison.Ordinal);

        // L7 on the way back of the pilot: 229 less twice the play
        Assert.Contains("first 228.40", words, StringComparison.Ordinal);
        Assert.DoesNotContain(Texts(Hatchet(Profiled, m => m with { Backlash = Length.Zero }), "readout"), t => t.Text.StartsWith("first ", StringComparison.Ordinal));
    }

    [Fact]
    public void A_short_table_is_told_how_to_clamp_anew()
    {
        var words = Words(Hatchet(null, m => m with { TravelX = Length.OfMm(120) }), "readout");
        Assert.Contains("slide the work 90 mm (3.543 in) towards the left", words, StringComparison.Ordinal);
        Assert.Contains("into L5; when it enters freely set the readout to x 193.00 mm", words, StringComparison.Ordinal);
        Assert.Contains("the pin of L6 must enter there too", words, StringComparison.Ordinal);
        Assert.DoesNotContain("Clamp anew", Words(Hatchet(), "readout"), StringComparison.Ordinal);
    }

    [Fact]
    public void Figures_to_set_are_14_point_at_least()
    {
        // the size of a letter is its height over capitals; of this lettering 0.729 of the size in points
        const double LeastMm = 14 * 25.4 / 72 * 0.729;
        var r = Hatchet();
        foreach (var (kind, figure) in new[] { ("readout", "127.00"), ("layout", "127.00"), ("hole-card", "310 rpm") })
            Assert.Contains(Texts(r, kind), t => t.Text == figure && t.HeightMm >= LeastMm && t.AngleDegrees == 0);
    }

    [Fact]
    public void The_table_of_stops_has_them_all_in_order()
    {
        var rows = ReadoutCsv.Rows(Hatchet());
        Assert.Equal(["machine", "face", "clamping", "tool", "step", "rpm", "order", "hole", "x_mm", "y_mm"], rows[0].Take(10));
        var spots = rows.Where(x => x[4] == "spot").ToList();
        Assert.Equal(["L1", "L2", "L3", "L4", "L5", "L6", "L7", "lanyard"], spots.Select(x => x[7]));
        Assert.Equal(["1", "2", "3", "4", "5", "6", "7", "8"], spots.Select(x => x[6]));
        Assert.All(rows, x => Assert.Equal(rows[0].Length, x.Length));
        Assert.Equal(8, rows.Count(x => x[1] == "back"));
    }

    [Fact]
    public void A_press_alone_has_its_centres_punched_and_its_belt_step_told()
    {
        var r = ExamplePieces.Hatchet();
        r = WorkUp.Of(r.Plan, r.Shop with { Machines = [r.Shop.Machines[0]] }, r.Steel);
        var words = Words(r, "hole-card");
        Assert.Contains("Prick lightly", words, StringComparison.Ordinal);
        Assert.Contains("The chuck holds up to 13.00 mm", words, StringComparison.Ordinal);

        // 500, 890, 1400, 1900, 2500 rpm: 10 mm turns at 500
        Assert.Contains("drill, speed step 1 of 5, the slowest", words, StringComparison.Ordinal);
        Assert.DoesNotContain("Prick lightly", Words(ExamplePieces.Hatchet(), "hole-card"), StringComparison.Ordinal);
    }

    [Fact]
    public void The_guide_card_names_pins_order_and_what_was_measured()
    {
        var r = Hatchet(Profiled, null, new MeasuredHole("guide", "L7", new Point(229.14, 18.06), Length.OfMm(10.03), MeasuredEdges.OfPlan, null));
        var words = Words(r, "guide");
        Assert.Contains("Drill L6. Without moving a clamp put a pin", words, StringComparison.Ordinal);
        Assert.Contains("Drill lanyard, pin it", words, StringComparison.Ordinal);
        Assert.Contains("farthest apart of those that can be pinned, 48 mm", words, StringComparison.Ordinal);
        Assert.Contains("L1, L2, L3, L4, L5 on the mill-drill", words, StringComparison.Ordinal);
        Assert.Contains("229.14", words, StringComparison.Ordinal);
        Assert.Contains("0.05", words, StringComparison.Ordinal);
        Assert.Contains("never hold them by hand", words, StringComparison.Ordinal);
        Assert.Empty(BenchPacket.Of(new(ExamplePieces.Kitchen(), PaperSize.A4, 5, PrintScale.True, false, new DateOnly(2026, 1, 15), UnitsShown.Both, ""), ["guide"]).Sheets);
    }
}
