using Microsoft.Playwright;

namespace Tangwright.Tests;

/// <summary>The page of heat treatment: another quenchant changes the verdict, a temper is tried, a reading goes into the log and is counted, the cards follow.</summary>
public sealed class HeatJourney(Chromium chromium, DeskOnScratch desk) : Journey(chromium, desk)
{
    [Fact]
    public async Task A_quenchant_a_temper_and_a_reading()
    {
        var stem = Desk.PutExample("skeleton-hatchet");
        var page = await Open($"plan/{stem}/heat");
        await page.GetByText("hardens through in fast oil").WaitForAsync();
        Assert.Equal(2, await page.Locator("figure").CountAsync());
        await page.GetByLabel("Quenched in").SelectOptionAsync("medium oil");
        await page.GetByText("marginal in medium oil").WaitForAsync();
        await page.GetByText("Would harden through: mineral oil, fast oil").WaitForAsync();
        await page.GetByLabel("Try a temper at").FillAsync("400 F");
        await page.GetByLabel("Try a temper at").PressAsync("Tab");
        await page.GetByText("with the steel at 204 °C (400 °F)").WaitForAsync();
        await page.GetByLabel("Hardening temperature").FillAsync("815");
        await page.GetByLabel("Hardening temperature").PressAsync("Tab");
        await page.GetByText("a temperature without its unit").WaitForAsync();
        await page.GetByLabel("Hardening temperature").FillAsync("");
        await page.GetByLabel("Hardening temperature").PressAsync("Tab");
        await page.GetByLabel("Reading, HRC").FillAsync("59");
        await page.GetByLabel("Batch").FillAsync("market");
        await page.GetByLabel("Tempered at").FillAsync("218 C");
        await page.GetByRole(AriaRole.Button, new() { Name = "Write into the log" }).ClickAsync();
        await page.GetByText("Written: 59 HRC, batch market.").WaitForAsync();
        await page.GetByText("1 reading of 80CrV2").WaitForAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "run card" }).ClickAsync();
        await page.GetByRole(AriaRole.Heading, new() { Name = "Run card, hardening" }).First.WaitForAsync();
        await page.Locator("svg").GetByText("Load 1").First.WaitForAsync();
    }
}
