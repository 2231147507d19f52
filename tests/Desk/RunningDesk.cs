using System.Diagnostics;

namespace Tangwright.Tests;

/// <summary>The real desk as its own process on a free port, started from a folder that is not its own.</summary>
internal sealed class RunningDesk : IDisposable
{
    private readonly Process _process;

    public RunningDesk(string folder, params ReadOnlySpan<string> more)
    {
        var here = new System.IO.DirectoryInfo(AppContext.BaseDirectory);
        var program = Repository.Path("src", "Desk", "bin", here.Parent!.Name, here.Name, "tangwright-desk.dll");
        var start = new ProcessStartInfo("dotnet") { WorkingDirectory = System.IO.Path.GetTempPath(), RedirectStandardOutput = true, UseShellExecute = false };
        foreach (var a in (ReadOnlySpan<string>)["exec", program, folder, "--port", "0", "--no-browser", .. more]) start.ArgumentList.Add(a);
        start.Environment["XDG_CONFIG_HOME"] = System.IO.Path.Combine(System.IO.Path.GetTempPath(), "no-settings");
        _process = Process.Start(start)!;
        var line = _process.StandardOutput.ReadLine() ?? throw new InvalidOperationException("the desk did not start");
        Address = new Uri(line.Split(' ').First(w => w.StartsWith("http://", StringComparison.Ordinal)));
    }

    public Uri Address { get; }

    public void Dispose()
    {
        if (!_process.HasExited) _process.Kill(entireProcessTree: true);
        _process.WaitForExit();
        _process.Dispose();
    }
}
