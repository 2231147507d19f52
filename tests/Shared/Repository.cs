namespace Tangwright.Tests;

/// <summary>Where the project's own files lie when its tests run.</summary>
internal static class Repository
{
    public static string Root { get; } = FindRoot();

    public static string Path(params ReadOnlySpan<string> parts) => System.IO.Path.Combine([Root, .. parts]);

    public static string Text(params ReadOnlySpan<string> parts) => System.IO.File.ReadAllText(Path(parts));

    private static string FindRoot()
    {
        var folder = new System.IO.DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !System.IO.File.Exists(System.IO.Path.Combine(folder.FullName, "Tangwright.slnx"))) folder = folder.Parent;
        return folder?.FullName ?? throw new InvalidOperationException("the tests must run inside the project's folder");
    }
}
