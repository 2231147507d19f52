using Microsoft.Playwright;

namespace Tangwright.Tests;

/// <summary>What is done on the drawing itself, in a real browser.</summary>
public sealed class DrawingJourney(Chromium chromium, DeskOnScratch desk) : Journey(chromium, desk)
{
    private const string Curved = """
        tangwright = 1
        name = "Curved"
        units = "mm"
        [stock]
        steel = "80CrV2"
        thickness = 4
        [outline]
        path = "M 0 0 L 100 0 C 110 10 110 20 100 30 L 0 30 Z"
        """;

    [Fact]
    public async Task A_control_point_is_dragged_and_escape_puts_it_back()
    {
        Desk.Scratch.Put("curved.plan.toml", Curved);
        var page = await OpenPlan("curved");
        await page.Locator("[data-id='point:1']").FocusAsync();
        await page.Keyboard.PressAsync("PageDown");
        Assert.Contains("First control point of curve 2", await page.Locator("svg :focus").GetAttributeAsync("aria-label"), StringComparison.Ordinal);
        await Hold(page, "control:1.1", 40, 0);
        await page.Keyboard.PressAsync("Escape");
        await page.Mouse.UpAsync();
        await Eventually(async () => (await page.Locator("[data-id='control:1.1']").GetAttributeAsync("aria-label"))!.Contains("x 110.00, y 10.00", StringComparison.Ordinal));
        Assert.Equal(Curved, TextOf("curved"));
        await Drag(page, "control:1.1", 40, 0);
        await Eventually(() => TextOf("curved") != Curved);
        Assert.Contains("10 110 20 100 30", TextOf("curved"), StringComparison.Ordinal);
        Assert.DoesNotContain("C 110 10", TextOf("curved"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_point_is_added_to_a_line_that_was_clicked_and_taken_away_again()
    {
        var stem = Desk.PutExample("kitchen-knife");
        var page = await OpenPlan(stem);
        var before = TextOf(stem);
        var (a, b) = (await PlaceOf(page, "point:2"), await PlaceOf(page, "point:3"));
        await page.Mouse.ClickAsync((a.X + b.X) / 2, (a.Y + b.Y) / 2);
        await page.GetByRole(AriaRole.Button, new() { Name = "add a point here" }).ClickAsync();
        await Eventually(() => TextOf(stem) != before);
        await page.Locator("[data-id='point:3']").FocusAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "take this point away" }).ClickAsync();
        await Eventually(() => TextOf(stem) == before);
    }

    [Fact]
    public async Task Two_centres_are_measured_by_clicks_and_by_keys()
    {
        var stem = Desk.PutExample("skeleton-hatchet");
        var page = await OpenPlan(stem);
        var says = page.Locator("[data-says='measured']");
        await page.GetByRole(AriaRole.Button, new() { Name = "measure" }).ClickAsync();
        foreach (var hole in new[] { "hole:L4", "hole:L6" })
        {
            var (x, y) = await PlaceOf(page, hole);
            await page.Mouse.ClickAsync(x + 2, y - 1);
        }

        // L4 (169, 17.8) to L6 (210, 18): the sides 41 and 0.2, by Pythagoras 41.0005
        await Eventually(async () => (await says.InnerTextAsync()).Contains("41.00 mm (1.614 in); along 41.00 mm (1.614 in), across 0.20 mm", StringComparison.Ordinal));
        await page.Keyboard.PressAsync("Escape");
        await page.Keyboard.PressAsync("Escape");
        Assert.Empty(await says.InnerTextAsync());

        await page.GetByRole(AriaRole.Button, new() { Name = "measure" }).ClickAsync();
        foreach (var hole in new[] { "hole:L1", "hole:L2" })
        {
            await page.Locator($"[data-id='{hole}']").FocusAsync();
            await page.Keyboard.PressAsync("Enter");
        }

        await Eventually(async () => (await says.InnerTextAsync()).StartsWith("From hole L1 to hole L2: 24.01 mm", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_rim_holds_on_to_the_drills_owned_and_a_new_hole_stands_where_it_was_put()
    {
        var stem = Desk.PutExample("skeleton-hatchet");
        var page = await OpenPlan(stem);
        await page.Locator("[data-id='hole:L5']").FocusAsync();
        await Drag(page, "rim:L5", 1, 3, steps: 4);
        await Eventually(() => !TextOf(stem).Contains("diameter = 12\n", StringComparison.Ordinal));
        var owned = System.IO.File.ReadAllText(Desk.Scratch.Path(stem + ".shop.toml"));
        var diameter = await page.Locator(".chosen-thing").GetByLabel("diameter").InputValueAsync();
        Assert.Matches($@"\b{System.Text.RegularExpressions.Regex.Escape(diameter)}\b", owned);

        await page.GetByRole(AriaRole.Button, new() { Name = "new hole" }).ClickAsync();
        var poll = await PlaceOf(page, "point:0");
        await page.Mouse.ClickAsync(poll.X + 40, poll.Y - 60);
        await Eventually(() => TextOf(stem).Contains("name = \"H1\"", StringComparison.Ordinal));
        await Eventually(async () => await page.Locator(".chosen-thing h2").InnerTextAsync() == "Hole H1");
    }

    [Fact]
    public async Task A_balloon_leads_to_its_finding_and_back()
    {
        var page = await OpenPlan(Desk.PutExample("skeleton-hatchet"));
        await page.Locator("[data-findings='2'] .balloon").ClickAsync();
        await page.Locator(".findings li.pointed").WaitForAsync();
        Assert.Equal(1, await page.EvaluateAsync<int>("[...document.querySelectorAll('.findings ol > li')].findIndex(l => l.classList.contains('pointed'))"));
        await page.Locator(".findings ol > li").First.ClickAsync();
        await page.Locator("[data-findings='1'].pointed").WaitForAsync();
    }

    [Fact]
    public async Task A_background_gets_its_scale_from_two_places()
    {
        var stem = Desk.PutExample("skeleton-hatchet");
        var page = await OpenPlan(stem);
        await page.GetByText("A scanned drawing beneath").ClickAsync();
        await page.Locator("[data-background]").SetInputFilesAsync(new FilePayload { Name = "scan.png", MimeType = "image/png", Buffer = BackgroundTests.Png });
        await page.Locator("svg image").WaitForAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "point at two places of it" }).ClickAsync();
        var (a, b) = (await PlaceOf(page, "hole:L1"), await PlaceOf(page, "hole:L7"));
        await page.Mouse.ClickAsync(a.X, a.Y);
        await page.Mouse.ClickAsync(b.X, b.Y);
        await page.GetByLabel("true length between them").FillAsync("258");
        await page.GetByRole(AriaRole.Button, new() { Name = "set its scale" }).ClickAsync();

        // the piece is 275 mm long and the picture 8 pixels wide; L1 and L7 are 129 mm apart, told to be twice that
        var file = Desk.Scratch.Path(stem + ".background.toml");
        double Pixel() => double.Parse(System.IO.File.ReadAllLines(file).Single(l => l.StartsWith("mm_per_pixel", StringComparison.Ordinal)).Split('=')[1], System.Globalization.CultureInfo.InvariantCulture);
        await Eventually(() => Pixel() > 60);
        Assert.Equal(2 * 275 / 8.0, Pixel(), 0.5);
        await page.GetByRole(AriaRole.Button, new() { Name = "take it away" }).ClickAsync();
        await Eventually(() => !System.IO.File.Exists(file));
        await Eventually(async () => await page.Locator("svg image").CountAsync() == 0);
    }
}
