using Microsoft.Playwright;

namespace Tangwright.Tests;

/// <summary>A plan changed in figures alone, without the drawing, and all of it taken back.</summary>
public sealed class FiguresJourney(Chromium chromium, DeskOnScratch desk) : Journey(chromium, desk)
{
    [Fact]
    public async Task Everything_can_be_typed_and_taken_back()
    {
        var stem = Desk.PutExample("skeleton-hatchet");
        var before = TextOf(stem);
        var page = await Open($"plan/{stem}/values");
        ILocator Field(string label) => page.GetByLabel(label, new() { Exact = true });
        bool Says(string text) => TextOf(stem).Contains(text, StringComparison.Ordinal);
        async Task Type(ILocator field, string text)
        {
            await field.FillAsync(text);
            await field.PressAsync("Tab");
        }

        // a hole more
        var more = page.GetByRole(AriaRole.Form, new() { Name = "One more hole" });
        await more.GetByRole(AriaRole.Button, new() { Name = "add this hole" }).And(page.Locator(":enabled")).WaitForAsync();
        await Type(more.GetByLabel("x", new() { Exact = true }), "40");
        await Type(more.GetByLabel("y", new() { Exact = true }), "30");
        await Type(more.GetByLabel("diameter"), "8");
        await more.GetByLabel("use").SelectOptionAsync("hanging");
        await more.GetByRole(AriaRole.Button).ClickAsync();
        await Eventually(() => Says("name = \"H1\"\nat = [40, 30]\ndiameter = 8\nuse = \"hanging\""));

        // another drill for it, by its name; a mistake is refused in words and changes nothing
        await Type(Field("diameter of H1"), "#0.5");
        await page.GetByRole(AriaRole.Alert).Filter(new() { HasTextString = "is no length" }).WaitForAsync();
        await Type(Field("diameter of H1"), "F");
        await Eventually(() => Says("diameter = \"F\""));
        await Eventually(async () => await page.GetByRole(AriaRole.Alert).CountAsync() == 0);

        // a row, and then more holes in it
        var row = page.GetByRole(AriaRole.Form, new() { Name = "One more row" });
        await Type(row.GetByLabel("along"), "15, 15 to 55, 15");
        await Type(row.GetByLabel("count"), "3");
        await Type(row.GetByLabel("diameters"), "5, 4");
        await row.GetByRole(AriaRole.Button).ClickAsync();
        await page.GetByText("Makes R1 to R3").WaitForAsync();
        await Type(page.GetByRole(AriaRole.Group, new() { Name = "Row R" }).GetByLabel("count"), "5");
        await page.GetByText("Makes R1 to R5").WaitForAsync();
        await Eventually(() => Says("along = [[15, 15], [55, 15]]\ncount = 5"));

        // steel and thickness; the weight follows
        var figures = page.Locator(".figures .large");
        var weighed = await figures.InnerTextAsync();
        await Type(page.GetByRole(AriaRole.Region, new() { Name = "Stock" }).GetByLabel("thickness"), "3/16 in");
        await Eventually(async () => Says("thickness = \"3/16 in\"       # a length") && await figures.InnerTextAsync() != weighed);
        await Type(page.GetByRole(AriaRole.Region, new() { Name = "Stock" }).GetByLabel("steel"), "52100");
        await Eventually(() => Says("steel = \"52100\""));

        // and all of it back
        var undo = page.GetByRole(AriaRole.Button, new() { Name = "undo" });
        while (await undo.IsEnabledAsync())
        {
            await undo.ClickAsync();
            await Task.Delay(60);
        }

        await Eventually(() => TextOf(stem) == before);
        await Eventually(async () => (await figures.InnerTextAsync()).Contains("455", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(1600, ColorScheme.Light)]
    [InlineData(1024, ColorScheme.Dark)]
    [InlineData(400, ColorScheme.Light)]
    public async Task Fits(int width, ColorScheme scheme)
    {
        var page = await Open($"plan/{Desk.PutExample("kitchen-knife")}/values", width, 900, scheme);
        await page.Locator("input:enabled").First.WaitForAsync();
        Assert.True(await page.EvaluateAsync<bool>("document.documentElement.scrollWidth <= innerWidth"));
        await page.ScreenshotAsync(new() { Path = Repository.Path("artifacts", "desk-pictures", $"figures-{width}-{scheme}.png"), FullPage = true });
    }
}
