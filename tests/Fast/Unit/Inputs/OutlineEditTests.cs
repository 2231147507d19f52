using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.Tests;

/// <summary>The outline's shape changed in a plan's text: only the commands of the touched segments are written anew.</summary>
public class OutlineEditTests
{
    private const string Text = """
        tangwright = 1
        name = "Shapes"
        units = "mm"    # all of it
        [stock]
        steel = "80CrV2"
        thickness = 4

        [outline]
        # toe, then the hollow
        path = "M0 0 L 100 0 100 30 c -10,5 -20,5 -30,0 s -20 -5 -30 0 A 25 25 0 0 1 0 30 Z"

        [edge]
        from = [10, 0]
        to = [100, 0]   # the heel
        """;

    private static PlanFile Plan(string text = Text) => PlanReader.Read(text, "shapes.plan.toml").Value;

    private static PlanFile Example(string name) => Plan(Repository.Text("examples", name + ".plan.toml"));

    private static double Area(PlanFile f) => Math.Abs(Moments.Of(f.Plan.Outline).AreaMm2);

    private static string Path(PlanFile f) => f.Text.Split('\n').Single(l => l.StartsWith("path", StringComparison.Ordinal));

    private static void OnlyThePathChanged(PlanFile before, PlanFile after)
        => Assert.Equal(before.Text.Split('\n').Where(l => !l.StartsWith("path", StringComparison.Ordinal)), after.Text.Split('\n').Where(l => !l.StartsWith("path", StringComparison.Ordinal)));

    [Theory]
    [InlineData(40, -1, "path = \"M0 0 L 40 0 L 100 0 L 100 30 c -10,5 -20,5 -30,0 s -20 -5 -30 0 A 25 25 0 0 1 0 30 Z\"")]
    [InlineData(100, 12, "path = \"M0 0 L 100 0 L 100 12 L 100 30 c -10,5 -20,5 -30,0 s -20 -5 -30 0 A 25 25 0 0 1 0 30 Z\"")]
    [InlineData(-1, 10, "path = \"M0 0 L 100 0 100 30 c -10,5 -20,5 -30,0 s -20 -5 -30 0 A 25 25 0 0 1 0 30 L 0 10 Z\"")]
    public void A_new_point_on_a_line_splits_it_where_it_stands(double x, double y, string path)
    {
        var (before, after) = (Plan(), OutlineEdit.AddPoint(Plan(), new Point(x, y)).Value);
        Assert.Equal(path, Path(after));
        OnlyThePathChanged(before, after);
    }

    [Theory]
    [InlineData("skeleton-hatchet")]
    [InlineData("kitchen-knife")]
    [InlineData("paring-knife")]
    public void A_new_point_anywhere_keeps_the_shape(string name)
    {
        var before = Example(name);
        for (var i = 0; i < before.Plan.Outline.Segments.Length; i++)
        {
            var after = OutlineEdit.AddPoint(before, before.Plan.Outline.Segments[i].At(0.37)).Value;
            Assert.Equal(before.Plan.Outline.Segments.Length + 1, after.Plan.Outline.Segments.Length);
            Assert.Equal(before.Plan.Outline.Length, after.Plan.Outline.Length, 4e-6);
            Assert.Equal(Area(before), Area(after), 4e-4);
        }
    }

