using System.Runtime.Versioning;
using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.UseCases;

namespace Tangwright.Tests;

/// <summary>An open plan that several pages, an editor and the disk pull at.</summary>
public sealed class UnderFireTests : IDisposable
{
    private readonly Scratch _scratch = new();
    private readonly string _path;
    private DeskFolder _folder;
    private PlanOnDesk _desk;

    public UnderFireTests()
    {
        _path = _scratch.PutExample("skeleton-hatchet");
        (_folder, _desk) = Open(TimeSpan.Zero);
    }

    private static Thing Hole => new(ThingKind.Hole, "L1");

    private string OnDisk => System.IO.File.ReadAllText(_path);

    private double X => _desk.Results.Holes.Single(h => h.Name == "L1").At.X;

    public void Dispose()
    {
        _folder.Dispose();
        _scratch.Dispose();
    }

    [Fact]
    public void While_one_page_holds_others_are_refused_in_words()
    {
        object first = new(), second = new();
        Assert.True(_desk.Begin(first));
        Assert.Empty(_desk.Step(To(110), first));
        Assert.False(_desk.Begin(second));
        Assert.NotEmpty(_desk.Step(To(120), second)[0].Remedy);
        Assert.NotEmpty(_desk.Make(To(130))[0].Remedy);
        _desk.Undo();
        _desk.End(second);
        _desk.Cancel(second);
        Assert.True(_desk.IsHeld);
        Assert.Equal(110, X, 9);
        _desk.End(first);
        Assert.Empty(_desk.Make(To(130)));
        Assert.Contains("[130, 18", OnDisk, StringComparison.Ordinal);
        _desk.Undo();
        Assert.Equal(110, X, 9);
    }

    [Fact]
    public void A_move_taken_back_leaves_no_trace()
    {
        var (before, numbers) = (OnDisk, Figures.Json(_desk.Results));
        _desk.Begin(this);
        _desk.Step(To(110), this);
        _desk.Cancel(this);
        Assert.Equal((before, numbers), (_desk.Text, Figures.Json(_desk.Results)));
        Assert.Equal(before, OnDisk);
        Assert.False(_desk.CanUndo || _desk.CanRedo || _desk.IsHeld);
    }

    [Fact]
    public async Task Of_many_steps_at_once_the_last_counts_and_those_between_are_left_out()
    {
        _folder.Dispose();
        (_folder, _desk) = Open(TimeSpan.FromMilliseconds(60));
        var steps = 0;
        _desk.Changed += () => Interlocked.Increment(ref steps);
        _desk.Begin(this);
        var asked = Enumerable.Range(101, 40).Select(x => _desk.StepAsync(To(x), this)).ToArray();
        Assert.Contains(asked, t => !t.IsCompleted);
        _desk.End(this);
        Assert.Equal(140, X, 9);
        Assert.Contains("[140, 18", OnDisk, StringComparison.Ordinal);
        Assert.All(await Task.WhenAll(asked), faults => Assert.Empty(faults));
        Assert.InRange(steps, 2, 39);
        Assert.Equal(Figures.Json(OpenWork.Of(_path, null).Value.WorkUp()), Figures.Json(_desk.Results));
    }

    [Fact]
    public async Task Whatever_three_pages_and_an_editor_do_numbers_text_and_file_agree()
    {
        var pages = Enumerable.Range(0, 3).Select(p => Task.Run(async () =>
        {
            var chance = new Random(p);
            for (var i = 0; i < 60; i++)
            {
                switch (chance.Next(5))
                {
                    case 0:
                        _desk.Undo();
                        break;
                    case 1:
                        _desk.Redo();
                        break;
                    case 2:
                        _desk.Make(To(100 + chance.Next(40)));
                        break;
                    default:
                        var hand = new object();
                        _desk.Begin(hand);
                        for (var s = 0; s < 4; s++) await _desk.StepAsync(To(100 + chance.Next(40)), hand);
                        if (chance.Next(4) == 0) _desk.Cancel(hand);
                        else _desk.End(hand);
                        break;
                }

                var seen = _desk.Now;
                if (chance.Next(6) == 0) _desk.LookAtFile();
                Assert.True(seen.Version <= _desk.Version);
            }
        }));
        await Task.WhenAll(pages);
        Assert.False(_desk.IsHeld);
        Assert.Equal(_desk.Text, OnDisk);
        Assert.Equal(Figures.Json(OpenWork.Of(_path, null).Value.WorkUp()), Figures.Json(_desk.Results));
        Assert.Single(System.IO.Directory.GetFiles(_scratch.Folder, "*.plan.toml"));
    }

    [Fact]
    public void A_mark_at_the_start_of_the_file_and_its_line_ends_stay()
    {
        byte[] marked = [0xEF, 0xBB, 0xBF, .. System.Text.Encoding.UTF8.GetBytes(OnDisk.ReplaceLineEndings("\r\n"))];
        System.IO.File.WriteAllBytes(_path, marked);
        _desk.LookAtFile();
        Assert.Empty(_desk.Make(To(110)));
        var written = System.IO.File.ReadAllBytes(_path);
        Assert.Equal(marked[..200], written[..200]);
        Assert.Equal(marked.Count(b => b == '\r'), written.Count(b => b == '\r'));
        _desk.Undo();
        Assert.Equal(marked, System.IO.File.ReadAllBytes(_path));
    }

