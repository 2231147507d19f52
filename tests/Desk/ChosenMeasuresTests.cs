using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.UseCases;

namespace Tangwright.Tests;

/// <summary>Whatever can be taken hold of on the drawing can be typed too, and the buttons beside it do what they say.</summary>
public sealed class ChosenMeasuresTests : IDisposable
{
    private const string Text = """
        tangwright = 1
        name = "All kinds of things"
        units = "mm"
        [stock]
        steel = "80CrV2"
        thickness = 4
        [outline]
        path = "M 0 0 L 100 0 A 30 30 0 0 1 100 30 C 70 34 30 26 0 30 Z"
        [edge]
        from = [0, 0]
        to = [60, 0]
        [bevel]
        height = 12
        edge_finished = 0.5
        plunge = 62
        [grip]
        from = [65, 15]
        to = [95, 15]
        [[hole]]
        name = "L1"
        at = [30, 15]
        diameter = 5.2
        [[hole_row]]
        name = "R"
        along = "midline"
        count = 3
        diameters = [4, 3]
        """;

    private readonly Scratch _scratch = new();
    private readonly DeskFolder _folder;
    private readonly PlanOnDesk _desk;

    public ChosenMeasuresTests()
    {
        System.IO.File.WriteAllText(_scratch.Path("all.plan.toml"), Text);
        _folder = DeskFolder.Of(_scratch.Folder).Value;
        _desk = _folder.Plan("all").Value;
    }

    public static TheoryData<string> Things => ["hole:L1", "row:R2", "point:0", "point:2", "control:2.1", "control:2.2", "bow:1", "edge:from", "edge:to", "plunge:a", "plunge:b", "grip:from", "grip:to", "datum:at", "rowend:R.from", "rowend:R.to", "segment:0", "segment:1"];

    public void Dispose()
    {
        _folder.Dispose();
        _scratch.Dispose();
    }

    [Theory]
    [MemberData(nameof(Things))]
    public void Has_measures_that_can_be_typed_and_ways_that_are_taken_back(string id)
    {
        var chosen = new ChosenOnDrawing(id, new Point(40, 0));
        var shown = ChosenMeasures.Of(_desk, chosen);
        Assert.NotNull(shown);
        Assert.NotEmpty(shown.Measures);
        foreach (var m in shown.Measures.Where(m => m.Set is not null))
        {
            // what stands there, typed again, moves nothing
            Assert.Empty(_desk.Make(m.Set!(m.Written)));
            Assert.Equal(m.Written, ChosenMeasures.Of(_desk, chosen)!.Measures.First(n => n.Label == m.Label).Written);
            if (_desk.CanUndo) _desk.Undo();
        }

        foreach (var change in shown.Ways.Select(w => w.Change).Concat(shown.Entries.Select(e => e.Change("2"))))
        {
            var faults = _desk.Make(change);
            Assert.All(faults, f => Assert.NotEmpty(f.Remedy));
            if (faults.IsEmpty && _desk.CanUndo) _desk.Undo();
            Assert.Equal(Text, System.IO.File.ReadAllText(_desk.Path));
        }
    }

    [Theory]
    [InlineData("hole:L1", "diameter", "3/8 in", "diameter = 9.525")]
    [InlineData("edge:to", "x", "55", "to = [55, 0]")]
    [InlineData("plunge:a", "x", "61", "plunge = 61")]
    [InlineData("grip:from", "y", "16", "from = [65, 16]")]
    [InlineData("datum:at", "x", "10", "[datum]\nx = 10")]
    [InlineData("rowend:R.to", "x", "90", "to = [90, ")]
    [InlineData("row:R2", "holes in the row", "4", "count = 4")]
    [InlineData("point:3", "y", "31", "26 0 31 Z")]
    [InlineData("point:1", "y", "1", "L 100 1 A")]
    [InlineData("point:1", "y", "1", "to = [59.994, 0.6]")]
    public void What_is_typed_is_written(string id, string label, string typed, string written)
    {
        var measure = ChosenMeasures.Of(_desk, new ChosenOnDrawing(id, default))!.Measures.First(m => m.Label == label);
        Assert.Empty(_desk.Make(measure.Set!(typed)));
        Assert.Contains(written, System.IO.File.ReadAllText(_desk.Path), StringComparison.Ordinal);
    }

    [Fact]
    public void A_hole_is_offered_the_drills_owned_beside_its_size()
    {
        var owned = _desk.Results.Shop.Drills;
        var ways = ChosenMeasures.Of(_desk, new ChosenOnDrawing("hole:L1", default))!.Ways;
        var larger = owned.First(d => d.Diameter.Mm > 5.2);
        var way = Assert.Single(ways, w => w.Says.Contains($" {larger.Name},", StringComparison.Ordinal));
        Assert.Empty(_desk.Make(way.Change));
        Assert.Equal(larger.Diameter.Mm, _desk.Results.Holes[0].Diameter.Mm, 9);
        Assert.DoesNotContain(ChosenMeasures.Of(_desk, new ChosenOnDrawing("hole:L1", default))!.Ways, w => w.Says.Contains("drill you own", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("16", LengthUnit.Mm, "0.630 in; 5/8 in is 0.125 mm less")]
    [InlineData("6.35", LengthUnit.Mm, "0.250 in, 1/4 in")]
    [InlineData("1/4 in", LengthUnit.Mm, "6.35 mm")]
    [InlineData("0.63", LengthUnit.Inch, "16.00 mm; 5/8 in is 0.0050 in less")]
    [InlineData("#30", LengthUnit.Mm, "3.26 mm (0.129 in)")]
    [InlineData("full", LengthUnit.Mm, "")]
    public void Beside_a_length_stands_the_other_unit_and_the_nearest_sixty_fourth(string written, LengthUnit units, string beside)
        => Assert.Equal(beside, BesideLength.Of(written, units));

    [Fact]
    public void A_row_is_set_to_drills_owned()
    {
        Assert.Empty(_desk.Make(new RowOfDrills("R", [new DrillSize("3.5 mm", Length.OfMm(3.5)), new DrillSize("1/8 in", Length.OfInches(0.125)), new DrillSize("4 mm", Length.OfMm(4))])));
        Assert.Contains("diameters = [4, 3.5, \"1/8 in\"]", System.IO.File.ReadAllText(_desk.Path), StringComparison.Ordinal);
        Assert.Equal(3.175, _desk.Results.Holes.Last().Diameter.Mm, 9);
    }
}
