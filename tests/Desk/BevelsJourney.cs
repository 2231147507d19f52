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

    /// <summary>The hatchet at 7° per side: (6.35 − 0.5) / (2 tan 7°) = 23.82 mm high; in 3/16 in stock it is 4.69°.</summary>
    [Fact]
    public async Task What_if_answers_in_one_line_and_leaves_the_plan()
    {
        var stem = Desk.PutExample("skeleton-hatchet");
        var before = TextOf(stem);
        var page = await Open($"plan/{stem}/bevels");
        var answer = page.GetByRole(AriaRole.Status, new() { Name = "What if" });
        await Try("Angle, per side", "7");
        await answer.GetByText("23.82 mm").WaitForAsync();
        await Try("Angle, per side", "80");
        await answer.GetByText("an angle per side that is not between 0 and 60 degrees").WaitForAsync();
        await Try("Angle, per side", "");
        await Try("Stock", "3/16 in");
        await answer.GetByText("4.69° per side").WaitForAsync();
        await Try("Height", "");
        Assert.Equal(before, TextOf(stem));

        async Task Try(string what, string value)
        {
            var field = page.GetByLabel(what, new() { Exact = true });
            await field.FillAsync(value);
            await field.PressAsync("Tab");
        }
    }
}
