using Microsoft.Playwright;

namespace Tangwright.Tests;

/// <summary>A hole of the guide piece is measured and typed: it stands on the sheets as built, and is taken out again.</summary>
public sealed class MeasuredJourney(Chromium chromium, DeskOnScratch desk) : Journey(chromium, desk)
{
    [Fact]
    public async Task A_measured_hole_is_typed_judged_and_printed_as_built()
    {
        var stem = Desk.PutExample("skeleton-hatchet");
        var page = await Open($"plan/{stem}/measured");
        await page.GetByLabel("Measured from").SelectOptionAsync(new SelectOptionValue { Label = "the plan's own zero" });
        await page.GetByLabel("L3 x").FillAsync("147,22");
        await page.GetByLabel("L3 y").FillAsync("17.55");
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep what was measured" }).ClickAsync();
        await Assertions.Expect(page.Locator(".faults")).ToContainTextAsync("write 147.22");

        await page.GetByLabel("L3 x").FillAsync("147.22");
        await page.Keyboard.PressAsync("Enter");
        var row = page.Locator("li").Filter(new() { Has = page.GetByLabel("L3 x") });
        await Assertions.Expect(row.Locator(".verdict")).ToContainTextAsync("0.45 mm (0.018 in) from the edges");
        await Assertions.Expect(row.Locator("b")).ToHaveTextAsync("accept");
        var file = Desk.Scratch.Path($"{stem}.measured.csv");
        Assert.Contains(",guide,hole,L3,147.22,17.55,,", await System.IO.File.ReadAllTextAsync(file, TestContext.Current.CancellationToken), StringComparison.Ordinal);
        foreach (var (width, height) in new[] { (1600, 1000), (1024, 768), (400, 800) })
        {
            await page.SetViewportSizeAsync(width, height);
            Assert.True(await page.EvaluateAsync<bool>("document.documentElement.scrollWidth <= innerWidth"), $"wider than {width} px");
        }

        // from the bench edges the same hole has other figures
        await page.GetByLabel("Measured from").SelectOptionAsync(new SelectOptionValue { Index = 0 });
        await Assertions.Expect(page.GetByLabel("L3 x")).ToHaveValueAsync("150.22");

        await page.GetByRole(AriaRole.Button, new() { Name = "take out what was measured of L3" }).ClickAsync();
        await Assertions.Expect(page.GetByLabel("L3 x")).ToHaveValueAsync("");
        Assert.DoesNotContain("L3", await System.IO.File.ReadAllTextAsync(file, TestContext.Current.CancellationToken), StringComparison.Ordinal);
    }
}
