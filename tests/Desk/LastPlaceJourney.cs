using Microsoft.Playwright;
using Tangwright.UseCases;

namespace Tangwright.Tests;

/// <summary>However fast the hand and however slow the calculation: the numbers are those of the last place.</summary>
public sealed class LastPlaceJourney(Chromium chromium, SlowDesk desk) : Journey(chromium, desk), IClassFixture<SlowDesk>
{
    [Theory]
    [InlineData("hole:L20", 37, 11)]
    [InlineData("point:60", 2, -25)]
    public async Task Numbers_are_those_of_the_last_place(string thing, float dx, float dy)
    {
        var stem = Desk.PutReference("reference-" + thing.Replace(':', '-'));
        var page = await OpenPlan(stem);
        var before = TextOf(stem);

        // 240 moves as fast as the browser takes them, over a calculation of 25 ms
        await Hold(page, thing, dx, dy, steps: 240);
        await Eventually(async () => await Version(page, "svg.drawing") == await Version(page, ".figures"));
        await Eventually(async () =>
        {
            var shown = await Shown(page);
            await Task.Delay(200);
            return await Shown(page) == shown;
        });
        var held = await Shown(page);
        await page.Mouse.UpAsync();
        await Eventually(() => TextOf(stem) != before);
        await Eventually(async () => await page.Locator("svg.drawing").GetAttributeAsync("data-version") is { } v && v == await Version(page, ".figures"));
        var saved = string.Join('|', DeskFigures.Main(OpenWork.Of(PathOf(stem), null).Value.WorkUp()).Select(f => f.Number));
        Assert.Equal(saved, await Shown(page));
        Assert.Equal(saved, held);
    }

    private static Task<string?> Version(IPage page, string of) => page.Locator(of).GetAttributeAsync("data-version");

    private static async Task<string> Shown(IPage page) => string.Join('|', await page.Locator(".figures .large dd b").AllInnerTextsAsync());
}
