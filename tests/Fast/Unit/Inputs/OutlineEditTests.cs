using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.Tests;

/// <summary>The outline changed in the plan's text: only the commands that made the touched segments are written anew.</summary>
public class OutlineEditTests
{
    private const string Square = "M 0 0 L 100 0 L 100 30 L 0 30 Z";

    private static PlanFile File(string path, string edge = "")
    {
        var read = PlanReader.Read($"""
            tangwright = 1   # of this form
            name = "Outline"
            units = "mm"
            [stock]
            steel = "80CrV2"
            thickness = 4
            [outline]
            path = "{path}"   # counter-clockwise
            {edge}
            # the end
            """, "x");
        Assert.True(read.IsGood, string.Join("\n", read.Faults));
        return read.Value;
    }

    private static PlanFile Gives(string path, Func<PlanFile, Checked<PlanFile>> edit, string now, string edge = "", string edgeNow = "")
    {
        var edited = edit(File(path, edge));
        Assert.True(edited.IsGood, string.Join("\n", edited.Faults));
        Assert.Equal(File(path, edge).Text.Replace($"\"{path}\"", $"\"{now}\"", StringComparison.Ordinal).Replace(edge.Length > 0 ? edge : "\0", edgeNow, StringComparison.Ordinal), edited.Value.Text);
        return edited.Value;
    }

    private static void Refuses(string path, Func<PlanFile, Checked<PlanFile>> edit, string message, string remedy)
    {
        var fault = Assert.Single(edit(File(path)).Faults);
        Assert.Contains(message, fault.Message, StringComparison.Ordinal);
        Assert.Contains(remedy, fault.Remedy, StringComparison.Ordinal);
    }

    private static Length Mm(double mm) => Length.OfMm(mm);

    [Theory]
    [InlineData(Square, 40, 1, "M 0 0 L 40 0 L 100 0 L 100 30 L 0 30 Z")]
    [InlineData("M0 0h100v30H0z", 40, 1, "M0 0 L 40 0 L 100 0v30H0z")]
    [InlineData("M0 0h100v30H0z", 100, 10, "M0 0h100 L 100 10 L 100 30H0z")]
    [InlineData("M0 0h100v30H0z", 1, 20, "M0 0h100v30H0 L 0 20 z")]
    [InlineData("m0 0 100 0 0 30-100 0z", 40, 1, "m0 0 L 40 0 L 100 0 l 0 30-100 0z")]
    [InlineData("M 0 0 L 100 0,100 30,0 30 Z", 40, 1, "M 0 0 L 40 0 L 100 0 L 100 30,0 30 Z")]
    [InlineData("M 0 0 A 50 50 0 0 1 100 0 L 100 30 L 0 30 Z", 50, -60, "M 0 0 A 50 50 0 0 1 50 -50 A 50 50 0 0 1 100 0 L 100 30 L 0 30 Z")]
    [InlineData("M 0 0 C 0 -40 100 -40 100 0 s -50 30 -100 0 z", 50, -31, "M 0 0 C 0 -20 25 -30 50 -30 C 75 -30 100 -20 100 0 C 100 40 50 30 0 0 z")]
    public void A_point_is_added_and_the_shape_stays(string path, double x, double y, string now)
    {
        var after = Gives(path, f => OutlineEdit.AddPoint(f, new Point(x, y)), now);
        var before = File(path).Plan.Outline;
        Assert.Equal(before.Segments.Length + 1, after.Plan.Outline.Segments.Length);
        Assert.Equal(before.Length, after.Plan.Outline.Length, 1e-6);
        Assert.Equal(Moments.Of(before).AreaMm2, Moments.Of(after.Plan.Outline).AreaMm2, 1e-6);
    }

    [Theory]
    [InlineData(1, "M 0 0 L 100 30 L 0 30 Z")]
    [InlineData(3, "M 0 0 L 100 0 L 100 30 Z")]
    [InlineData(0, "M 100 0 L 100 30 L 0 30 Z")]
    public void A_point_is_taken_away(int point, string now) => Gives(Square, f => OutlineEdit.RemovePoint(f, point), now);

    [Fact]
    public void Two_arcs_of_one_circle_become_one_again_and_neighbours_of_a_curve_keep_their_directions()
    {
        Gives("M 0 0 A 50 50 0 0 1 50 -50 A 50 50 0 0 1 80 -40 L 100 30 L 0 30 Z", f => OutlineEdit.RemovePoint(f, 1), "M 0 0 A 50 50 0 0 1 80 -40 L 100 30 L 0 30 Z");
        Gives("M 0 0 A 60 60 0 0 1 50 -50 A 50 50 0 0 1 80 -40 L 100 30 L 0 30 Z", f => OutlineEdit.RemovePoint(f, 1), "M 0 0 L 80 -40 L 100 30 L 0 30 Z");
        var joined = OutlineEdit.RemovePoint(File("M 0 0 C 10 0 40 -10 50 -10 L 80 -20 L 100 30 L 0 30 Z"), 1).Value.Plan.Outline.Segments[0];
        Assert.Equal(0, joined.Tangent(0).Cross(new Point(1, 0)), 1e-9);
        Assert.Equal(0, joined.Tangent(1).Cross(new Point(30, -10).Unit), 1e-6);
    }

