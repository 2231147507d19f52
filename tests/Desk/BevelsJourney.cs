using Microsoft.Playwright;

namespace Tangwright.Tests;

/// <summary>The page of bevels: a measured bar changes the lines to scribe, a wheel is judged, and the card follows.</summary>
public sealed class BevelsJourney(Chromium chromium, DeskOnScratch desk) : Journey(chromium, desk)
{
    [Fact]
    public async Task A_measured_bar_and_a_wheel_are_told_and_carried_to_the_card()
    {
        var stem = Desk.PutExample("paring-knife");
        var page = await Open($"plan/{stem}/bevels");
        await page.GetByText("height gauge 0.700 mm").WaitForAsync();
        await page.GetByLabel("Bar as measured").FillAsync("1.56 mm");
        await page.GetByLabel("Bar as measured").PressAsync("Tab");
        await page.GetByText("height gauge 0.680 mm").WaitForAsync();
        await page.GetByLabel("Another wheel").FillAsync("8 in");
        await page.GetByLabel("Another wheel").PressAsync("Tab");
        await page.GetByText("misses the rule by a hair").WaitForAsync();
        Assert.Equal(1, await page.Locator("figure svg").CountAsync());
        await page.GetByRole(AriaRole.Link, new() { Name = "Scribe card" }).ClickAsync();
        await page.GetByRole(AriaRole.Heading, new() { Name = "Scribe card" }).First.WaitForAsync();
        await page.Locator("svg").GetByText("bar as measured").First.WaitForAsync();
    }
}
