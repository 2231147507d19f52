using Microsoft.Playwright;

namespace Tangwright.Tests;

/// <summary>The page "Will it go together": every way with its chance, and a hole tried without touching the plan.</summary>
public sealed class AssemblyJourney(Chromium chromium, DeskOnScratch desk) : Journey(chromium, desk)
{
    [Fact]
    public async Task Shows_every_way_and_tries_a_hole()
    {
        var knife = Desk.PutExample("kitchen-knife");
        var before = await System.IO.File.ReadAllTextAsync(PathOf(knife));
        var page = await Open($"plan/{knife}/assembly");
        await page.GetByText("3 pins through tang and two scales").WaitForAsync();
        Assert.Equal(8, await page.Locator(".ways > li").CountAsync());
        await page.GetByText("scales pinned to the tang and drilled through it, as the plan says").WaitForAsync();

        // a rod that does not enter never goes through
        var tang = page.GetByLabel("Try the tang's holes at");
        await tang.FillAsync("4.9 mm");
        await tang.BlurAsync();
        await page.GetByText("Tried only: the plan is as it was.").WaitForAsync();
        await page.Locator(".ways .chance", new() { HasText = "under 0.1" }).Nth(7).WaitForAsync();

        await tang.FillAsync("wide");
        await tang.BlurAsync();
        await page.GetByText("is no diameter").WaitForAsync();
        Assert.Equal(before, await System.IO.File.ReadAllTextAsync(PathOf(knife)));

        // a plan without scales says what is missing, and shows its rows
        page = await Open($"plan/{Desk.PutExample("skeleton-hatchet")}/assembly");
        await page.GetByText("The plan puts on no scales").WaitForAsync();
    }
}
