using CsCheck;
using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.Tests;

public class PlanEditTests
{
    private const string Text = """
        # my plan
        tangwright = 1
        name = 'Small "one"'   # a remark
        units = "mm"
        [stock]
        steel = "80CrV2"
          thickness = "1/4 in"   # of the bar
        width = 50

        [outline]
        path = "M0 0h100v30 L 0 30z"
        [edge]
        from = [0, 0]
        to = [ "100 mm" , 0 ]

        # the first hole
        [[hole]]
        name = "A"
        at = [ 10 , "1/2 in" ]   # here
        diameter = "#30"

        # the second hole
        [[hole]]
        name = "B"
        at = [30, 15]
        diameter = 6.0
        # the end
        """;

    private static PlanFile File(string text = Text)
    {
        var read = PlanReader.Read(text, "x");
        Assert.True(read.IsGood, string.Join("\n", read.Faults));
        return read.Value;
    }

    private static void Gives(Checked<PlanFile> edit, string old, string now, string text = Text)
    {
        Assert.True(edit.IsGood, string.Join("\n", edit.Faults));
        Assert.Equal(text.Replace(old, now, StringComparison.Ordinal), edit.Value.Text);
    }

    [Fact]
    public void Lengths_keep_the_unit_of_the_maker()
    {
        Gives(PlanEdit.SetLength(File(), "stock", "thickness", Length.OfMm(4.7625)), "\"1/4 in\"", "\"3/16 in\"");
        Gives(PlanEdit.SetLength(File(), "stock", "thickness", Length.OfMm(6)), "\"1/4 in\"", "\"0.236220472441 in\"");
        Gives(PlanEdit.SetLength(File(), "stock", "width", Length.OfMm(76.2)), "width = 50", "width = 76.2");
        Gives(PlanEdit.SetLength(File(), "stock", "length", Length.OfMm(1000)), "width = 50\n", "width = 50\nlength = 1000\n");
    }

    [Fact]
    public void Texts_keep_their_quotes()
    {
        Gives(PlanEdit.SetText(File(), "", "name", "Other"), "'Small \"one\"'", "'Other'");
        Gives(PlanEdit.SetText(File(), "", "name", "It's"), "'Small \"one\"'", "\"It's\"");
        Gives(PlanEdit.SetText(File(), "", "revision", "B"), "units = \"mm\"\n", "units = \"mm\"\nrevision = \"B\"\n");
        Gives(PlanEdit.SetText(File(), "datum", "x", "right"), "# the end", "# the end\n\n[datum]\nx = \"right\"\n");
    }

    [Fact]
    public void Holes_are_moved_sized_added_and_removed()
    {
        Gives(PlanEdit.MoveHole(File(), "A", new Point(11, 12.7)), "[ 10 , \"1/2 in\" ]", "[ 11 , \"1/2 in\" ]");
        Gives(PlanEdit.MoveHole(File(), "A", new Point(10, 25.4)), "[ 10 , \"1/2 in\" ]", "[ 10 , \"1 in\" ]");
        Gives(PlanEdit.SetDiameter(File(), "A", DrillSeries.Named("#29")!.Diameter), "#30", "#29");
        Gives(PlanEdit.SetDiameter(File(), "B", Length.OfMm(6.5)), "6.0", "6.5");
        Gives(PlanEdit.SetDiameter(File(), "B", DrillSeries.Fraction(16)), "6.0", "\"1/4 in\"");
        Gives(PlanEdit.AddHole(File(), new Hole("C", new Point(50, 15), Length.OfMm(5), "", HoleUse.Pin, HoleMake.Ream)), "6.0\n", "6.0\n\n[[hole]]\nname = \"C\"\nat = [50, 15]\ndiameter = 5\nuse = \"pin\"\nmake = \"ream\"\n");
        Gives(PlanEdit.RemoveHole(File(), "A"), "[[hole]]\nname = \"A\"\nat = [ 10 , \"1/2 in\" ]   # here\ndiameter = \"#30\"\n\n", "");
        Gives(PlanEdit.RemoveHole(File(), "B"), "[[hole]]\nname = \"B\"\nat = [30, 15]\ndiameter = 6.0\n", "");
    }

    [Fact]
    public void An_outline_point_takes_the_end_of_the_edge_along()
    {
        var edit = PlanEdit.MoveOutlinePoint(File(), new Point(100, 0), new Point(110, 0));
        Assert.Equal(Text.Replace("h100v30", "h110L 100 30", StringComparison.Ordinal).Replace("\"100 mm\"", "\"110 mm\"", StringComparison.Ordinal).Replace("L 100 30", "l -10 30", StringComparison.Ordinal), edit.Value.Text);
        Assert.Equal(new Point(100, 30), edit.Value.Plan.Outline.Segments[1].End);
        Assert.Equal(new Point(110, 0), edit.Value.Plan.Edge!.To);
    }

