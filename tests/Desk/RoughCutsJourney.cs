using Microsoft.Playwright;

namespace Tangwright.Tests;

/// <summary>The page of rough cuts: the answer, another number of cuts, and the card that follows.</summary>
public sealed class RoughCutsJourney(Chromium chromium, DeskOnScratch desk) : Journey(chromium, desk)
{
    [Fact]
    public async Task Cuts_are_told_changed_and_carried_to_the_card()
    {
        var stem = Desk.PutExample("skeleton-knife");
        var page = await Open($"plan/{stem}/rough-cuts");
        await page.GetByText("3 cuts with the band saw save").WaitForAsync();
        Assert.Equal(1, await page.Locator("figure svg").CountAsync());
        await page.GetByLabel("Saw cuts").SelectOptionAsync("1");
        await page.GetByText("One cut with the band saw").WaitForAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Rough-cut card for the saw" }).ClickAsync();
        await page.GetByRole(AriaRole.Heading, new() { Name = "Rough-cut card" }).First.WaitForAsync();
        await page.Locator("svg").GetByText("grind only").First.WaitForAsync();
        Assert.Equal(0, await page.Locator("svg").GetByText("2a", new() { Exact = true }).CountAsync());
    }

    [Fact]
    public async Task Without_a_cut_the_grinder_is_warned_of_and_no_saw()
    {
        var page = await Open($"plan/{Desk.PutExample("paring-knife")}/rough-cuts");
        await page.GetByText("No saw cut saves more grinding than it costs").WaitForAsync();
        var caution = await page.Locator("section .caution").InnerTextAsync();
        Assert.Contains("Belt grinder", caution, StringComparison.Ordinal);
        Assert.DoesNotContain("disc", caution, StringComparison.Ordinal);
    }
}
