using Microsoft.Playwright;

namespace Tangwright.Tests;

/// <summary>The page of the handle: a batch is split into mixes, a board is asked about, the scales are made thinner in figures and the weight follows, the template is looked at.</summary>
public sealed class HandleJourney(Chromium chromium, DeskOnScratch desk) : Journey(chromium, desk)
{
    [Fact]
    public async Task A_batch_a_board_and_the_template()
    {
        var stem = Desk.PutExample("kitchen-knife");
        var page = await Open($"plan/{stem}/handle");
        await page.GetByText("Scales of black walnut").First.WaitForAsync();
        await page.GetByText("the steel will stand proud").WaitForAsync();
        Assert.Equal(1, await page.Locator("figure").CountAsync());
        await page.GetByLabel("Pieces at once").FillAsync("8");
        await page.GetByLabel("Pieces at once").PressAsync("Tab");
        await page.GetByText("8 pieces: 2 mixes of 4 + 4").WaitForAsync();
        await page.GetByLabel("Board for the scales").FillAsync("a plank");
        await page.GetByLabel("Board for the scales").PressAsync("Tab");
        await page.GetByText("\"a plank\" is no board").WaitForAsync();
        await page.GetByLabel("Board for the scales").FillAsync("400 x 120 x 27 mm");
        await page.GetByLabel("Board for the scales").PressAsync("Tab");
        await page.GetByText("9 pairs").WaitForAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "scale template" }).ClickAsync();
        await page.GetByRole(AriaRole.Heading, new() { Name = "Scale template" }).First.WaitForAsync();
        await page.Locator("svg").GetByText("front scale").First.WaitForAsync();
    }
}
