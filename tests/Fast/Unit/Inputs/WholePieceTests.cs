using CsCheck;
using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.Tests;

/// <summary>The whole piece mirrored, scaled and offset in its text: everything goes along, each number where it stands.</summary>
public class WholePieceTests
{
    private const string Text = """
        # a small one
        tangwright = 1
        name = "Whole"
        units = "mm"   # of all
        [stock]
        steel = "80CrV2"
        thickness = "1/8 in"
        [outline]
        path = "M0 0h100v20 A 10,10 0 0190,30 L 40 30q-20 0-40-12z"
        [datum]
        y = 5   # the heel line
        [edge]
        from = [0, 0]
        to = [ "2 in" , 0 ]
        [bevel]
        height = 8   # stays
        edge_finished = 0.5
        plunge = 60
        [grip]
        from = [65, 12]
        to = [95, 12]
        [[hole]]
        name = "A"
        at = [ "1 in", 10 ]
        diameter = "#30"   # stays
        [[hole_row]]
        along = [[70, 14], [90, 14]]
        count = 3
        diameters = 4
        """;

    private static PlanFile File(string text)
    {
        var read = PlanReader.Read(text, "x");
        Assert.True(read.IsGood, string.Join("\n", read.Faults));
        return read.Value;
    }

    private static void Gives(Checked<PlanFile> edit, params (string Old, string Now)[] changes)
    {
        Assert.True(edit.IsGood, string.Join("\n", edit.Faults));
        Assert.Equal(changes.Aggregate(Text, (t, c) => t.Replace(c.Old, c.Now, StringComparison.Ordinal)), edit.Value.Text);
    }

    [Fact]
    public void End_for_end_each_x_turns_about_and_arcs_run_the_other_way()
        => Gives(
            WholePiece.Mirror(File(Text), upsideDown: false),
            ("M0 0h100v20", "M100 0h-100v20"),
            ("A 10,10 0 0190,30 L 40 30q-20 0-40-12z", "A 10,10 0 00 10,30 L 60 30q20 0 40-12z"),
            ("[datum]\ny = 5   # the heel line\n", "[datum]\ny = 5   # the heel line\nx = \"right\"\n"),
            ("from = [0, 0]", "from = [100, 0]"),
            ("\"2 in\"", "\"1.937007874016 in\""),
            ("plunge = 60", "plunge = 40"),
            ("[65, 12]", "[35, 12]"),
            ("[95, 12]", "[5, 12]"),
            ("\"1 in\", 10", "\"2.937007874016 in\", 10"),
            ("[[70, 14], [90, 14]]", "[[30, 14], [10, 14]]"));

    [Fact]
    public void Upside_down_each_y_turns_about()
        => Gives(
            WholePiece.Mirror(File(Text), upsideDown: true),
            ("M0 0h100v20", "M0 30h100v-20"),
            ("A 10,10 0 0190,30 L 40 30q-20 0-40-12z", "A 10,10 0 0090,0 L 40 0q-20 0-40 12z"),
            ("y = 5 ", "y = 25 "),
            ("from = [0, 0]", "from = [0, 30]"),
            ("\"2 in\" , 0", "\"2 in\" , 30"),
            ("[65, 12]", "[65, 18]"),
            ("[95, 12]", "[95, 18]"),
            ("\"1 in\", 10", "\"1 in\", 20"),
            ("[[70, 14], [90, 14]]", "[[70, 16], [90, 16]]"));

    [Fact]
    public void Twice_as_long_all_places_double_and_no_diameter_does()
        => Gives(
            WholePiece.ScaleTo(File(Text), Length.OfMm(200)),
            ("M0 0h100v20", "M0 -5h200v40"),
            ("A 10,10 0 0190,30 L 40 30q-20 0-40-12z", "A 20,20 0 01 180,55 L 80 55q-40 0-80-24z"),
            ("from = [0, 0]", "from = [0, -5]"),
            ("\"2 in\" , 0", "\"4 in\" , -5"),
            ("plunge = 60", "plunge = 120"),
            ("[65, 12]", "[130, 19]"),
            ("[95, 12]", "[190, 19]"),
            ("\"1 in\", 10", "\"2 in\", 15"),
            ("[[70, 14], [90, 14]]", "[[140, 23], [180, 23]]"));

