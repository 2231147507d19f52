using System.Collections.Concurrent;
using System.Diagnostics;

namespace Tangwright.Tests;

/// <summary>The real desk as its own process on a free port, started from a folder that is not its own.</summary>
internal sealed class RunningDesk : IDisposable
{
    private readonly string _folder;
    private readonly string[] _more;
    private Process _process;

    public RunningDesk(string folder, params ReadOnlySpan<string> more)
    {
        _folder = folder;
        _more = more.ToArray();
        (_process, Address) = Start(0);
        Client = new HttpClient { BaseAddress = Address };
    }

    public Uri Address { get; }

    public HttpClient Client { get; }

    /// <summary>What it said after its address: nothing, unless something failed.</summary>
    public ConcurrentQueue<string> Said { get; } = new();

    /// <summary>Ends it as a power cut would.</summary>
    public void Kill()
    {
        if (!_process.HasExited) _process.Kill(entireProcessTree: true);
        _process.WaitForExit();
        _process.Dispose();
    }

    /// <summary>Starts it again at the same address.</summary>
    public void StartAgain() => (_process, _) = Start(Address.Port);

    public void Dispose()
    {
        Client.Dispose();
        Kill();
    }

    private (Process Process, Uri Address) Start(int port)
    {
        var here = new System.IO.DirectoryInfo(AppContext.BaseDirectory);
        var program = Repository.Path("src", "Desk", "bin", here.Parent!.Name, here.Name, "tangwright-desk.dll");
        var start = new ProcessStartInfo("dotnet") { WorkingDirectory = System.IO.Path.GetTempPath(), RedirectStandardOutput = true, RedirectStandardError = true, UseShellExecute = false };
        foreach (var a in (string[])["exec", program, _folder, "--port", $"{port}", "--no-browser", .. _more]) start.ArgumentList.Add(a);

        // an empty settings folder, so that a shop file of whoever runs the tests plays no part
        start.Environment["XDG_CONFIG_HOME"] = System.IO.Path.Combine(System.IO.Path.GetTempPath(), "no-settings");
        var process = Process.Start(start) ?? throw new InvalidOperationException("the desk did not start");
        _ = Listen(process.StandardError);
        var line = process.StandardOutput.ReadLine() ?? throw new InvalidOperationException("the desk did not start: " + string.Join(' ', Said));
        _ = Listen(process.StandardOutput);
        return (process, new Uri(line.Split(' ').First(w => w.StartsWith("http://", StringComparison.Ordinal))));
    }

    private async Task Listen(System.IO.TextReader from)
    {
        while (await from.ReadLineAsync() is { } line)
        {
            if (line.Length > 0) Said.Enqueue(line);
        }
    }
}
