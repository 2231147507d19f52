using Microsoft.Playwright;

namespace Tangwright.Tests;

/// <summary>The page of the finish: the ladder, another last grit, a line for the log, and the sheet that follows.</summary>
public sealed class FinishJourney(Chromium chromium, DeskOnScratch desk) : Journey(chromium, desk)
{
    [Fact]
    public async Task The_ladder_is_told_changed_logged_and_carried_to_the_sheet()
    {
        var stem = Desk.PutExample("paring-knife");
        var page = await Open($"plan/{stem}/finish");
        await page.GetByText("4 steps to P400").WaitForAsync();
        await page.GetByLabel("Last grit").FillAsync("400");
        await page.GetByLabel("Last grit").PressAsync("Tab");
        await page.GetByText("a grit without its series").WaitForAsync();
        await page.GetByLabel("Last grit").FillAsync("CAMI 600");
        await page.GetByLabel("Last grit").PressAsync("Tab");
        await page.GetByText("to CAMI 600").First.WaitForAsync();

        await page.GetByLabel("Batch").FillAsync("autumn");
        await page.GetByLabel("Belt or paper").SelectOptionAsync("ceramic P60");
        await page.GetByLabel("Pieces").FillAsync("20");
        await page.GetByLabel("Minutes in all").FillAsync("12");
        await page.GetByRole(AriaRole.Button, new() { Name = "Write into the log" }).ClickAsync();
        await page.GetByText("Written: ceramic P60, batch autumn.").WaitForAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Finish ladder for the grinder" }).ClickAsync();
        await page.GetByRole(AriaRole.Heading, new() { Name = "Finish ladder" }).First.WaitForAsync();
        await page.Locator("svg").GetByText("CAMI 600").First.WaitForAsync();
    }
}
