namespace Tangwright.Tests;

/// <summary>The parts of the drawing's module that are plain calculation, tested where they run: see tests/js.</summary>
public sealed class ModuleTests
{
    [Fact]
    public void Hold_what_their_own_tests_say()
    {
        using var scratch = new Scratch();
        var run = ProgramRun.Other("node", scratch.Folder, ["--test", .. System.IO.Directory.GetFiles(Repository.Path("tests", "js"), "*.test.js").Order()]);
        Assert.True(run.Exit == 0, run.Out + run.Error);
        Assert.Contains("# pass", run.Out, StringComparison.Ordinal);
    }
}
