namespace Tangwright.Inputs;

/// <summary>The texts of the data folder, carried inside the program.</summary>
internal static class DataText
{
    private static readonly System.Reflection.Assembly Here = typeof(DataText).Assembly;

    /// <summary>Names of all texts, as under data/, in order.</summary>
    public static IEnumerable<string> Names => Here.GetManifestResourceNames().Order(StringComparer.Ordinal);

    /// <summary>The text of a file under data/.</summary>
    public static string Of(string name)
    {
        using var stream = Here.GetManifestResourceStream(name) ?? throw new InvalidOperationException($"{name} is missing from the program");
        using var reader = new System.IO.StreamReader(stream);
        return reader.ReadToEnd();
    }
}
