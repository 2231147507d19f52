using System.Xml.Linq;

namespace Tangwright.Tests.Rules;

/// <summary>The dependency arrows of the house: a project may only know those listed for it.</summary>
public class ProjectArrows
{
    private static readonly Dictionary<string, string[]> Allowed = new(StringComparer.Ordinal)
    {
        ["Foundation"] = [],
        ["Core"] = ["Foundation"],
        ["Inputs"] = ["Foundation", "Core"],
        ["Documents"] = ["Foundation", "Core"],
        ["Formats"] = ["Foundation"],
        ["Planners"] = ["Core"],
        ["UseCases"] = ["Foundation", "Core", "Inputs", "Documents", "Formats"],
        ["Cli"] = ["Foundation", "Core", "Planners", "UseCases"],
        ["Desk"] = ["Foundation", "Core", "Planners", "UseCases"],
    };

    [Fact]
    public void Every_project_knows_only_what_it_may()
    {
        var folders = System.IO.Directory.GetDirectories(Repository.Path("src")).Select(f => System.IO.Path.GetFileName(f)!).Order().ToArray();
        Assert.Equal(Allowed.Keys.Order(), folders);
        foreach (var name in folders)
        {
            var project = XDocument.Load(Repository.Path("src", name, name + ".csproj"));
            var known = project.Descendants("ProjectReference").Select(r => System.IO.Path.GetFileNameWithoutExtension(r.Attribute("Include")!.Value.Replace('\\', '/')));
            Assert.Empty(known.Except(Allowed[name]));
        }
    }

    [Theory]
    [InlineData("Foundation")]
    [InlineData("Core")]
    [InlineData("Inputs")]
    [InlineData("Documents")]
    [InlineData("Formats")]
    [InlineData("Planners")]
    public void Pure_projects_are_built_under_the_ban_on_files_and_clocks(string name)
        => Assert.Contains("BannedSymbols.Pure.txt", Repository.Text("src", name, name + ".csproj"), StringComparison.Ordinal);

    [Fact]
    public void No_project_sees_what_another_one_knows()
        => Assert.Contains("<DisableTransitiveProjectReferences>true</DisableTransitiveProjectReferences>", Repository.Text("Directory.Build.props"), StringComparison.Ordinal);

    [Theory]
    [InlineData("Formats", "PDFsharp")]
    [InlineData("Inputs", "Tomlyn")]
    [InlineData("Cli", "System.CommandLine")]
    [InlineData("Planners", "Google.OrTools")]
    public void A_package_is_known_to_one_project_only(string owner, string package)
    {
        var users = System.IO.Directory.GetFiles(Repository.Path("src"), "*.csproj", System.IO.SearchOption.AllDirectories)
            .Where(f => System.IO.File.ReadAllText(f).Contains($"Include=\"{package}\"", StringComparison.Ordinal))
            .Select(f => System.IO.Path.GetFileNameWithoutExtension(f));
        Assert.Equal([owner], users);
    }
}
