using Microsoft.Playwright;

namespace Tangwright.Tests;

/// <summary>From a drawing to the first sheet.</summary>
public sealed class ImportJourney(Chromium chromium, DeskOnScratch desk) : Journey(chromium, desk)
{
    [Fact]
    public async Task Five_answers_to_the_first_sheet()
    {
        var page = await Open("import");
        await page.Locator("input[type=file]:enabled").SetInputFilesAsync(Repository.Path("tests", "fixtures", "drawings", "ezdxf-r2010-sheet.dxf"));
        await page.Locator(".walk-drawing").WaitForAsync();

        // another loop and back again, by keyboard; a circle left out
        await page.GetByRole(AriaRole.Button, new() { NameString = "Take loop 5" }).PressAsync("Enter");
        await Assertions.Expect(page.GetByRole(AriaRole.Radio, new() { NameString = "loop 5" })).ToBeCheckedAsync();
        await page.GetByRole(AriaRole.Radio, new() { NameString = "loop 4" }).CheckAsync();
        await page.GetByRole(AriaRole.Checkbox, new() { NameString = "5.00 mm" }).UncheckAsync();
        await Next(page, "sharpened part");

        // both ends by pointing
        var corners = page.Locator(".corner .reach");
        await corners.Nth(0).ClickAsync();
        await page.GetByText("One end is chosen").WaitForAsync();
        await corners.Nth(1).ClickAsync();
        await page.GetByText("The sharpened part is drawn blue").WaitForAsync();
        await Next(page, "bevel");
        await page.GetByLabel("At a plunge line").CheckAsync();
        await page.GetByLabel("Plunge line at x", new() { Exact = true }).FillAsync("1 in");
        await Next(page, "grip");
        await page.GetByLabel("The piece has a grip").CheckAsync();
        await page.GetByLabel("Front end at x", new() { Exact = true }).FillAsync("60");
        await page.GetByRole(AriaRole.Button, new() { NameString = "Back" }).ClickAsync();
        await Assertions.Expect(page.GetByLabel("Plunge line at x", new() { Exact = true })).ToHaveValueAsync("1 in");
        await Next(page, "grip");
        await Next(page, "stock");
        await page.GetByRole(AriaRole.Button, new() { NameString = "Write the plan" }).ClickAsync();
        await page.GetByText("the thickness of the stock is missing").First.WaitForAsync();
        await page.GetByLabel("Thickness of the stock").FillAsync("3 mm");
        await page.GetByLabel("Steel", new() { Exact = true }).FillAsync("80CrV2");
        await page.GetByRole(AriaRole.Button, new() { NameString = "Write the plan" }).ClickAsync();

        // the drawing, and from there the first sheet
        await Arrived(page, "/plan/ezdxf-r2010-sheet");
        await Ready(page);
        Assert.Contains("plunge = 25.4", TextOf("ezdxf-r2010-sheet"), StringComparison.Ordinal);
        Assert.DoesNotContain("diameter = 5\n", TextOf("ezdxf-r2010-sheet"), StringComparison.Ordinal);
        var address = await page.GetByRole(AriaRole.Link, new() { NameString = "First sheet" }).GetAttributeAsync("href");
        Assert.Equal("%PDF-"u8.ToArray(), (await Desk.Running.Client.GetByteArrayAsync(address))[..5]);
    }

    private static async Task Next(IPage page, string to)
    {
        await page.GetByRole(AriaRole.Button, new() { NameString = "On to " + to }).ClickAsync();
        await page.GetByRole(AriaRole.Heading, new() { Level = 2, NameString = to }).WaitForAsync();
    }
}
