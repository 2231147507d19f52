using Microsoft.Playwright;

namespace Tangwright.Tests;

/// <summary>From a sheet to a printer set up: what was measured stands in the shop file and in the next PDF.</summary>
public sealed class PrinterWalkTests(Chromium chromium, DeskOnScratch desk) : Journey(chromium, desk)
{
    [Fact]
    public async Task Measured_bars_end_in_the_shop_file_and_in_the_next_pdf()
    {
        Desk.PutExample("skeleton-hatchet");
        var page = await NewPage();
        await page.AddInitScriptAsync("window.print = () => { top.printed = document.title }");
        await page.GotoAsync(new Uri(Desk.Running.Address, "plan/skeleton-hatchet/sheets").ToString());
        await page.GetByRole(AriaRole.Link, new() { Name = "Template", Exact = true }).ClickAsync();
        await page.Locator("svg.sheet").WaitForAsync();

        // printed from here: the plain page, not the one around it
        await page.GetByRole(AriaRole.Button, new() { Name = "Print from here" }).ClickAsync();
        for (var i = 0; i < 200 && await page.EvaluateAsync<string?>("window.printed ?? null") is null; i++) await Task.Delay(50);
        Assert.Equal("Skeleton hatchet 275: to print", await page.EvaluateAsync<string?>("window.printed ?? null"));

        await page.GetByRole(AriaRole.Link, new() { Name = "Set a printer up" }).ClickAsync();
        var (across, along) = (page.GetByLabel("100 mm bar across the sheet"), page.GetByLabel("100 mm bar along the feed"));
        var work = page.GetByRole(AriaRole.Button, new() { Name = "Work the correction out" });

        // nonsense is refused with a word
        await across.FillAsync("3.83");
        await along.FillAsync("121");
        await work.ClickAsync();
        await page.GetByText("if that is inches, write 3.83 in").WaitForAsync();

        // as a maker writes: 3 27/32 in is 97.63 mm
        await across.FillAsync("3 27/32 in");
        await along.FillAsync("97.0");
        await work.ClickAsync();
        await page.GetByText("Along the feed: 97 mm instead of 100. From now on drawn × 1.0309.").WaitForAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep it for A4 printer" }).ClickAsync();
        await page.GetByText("Print the bar sheet again: both bars").WaitForAsync();
        var shop = await System.IO.File.ReadAllTextAsync(Desk.Scratch.Path("skeleton-hatchet.shop.toml"));
        Assert.Contains("\nbar_across = \"97.63 mm\"", shop, StringComparison.Ordinal);
        Assert.Contains("\nbar_along = \"97 mm\"", shop, StringComparison.Ordinal);

        // printed again, the bars of the PDF are longer by as much: 100 × 100 / 97.63 and 100 × 100 / 97
        using var client = new HttpClient { BaseAddress = Desk.Running.Address };
        var template = Raster.Page(await client.GetByteArrayAsync("plan/skeleton-hatchet/sheets.pdf?sheets=template"), 1);
        var svg = await client.GetStringAsync("plan/skeleton-hatchet/print/template");
        Assert.Contains("across × 1.0243, along × 1.0309", svg, StringComparison.Ordinal);
        Assert.Equal(297, template.WidthMm, 0.1);
        var bars = Raster.Page(await client.GetByteArrayAsync("printer/bars.pdf?shop=skeleton-hatchet.shop.toml&printer=A4%20printer"), 1);
        Assert.Equal(10000 / 97.63, LevelBar(bars), 0.05);

        // the check finds it true
        await across.FillAsync("100.05");
        await along.FillAsync("99.9");
        await work.ClickAsync();
        await page.GetByText("no correction is needed").WaitForAsync();
        Assert.Equal(shop, await System.IO.File.ReadAllTextAsync(Desk.Scratch.Path("skeleton-hatchet.shop.toml")));
    }

    /// <summary>The level 100 mm bar of a bar sheet on A4: it begins 2 mm inside the margin of 10 mm.</summary>
    private static double LevelBar(Raster page)
    {
        const double fromTop = 47;
        double At(double x) => page.LineX(x, page.HeightMm - fromTop + 0.5, page.HeightMm - fromTop + 1.8);
        return At(12 + (10000 / 97.63)) - At(12);
    }
}
