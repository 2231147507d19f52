using System.Diagnostics;

namespace Tangwright.Tests;

/// <summary>The real desk, started from another folder on a free port and ended with the test.</summary>
internal sealed class DeskServer : IDisposable
{
    private readonly Process _process;

    public DeskServer(string folder)
    {
        Folder = folder;
        var start = new ProcessStartInfo(Repository.Path("tangwright")) { WorkingDirectory = "/", RedirectStandardOutput = true, RedirectStandardError = true, UseShellExecute = false };
        foreach (var a in new[] { "desk", folder, "--port", "0", "--no-browser" }) start.ArgumentList.Add(a);
        start.Environment["XDG_CONFIG_HOME"] = System.IO.Path.Combine(folder, "no-settings");
        _process = Process.Start(start) ?? throw new InvalidOperationException("the desk did not start");
        var said = _process.StandardOutput.ReadLine() ?? throw new InvalidOperationException("the desk said nothing: " + _process.StandardError.ReadToEnd());
        Address = new Uri(said.Split(' ').First(w => w.StartsWith("http://", StringComparison.Ordinal)));
        Client = new HttpClient { BaseAddress = Address };
    }

    public string Folder { get; }

    public Uri Address { get; }

    public HttpClient Client { get; }

    public void Dispose()
    {
        Client.Dispose();
        _process.Kill(entireProcessTree: true);
        _process.WaitForExit();
        _process.Dispose();
    }
}