    [Fact]
    public void What_cannot_be_is_refused_with_a_reason()
    {
        Assert.Contains("two holes", Assert.Single(PlanEdit.AddHole(File(), new Hole("A", default, Length.OfMm(5), "", HoleUse.Pin, HoleMake.Drill)).Faults).Message, StringComparison.Ordinal);
        Assert.Contains("no single hole", Assert.Single(PlanEdit.MoveHole(File(), "Z", default).Faults).Message, StringComparison.Ordinal);
        Assert.Contains("not above 0", Assert.Single(PlanEdit.SetLength(File(), "stock", "thickness", Length.OfMm(-1)).Faults).Message, StringComparison.Ordinal);
        Assert.Contains("no single key", Assert.Single(PlanEdit.SetText(File(), "stock", "colour", "red").Faults).Message, StringComparison.Ordinal);
        Assert.Contains("has no point", Assert.Single(PlanEdit.MoveOutlinePoint(File(), new Point(50, 0), default).Faults).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void No_change_is_the_same_bytes()
    {
        var f = File("\uFEFF" + Text.ReplaceLineEndings("\r\n"));
        var p = f.Plan;
        Assert.Equal(f.Text, PlanEdit.SetLength(f, "stock", "thickness", p.Stock.Thickness).Value.Text);
        Assert.Equal(f.Text, PlanEdit.SetText(f, "", "name", p.Name).Value.Text);
        Assert.Equal(f.Text, PlanEdit.MoveOutlinePoint(f, new Point(100, 30), new Point(100, 30)).Value.Text);
        foreach (var h in p.Holes.Cast<Hole>())
        {
            Assert.Equal(f.Text, PlanEdit.MoveHole(f, h.Name, h.At).Value.Text);
            Assert.Equal(f.Text, PlanEdit.SetDiameter(f, h.Name, h.Diameter).Value.Text);
        }
    }

    [Fact]
    public void Line_ends_and_byte_order_mark_stay()
    {
        var f = File("\uFEFF" + Text.ReplaceLineEndings("\r\n"));
        var added = PlanEdit.AddHole(f, new Hole("C", new Point(50, 15), Length.OfMm(5), "#9", HoleUse.Glue, HoleMake.Drill)).Value;
        Assert.StartsWith("\uFEFF", added.Text, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', added.Text.Replace("\r\n", "", StringComparison.Ordinal));
        Assert.Equal(f.Text, PlanEdit.RemoveHole(added, "C").Value.Text.Replace("diameter = 6.0\r\n\r\n#", "diameter = 6.0\r\n#", StringComparison.Ordinal));
    }

    /// <summary>Law: an edit of one example's value changes that value and leaves every other character.</summary>
    [Theory]
    [InlineData("skeleton-hatchet")]
    [InlineData("kitchen-knife")]
    [InlineData("paring-knife")]
    public void Edits_keep_all_other_characters(string name)
    {
        var file = File(Repository.Text("examples", name + ".plan.toml"));
        var holes = file.Plan.Holes.Cast<Hole>().ToArray();
        Gen.Select(Gen.Int[0, holes.Length - 1], Gen.Double[-3, 3], Gen.Double[-3, 3], Gen.Double[1, 9]).Sample((which, dx, dy, d) =>
        {
            var to = holes[which].At + new Point(dx, dy);
            var moved = PlanEdit.MoveHole(file, holes[which].Name, to).Value;
            Assert.True(((Hole)moved.Plan.Holes[which]).At.To(to) < 1e-9);
            OnlyOneLineDiffers(file.Text, moved.Text);
            var sized = PlanEdit.SetDiameter(moved, holes[which].Name, Length.OfMm(d)).Value;
            Assert.Equal(d, ((Hole)sized.Plan.Holes[which]).Diameter.Mm, 1e-9);
            OnlyOneLineDiffers(moved.Text, sized.Text);
            var back = PlanEdit.MoveHole(PlanEdit.SetDiameter(sized, holes[which].Name, holes[which].Diameter).Value, holes[which].Name, holes[which].At).Value;
            Assert.Equal(file.Text, back.Text);
        }, iter: 30);
        var corners = file.Plan.Outline.Segments.Select(s => s.End).ToArray();
        Gen.Select(Gen.Int[0, corners.Length - 1], Gen.Double[-1, 1], Gen.Double[-1, 1]).Sample((which, dx, dy) =>
        {
            var to = corners[which] + new Point(dx, dy);
            var moved = PlanEdit.MoveOutlinePoint(file, corners[which], to).Value;
            var after = moved.Plan.Outline.Segments.Select(s => s.End).ToArray();
            for (var i = 0; i < after.Length; i++) Assert.True(after[i].To(i == which ? to : corners[i]) < 1e-9);
            Assert.Equal(file.Text.Split('\n').Length, moved.Text.Split('\n').Length);
        }, iter: 30);
    }

    [Fact]
    public void A_point_moves_in_its_own_line_with_other_line_ends_too()
    {
        var file = File(Repository.Text("examples", "skeleton-hatchet.plan.toml").ReplaceLineEndings("\r\n"));
        var moved = PlanEdit.MoveOutlinePoint(file, new Point(130, 31), new Point(131.5, 30)).Value;
        Assert.Equal(file.Text.Replace("L 130 31 ", "L 131.5 30 ", StringComparison.Ordinal), moved.Text);
    }

    private static void OnlyOneLineDiffers(string a, string b)
    {
        var (x, y) = (a.Split('\n'), b.Split('\n'));
        Assert.Equal(x.Length, y.Length);
        Assert.True(x.Zip(y).Count(p => p.First != p.Second) <= 1);
    }
}
