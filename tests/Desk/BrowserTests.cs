using Microsoft.Playwright;

namespace Tangwright.Tests;

/// <summary>The first journey: an example, a moved hole, and back.</summary>
public sealed class BrowserTests(Chromium chromium, DeskOnScratch desk) : Journey(chromium, desk)
{
    [Fact]
    public async Task From_an_example_to_a_moved_hole_and_back()
    {
        var page = await Open("");
        await page.GetByRole(AriaRole.Button, new() { Name = "Copy a skeleton hatchet" }).ClickAsync();
        await Arrived(page, "/plan/my-hatchet");
        await Ready(page);
        var before = TextOf("my-hatchet");
        var figures = page.Locator(".figures .large");
        var weighed = await figures.InnerTextAsync();

        // the numbers follow while the hole is held, the file when it is let go
        await Hold(page, "hole:L1", 60, 0);
        await Eventually(async () => await figures.InnerTextAsync() != weighed);
        Assert.Equal(before, TextOf("my-hatchet"));
        await page.Mouse.UpAsync();
        await Eventually(() => TextOf("my-hatchet") != before);
        var written = await page.GetByRole(AriaRole.Textbox, new() { Name = "x", Exact = true }).InputValueAsync();
        Assert.Contains($"at = [{written},", TextOf("my-hatchet"), StringComparison.Ordinal);

        // take it back: file and numbers are as they were
        await page.GetByRole(AriaRole.Button, new() { Name = "undo" }).ClickAsync();
        await Eventually(async () => TextOf("my-hatchet") == before && await figures.InnerTextAsync() == weighed);

        // the keyboard does the same
        await page.Locator("[data-id='hole:L1']").FocusAsync();
        await page.Keyboard.PressAsync("ArrowRight");
        await Eventually(() => TextOf("my-hatchet").Contains("at = [101, 18.2]", StringComparison.Ordinal));

        // exact entry
        await page.GetByLabel("diameter", new() { Exact = true }).FillAsync("1/2 in");
        await page.GetByLabel("diameter", new() { Exact = true }).PressAsync("Enter");
        await Eventually(() => TextOf("my-hatchet").Contains("diameter = 12.7", StringComparison.Ordinal));

        // an edit in a text editor appears
        await System.IO.File.WriteAllTextAsync(PathOf("my-hatchet"), before.Replace("revision = \"A\"", "revision = \"Q\"", StringComparison.Ordinal));
        await page.Locator(".title-block dd", new() { HasTextString = "Q" }).First.WaitForAsync();
    }

    [Theory]
    [InlineData(1600, 1000, ColorScheme.Light)]
    [InlineData(1024, 768, ColorScheme.Dark)]
    [InlineData(400, 800, ColorScheme.Light)]
    public async Task Fits_every_width(int width, int height, ColorScheme scheme)
    {
        var (hatchet, knife) = (Desk.PutExample("skeleton-hatchet"), Desk.PutExample("kitchen-knife"));
        var page = await NewPage(width, height, scheme);
        foreach (var (address, name) in new[] { ("/", "start"), ($"/plan/{hatchet}", "hatchet"), ($"/plan/{knife}", "knife"), ($"/plan/{hatchet}/sheets", "sheets") })
        {
            await page.GotoAsync(address);
            if (name is "hatchet" or "knife") await Ready(page);
            Assert.True(await page.EvaluateAsync<bool>("document.documentElement.scrollWidth <= innerWidth"), $"{name} is wider than {width} px");
            await page.ScreenshotAsync(new() { Path = Repository.Path("artifacts", "desk-pictures", $"{name}-{width}-{scheme}.png"), FullPage = width < 500 });
        }
    }
}
