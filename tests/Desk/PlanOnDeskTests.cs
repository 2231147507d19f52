using Tangwright.Foundation;
using Tangwright.UseCases;

namespace Tangwright.Tests;

/// <summary>A plan lying open on the desk: moves, undoing, saving, and edits made elsewhere.</summary>
public sealed class PlanOnDeskTests : IDisposable
{
    private static readonly Thing Hole = new(ThingKind.Hole, "L1");
    private readonly string _folder = System.IO.Directory.CreateTempSubdirectory("tangwright-desk-").FullName;
    private readonly DeskFolder _desk;
    private readonly PlanOnDesk _plan;

    public PlanOnDeskTests()
    {
        foreach (var ending in new[] { ".plan.toml", ".shop.toml" })
        {
            System.IO.File.Copy(Repository.Path("examples", "skeleton-hatchet" + ending), System.IO.Path.Combine(_folder, "skeleton-hatchet" + ending));
        }

        _desk = DeskFolder.Of(_folder).Value;
        _plan = _desk.Plan("skeleton-hatchet").Value;
    }

    private string OnDisk => System.IO.File.ReadAllText(_plan.Path);

    public void Dispose()
    {
        _desk.Dispose();
        System.IO.Directory.Delete(_folder, recursive: true);
    }

    [Fact]
    public void A_move_is_saved_at_its_end_and_taken_back_whole()
    {
        var before = OnDisk;
        _plan.Begin();
        for (var i = 1; i <= 20; i++) Assert.Empty(_plan.Step(new PutAt(Hole, new Point(100 + i, 18.2), Rounded: true)));
        Assert.Equal(before, OnDisk);
        _plan.End();
        Assert.Contains("at = [120, 18", OnDisk, StringComparison.Ordinal);
        Assert.Equal(120, _plan.Results.Holes[0].At.X, 9);
        Assert.Equal(before.Split('\n').Length, OnDisk.Split('\n').Length);

        _plan.Undo();
        Assert.Equal(before, OnDisk);
        Assert.False(_plan.CanUndo);
        _plan.Redo();
        Assert.Equal(120, _plan.Results.Holes[0].At.X, 9);
    }

    [Fact]
    public void The_numbers_are_those_of_the_last_place()
    {
        _plan.Begin();
        foreach (var x in new[] { 101.0, 140, 103 }) _plan.Step(new PutAt(Hole, new Point(x, 18.2), Rounded: false));
        _plan.End();
        var again = _desk.Plan("skeleton-hatchet").Value;
        Assert.Equal(103, again.Results.Holes[0].At.X, 9);
        Assert.Equal(Figures.Json(_plan.Results), Figures.Json(OpenWork.Of(_plan.Path, null).Value.WorkUp()));
    }

    [Fact]
    public void An_edit_made_elsewhere_appears()
    {
        System.IO.File.WriteAllText(_plan.Path, OnDisk.Replace("revision = \"A\"", "revision = \"B2\"", StringComparison.Ordinal));
        _plan.LookAtFile();
        Assert.Equal("B2", _plan.Results.Plan.Revision);
    }

    [Fact]
    public void A_spoiled_file_is_told_and_the_last_good_plan_stays()
    {
        System.IO.File.WriteAllText(_plan.Path, "tangwright = 1\nname = ");
        _plan.LookAtFile();
        Assert.NotEmpty(_plan.FileFaults);
        Assert.Equal("Skeleton hatchet 275", _plan.Results.Plan.Name);
    }

    [Fact]
    public void When_both_changed_neither_is_lost()
    {
        _plan.Begin();
        _plan.Step(new PutAt(Hole, new Point(111, 18), Rounded: true));
        var theirs = OnDisk.Replace("revision = \"A\"", "revision = \"theirs\"", StringComparison.Ordinal);
        System.IO.File.WriteAllText(_plan.Path, theirs);
        _plan.End();
        var texts = System.IO.Directory.GetFiles(_folder, "*.toml").Select(System.IO.File.ReadAllText).ToArray();
        Assert.Contains(theirs, texts);
        Assert.Contains(texts, t => t.Contains("at = [111, 18]", StringComparison.Ordinal));
        Assert.NotEmpty(_plan.Notice);
    }

    [Theory]
    [InlineData("../x")]
    [InlineData("..")]
    [InlineData("/etc/passwd")]
    [InlineData("a/b")]
    [InlineData("")]
    public void Only_plans_of_the_folder_can_be_opened(string stem) => Assert.False(_desk.Plan(stem).IsGood);
}