    [Fact]
    public void An_offset_takes_the_sharpened_part_along_square_to_it()
    {
        var grown = WholePiece.Offset(File(Text), Length.OfMm(2)).Value.Plan;
        Assert.Equal(new SharpenedPart(new(0, -2), new(50.8, -2)), grown.Edge);
        Assert.Equal(104, grown.Outline.Bounds.Width, 1e-6);
        Assert.Equal(34, grown.Outline.Bounds.Height, 1e-6);
        var fault = Assert.Single(WholePiece.Offset(File(Text), Length.OfMm(-12)).Faults);
        Assert.Contains("12.00 mm", fault.Message, StringComparison.Ordinal);
        Assert.Contains("smaller distance", fault.Remedy, StringComparison.Ordinal);
    }

    /// <summary>Laws for the worked examples, edges turned to bevels and holes drilled: a mirror changes no weight and carries the balance along, twice gives the same piece; lengths times k make areas times k².</summary>
    [Theory]
    [InlineData("skeleton-hatchet")]
    [InlineData("kitchen-knife")]
    [InlineData("paring-knife")]
    public void A_mirror_keeps_the_weight_and_a_scale_squares_the_area(string name)
    {
        var file = File(Repository.Text("examples", name + ".plan.toml"));
        var before = Worked.Stages(file.Plan, 7.8)[^1];
        var middle = file.Plan.Outline.Bounds.Centre;
        foreach (var upsideDown in new[] { false, true })
        {
            var once = WholePiece.Mirror(file, upsideDown).Value;
            var after = Worked.Stages(once.Plan, 7.8)[^1];
            Assert.Equal(before.Mass!.Value.Grams, after.Mass!.Value.Grams, 1e-6 * before.Mass.Value.Grams);
            var balance = upsideDown ? before.Balance with { Y = (2 * middle.Y) - before.Balance.Y } : before.Balance with { X = (2 * middle.X) - before.Balance.X };
            Assert.True(balance.To(after.Balance) < 1e-4);
            Assert.Equal(before.BalanceFromDatum.Mm, after.BalanceFromDatum.Mm, 1e-4);
            Assert.Equal(Remarks(file.Text), Remarks(once.Text));

            var twice = WholePiece.Mirror(once, upsideDown).Value.Plan;
            Assert.All(file.Plan.Outline.Segments.Zip(twice.Outline.Segments), s => Assert.True(s.First.Start.To(s.Second.Start) < 1e-9 && s.First.At(0.5).To(s.Second.At(0.5)) < 1e-9));
            Assert.All(HolePlacement.Of(file.Plan).Zip(HolePlacement.Of(twice)), h => Assert.True(h.First.At.To(h.Second.At) < 1e-9));
        }

        Gen.Double[0.5, 2].Sample(
            k =>
            {
                var scaled = WholePiece.ScaleTo(file, Length.OfMm(file.Plan.Outline.Bounds.Width * k)).Value.Plan;
                var ratio = Moments.Of(scaled.Outline).AreaMm2 / Moments.Of(file.Plan.Outline).AreaMm2;
                return Math.Abs(ratio - (k * k)) < 1e-9 && FromDatum.Zero(scaled).To(FromDatum.Zero(file.Plan)) < 1e-9
                    && scaled.Holes.OfType<Hole>().Zip(file.Plan.Holes.OfType<Hole>()).All(h => h.First.Diameter == h.Second.Diameter);
            },
            iter: 30,
            seed: "0000000000000");
    }

    private static IEnumerable<string> Remarks(string text) => text.Split('\n').Where(l => l.Contains('#', StringComparison.Ordinal)).Select(l => l[l.IndexOf('#', StringComparison.Ordinal)..]);
}
