using Microsoft.Playwright;

namespace Tangwright.Tests;

/// <summary>The page of weight and balance: a wanted balance is typed, each lever answers, and one held fast is left out of the change of several together.</summary>
public sealed class BalanceJourney(Chromium chromium, DeskOnScratch desk) : Journey(chromium, desk)
{
    [Fact]
    public async Task A_wanted_balance_is_typed_and_the_levers_answer()
    {
        var stem = Desk.PutExample("kitchen-knife");
        var before = TextOf(stem);
        var page = await Open($"plan/{stem}/balance");
        var levers = page.GetByRole(AriaRole.Heading, new() { Level = 3 });
        await levers.First.WaitForAsync();
        var target = page.GetByLabel("Balance, from datum");
        await target.FillAsync("far");
        await target.PressAsync("Tab");
        await page.Locator(".faults").WaitForAsync();
        await target.FillAsync("10");
        await target.PressAsync("Tab");
        await page.GetByText("balance 10.00 mm").First.WaitForAsync();

        // the tang alone: 2.20 to 10 mm at 6.18 mm a mm is 1.26 mm off by the slope, a little less on the solid
        var tang = page.GetByRole(AriaRole.Listitem).Filter(new() { Has = page.GetByText("tang thickness at the butt, now 2.50 mm") });
        await tang.GetByText("1.33 mm (0.053 in)", new() { Exact = true }).WaitForAsync();
        await tang.GetByText("[tang_taper] starts = 206, thickness = 1.33").WaitForAsync();

        var moved = page.GetByRole(AriaRole.Listitem).Filter(new() { HasText = "each scale, pins with it: 8.00 mm" });
        await moved.WaitForAsync();

        // 174 g · 12.20 mm / 120 mm to the butt, as the plan writes it
        await target.FillAsync("-10");
        await target.PressAsync("Tab");
        await page.GetByText("mass = \"17.7 g\", at x 330").WaitForAsync();
        await target.FillAsync("10");
        await target.PressAsync("Tab");
        await moved.WaitForAsync();
        await page.GetByRole(AriaRole.Checkbox, new() { Name = "thickness of each scale" }).UncheckAsync();
        await moved.WaitForAsync(new() { State = WaitForSelectorState.Detached });
        Assert.Equal(before, TextOf(stem));
    }
}
