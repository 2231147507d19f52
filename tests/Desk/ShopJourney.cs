using Microsoft.Playwright;

namespace Tangwright.Tests;

/// <summary>The shop in one tab, a plan in another.</summary>
public sealed class ShopJourney(Chromium chromium, DeskOnScratch desk) : Journey(chromium, desk)
{
    [Fact]
    public async Task A_drill_bought_takes_the_finding_away_in_another_tab()
    {
        var stem = Desk.PutExample("skeleton-hatchet");
        await System.IO.File.WriteAllTextAsync(PathOf(stem), TextOf(stem).Replace("diameter = 16", "diameter = 16.5", StringComparison.Ordinal));
        var plan = await OpenPlan(stem);
        var missing = plan.Locator(".findings li", new() { HasTextString = "in the shop for hole L1" });
        await Assertions.Expect(missing).Not.ToHaveCountAsync(0);

        var shop = await Open($"plan/{stem}/shop");
        var list = shop.GetByLabel("Drills as a list");
        await Assertions.Expect(list).ToBeEnabledAsync();

        // what makes no sense is refused in words
        await list.FillAsync(await list.InputValueAsync() + "\n#99");
        await list.BlurAsync();
        await shop.Locator(".faults").WaitForAsync();
        await shop.Locator("summary", new() { HasTextString = "Millimetres, by halves" }).First.ClickAsync();
        await shop.GetByRole(AriaRole.Group, new() { NameString = "Drills, millimetres, by halves" }).GetByLabel("16.5 mm", new() { Exact = true }).CheckAsync();
        await Eventually(() => System.IO.File.ReadAllText(Desk.Scratch.Path(stem + ".shop.toml")).Contains("\"16.5 mm\"", StringComparison.Ordinal));
        await Assertions.Expect(missing).ToHaveCountAsync(0);

        await shop.GetByRole(AriaRole.Button, new() { NameString = "undo" }).ClickAsync();
        await Assertions.Expect(missing).Not.ToHaveCountAsync(0);
    }

    [Fact]
    public async Task A_first_shop_file_is_begun_and_a_wheel_added()
    {
        var page = await Open("shop");
        await page.GetByRole(AriaRole.Button, new() { NameString = "Begin your shop file" }).ClickAsync();
        var wheels = page.GetByRole(AriaRole.Region, new() { NameString = "Wheels" });
        await wheels.GetByText("Add a wheel").ClickAsync();
        var form = wheels.Locator("form");
        await form.GetByLabel("Name").FillAsync("two inch");
        await form.GetByLabel("Diameter").FillAsync("2 in");
        await form.GetByRole(AriaRole.Button, new() { NameString = "Add this wheel" }).ClickAsync();
        await Eventually(() => System.IO.File.ReadAllText(Desk.Scratch.Path("shop.toml")).Contains("name = \"two inch\"\ndiameter = \"2 in\"", StringComparison.Ordinal));
        await wheels.GetByRole(AriaRole.Button, new() { NameString = "Take two inch out" }).ClickAsync();
        await Eventually(() => !System.IO.File.ReadAllText(Desk.Scratch.Path("shop.toml")).Contains("two inch", StringComparison.Ordinal));
    }
}
