using Microsoft.Playwright;

namespace Tangwright.Tests;

/// <summary>The page of pins and fits: a size is chosen, limits, drills and the plan's pins are read, a wrong size is told.</summary>
public sealed class FitsJourney(Chromium chromium, DeskOnScratch desk) : Journey(chromium, desk)
{
    [Fact]
    public async Task A_size_is_chosen_and_its_limits_drills_and_the_plans_pins_are_read()
    {
        var stem = Desk.PutExample("kitchen-knife");
        var page = await Open($"plan/{stem}/fits");

        // the plan's first pin comes first
        await Assertions.Expect(page.Locator(".size")).ToContainTextAsync("5.000 mm (0.1969 in)");
        await Assertions.Expect(page.Locator("li").Filter(new() { HasText = "P1" }).First).ToContainTextAsync("4.8 mm drill, then 5 mm reamer");

        await page.GetByLabel("Size").FillAsync("1/4 in");
        await page.Keyboard.PressAsync("Enter");
        await page.GetByLabel("Class of the pin").SelectOptionAsync("p6");
        await Assertions.Expect(page.Locator(".together")).ToContainTextAsync("0.000 to 0.024 mm (0.0000 to 0.0009 in) of overlap: press");
        await Assertions.Expect(page.GetByRole(AriaRole.Row).Filter(new() { HasText = "letter" })).ToContainTextAsync("-0.203 mm (-0.0080 in)");
        foreach (var (width, height) in new[] { (1600, 1000), (1024, 768), (400, 800) })
        {
            await page.SetViewportSizeAsync(width, height);
            Assert.True(await page.EvaluateAsync<bool>("document.documentElement.scrollWidth <= innerWidth"), $"wider than {width} px");
        }

        await page.GetByLabel("Size").FillAsync("60 mm");
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.Locator(".faults")).ToContainTextAsync("up to 50 mm");
        await page.GetByLabel("Size").FillAsync("6");
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.Locator(".faults")).ToContainTextAsync("write 6 mm or 6 in");
    }
}
