using System.Diagnostics;

namespace Tangwright.Tests;

/// <summary>One run of the real program through its launcher.</summary>
internal sealed record ProgramRun(int Exit, string Out, string Error)
{
    public static ProgramRun Of(string folder, params ReadOnlySpan<string> args)
        => Other(Repository.Path("tangwright"), folder, args);

    public static ProgramRun Other(string program, string folder, params ReadOnlySpan<string> args)
    {
        var start = new ProcessStartInfo(program) { WorkingDirectory = folder, RedirectStandardOutput = true, RedirectStandardError = true, RedirectStandardInput = true, UseShellExecute = false };
        foreach (var a in args) start.ArgumentList.Add(a);

        // an empty settings folder, so that a shop file of whoever runs the tests plays no part
        start.Environment["XDG_CONFIG_HOME"] = System.IO.Path.Combine(folder, "no-settings");
        using var p = Process.Start(start) ?? throw new InvalidOperationException("not started: " + program);
        p.StandardInput.Close();
        var error = p.StandardError.ReadToEndAsync();
        var text = p.StandardOutput.ReadToEnd();
        p.WaitForExit();
        return new ProgramRun(p.ExitCode, text, error.GetAwaiter().GetResult());
    }
}

/// <summary>A folder for one test, gone afterwards.</summary>
internal sealed class Scratch : IDisposable
{
    public Scratch() => System.IO.Directory.CreateDirectory(Folder);

    public string Folder { get; } = System.IO.Path.Combine(System.IO.Path.GetTempPath(), "tangwright-" + Guid.NewGuid().ToString("N"));

    public string Path(params ReadOnlySpan<string> parts) => System.IO.Path.Combine([Folder, .. parts]);

    public string Put(string name, string text)
    {
        System.IO.File.WriteAllText(Path(name), text);
        return Path(name);
    }

    /// <summary>Copies an example plan with its shop.</summary>
    public string PutExample(string stem)
    {
        foreach (var ending in new[] { ".plan.toml", ".shop.toml" }) System.IO.File.Copy(Repository.Path("examples", stem + ending), Path(stem + ending));
        return Path(stem + ".plan.toml");
    }

    public void Dispose() => System.IO.Directory.Delete(Folder, recursive: true);
}
