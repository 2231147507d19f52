using Microsoft.Playwright;

namespace Tangwright.Tests;

/// <summary>Whole journeys in a real browser: Debian's Chromium.</summary>
public sealed class BrowserTests : IAsyncLifetime
{
    private static readonly string[] Flags = ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"];

    private readonly Scratch _scratch = new();
    private readonly List<string> _complaints = [];
    private RunningDesk _desk = null!;
    private IPlaywright _playwright = null!;
    private IBrowser _browser = null!;

    public async ValueTask InitializeAsync()
    {
        _desk = new RunningDesk(_scratch.Folder);
        _playwright = await Playwright.CreateAsync();
        _browser = await _playwright.Chromium.LaunchAsync(new() { ExecutablePath = "/usr/bin/chromium", Args = Flags });
    }

    public async ValueTask DisposeAsync()
    {
        await _browser.DisposeAsync();
        _playwright.Dispose();
        _desk.Dispose();
        _scratch.Dispose();
    }

    [Fact]
    public async Task From_an_example_to_a_moved_hole_and_back()
    {
        var page = await Page(1400, 900, ColorScheme.Light);
        await page.GotoAsync(_desk.Address.ToString());
        var copy = page.GetByRole(AriaRole.Button, new() { Name = "Copy a skeleton hatchet" });
        await copy.ClickAsync();
        await page.WaitForURLAsync("**/plan/my-hatchet");
        await page.Locator("svg[data-ready]").WaitForAsync();
        var path = _scratch.Path("my-hatchet.plan.toml");
        var before = await System.IO.File.ReadAllTextAsync(path);
        var figures = page.Locator(".figures .large");
        var weighed = await figures.InnerTextAsync();

        // drag hole L1
        var hole = page.Locator("[data-id='hole:L1'] .reach");
        var box = (await hole.BoundingBoxAsync())!;
        await page.Mouse.MoveAsync(box.X + (box.Width / 2), box.Y + (box.Height / 2));
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync(box.X + 60, box.Y + (box.Height / 2), new() { Steps = 12 });
        await Eventually(async () => await figures.InnerTextAsync() != weighed);
        Assert.Equal(before, await System.IO.File.ReadAllTextAsync(path));
        await page.Mouse.UpAsync();
        await Eventually(async () => await System.IO.File.ReadAllTextAsync(path) != before);
        var written = await page.GetByLabel("x", new() { Exact = true }).InputValueAsync();
        Assert.Contains($"at = [{written},", await System.IO.File.ReadAllTextAsync(path), StringComparison.Ordinal);

        // take it back: file and numbers are as they were
        await page.GetByRole(AriaRole.Button, new() { Name = "undo" }).ClickAsync();
        await Eventually(async () => await System.IO.File.ReadAllTextAsync(path) == before && await figures.InnerTextAsync() == weighed);

        // the keyboard does the same
        await page.Locator("[data-id='hole:L1']").FocusAsync();
        await page.Keyboard.PressAsync("ArrowRight");
        await Eventually(async () => (await System.IO.File.ReadAllTextAsync(path)).Contains("at = [101, 18.2]", StringComparison.Ordinal));

        // exact entry
        await page.GetByLabel("diameter").FillAsync("1/2 in");
        await page.GetByLabel("diameter").PressAsync("Enter");
        await Eventually(async () => (await System.IO.File.ReadAllTextAsync(path)).Contains("diameter = 12.7", StringComparison.Ordinal));

        // an edit in a text editor appears
        await System.IO.File.WriteAllTextAsync(path, before.Replace("revision = \"A\"", "revision = \"Q\"", StringComparison.Ordinal));
        await page.Locator(".title-block dd", new() { HasTextString = "Q" }).First.WaitForAsync();
        Assert.Empty(_complaints);
    }

    [Theory]
    [InlineData(1600, 1000, ColorScheme.Light)]
    [InlineData(1024, 768, ColorScheme.Dark)]
    [InlineData(400, 800, ColorScheme.Light)]
    public async Task Fits_every_width(int width, int height, ColorScheme scheme)
    {
        _scratch.PutExample("skeleton-hatchet");
        _scratch.PutExample("kitchen-knife");
        var page = await Page(width, height, scheme);
        foreach (var (address, name) in new[] { ("", "start"), ("plan/skeleton-hatchet", "hatchet"), ("plan/kitchen-knife", "knife"), ("plan/skeleton-hatchet/sheets", "sheets") })
        {
            await page.GotoAsync(new Uri(_desk.Address, address).ToString());
            if (name is "hatchet" or "knife") await page.Locator("svg[data-ready]").WaitForAsync();
            Assert.True(await page.EvaluateAsync<bool>("document.documentElement.scrollWidth <= innerWidth"), $"{name} is wider than {width} px");
            await page.ScreenshotAsync(new() { Path = Repository.Path("artifacts", "desk-pictures", $"{name}-{width}-{scheme}.png"), FullPage = width < 500 });
        }

        Assert.Empty(_complaints);
    }

    private async Task<IPage> Page(int width, int height, ColorScheme scheme)
    {
        var page = await _browser.NewPageAsync(new() { ViewportSize = new() { Width = width, Height = height }, ColorScheme = scheme });
        page.PageError += (_, e) => _complaints.Add(e);
        page.Console += (_, m) =>
        {
            if (m.Type == "error") _complaints.Add(m.Text);
        };
        return page;
    }

    private static async Task Eventually(Func<Task<bool>> holds)
    {
        for (var i = 0; i < 200; i++)
        {
            if (await holds()) return;
            await Task.Delay(50);
        }

        Assert.Fail("did not come about within 10 s");
    }
}
