namespace Tangwright.UseCases;

/// <summary>Places of the files that come with the program and of the person's own.</summary>
internal static class ProgramData
{
    /// <summary>The folder of starter plans.</summary>
    public static string Starters => System.IO.Path.Combine(AppContext.BaseDirectory, "starters");

    /// <summary>The person's own settings folder; may not exist.</summary>
    public static string OwnFolder => System.IO.Path.Combine(
        Environment.GetFolderPath(Environment.SpecialFolder.ApplicationData, Environment.SpecialFolderOption.DoNotVerify), "tangwright");
}