    [Fact]
    public void A_smooth_curve_after_a_moved_control_point_is_written_out_and_stays()
    {
        var before = Plan();
        var after = OutlineEdit.MoveControl(before, 2, first: false, new Point(78, 41)).Value;
        Assert.Contains("C 90 35 78 41 70 30 C 60 25 50 25 40 30 A", Path(after), StringComparison.Ordinal);
        var was = (Bezier)before.Plan.Outline.Segments[3];
        var now = (Bezier)after.Plan.Outline.Segments[3];
        Assert.Equal((was.Control1, was.Control2), (now.Control1, now.Control2));
        OnlyThePathChanged(before, after);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    public void Any_point_can_be_taken_away(int point)
    {
        var before = Plan();
        var after = OutlineEdit.RemovePoint(before, point).Value;
        Assert.Equal(before.Plan.Outline.Segments.Length - 1, after.Plan.Outline.Segments.Length);
        Assert.DoesNotContain(after.Plan.Outline.Segments, s => s.Start.To(before.Plan.Outline.Segments[point].Start) < 0.1);
        Assert.Contains("# the heel", after.Text, StringComparison.Ordinal);
        foreach (var end in new[] { after.Plan.Edge!.From, after.Plan.Edge.To }) Assert.True(Nearest.Distance(after.Plan.Outline, end) < 0.05);
    }

    [Fact]
    public void A_point_added_to_a_curve_and_taken_away_again_gives_the_curve_back()
    {
        var before = Plan();
        var curve = before.Plan.Outline.Segments[2];
        var again = OutlineEdit.RemovePoint(OutlineEdit.AddPoint(before, curve.At(0.5)).Value, 3).Value;
        foreach (var t in new[] { 0.2, 0.5, 0.8 }) Assert.Equal(0, Nearest.Distance(again.Plan.Outline.Segments[2], curve.At(t)), 0.02);
    }

    [Fact]
    public void A_segment_becomes_straight_an_arc_or_a_curve()
    {
        var before = Plan();
        var arc = OutlineEdit.SetKind(before, 0, SegmentKind.Arc).Value;
        var bent = Assert.IsType<Arc>(arc.Plan.Outline.Segments[0]);
        Assert.Equal(new Point(50, -5), new Point(Math.Round(bent.At(0.5).X, 5), Math.Round(bent.At(0.5).Y, 5)));
        var curve = OutlineEdit.SetKind(arc, 0, SegmentKind.Curve).Value;
        Assert.Equal(0, Nearest.Distance(curve.Plan.Outline.Segments[0], bent.At(0.3)), bent.Radius * 2.8e-4);
        var straight = OutlineEdit.SetKind(curve, 0, SegmentKind.Straight).Value;
        Assert.Equal(before.Plan.Outline.Segments[0].At(0.5), Assert.IsType<Line>(straight.Plan.Outline.Segments[0]).At(0.5));
        Assert.Equal(Area(before), Area(straight), 1e-6);
    }

    [Fact]
    public void A_bow_follows_the_place_it_is_drawn_to_and_a_radius_is_kept()
    {
        var arc = OutlineEdit.SetKind(Plan(), 0, SegmentKind.Arc).Value;
        var bent = OutlineEdit.SetBow(arc, 0, new Point(47, -12)).Value;
        Assert.Equal(-12, bent.Plan.Outline.Segments[0].At(0.5).Y, 1e-5);
        var over = OutlineEdit.SetBow(arc, 0, new Point(50, -80)).Value;
        Assert.Equal(0, Nearest.Distance(over.Plan.Outline, new Point(50, -80)), 1e-5);
        Assert.Contains("straight", OutlineEdit.SetBow(arc, 0, new Point(50, 0.001)).Faults[0].Remedy, StringComparison.Ordinal);
        Assert.Equal(80, ((Arc)OutlineEdit.SetRadius(arc, 0, Length.OfMm(80)).Value.Plan.Outline.Segments[0]).Radius, 1e-9);
        Assert.Contains("50.00 mm", OutlineEdit.SetRadius(arc, 0, Length.OfMm(20)).Faults[0].Remedy, StringComparison.Ordinal);
    }

    // closed form: a right angle rounded with r loses r² (1 − π/4)
    [Theory]
    [InlineData(1, 3)]
    [InlineData(0, 5)]
    public void Rounding_a_right_angle_takes_off_what_it_must(int corner, double radius)
    {
        var before = Plan(Text.Replace("M0 0 L 100 0 100 30 c -10,5 -20,5 -30,0 s -20 -5 -30 0 A 25 25 0 0 1 0 30 Z", "M0 0 L 100 0 100 30 0 30 Z", StringComparison.Ordinal));
        var after = OutlineEdit.RoundCorner(before, corner, Length.OfMm(radius)).Value;
        Assert.Equal(Area(before) - (radius * radius * (1 - (Math.PI / 4))), Area(after), 1e-5);
        Assert.Single(after.Plan.Outline.Segments.OfType<Arc>(), a => Math.Abs(a.Radius - radius) < 1e-6);
        var refused = OutlineEdit.RoundCorner(before, corner, Length.OfMm(40));
        Assert.Contains("30.00 mm", refused.Faults[0].Remedy, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("skeleton-hatchet")]
    [InlineData("kitchen-knife")]
    [InlineData("paring-knife")]
    public void Every_corner_of_the_examples_takes_a_round_that_touches_both_sides(string name)
    {
        var before = Example(name);
        var (all, rounded) = (before.Plan.Outline.Segments, 0);
        for (var i = 0; i < all.Length; i++)
        {
            if (RoundedCorner.GreatestRadius(all[(i + all.Length - 1) % all.Length], all[i]) is not (> 0.2 and var most)) continue;
            var after = OutlineEdit.RoundCorner(before, i, Length.OfMm(most / 2)).Value;
            var at = after.Plan.Outline.Segments.ToList().FindIndex(s => s is Arc a && Math.Abs(a.Radius - (most / 2)) < 1e-5);
            var n = after.Plan.Outline.Segments.Length;
            var (a, arc, b) = (after.Plan.Outline.Segments[(at + n - 1) % n], after.Plan.Outline.Segments[at], after.Plan.Outline.Segments[(at + 1) % n]);
            Assert.Equal(1, a.Derivative(1).Unit.Dot(arc.Derivative(0).Unit), 1e-5);
            Assert.Equal(1, arc.Derivative(1).Unit.Dot(b.Derivative(0).Unit), 1e-5);
            rounded++;
        }

        Assert.True(rounded > 0);
    }
}
