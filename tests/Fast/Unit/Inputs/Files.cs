namespace Tangwright.Tests;

/// <summary>Files of the project, found upwards from where the tests run.</summary>
internal static class Files
{
    public static string Root { get; } = FindRoot();

    public static string Of(params string[] parts) => System.IO.Path.Combine([Root, .. parts]);

    public static string Text(params string[] parts) => File.ReadAllText(Of(parts));

    private static string FindRoot()
    {
        var d = new DirectoryInfo(AppContext.BaseDirectory);
        while (d is not null && !File.Exists(System.IO.Path.Combine(d.FullName, "Tangwright.slnx"))) d = d.Parent;
        return d?.FullName ?? throw new InvalidOperationException("the project's folder was not found");
    }
}
