using Tangwright.Foundation;
using Tangwright.UseCases;

namespace Tangwright.Tests;

/// <summary>Revisions kept beside a plan, compared with it and taken back.</summary>
public sealed class KeptRevisionsTests : IDisposable
{
    private static readonly DateOnly Day = new(2026, 3, 4);
    private readonly Scratch _scratch = new();
    private readonly DeskFolder _folder;
    private readonly PlanOnDesk _plan;

    public KeptRevisionsTests()
    {
        _scratch.PutExample("skeleton-hatchet");
        _folder = DeskFolder.Of(_scratch.Folder).Value;
        _plan = _folder.Plan("skeleton-hatchet").Value;
    }

    private KeptRevisions Kept => KeptRevisions.Of(_plan, _folder);

    private string Copy(string revision) => _scratch.Path($"skeleton-hatchet-revisions/skeleton-hatchet.{revision}.plan.toml");

    public void Dispose()
    {
        _folder.Dispose();
        _scratch.Dispose();
    }

    [Fact]
    public void A_revision_is_an_exact_copy_with_its_day_and_reason()
    {
        var text = _plan.Text;
        Assert.Equal("A", KeptRevisions.Offered(_plan, Kept));
        Assert.Empty(Kept.ListFaults);
        Assert.Empty(KeptRevisions.Keep(_plan, _folder, "A", "as first made, \"heavy\"", Day));
        Assert.Equal(text, System.IO.File.ReadAllText(Copy("A")));
        Assert.Equal(text, _plan.Text);
        Assert.Equal([new KeptRevision("A", "2026-03-04", "as first made, \"heavy\"")], Kept.Kept);
        Assert.False(_plan.CanUndo);
    }

    [Fact]
    public void Nothing_kept_is_written_over_and_the_next_letter_is_offered_and_marked()
    {
        Assert.Empty(KeptRevisions.Keep(_plan, _folder, "A", "", Day));
        _plan.Make(new PutAt(new Thing(ThingKind.Hole, "L1"), new Point(102, 18.2), Rounded: false));
        var a = System.IO.File.ReadAllText(Copy("A"));
        Assert.Contains("kept already", Assert.Single(KeptRevisions.Keep(_plan, _folder, "a", "", Day)).Message, StringComparison.Ordinal);
        Assert.Equal("B", KeptRevisions.Offered(_plan, Kept));
        Assert.Empty(KeptRevisions.Keep(_plan, _folder, "B", "L1 moved", Day));
        Assert.Equal(a, System.IO.File.ReadAllText(Copy("A")));
        Assert.Equal("B", _plan.Results.Plan.Revision);
        Assert.Equal(_plan.Text, System.IO.File.ReadAllText(Copy("B")));
        Assert.Equal(["B", "A"], Kept.Kept.Select(k => k.Revision));
    }

    [Fact]
    public void A_moved_hole_shows_beside_the_revision_and_the_revision_comes_back_whole()
    {
        KeptRevisions.Keep(_plan, _folder, "A", "", Day);
        _plan.Make(new PutAt(new Thing(ThingKind.Hole, "L1"), new Point(102, 17.2), Rounded: false));
        var moved = _plan.Text;
        var key = DeskComparison.Choices(_plan, _folder)[0].Key;
        var beside = DeskComparison.Of(_plan, _folder, key).Value;
        Assert.False(beside.IsSame);
        Assert.Equal([new PartInWords("hole L1", "16 mm at x 100 mm, y 18.2 mm", "16 mm at x 102 mm, y 17.2 mm", "moved 2 mm right and 1 mm down")], beside.Parts);
        Assert.Contains(beside.Numbers, n => n.Name == "Balances, from datum");
        Assert.DoesNotContain(beside.Numbers, n => n.Name == "Finished steel weighs");

        _plan.Compare(new LaidBehind(beside.Says, beside.Other));
        Assert.NotEmpty(DrawnPlan.Of(_plan, "").Pale);
        _plan.StopComparing();
        Assert.Empty(DrawnPlan.Of(_plan, "").Pale);

        Assert.Empty(_plan.Make(new TakeBack(beside.Text, beside.Says)));
        Assert.Equal(System.IO.File.ReadAllText(Copy("A")), _plan.Text);
        Assert.True(DeskComparison.Of(_plan, _folder, key).Value.IsSame);
        _plan.Undo();
        Assert.Equal(moved, _plan.Text);
    }

    [Fact]
    public void A_spoiled_list_is_told_and_the_copies_still_serve()
    {
        KeptRevisions.Keep(_plan, _folder, "A", "", Day);
        System.IO.File.WriteAllText(_scratch.Path("skeleton-hatchet-revisions/revisions.toml"), "[[kept\n");
        Assert.NotEmpty(Kept.ListFaults);
        Assert.Equal(["A"], Kept.Kept.Select(k => k.Revision));
        Assert.True(KeptRevisions.Text(_plan, _folder, "A").IsGood);
    }

    [Theory]
    [InlineData("../x")]
    [InlineData("a/b")]
    [InlineData("")]
    [InlineData("A.B")]
    [InlineData("a letter far too long")]
    public void Only_short_names_are_taken(string name)
    {
        Assert.NotEmpty(KeptRevisions.Keep(_plan, _folder, name, "", Day));
        Assert.False(System.IO.Directory.Exists(_scratch.Path("skeleton-hatchet-revisions")));
    }

    [Theory]
    [InlineData("revision:../../etc/passwd")]
    [InlineData("plan:../skeleton-hatchet")]
    [InlineData("nonsense")]
    [InlineData("revision:Z")]
    public void Nothing_outside_is_compared(string key) => Assert.False(DeskComparison.Of(_plan, _folder, key).IsGood);

    [Fact]
    public void Links_that_lead_out_are_not_followed()
    {
        var outside = System.IO.Directory.CreateTempSubdirectory("tangwright-outside-").FullName;
        try
        {
            System.IO.File.WriteAllText(System.IO.Path.Combine(outside, "skeleton-hatchet.A.plan.toml"), _plan.Text);
            System.IO.Directory.CreateSymbolicLink(_scratch.Path("skeleton-hatchet-revisions"), outside);
            Assert.Empty(Kept.Kept);
            Assert.NotEmpty(KeptRevisions.Keep(_plan, _folder, "B", "", Day));
            Assert.Single(System.IO.Directory.GetFiles(outside));

            System.IO.Directory.Delete(_scratch.Path("skeleton-hatchet-revisions"));
            System.IO.Directory.CreateDirectory(_scratch.Path("skeleton-hatchet-revisions"));
            System.IO.File.CreateSymbolicLink(Copy("A"), System.IO.Path.Combine(outside, "skeleton-hatchet.A.plan.toml"));
            Assert.Empty(Kept.Kept);
        }
        finally
        {
            System.IO.Directory.Delete(outside, recursive: true);
        }
    }
}
