using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.UseCases;

namespace Tangwright.Tests;

/// <summary>A plan lying open on the desk: moves, undoing, saving, and edits made elsewhere.</summary>
public sealed class PlanOnDeskTests : IDisposable
{
    private readonly Scratch _scratch = new();
    private readonly DeskFolder _folder;
    private readonly PlanOnDesk _desk;
    private readonly string _path;

    public PlanOnDeskTests()
    {
        _path = _scratch.PutExample("skeleton-hatchet");
        _folder = DeskFolder.Of(_scratch.Folder).Value;
        _desk = _folder.Plan("skeleton-hatchet").Value;
    }

    public void Dispose()
    {
        _folder.Dispose();
        _scratch.Dispose();
    }

    private static Thing Hole => new(ThingKind.Hole, "L1");

    private string OnDisk => System.IO.File.ReadAllText(_path);

    private Point PlaceOfL1 => _desk.Results.Holes.Single(h => h.Name == "L1").At;

    [Fact]
    public void A_move_is_one_thing_to_undo_and_is_written_at_its_end()
    {
        var before = OnDisk;
        var mass = _desk.Results.Stages[^1].Balance;
        _desk.Begin();
        Assert.Empty(_desk.Step(new PutAt(Hole, new Point(103.2, 18.2), Rounded: true)));
        Assert.Empty(_desk.Step(new PutAt(Hole, new Point(107.7, 17.1), Rounded: true)));
        Assert.Equal(before, OnDisk);
        _desk.End();
        Assert.Equal(new Point(107.5, 17), PlaceOfL1);
        Assert.NotEqual(mass, _desk.Results.Stages[^1].Balance);
        Assert.Equal(_desk.Text, OnDisk);
        Assert.Contains("[107.5, 17]", OnDisk, StringComparison.Ordinal);

        // remarks and all other lines stay
        Assert.Single(before.Split('\n').Except(OnDisk.Split('\n')));
        _desk.Undo();
        Assert.Equal(before, OnDisk);
        _desk.Redo();
        Assert.Equal(new Point(107.5, 17), PlaceOfL1);
        Assert.False(_desk.CanRedo);
    }

    [Fact]
    public void The_numbers_are_those_of_the_last_place()
    {
        _desk.Begin();
        foreach (var x in new[] { 101.0, 140, 103 }) _desk.Step(new PutAt(Hole, new Point(x, 18.2), Rounded: false));
        _desk.End();
        Assert.Equal(103, PlaceOfL1.X, 9);
        Assert.Equal(Figures.Json(OpenWork.Of(_path, null).Value.WorkUp()), Figures.Json(_desk.Results));
    }

    [Fact]
    public void A_point_of_the_outline_moves_and_comes_back_exactly()
    {
        var before = OnDisk;
        var area = _desk.Results.Outline.Area;
        var at = _desk.Results.Plan.Outline.Segments[5].Start;
        Assert.Empty(_desk.Make(new PutAt(new Thing(ThingKind.OutlinePoint, "5"), at + new Point(0, 2), Rounded: true)));
        Assert.NotEqual(area, _desk.Results.Outline.Area);
        _desk.Undo();
        Assert.Equal(before, OnDisk);
        Assert.Equal(area, _desk.Results.Outline.Area);
    }

    [Theory]
    [InlineData(Measure.X, "4 1/8 in", 104.775)]
    [InlineData(Measure.Y, "17.25", 17.25)]
    [InlineData(Measure.Diameter, "F", 6.5278)]
    public void A_measure_is_typed_as_a_maker_writes_it(Measure measure, string written, double mm)
    {
        Assert.Empty(_desk.Make(new Typed(Hole, measure, written)));
        var hole = _desk.Results.Holes.Single(h => h.Name == "L1");
        Assert.Equal(mm, measure switch { Measure.X => hole.At.X, Measure.Y => hole.At.Y, _ => hole.Diameter.Mm }, 4);
    }

    [Theory]
    [InlineData(Measure.X, "3/16")]
    [InlineData(Measure.Y, "wide")]
    [InlineData(Measure.Diameter, "0")]
    [InlineData(Measure.Diameter, "-3")]
    public void What_cannot_be_meant_is_refused_in_words_and_changes_nothing(Measure measure, string written)
    {
        var before = OnDisk;
        var faults = _desk.Make(new Typed(Hole, measure, written));
        Assert.NotEmpty(faults[0].Message);
        Assert.Equal(before, OnDisk);
        Assert.False(_desk.CanUndo);
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(1e12)]
    public void A_place_off_the_sheet_is_refused(double x)
        => Assert.NotEmpty(_desk.Make(new PutAt(Hole, new Point(x, 0), Rounded: true)));

    [Fact]
    public void An_edit_in_a_text_editor_appears_and_can_be_undone()
    {
        var before = OnDisk;
        Rewrite(before.Replace("thickness = \"1/4 in\"", "thickness = \"3/16 in\"", StringComparison.Ordinal));
        _desk.LookAtFile();
        Assert.Equal(Length.OfInches(3 / 16.0), _desk.Results.Plan.Stock.Thickness);
        _desk.Undo();
        Assert.Equal(before, OnDisk);
    }

    [Fact]
    public void While_the_file_cannot_be_used_the_last_good_plan_stays()
    {
        var good = OnDisk;
        Rewrite(good.Replace("units = \"mm\"", "units = \"ells\"", StringComparison.Ordinal));
        _desk.LookAtFile();
        Assert.NotEmpty(_desk.FileFaults);
        Assert.True(_desk.FileFaults[0].Line > 0);
        Assert.Equal(LengthUnit.Mm, _desk.Results.Plan.Units);
        Rewrite(good);
        _desk.LookAtFile();
        Assert.Empty(_desk.FileFaults);
    }

    [Fact]
    public void When_both_changed_neither_is_lost()
    {
        var theirs = OnDisk.Replace("revision = \"A\"", "revision = \"B\"", StringComparison.Ordinal);
        Assert.NotEqual(OnDisk, theirs);
        _desk.Begin();
        Assert.Empty(_desk.Step(new PutAt(Hole, new Point(108, 18), Rounded: true)));
        var ours = _desk.Text;
        Rewrite(theirs);
        _desk.End();
        Assert.Equal(theirs, OnDisk);
        Assert.Equal("B", _desk.Results.Plan.Revision);
        Assert.Equal(ours, System.IO.File.ReadAllText(_scratch.Path("skeleton-hatchet.desk.plan.toml")));
        Assert.Contains("skeleton-hatchet.desk.plan.toml", _desk.Notice, StringComparison.Ordinal);
        Assert.NotNull(_desk.Pale);
        _desk.Undo();
        Assert.Equal(ours, _desk.Text);
    }

    private void Rewrite(string text)
    {
        System.IO.File.WriteAllText(_path, text);
        System.IO.File.SetLastWriteTimeUtc(_path, System.IO.File.GetLastWriteTimeUtc(_path).AddSeconds(2));
    }
}
