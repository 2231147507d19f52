namespace Tangwright.Tests;

/// <summary>Pages and expected texts made by the program itself: compared with what is committed, or rewritten when TANGWRIGHT_WRITE_DOCS=1.</summary>
internal static class GeneratedPage
{
    public static bool Writing => Environment.GetEnvironmentVariable("TANGWRIGHT_WRITE_DOCS") == "1";

    public static void Check(string text, params ReadOnlySpan<string> parts)
    {
        var file = Repository.Path(parts);
        if (Writing)
        {
            System.IO.Directory.CreateDirectory(System.IO.Path.GetDirectoryName(file)!);
            System.IO.File.WriteAllText(file, text);
        }

        Assert.True(System.IO.File.Exists(file), $"{string.Join('/', parts.ToArray())} is missing: run with TANGWRIGHT_WRITE_DOCS=1 and read what it wrote");
        Assert.Equal(System.IO.File.ReadAllText(file).ReplaceLineEndings("\n"), text);
    }
}
