using System.Text.Json;

namespace Tangwright.Tests;

/// <summary>The command line as a maker meets it: the real program, its exit codes, its words, its files.</summary>
public sealed class CommandLineTests : IDisposable
{
    private readonly Scratch _scratch = new();

    public static TheoryData<string> Examples => ["skeleton-hatchet", "kitchen-knife", "paring-knife", "skeleton-knife"];

    private static string[] Programs(string example) => example switch { "paring-knife" => ["paring-knife-holes.ngc", "paring-knife-profile.ngc"], "skeleton-knife" => ["skeleton-knife.ngc"], _ => [] };

    public void Dispose() => _scratch.Dispose();

    [Fact]
    public void Without_words_it_teaches()
    {
        var run = ProgramRun.Of(_scratch.Folder);
        Assert.Equal(0, run.Exit);
        foreach (var verb in new[] { "new", "check", "figures", "compare", "template", "packet", "program", "import", "export" }) Assert.Contains(verb, run.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("hammer")]
    [InlineData("check")]
    [InlineData("check", "a.plan.toml", "b.plan.toml")]
    [InlineData("packet", "a.plan.toml", "--paper", "a7")]
    [InlineData("packet", "a.plan.toml", "--date", "31.3.2026")]
    [InlineData("export", "a.plan.toml")]
    [InlineData("figures", "a.plan.toml", "--loud")]
    public void A_wrong_command_line_exits_2_with_a_word(params string[] args)
    {
        var run = ProgramRun.Of(_scratch.Folder, args);
        Assert.Equal(2, run.Exit);
        Assert.Empty(run.Out);
        Assert.NotEmpty(run.Error);
        Assert.DoesNotContain("   at ", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_new_plan_can_be_checked_at_once()
    {
        foreach (var like in new[] { "hatchet", "kitchen", "paring" })
        {
            Assert.Equal(0, ProgramRun.Of(_scratch.Folder, "new", "my-" + like, "--like", like).Exit);
            var check = ProgramRun.Of(_scratch.Folder, "check", $"my-{like}.plan.toml", "--json");
            Assert.Equal(0, check.Exit);
            Assert.Equal("My " + like, JsonDocument.Parse(check.Out).RootElement.GetProperty("name").GetString());
        }
    }

    [Fact]
    public void A_new_plan_never_replaces_an_old_one()
    {
        var mine = _scratch.Put("mine.plan.toml", "my own work");
        var run = ProgramRun.Of(_scratch.Folder, "new", "mine");
        Assert.Equal(2, run.Exit);
        Assert.Equal("my own work", System.IO.File.ReadAllText(mine));
        Assert.Contains("--overwrite", run.Error, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void A_packet_holds_everything_and_repeats_to_the_byte(string example)
    {
        var plan = _scratch.PutExample(example);
        var first = ProgramRun.Of(_scratch.Folder, "packet", plan, "--date", "2026-03-31", "--out", "first");
        var second = ProgramRun.Of(_scratch.Folder, "packet", plan, "--date", "2026-03-31", "--out", "second");
        Assert.True(first.Exit is 0 or 1, first.Error);
        Assert.Equal(first.Exit, second.Exit);
        string[] expected = [.. new[] { "figures.json", "furnace.csv", "holes.csv", "layout.csv", "outline.dxf", "outline.svg", "packet.pdf", "readout.csv", "template.pdf" }.Concat(Programs(example)).Order(StringComparer.Ordinal)];
        Assert.Equal(expected, System.IO.Directory.GetFiles(_scratch.Path("first")).Select(f => System.IO.Path.GetFileName(f)!).Order());
        foreach (var f in expected) Assert.Equal(System.IO.File.ReadAllBytes(_scratch.Path("first", f)), System.IO.File.ReadAllBytes(_scratch.Path("second", f)));
        Assert.Equal(ProgramRun.Of(_scratch.Folder, "figures", plan, "--json").Out, System.IO.File.ReadAllText(_scratch.Path("first", "figures.json")));
        Assert.StartsWith("name,x_mm,y_mm,diameter_mm,use", System.IO.File.ReadAllText(_scratch.Path("first", "holes.csv")), StringComparison.Ordinal);
    }

    [Fact]
    public void A_program_is_written_told_and_left_alone()
    {
        var plan = _scratch.PutExample("skeleton-knife");
        var run = ProgramRun.Of(_scratch.Folder, "program", plan);
        Assert.Equal(0, run.Exit);
        foreach (var words in new[] { "4 holes and the profile", "T6 6 mm end mill", "strap clamp 2", "Run it in the air first" }) Assert.Contains(words, run.Out, StringComparison.Ordinal);
        var file = _scratch.Path("skeleton-knife.ngc");
        System.IO.File.WriteAllText(file, "my own changes");
        Assert.Equal(2, ProgramRun.Of(_scratch.Folder, "program", plan).Exit);
        Assert.Equal("my own changes", System.IO.File.ReadAllText(file));
        var json = JsonDocument.Parse(ProgramRun.Of(_scratch.Folder, "program", plan, "--work", "profile", "--zero", "H3", "--json").Out).RootElement;
        Assert.Equal(109, json.GetProperty("zero_in_plan").GetProperty("x_mm").GetDouble());
        Assert.True(System.IO.File.Exists(_scratch.Path("skeleton-knife-profile.ngc")));
    }

    // the mill's table is too short: nothing is written, and the packet says so
    [Fact]
    public void A_program_that_fails_the_check_is_not_written()
    {
        var plan = _scratch.PutExample("skeleton-knife");
        var shop = _scratch.Path("skeleton-knife.shop.toml");
        System.IO.File.WriteAllText(shop, System.IO.File.ReadAllText(shop).Replace("travel = [300, 200]", "travel = [100, 200]", StringComparison.Ordinal));
        var run = ProgramRun.Of(_scratch.Folder, "program", plan);
        Assert.Equal(2, run.Exit);
        Assert.Contains("fails the check", run.Error, StringComparison.Ordinal);
        Assert.False(System.IO.File.Exists(_scratch.Path("skeleton-knife.ngc")));
        var packet = ProgramRun.Of(_scratch.Folder, "packet", plan, "--out", "packet");
        Assert.Contains("no program for the small mill", packet.Out, StringComparison.Ordinal);
        Assert.DoesNotContain(System.IO.Directory.GetFiles(_scratch.Path("packet")), f => f.EndsWith(".ngc", StringComparison.Ordinal));
    }

    [Fact]
    public void A_second_packet_leaves_the_first_alone_unless_told()
    {
        var plan = _scratch.PutExample("paring-knife");
        Assert.Equal(0, ProgramRun.Of(_scratch.Folder, "packet", plan, "--date", "2026-03-31").Exit & 2);
        var csv = _scratch.Path("paring-knife-packet", "holes.csv");
        System.IO.File.WriteAllText(csv, "pencilled over");
        var again = ProgramRun.Of(_scratch.Folder, "packet", plan);
        Assert.Equal(2, again.Exit);
        Assert.Equal("pencilled over", System.IO.File.ReadAllText(csv));
        Assert.NotEqual(2, ProgramRun.Of(_scratch.Folder, "packet", plan, "--overwrite").Exit);
        Assert.StartsWith("name,x_mm", System.IO.File.ReadAllText(csv), StringComparison.Ordinal);
        Assert.DoesNotContain(System.IO.Directory.GetFiles(_scratch.Path("paring-knife-packet")), f => f.EndsWith(".part", StringComparison.Ordinal));
    }

    [Fact]
    public void Tonights_sheets_alone()
    {
        var plan = _scratch.PutExample("skeleton-hatchet");
        var run = ProgramRun.Of(_scratch.Folder, "packet", plan, "--sheets", "holes,template", "--out", "tonight");
        Assert.True(run.Exit is 0 or 1, run.Error);
        Assert.Equal(["packet-holes-template.pdf"], System.IO.Directory.GetFiles(_scratch.Path("tonight")).Select(f => System.IO.Path.GetFileName(f)!));
        var wrong = ProgramRun.Of(_scratch.Folder, "packet", plan, "--sheets", "hole", "--out", "none");
        Assert.Equal(2, wrong.Exit);
        Assert.False(System.IO.Directory.Exists(_scratch.Path("none")));
    }

    [Fact]
    public void A_spoiled_plan_writes_nothing()
    {
        var plan = _scratch.PutExample("skeleton-hatchet");
        System.IO.File.WriteAllText(plan, System.IO.File.ReadAllText(plan).Replace("diameter = 16", "diameter = \"16 lengths\"", StringComparison.Ordinal));
        var run = ProgramRun.Of(_scratch.Folder, "packet", plan);
        Assert.Equal(2, run.Exit);
        Assert.Matches(@"skeleton-hatchet\.plan\.toml:\d+:\d+: ", run.Error);
        Assert.Empty(run.Out);
        Assert.False(System.IO.Directory.Exists(_scratch.Path("skeleton-hatchet-packet")));
    }

    [Fact]
    public void Findings_that_rest_on_the_assumed_shop_are_notes_that_say_so()
    {
        var plan = _scratch.PutExample("skeleton-hatchet");
        System.IO.File.Delete(_scratch.Path("skeleton-hatchet.shop.toml"));
        using var json = JsonDocument.Parse(ProgramRun.Of(_scratch.Folder, "check", plan, "--json").Out);
        Assert.True(json.RootElement.GetProperty("assumed_shop").GetBoolean());
        foreach (var f in json.RootElement.GetProperty("findings").EnumerateArray().Where(f => f.GetProperty("assumed_shop").GetBoolean()))
        {
            Assert.Equal("note", f.GetProperty("severity").GetString());
        }
    }

    [Theory]
    [InlineData("check", "")]
    [InlineData("new", "..")]
    [InlineData("new", "")]
    [InlineData("packet", "skeleton-hatchet.plan.toml", "--out", "skeleton-hatchet.shop.toml")]
    [InlineData("template", "skeleton-hatchet.plan.toml", "--measured", "80x120")]
    public void A_name_that_cannot_be_used_is_refused_with_a_word(params string[] args)
    {
        _scratch.PutExample("skeleton-hatchet");
        var run = ProgramRun.Of(_scratch.Folder, args);
        Assert.Equal(2, run.Exit);
        Assert.Matches("(?m)^  -> ", run.Error);
        Assert.DoesNotContain("Parameter", run.Error, StringComparison.Ordinal);
        Assert.Equal(2, System.IO.Directory.GetFileSystemEntries(_scratch.Folder).Length);
    }

    [Fact]
    public void A_printer_that_shrinks_can_be_told_so()
    {
        var plan = _scratch.PutExample("skeleton-hatchet");
        Assert.Equal(0, ProgramRun.Of(_scratch.Folder, "template", plan, "--measured", "97.2x97.0").Exit);
        foreach (var wrong in new[] { "97.2", "97,2x97,0", "9.72x9.70", "x", "1e2x1e2" })
        {
            Assert.Equal(2, ProgramRun.Of(_scratch.Folder, "template", plan, "--measured", wrong, "--overwrite").Exit);
        }
    }
}
