using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.Tests;

/// <summary>Places of a plan moved in its text: only the place itself changes.</summary>
public class PlaceEditTests
{
    private const string Text = """
        tangwright = 1
        name = "Places"
        units = "mm"
        [stock]
        steel = "80CrV2"
        thickness = 4

        [outline]
        path = "M 0 0 L 100 0 L 100 30 L 0 30 Z"

        [datum]
        x = "left"    # the heel
        [edge]
        from = [0, 0]
        to = [ "60 mm" , 0 ]   # near the grip
        [bevel]
        height = "full"
        edge_finished = 0.5
        plunge = 62   # square
        [grip]
        from = [70, 15]
        to = [95, 15]

        [[hole_row]]
        name = "A"
        along = [[72, 15],
                 [92, "15 mm"]]   # the row
        count = 3
        diameters = 4
        [[hole_row]]
        name = "M"
        along = "midline"
        count = 3
        diameters = 4
        use = "pin"
        """;

    private static PlanFile File(string text = Text)
    {
        var read = PlanReader.Read(text, "x");
        Assert.True(read.IsGood, string.Join("\n", read.Faults));
        return read.Value;
    }

    private static PlanFile Gives(Checked<PlanFile> edit, params (string Old, string New)[] changes)
    {
        Assert.True(edit.IsGood, string.Join("\n", edit.Faults));
        Assert.Equal(changes.Aggregate(Text, (t, c) => t.Replace(c.Old, c.New, StringComparison.Ordinal)), edit.Value.Text);
        return edit.Value;
    }

    [Fact]
    public void Ends_of_the_edge_stay_on_the_outline()
    {
        Gives(PlaceEdit.MoveEdgeEnd(File(), first: false, new Point(55.25, -3)), ("[ \"60 mm\" , 0 ]", "[ \"55.25 mm\" , 0 ]"));
        Gives(PlaceEdit.MoveEdgeEnd(File(), first: true, new Point(-4, 12)), ("from = [0, 0]", "from = [0, 12]"));
        var round = File(Text.Replace("L 0 30 Z", "L 20 30 A 30 30 0 0 1 0 0 Z", StringComparison.Ordinal).Replace("from = [0, 0]", "from = [20, 30]", StringComparison.Ordinal));
        var moved = PlaceEdit.MoveEdgeEnd(round, first: true, new Point(3, 20)).Value.Plan;
        Assert.InRange(Nearest.Distance(moved.Outline, moved.Edge!.From), 0, 0.001);
        Assert.InRange(moved.Edge.From.To(Nearest.On(round.Plan.Outline, new Point(3, 20)).At), 0, 0.001);
    }

    [Fact]
    public void A_plunge_stays_square_until_it_is_drawn_across()
    {
        Gives(PlaceEdit.MovePlungeEnd(File(), first: true, new Point(58, 3)), ("plunge = 62", "plunge = 58"));
        var tilted = Gives(PlaceEdit.MovePlungeEnd(File(), first: false, new Point(58, 20)), ("plunge = 62", "plunge = [[62, 0], [58, 20]]"));
        Assert.Contains("plunge = [[62, 0], [57, 20]]   # square", PlaceEdit.MovePlungeEnd(tilted, first: false, new Point(57, 20)).Value.Text, StringComparison.Ordinal);
        Assert.Contains("plunge = 60   # square", PlaceEdit.WritePlunge(tilted, square: true).Value.Text, StringComparison.Ordinal);
        Gives(PlaceEdit.WritePlunge(File(), square: false), ("plunge = 62", "plunge = [[62, 0], [62, 30]]"));
    }

    [Fact]
    public void Grip_and_datum_and_rows_are_moved()
    {
        Gives(PlaceEdit.MoveGripEnd(File(), first: true, new Point(68, 16)), ("from = [70, 15]", "from = [68, 16]"));
        Assert.False(PlaceEdit.MoveGripEnd(File(), first: true, new Point(95, 15)).IsGood);
        Gives(PlaceEdit.MoveDatum(File(), new Point(10, 0)), ("x = \"left\"", "x = 10"));
        Gives(PlaceEdit.MoveDatum(File(), new Point(0, 15)), ("# the heel\n", "# the heel\ny = 15\n"));
        Gives(PlaceEdit.MoveRowEnd(File(), "A", first: false, new Point(90, 16)), ("[92, \"15 mm\"]", "[90, \"16 mm\"]"));
        Gives(PlaceEdit.MoveRowEnd(File(), "M", first: true, new Point(74, 15)), ("use = \"pin\"", "use = \"pin\"\nfrom = [74, 15]\n"));
    }

    [Fact]
    public void What_is_not_there_is_refused_in_words()
    {
        var bare = File(Text[..Text.IndexOf("[datum]", StringComparison.Ordinal)]);
        Assert.Contains("no sharpened part", PlaceEdit.MoveEdgeEnd(bare, first: true, default).Faults[0].Message, StringComparison.Ordinal);
        Assert.Contains("no plunge line", PlaceEdit.MovePlungeEnd(bare, first: true, default).Faults[0].Message, StringComparison.Ordinal);
        Assert.Contains("no row", PlaceEdit.MoveRowEnd(bare, "A", first: true, default).Faults[0].Message, StringComparison.Ordinal);
        Assert.Equal(new Point(20, 0), PlaceEdit.Sharpen(bare, new Point(20, -1), new Point(80, -1)).Value.Plan.Edge!.From);
        Assert.Equal(15, PlaceEdit.LayGrip(bare, new Point(20, 15), new Point(80, 15)).Value.Plan.Grip!.Middle.Y);
    }
}
