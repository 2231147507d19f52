namespace Tangwright.UseCases;

/// <summary>Places of the files that come with the program and of the person's own.</summary>
internal static class ProgramData
{
    /// <summary>The folder of facts beside the program.</summary>
    public static string Folder => System.IO.Path.Combine(AppContext.BaseDirectory, "data");

    /// <summary>The built-in shop.</summary>
    public static string BuiltInShop => System.IO.Path.Combine(Folder, "shop.toml");

    /// <summary>The folder of steels that come with the program.</summary>
    public static string Steels => System.IO.Path.Combine(Folder, "steels");

    /// <summary>The folder of starter plans.</summary>
    public static string Starters => System.IO.Path.Combine(AppContext.BaseDirectory, "starters");

    /// <summary>The person's own settings folder; may not exist.</summary>
    public static string OwnFolder => System.IO.Path.Combine(
        Environment.GetFolderPath(Environment.SpecialFolder.ApplicationData, Environment.SpecialFolderOption.DoNotVerify), "tangwright");
}
