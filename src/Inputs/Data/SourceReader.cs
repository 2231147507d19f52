using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>A published source.</summary>
/// <param name="Key">Short key that values and formulas name it by.</param>
/// <param name="Title">Author, title, edition, year.</param>
/// <param name="Kind">standard, handbook, book, paper, report or data sheet.</param>
public sealed record PublishedSource(string Key, string Title, string Kind);

/// <summary>The published sources, by key.</summary>
/// <param name="All">All of them in the order of the file.</param>
public sealed record SourceList(ImmutableArray<PublishedSource> All)
{
    private static readonly Lazy<SourceList> Own = new(() => SourceReader.Read(DataText.Of("sources.toml"), "data/sources.toml").Value);

    /// <summary>The sources of data/sources.toml.</summary>
    public static SourceList BuiltIn => Own.Value;

    /// <summary>The source of a key; null when there is none.</summary>
    public PublishedSource? Find(string key) => All.FirstOrDefault(s => s.Key == key);
}

/// <summary>Reads the list of sources.</summary>
public static class SourceReader
{
    private static readonly KeyTable Keys = new(
        [new("source", true, true, "A published source.")],
        [
            new("source", "key", "text", true, "Short key", "", "\"svg-1.1\"", []),
            new("source", "title", "text", true, "Author, title, edition, year", "", "\"Scalable Vector Graphics 1.1, W3C, 2011\"", []),
            new("source", "kind", "word", true, "Kind of source", "", "\"standard\"", ["standard", "handbook", "book", "paper", "report", "data sheet"]),
        ]);

    /// <summary>The list, or every fault found.</summary>
    /// <param name="text">The whole text of the file.</param>
    /// <param name="fileName">Name of the file, for the faults.</param>
    public static Checked<SourceList> Read(string text, string fileName)
    {
        var source = new SourceText(text, fileName);
        return TomlReading.Read(source).Then(root =>
        {
            var faults = new List<Fault>();
            Keys.Check(root, source, faults);
            var all = ImmutableArray.CreateBuilder<PublishedSource>();
            foreach (var table in (root.Find("source")?.Value as TomlTables)?.Items ?? [])
            {
                var f = new Fields(source, table, "source", Keys, 1, faults);
                var (key, title, kind) = (f.Text("key"), f.Text("title"), f.Word("kind"));
                if (key is null || title is null || kind < 0) continue;
                if (all.Any(s => s.Key == key)) f.Fault("key", $"two sources have the key {key}", "give one of them another key");
                all.Add(new PublishedSource(key, title, Keys.Keys[2].Words[kind]));
            }

            return faults.Count > 0 ? Checked<SourceList>.Bad(faults.Take(50)) : Checked<SourceList>.Good(new SourceList(all.ToImmutable()));
        });
    }
}
