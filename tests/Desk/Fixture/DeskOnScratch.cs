namespace Tangwright.Tests;

/// <summary>A running desk on a folder of its own, shared by the tests of one class.</summary>
public sealed class DeskOnScratch : IDisposable
{
    private readonly Dictionary<string, int> _copies = new(StringComparer.Ordinal);

    public DeskOnScratch() => Running = new RunningDesk(Scratch.Folder);

    internal Scratch Scratch { get; } = new();

    internal RunningDesk Running { get; }

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

    public void Dispose()
    {
        Running.Dispose();
        Scratch.Dispose();
    }
}
