using System.Collections.Immutable;
using System.Reflection;

namespace Tangwright.UseCases;

/// <summary>A page of help in trade words, from a text file of its own: the title, an empty line, then paragraphs; one that begins with "Caution:" is a caution.</summary>
/// <param name="Key">Name to ask for it by: "shop".</param>
/// <param name="Title">What it is about.</param>
/// <param name="Paragraphs">The text.</param>
public sealed record HelpTopic(string Key, string Title, ImmutableArray<string> Paragraphs)
{
    private const string CautionWord = "Caution:";
    private static readonly Lazy<ImmutableArray<HelpTopic>> Read = new(ReadAll);

    /// <summary>All of them, in the order they are read.</summary>
    public static ImmutableArray<HelpTopic> All => Read.Value;

    /// <summary>The one of a name; null when there is none.</summary>
    public static HelpTopic? Of(string key) => All.FirstOrDefault(t => t.Key == key);

    /// <summary>Whether a paragraph is a caution.</summary>
    public static bool IsCaution(string paragraph) => paragraph.StartsWith(CautionWord, StringComparison.Ordinal);

    private static ImmutableArray<HelpTopic> ReadAll()
    {
        var assembly = Assembly.GetExecutingAssembly();
        return [.. assembly.GetManifestResourceNames().Where(n => n.StartsWith("help/", StringComparison.Ordinal)).Order(StringComparer.Ordinal).Select(n => One(assembly, n))];
    }

    private static HelpTopic One(Assembly assembly, string name)
    {
        using var reader = new System.IO.StreamReader(assembly.GetManifestResourceStream(name)!);
        var parts = reader.ReadToEnd().ReplaceLineEndings("\n").Split("\n\n", StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);

        // "help/3-sheets.txt": the figure gives the order
        var key = name["help/".Length..^".txt".Length];
        return new HelpTopic(key[(key.IndexOf('-', StringComparison.Ordinal) + 1)..], parts[0], [.. parts.Skip(1).Select(p => p.Replace('\n', ' '))]);
    }
}
