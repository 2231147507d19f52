using System.Globalization;
using System.Text;
using Microsoft.Playwright;

namespace Tangwright.Tests;

/// <summary>5 000 holes, with webs between them that are all too thin: the desk stays usable.</summary>
public sealed class ManyHolesJourney(Chromium chromium, DeskOnScratch desk) : Journey(chromium, desk)
{
    [Fact]
    public async Task Five_thousand_holes_can_be_opened_and_moved()
    {
        Desk.Scratch.Put("many.plan.toml", Text());
        var page = await OpenPlan("many");
        var before = TextOf("many");
        var place = page.Locator(".stop.hole, [data-id^='hole:']").First;
        await place.FocusAsync();
        await page.Keyboard.PressAsync("ArrowRight");
        await Eventually(() => TextOf("many") != before);
        Assert.Single(before.Split('\n').Except(TextOf("many").Split('\n')));
        await page.GetByRole(AriaRole.Button, new() { Name = "undo", Exact = true }).ClickAsync();
        await Eventually(() => TextOf("many") == before);
    }

    private static string Text()
    {
        var b = new StringBuilder("tangwright = 1\nname = \"Many\"\nrevision = \"A\"\nunits = \"mm\"\n\n[stock]\nsteel = \"80CrV2\"\nthickness = 3\n\n[outline]\npath = \"M 0 0 L 1000 0 L 1000 500 L 0 500 Z\"\n");
        for (var i = 0; i < 5000; i++) b.Append(CultureInfo.InvariantCulture, $"\n[[hole]]\nname = \"H{i}\"\nat = [{5 + (i % 100 * 9.9):F2}, {5 + (i / 100 * 9.9):F2}]\ndiameter = 9.5\nuse = \"lightening\"\n");
        return b.ToString();
    }
}
