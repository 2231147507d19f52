using Microsoft.Playwright;

namespace Tangwright.Tests;

/// <summary>A thin web mended by button and taken back; a revision kept, a hole dragged, the move seen beside it.</summary>
public sealed class RevisionsJourney(Chromium chromium, DeskOnScratch desk) : Journey(chromium, desk)
{
    [Fact]
    public async Task A_thin_web_is_mended_by_button_and_comes_back_with_undo()
    {
        var stem = Desk.PutExample("skeleton-hatchet");
        var before = TextOf(stem);
        var page = await OpenPlan(stem);
        var finding = page.Locator(".findings > ol > li").Filter(new() { HasText = "hole L1: Only 6.21 mm" });
        await finding.GetByRole(AriaRole.Button, new() { Name = "What would this do: drill L1 15 mm" }).ClickAsync();
        var effect = page.GetByRole(AriaRole.Group, new() { Name = "What this would do" });
        await Assertions.Expect(effect).ToContainTextAsync("+1.2 g");
        await Assertions.Expect(effect).ToContainTextAsync("gone: warning, hole L1");
        Assert.Equal(before, TextOf(stem));
        await Fits(page);

        await finding.GetByRole(AriaRole.Button, new() { Name = "make this change" }).ClickAsync();
        await Assertions.Expect(finding).ToHaveCountAsync(0);
        await Eventually(() => TextOf(stem).Contains("diameter = 15", StringComparison.Ordinal));
        await page.GetByRole(AriaRole.Button, new() { Name = "undo" }).ClickAsync();
        await Assertions.Expect(finding).ToHaveCountAsync(1);
        await Eventually(() => TextOf(stem) == before);
    }

    [Fact]
    public async Task What_was_dragged_shows_beside_the_revision()
    {
        var stem = Desk.PutExample("skeleton-hatchet");
        var page = await Open($"plan/{stem}/revisions");
        await page.GetByLabel("What changed, and why").FillAsync("as first made");
        await page.GetByRole(AriaRole.Button, new() { Name = "keep this as a revision" }).ClickAsync();
        await page.GetByText("Kept as revision A.").WaitForAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Drawing" }).ClickAsync();
        await Ready(page);
        var before = TextOf(stem);
        await Drag(page, "hole:L1", 40, 0);
        await Eventually(() => TextOf(stem) != before);

        await page.GetByRole(AriaRole.Link, new() { Name = "Revisions" }).ClickAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "compare with revision A" }).ClickAsync();
        await Assertions.Expect(page.Locator(".parts")).ToContainTextAsync("hole L1");
        await Assertions.Expect(page.Locator(".parts")).ToContainTextAsync("right");
        await Fits(page);
        await page.GetByRole(AriaRole.Button, new() { Name = "draw it pale behind the drawing" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "take it from behind the drawing" }).WaitForAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "take this one back" }).ClickAsync();
        await page.GetByText("The two plans are the same.").WaitForAsync();
        await Eventually(() => TextOf(stem) == before);
    }

    /// <summary>The page is nowhere wider than the screen.</summary>
    private static async Task Fits(IPage page)
    {
        foreach (var (width, height) in new[] { (1600, 1000), (1024, 768), (400, 800), (1400, 900) })
        {
            await page.SetViewportSizeAsync(width, height);
            Assert.True(await page.EvaluateAsync<bool>("document.documentElement.scrollWidth <= innerWidth"), $"wider than {width} px");
        }
    }
}
