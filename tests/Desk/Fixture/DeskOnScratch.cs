namespace Tangwright.Tests;

/// <summary>A running desk on a folder of its own, shared by the tests of one class.</summary>
public class DeskOnScratch : IDisposable
{
    private readonly Dictionary<string, int> _copies = new(StringComparer.Ordinal);
    private readonly Lazy<RunningDesk> _running;

    public DeskOnScratch()
        : this(0)
    {
    }

    /// <summary>A desk whose every calculation takes longer.</summary>
    protected DeskOnScratch(int slowerMs) => _running = new(() => new RunningDesk(Scratch.Folder) { SlowerMs = slowerMs }.Started());

    internal Scratch Scratch { get; } = new();

    /// <summary>The desk, started when it is first needed.</summary>
    internal RunningDesk Running => _running.Value;

    /// <summary>Copies an example with its shop under a name no other test uses.</summary>
    /// <returns>The name without its ending: the example's own, later ones with -2, -3.</returns>
    public string PutExample(string example)
    {
        lock (_copies)
        {
            var n = _copies[example] = _copies.GetValueOrDefault(example) + 1;
            var stem = n == 1 ? example : $"{example}-{n}";
            foreach (var ending in new[] { ".plan.toml", ".shop.toml" }) System.IO.File.Copy(Repository.Path("examples", example + ending), Scratch.Path(stem + ending));
            return stem;
        }
    }

    /// <summary>Copies the plan speed is measured on: 100 Bézier curves, 40 holes.</summary>
    public string PutReference(string stem = "reference")
    {
        System.IO.File.Copy(Repository.Path("benchmarks", "reference.plan.toml"), Scratch.Path(stem + ".plan.toml"));
        return stem;
    }

    public void Dispose()
    {
        if (_running.IsValueCreated) Running.Dispose();
        Scratch.Dispose();
        GC.SuppressFinalize(this);
    }
}

/// <summary>The same on a computer that takes 25 ms longer over every calculation.</summary>
public sealed class SlowDesk() : DeskOnScratch(25);
