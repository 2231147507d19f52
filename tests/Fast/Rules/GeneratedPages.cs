using Tangwright.Inputs;

namespace Tangwright.Tests.Rules;

/// <summary>Pages of the manual that are made from the key tables.</summary>
public class GeneratedPages
{
    [Fact]
    public void The_page_of_the_plan_file_is_fresh() => GeneratedPage.Check(PlanKeysPage.Markdown(), "docs", "plan-file.md");

    [Fact]
    public void The_page_of_the_shop_file_is_fresh() => GeneratedPage.Check(ShopKeysPage.Markdown(), "docs", "shop-file.md");

    [Fact]
    public void The_page_of_the_steel_file_is_fresh() => GeneratedPage.Check(SteelKeysPage.Markdown(), "docs", "steel-file.md");

    [Fact]
    public void The_page_of_the_quenchant_file_is_fresh() => GeneratedPage.Check(QuenchKeysPage.Markdown(), "docs", "quenchant-file.md");

    [Fact]
    public void The_page_of_the_handle_material_file_is_fresh() => GeneratedPage.Check(HandleKeysPage.Markdown(), "docs", "handle-material-file.md");
}
