using Microsoft.Playwright;

namespace Tangwright.Tests;

/// <summary>The page of bars: how many to start, what to buy, the layout, and the sheets that follow.</summary>
public sealed class StockJourney(Chromium chromium, DeskOnScratch desk) : Journey(chromium, desk)
{
    [Fact]
    public async Task A_count_gives_starts_bars_a_layout_and_sheets()
    {
        var stem = Desk.PutExample("skeleton-hatchet");
        var page = await Open($"plan/{stem}/stock");
        await page.GetByLabel("Good pieces wanted").FillAsync("12");
        await page.GetByLabel("Share that comes out good").FillAsync("95%");
        await page.GetByRole(AriaRole.Button, new() { Name = "Lay out the bars" }).ClickAsync();
        await page.GetByText("Start 14: a chance of 97 % of 12 good.").WaitForAsync();
        await page.GetByText("14 costs no more steel than 13").WaitForAsync();
        await page.GetByText("Buy 3 × 76.2 mm (3 in) × 1219.2 mm (48 in): 6 in a bar, 4 end to end").WaitForAsync();
        Assert.Equal(2, await page.Locator("figure svg").CountAsync());

        // the sheets know the count
        await page.GetByRole(AriaRole.Link, new() { Name = "cut map for the saw" }).ClickAsync();
        await page.GetByRole(AriaRole.Heading, new() { Name = "Cut map" }).WaitForAsync();
        await page.Locator("svg").GetByText("turned end for end").First.WaitForAsync();
        Assert.Equal(0, await page.GetByText("says on the page of bars").CountAsync());
    }

    [Fact]
    public async Task What_cannot_be_is_told_in_words()
    {
        var stem = Desk.PutExample("skeleton-hatchet");
        var page = await Open($"plan/{stem}/stock");
        await page.GetByLabel("Good pieces wanted").FillAsync("twelve");
        await page.GetByRole(AriaRole.Button, new() { Name = "Lay out the bars" }).ClickAsync();
        await page.GetByText("write how many, as 12").WaitForAsync();
        await page.GetByLabel("Good pieces wanted").FillAsync("12");
        await page.GetByLabel("Bars to be had, a length each").FillAsync("10 in");
        await page.GetByRole(AriaRole.Button, new() { Name = "Lay out the bars" }).ClickAsync();
        await page.GetByText("comes out of the longest bar").WaitForAsync();
        await page.GetByLabel("Bars to be had, a length each").FillAsync("36 in, 48 in");
        await page.GetByRole(AriaRole.Button, new() { Name = "Lay out the bars" }).ClickAsync();
        await page.GetByText("in a bar").First.WaitForAsync();
    }

    [Fact]
    public async Task Two_plans_are_laid_out_together_and_the_counts_are_kept()
    {
        var stem = Desk.PutExample("skeleton-hatchet");
        var other = Desk.PutExample("skeleton-knife");
        var page = await Open($"plan/{stem}/stock");
        await page.GetByLabel("Good pieces wanted").FillAsync("4");
        await page.GetByText("Other plans of this folder in the same order").ClickAsync();
        await page.GetByLabel($"Good pieces of {other}", new() { Exact = true }).FillAsync("two");
        await page.GetByRole(AriaRole.Button, new() { Name = "Lay out the bars" }).ClickAsync();
        await page.GetByText("write how many, as 6, or nothing").WaitForAsync();
        await page.GetByLabel($"Good pieces of {other}", new() { Exact = true }).FillAsync("2");
        await page.GetByRole(AriaRole.Button, new() { Name = "Lay out the bars" }).ClickAsync();
        await page.GetByText("Skeleton knife 160, revision A: start 3").WaitForAsync();

        // another page, opened afresh, asks the same; the sheets know the order
        await page.ReloadAsync();
        await page.GetByText("Skeleton knife 160, revision A: start 3").WaitForAsync();
        Assert.Equal("2", await page.GetByLabel($"Good pieces of {other}", new() { Exact = true }).InputValueAsync());
        await page.GetByRole(AriaRole.Link, new() { Name = "tags for bars and drops" }).ClickAsync();
        await page.GetByRole(AriaRole.Heading, new() { Name = "Bar and drop tags" }).WaitForAsync();
        await page.Locator("svg").GetByText("heat number").First.WaitForAsync();
    }
}
