using System.Collections.Concurrent;
using System.Diagnostics;

namespace Tangwright.Tests;

/// <summary>The real desk as its own process on a free port, started from a folder that is not its own.</summary>
internal sealed class RunningDesk(string folder, params string[] more) : IDisposable
{
    private Process? _process;
    private Uri? _address;
    private HttpClient? _client;

    public Uri Address => _address ?? Started()._address!;

    public HttpClient Client => _client ??= new HttpClient { BaseAddress = Address };

    /// <summary>Added to every calculation, ms.</summary>
    public int SlowerMs { get; init; }

    /// <summary>Whether the desk as it is published is run, as the launcher does, not the one just built.</summary>
    public bool IsPublished { get; init; }

    /// <summary>What it said after its address: nothing, unless something failed.</summary>
    public ConcurrentQueue<string> Said { get; } = new();

    /// <summary>Ends it as a power cut would.</summary>
    public void Kill()
    {
        if (_process is null) return;
        if (!_process.HasExited) _process.Kill(entireProcessTree: true);
        _process.WaitForExit();
        _process.Dispose();
        _process = null;
    }

    /// <summary>Starts it; again at the same address after it was killed.</summary>
    public RunningDesk Started()
    {
        if (_process is null) (_process, _address) = Start(_address?.Port ?? 0);
        return this;
    }

    public void Dispose()
    {
        _client?.Dispose();
        Kill();
    }

    private (Process Process, Uri Address) Start(int port)
    {
        var here = new System.IO.DirectoryInfo(AppContext.BaseDirectory);
        var program = IsPublished ? Repository.Path("artifacts", "desk", "tangwright-desk.dll") : Repository.Path("src", "Desk", "bin", here.Parent!.Name, here.Name, "tangwright-desk.dll");
        var start = new ProcessStartInfo("dotnet") { WorkingDirectory = System.IO.Path.GetTempPath(), RedirectStandardOutput = true, RedirectStandardError = true, UseShellExecute = false };
        foreach (var a in (string[])["exec", program, folder, "--port", $"{port}", "--no-browser", .. more]) start.ArgumentList.Add(a);
        if (SlowerMs > 0) start.Environment["TANGWRIGHT_DESK_SLOWER_MS"] = $"{SlowerMs}";

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
