namespace Tangwright.Tests;

/// <summary>The solver for orders of several plans is large: what does not need it does not load it. The program is run with that part made unusable.</summary>
public sealed class LoadedPartsTests : IDisposable
{
    private readonly Scratch _scratch = new();

    public void Dispose() => _scratch.Dispose();

    [Fact]
    public void Plans_alone_load_no_solver()
    {
        var program = WithoutSolver();
        var plan = _scratch.PutExample("skeleton-hatchet");
        foreach (string[] asked in new string[][] { ["check", plan], ["stock", plan, "--good", "12", "--straight-cuts"], ["packet", plan, "--good", "3", "--date", "2026-01-31"] })
        {
            var run = ProgramRun.Other("dotnet", _scratch.Folder, [program, .. asked]);
            Assert.InRange(run.Exit, 0, 1);
            Assert.NotEmpty(run.Out);
        }

        // and that it is unusable shows with two plans
        Assert.Equal(3, ProgramRun.Other("dotnet", _scratch.Folder, program, "stock", plan, "--good", "3", "--with", _scratch.PutExample("skeleton-knife") + "=2").Exit);
    }

    /// <summary>The program's folder, linked file by file, with the two parts of the solver empty.</summary>
    private string WithoutSolver()
    {
        ProgramRun.Of(_scratch.Folder, "--version");
        var from = Repository.Path("artifacts", "cli");
        System.IO.Directory.CreateDirectory(_scratch.Path("program"));
        foreach (var file in System.IO.Directory.GetFiles(from))
        {
            var (name, to) = (System.IO.Path.GetFileName(file), _scratch.Path("program", System.IO.Path.GetFileName(file)));
            if (name is "Google.OrTools.dll" or "Tangwright.Planners.dll") System.IO.File.WriteAllText(to, "");
            else if (name.StartsWith("tangwright", StringComparison.Ordinal)) System.IO.File.Copy(file, to);
            else System.IO.File.CreateSymbolicLink(to, file);
        }

        Assert.True(System.IO.File.Exists(_scratch.Path("program", "Google.OrTools.dll")));
        return _scratch.Path("program", "tangwright.dll");
    }
}
