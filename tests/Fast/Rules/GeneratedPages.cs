using Tangwright.Inputs;

namespace Tangwright.Tests;

/// <summary>Pages of the manual that are made from tables in the code. Run the tests once with TANGWRIGHT_WRITE_DOCS=1 to write them anew.</summary>
public class GeneratedPages
{
    [Fact]
    public void The_page_of_the_plan_file_is_fresh() => Same("plan-file.md", PlanKeysPage.Markdown());

    [Fact]
    public void The_page_of_the_shop_file_is_fresh() => Same("shop-file.md", ShopKeysPage.Markdown());

    [Fact]
    public void The_page_of_the_steel_file_is_fresh() => Same("steel-file.md", SteelKeysPage.Markdown());

    private static void Same(string name, string page)
    {
        var file = Files.Of("docs", name);
        if (Environment.GetEnvironmentVariable("TANGWRIGHT_WRITE_DOCS") == "1") File.WriteAllText(file, page);
        Assert.True(File.Exists(file) && File.ReadAllText(file) == page, $"docs/{name} is stale: run the tests once with TANGWRIGHT_WRITE_DOCS=1");
    }
}
