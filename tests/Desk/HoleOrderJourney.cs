using Microsoft.Playwright;

namespace Tangwright.Tests;

/// <summary>The order of holes at the machine: the way of each tool, front and back, ticked off, and saved for a spreadsheet.</summary>
public sealed class HoleOrderJourney(Chromium chromium, DeskOnScratch desk) : Journey(chromium, desk)
{
    [Fact]
    public async Task The_way_is_shown_ticked_turned_over_and_saved()
    {
        var stem = Desk.PutExample("skeleton-hatchet");
        var page = await Open($"plan/{stem}/order-of-holes");
        await page.GetByRole(AriaRole.Heading, new() { Name = "mill-drill", Exact = true }).WaitForAsync();
        var picture = page.Locator("svg.way");
        await Assertions.Expect(picture).ToHaveAttributeAsync("aria-label", new System.Text.RegularExpressions.Regex("6 mm spot drill.*: L1, L2, L3, L4, L5, L6, L7, lanyard$"));

        // the pilot comes back over them
        var pilot = page.GetByRole(AriaRole.Group, new() { Name = "4 mm drill: pilot" });
        await pilot.GetByRole(AriaRole.Button).ClickAsync();
        await Assertions.Expect(picture).ToHaveAttributeAsync("aria-label", new System.Text.RegularExpressions.Regex("4 mm drill.*: lanyard, L7, L6, L5, L4, L3, L2, L1$"));
        await Assertions.Expect(pilot.Locator("li").First).ToContainTextAsync("261.00 mm (10.276 in)");
        await pilot.GetByLabel("1 lanyard").CheckAsync();
        await Assertions.Expect(pilot.Locator("li").First).ToHaveClassAsync(new System.Text.RegularExpressions.Regex("done"));

        foreach (var (width, height) in new[] { (1600, 1000), (400, 800) })
        {
            await page.SetViewportSizeAsync(width, height);
            Assert.True(await page.EvaluateAsync<bool>("document.documentElement.scrollWidth <= innerWidth"), $"wider than {width} px");
        }

        await page.GetByRole(AriaRole.Button, new() { Name = "back face" }).ClickAsync();
        await page.GetByText("y -19.30 mm").First.WaitForAsync();

        var saved = await page.RunAndWaitForDownloadAsync(() => page.GetByRole(AriaRole.Link, new() { Name = "Save the list" }).ClickAsync());
        Assert.Equal(stem + "-readout.csv", saved.SuggestedFilename);
        Assert.StartsWith("machine,face,clamping,tool,step", await System.IO.File.ReadAllTextAsync(await saved.PathAsync(), TestContext.Current.CancellationToken), StringComparison.Ordinal);
    }
}
