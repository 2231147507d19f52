using System.Collections.Immutable;

namespace Tangwright.Core;

/// <summary>Small tables of the program's own data, comma-separated under one line of headings.</summary>
internal static class DataRows
{
    /// <summary>Rows without the headings.</summary>
    /// <param name="file">Name of the file: <c>grits.csv</c>.</param>
    public static ImmutableArray<string[]> Of(string file) => [.. Lines(file).Skip(1).Select(l => l.Split(','))];

    /// <summary>Headings, then rows.</summary>
    /// <param name="file">Name of the file.</param>
    public static ImmutableArray<string> Lines(string file)
    {
        using var stream = typeof(DataRows).Assembly.GetManifestResourceStream(file) ?? throw new InvalidOperationException(file + " is missing from the program");
        using var reader = new System.IO.StreamReader(stream);
        return [.. reader.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)];
    }
}
