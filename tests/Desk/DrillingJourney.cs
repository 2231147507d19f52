using Microsoft.Playwright;

namespace Tangwright.Tests;

/// <summary>The page of drilling: what the press takes, what no machine makes.</summary>
public sealed class DrillingJourney(Chromium chromium, DeskOnScratch desk) : Journey(chromium, desk)
{
    [Fact]
    public async Task Shows_what_each_machine_makes_and_what_none_does()
    {
        var (whole, alone) = (Desk.PutExample("skeleton-hatchet"), Desk.PutExample("skeleton-hatchet"));
        var shop = PathOf(alone).Replace(".plan.toml", ".shop.toml", StringComparison.Ordinal);
        var text = await System.IO.File.ReadAllTextAsync(shop);
        var (second, saw) = (text.IndexOf("# The same press", StringComparison.Ordinal), text.IndexOf("[[saw]]", StringComparison.Ordinal));
        Assert.True(second > 0 && second < saw);
        await System.IO.File.WriteAllTextAsync(shop, text[..second] + text[saw..]);

        var page = await Open($"plan/{whole}/drilling");
        await page.GetByRole(AriaRole.Heading, new() { Name = "mill-drill", Exact = true }).WaitForAsync();
        Assert.Equal(0, await page.GetByText("No machine of the shop makes these").CountAsync());

        // the press alone
        page = await Open($"plan/{alone}/drilling");
        await page.GetByRole(AriaRole.Heading, new() { Name = "No machine of the shop makes these" }).WaitForAsync();
        await page.GetByText("L5, 12.00 mm (0.472 in)").First.WaitForAsync();
        await page.GetByText("turns no slower than 500 rpm").First.WaitForAsync();
        await page.GetByText("Pilot of L1, L2, L3, L4, L5").WaitForAsync();
        await page.GetByRole(AriaRole.Heading, new() { Name = "bench press", Exact = true }).WaitForAsync();
    }
}