    [Fact]
    [UnsupportedOSPlatform("windows")]
    public void Who_may_read_the_file_stays_as_it_was()
    {
        const System.IO.UnixFileMode Mode = System.IO.UnixFileMode.UserRead | System.IO.UnixFileMode.UserWrite | System.IO.UnixFileMode.GroupRead | System.IO.UnixFileMode.GroupWrite;
        System.IO.File.SetUnixFileMode(_path, Mode);
        Assert.Empty(_desk.Make(To(110)));
        Assert.Equal(Mode, System.IO.File.GetUnixFileMode(_path));
    }

    [Fact]
    public void A_file_that_may_not_be_written_is_left_alone_and_nothing_is_lost()
    {
        var before = OnDisk;
        System.IO.File.SetAttributes(_path, System.IO.FileAttributes.ReadOnly);
        NotSaved(before);
        System.IO.File.SetAttributes(_path, System.IO.FileAttributes.Normal);
        SavedAtLast();
    }

    [Fact]
    public void When_nothing_can_be_written_nothing_is_lost()
    {
        // the name the new text is written under is taken by a folder: to the desk the same as a full disk
        var before = OnDisk;
        var inTheWay = _scratch.Path($".skeleton-hatchet.plan.toml.{Environment.ProcessId}.part");
        System.IO.Directory.CreateDirectory(inTheWay);
        NotSaved(before);
        System.IO.Directory.Delete(inTheWay);
        SavedAtLast();
    }

    [Fact]
    public void A_file_deleted_meanwhile_is_told_and_written_again_by_the_next_change()
    {
        System.IO.File.Delete(_path);
        _desk.LookAtFile();
        Assert.NotEmpty(_desk.FileFaults);
        Assert.Empty(_desk.Make(To(110)));
        Assert.Empty(_desk.FileFaults);
        Assert.Contains("[110, 18", OnDisk, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("tangwright = 1\nname = ")]
    [InlineData("\uD800 cut short")]
    public void A_file_that_cannot_be_used_is_never_written_over(string broken)
    {
        var bytes = broken[0] == '\uD800' ? [0xFF, 0xFE, .. "cut short"u8] : System.Text.Encoding.UTF8.GetBytes(broken);
        System.IO.File.WriteAllBytes(_path, bytes);
        _desk.LookAtFile();
        Assert.Empty(_desk.Make(To(110)));
        Assert.Empty(_desk.Make(To(115)));
        Assert.Equal(bytes, System.IO.File.ReadAllBytes(_path));
        Assert.Equal(115, X, 9);
        var beside = _scratch.Path("skeleton-hatchet.desk.plan.toml");
        Assert.Equal(_desk.Text, System.IO.File.ReadAllText(beside));
        Assert.Contains("skeleton-hatchet.desk.plan.toml", _desk.Notice, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_conflicts_leave_two_files_beside()
    {
        foreach (var (x, revision) in new[] { (110.0, "B"), (115, "C") })
        {
            _desk.Begin();
            _desk.Step(To(x));
            System.IO.File.WriteAllText(_path, System.Text.RegularExpressions.Regex.Replace(OnDisk, "revision = \".*?\"", $"revision = \"{revision}{revision}{revision}\""));
            _desk.End();
        }

        var texts = System.IO.Directory.GetFiles(_scratch.Folder, "*.desk.plan.toml").Select(System.IO.File.ReadAllText).ToArray();
        Assert.Contains(texts, t => t.Contains("[110, 18", StringComparison.Ordinal));
        Assert.Contains(texts, t => t.Contains("[115, 18", StringComparison.Ordinal));
    }

    [Fact]
    public void A_steel_file_put_beside_the_plan_counts_at_once()
    {
        var mass = _desk.Results.Stages[^1].Mass;
        var steel = Repository.Text("data", "steels", "80CrV2.toml");
        System.IO.Directory.CreateDirectory(_scratch.Path("steels"));
        _scratch.Put("steels/own.toml", steel.Replace("7.85 g/cm3", "7.1 g/cm3", StringComparison.Ordinal));
        _folder.LookAtShops();
        Assert.NotEqual(mass, _desk.Results.Stages[^1].Mass);
    }

    private static PutAt To(double x) => new(Hole, new Point(x, 18), Rounded: true);

    private (DeskFolder Folder, PlanOnDesk Plan) Open(TimeSpan slower)
    {
        var folder = DeskFolder.Of(_scratch.Folder, slower).Value;
        return (folder, folder.Plan("skeleton-hatchet").Value);
    }

    private void NotSaved(string before)
    {
        Assert.Empty(_desk.Make(To(110)));
        Assert.True(_desk.IsUnsaved);
        Assert.StartsWith("Not saved", _desk.Notice, StringComparison.Ordinal);
        Assert.Equal(before, OnDisk);
        Assert.Equal(110, X, 9);
        Assert.Empty(_desk.Make(To(115)));
        _desk.PutNoticeAway();
        Assert.NotEmpty(_desk.Notice);
        _desk.Undo();
        Assert.Equal(110, X, 9);
        Assert.True(_desk.CanUndo && _desk.CanRedo);
    }

    private void SavedAtLast()
    {
        for (var i = 0; i < 10; i++) _desk.LookAtFile();
        Assert.False(_desk.IsUnsaved);
        Assert.Empty(_desk.Notice);
        Assert.Contains("[110, 18", OnDisk, StringComparison.Ordinal);
    }
}