    [Fact]
    public void A_line_becomes_a_curve_an_arc_and_a_line_again()
    {
        const string curve = "M 0 0 L 100 0 C 100 10 100 20 100 30 L 0 30 Z";
        Gives(Square, f => OutlineEdit.SetKind(f, 1, SegmentKind.Curve), curve);
        Gives(curve, f => OutlineEdit.SetKind(f, 1, SegmentKind.Straight), Square);

        // a bow of a twentieth to the outside: R = (c²/4 + h²) / 2h with c = 30, h = 1.5
        var bent = Gives(Square, f => OutlineEdit.SetKind(f, 1, SegmentKind.Arc), "M 0 0 L 100 0 A 75.75 75.75 0 0 1 100 30 L 0 30 Z");
        Assert.Equal(101.5, bent.Plan.Outline.Bounds.MaxX, 1e-9);
        Assert.Equal(Square, Path(OutlineEdit.SetKind(bent, 1, SegmentKind.Straight).Value));

        // quarter circles by cubics: within 2.8e-4 of the radius, one for each quarter
        var round = OutlineEdit.SetKind(File("M -50 0 A 50 50 0 0 1 50 0 L 0 30 Z"), 0, SegmentKind.Curve).Value.Plan.Outline;
        Assert.Equal(4, round.Segments.Length);
        for (var t = 0.0; t <= 1; t += 0.125) Assert.Equal(50, round.Segments[0].At(t).Length, 50 * 2.8e-4);
    }

    [Fact]
    public void An_arc_is_bent_by_its_bow_and_by_its_radius()
    {
        const string bowed = "M 0 0 A 75 75 0 0 1 100 0 L 100 30 L 0 30 Z";
        Gives(bowed, f => OutlineEdit.SetBow(f, 0, new Point(30, -25)), "M 0 0 A 62.5 62.5 0 0 1 100 0 L 100 30 L 0 30 Z");
        var other = OutlineEdit.SetBow(File(bowed), 0, new Point(60, 12.5)).Value.Plan.Outline.Segments[0];
        Assert.Equal(12.5, other.At(0.5).Y, 1e-6);
        var great = OutlineEdit.SetBow(File(bowed), 0, new Point(50, -100)).Value.Plan.Outline;
        Assert.Equal(-100, great.Bounds.MinY, 1e-5);
        Gives(bowed, f => OutlineEdit.SetRadius(f, 0, Mm(60)), "M 0 0 A 60 60 0 0 1 100 0 L 100 30 L 0 30 Z");
        Refuses(bowed, f => OutlineEdit.SetBow(f, 0, new Point(50, 0.001)), "nearly straight", "make it straight");
        Refuses(bowed, f => OutlineEdit.SetRadius(f, 0, Mm(49)), "does not reach", "50.00 mm");
    }

    /// <summary>A square corner with legs of r: the arc begins and ends r from it. Over the start of the path too.</summary>
    [Fact]
    public void A_corner_is_rounded_and_the_edge_ends_where_the_arc_takes_over()
    {
        Gives(Square, f => OutlineEdit.RoundCorner(f, 2, Mm(8)), "M 0 0 L 100 0 L 100 22 A 8 8 0 0 1 92 30 L 0 30 Z");
        Gives(Square, f => OutlineEdit.RoundCorner(f, 0, Mm(8)), "M 8 0 L 100 0 L 100 30 L 0 30 L 0 8 A 8 8 0 0 1 8 0 Z");
        Gives("m0,0h100v30H0z", f => OutlineEdit.RoundCorner(f, 0, Mm(8)), "m8,0 L 100 0v30H0 L 0 8 A 8 8 0 0 1 8 0 z");
        Gives(Square, f => OutlineEdit.RoundCorner(f, 1, Mm(8)), "M 0 0 L 92 0 A 8 8 0 0 1 100 8 L 100 30 L 0 30 Z", "[edge]\nfrom = [0, 0]\nto = [ 100, 0 ] # heel", "[edge]\nfrom = [0, 0]\nto = [ 92, 0 ] # heel");
        Gives(Square, f => OutlineEdit.RoundCorner(f, 0, Mm(8)), "M 8 0 L 100 0 L 100 30 L 0 30 L 0 8 A 8 8 0 0 1 8 0 Z", "[edge]\nfrom = [0, 0]\nto = [ 100, 0 ] # heel", "[edge]\nfrom = [8, 0]\nto = [ 100, 0 ] # heel");
        Refuses(Square, f => OutlineEdit.RoundCorner(f, 2, Mm(31)), "does not fit", "29.99");
        Refuses("M 0 0 L 50 0 L 100 0 L 100 30 L 0 30 Z", f => OutlineEdit.RoundCorner(f, 1, Mm(5)), "no corner", "where it turns");
    }

    [Fact]
    public void What_cannot_be_is_refused_with_a_reason()
    {
        Refuses(Square, f => OutlineEdit.AddPoint(f, new Point(100, -1)), "is there already", "between two points");
        Refuses("M 0 0 L 100 0 L 100 30 Z", f => OutlineEdit.RemovePoint(f, 1), "needs what is left", "move the point");
        Refuses(Square, f => OutlineEdit.MoveControl(f, 0, first: true, default), "no curve", "make it a curve");
        foreach (var segment in new[] { -1, 4, int.MaxValue })
        {
            Refuses(Square, f => OutlineEdit.RemovePoint(f, segment), "no such point", "another");
            Refuses(Square, f => OutlineEdit.SetKind(f, segment, SegmentKind.Arc), "no such", "another");
            Refuses(Square, f => OutlineEdit.RoundCorner(f, segment, Mm(1)), "no such point", "another");
        }
    }

    private static string Path(PlanFile file) => file.Text.Split("path = \"")[1].Split('"')[0];
}
