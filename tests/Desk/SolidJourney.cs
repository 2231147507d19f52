using Microsoft.Playwright;

namespace Tangwright.Tests;

/// <summary>The solid in a real browser, drawn by its software renderer.</summary>
public sealed class SolidJourney : IAsyncLifetime
{
    private static readonly string[] Flags = ["--no-sandbox", "--use-gl=angle", "--use-angle=swiftshader", "--enable-unsafe-swiftshader", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"];

    // dots of a screenshot that differ clearly from one near its corner; told as a count
    private const string CountDots = """
        async url => {
            const picture = new Image();
            picture.src = url;
            await picture.decode();
            const c = new OffscreenCanvas(picture.width, picture.height).getContext('2d');
            c.drawImage(picture, 0, 0);
            const d = c.getImageData(0, 0, picture.width, picture.height).data;
            const paper = 4 * (12 * picture.width + 12);
            let n = 0;
            for (let i = 0; i < d.length; i += 4) n += Math.abs(d[i] - d[paper]) + Math.abs(d[i + 1] - d[paper + 1]) + Math.abs(d[i + 2] - d[paper + 2]) > 40;
            return n;
        }
        """;

    private readonly Scratch _scratch = new();
    private readonly List<string> _asked = [];
    private readonly List<string> _complaints = [];
    private RunningDesk _desk = null!;
    private IPlaywright _playwright = null!;

    public async ValueTask InitializeAsync()
    {
        _scratch.PutExample("skeleton-hatchet");
        _desk = new RunningDesk(_scratch.Folder);
        _playwright = await Playwright.CreateAsync();
    }

    public ValueTask DisposeAsync()
    {
        _playwright.Dispose();
        _desk.Dispose();
        _scratch.Dispose();
        return ValueTask.CompletedTask;
    }

    [Fact]
    public async Task Is_drawn_turned_followed_and_saved()
    {
        await using var browser = await _playwright.Chromium.LaunchAsync(new() { ExecutablePath = "/usr/bin/chromium", Args = Flags });
        var page = await Open(browser);

        // the drawing asks for nothing of it
        await page.GotoAsync(new Uri(_desk.Address, "plan/skeleton-hatchet").ToString());
        await page.Locator("svg[data-ready]").WaitForAsync();
        Assert.DoesNotContain(_asked, a => a.Contains("three", StringComparison.Ordinal));

        await page.GetByRole(AriaRole.Link, new() { Name = "Solid" }).ClickAsync();
        await page.Locator(".solid[data-shown]").WaitForAsync();
        Assert.Contains(_asked, a => a.Contains("three.bundle", StringComparison.Ordinal));
        Assert.Contains("not for use", await page.Locator("aside").InnerTextAsync(), StringComparison.Ordinal);

        // there is a piece on the paper, and another picture of it when it is dragged or turned by the keys
        var canvas = page.Locator("canvas");
        var first = await Settled(canvas);
        Assert.InRange(await Dots(page, first), 15_000, 400_000);
        var box = (await canvas.BoundingBoxAsync())!;
        await page.Mouse.MoveAsync(box.X + (box.Width / 2), box.Y + (box.Height / 2));
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync(box.X + (box.Width / 2) + 120, box.Y + (box.Height / 2) - 40, new() { Steps = 6 });
        await page.Mouse.UpAsync();
        var dragged = await Settled(canvas);
        Assert.NotEqual(first, dragged);
        await canvas.FocusAsync();
        var focused = await Settled(canvas);
        await page.Keyboard.PressAsync("ArrowLeft");
        Assert.NotEqual(focused, await Settled(canvas));

        // another stage, and a change made elsewhere, bring another solid
        await page.GetByRole(AriaRole.Combobox, new() { Name = "Stage" }).SelectOptionAsync("drilled");
        await page.Locator(".solid[data-shown*='stage=drilled']").WaitForAsync();
        var shown = await page.Locator(".solid").GetAttributeAsync("data-shown");
        var path = _scratch.Path("skeleton-hatchet.plan.toml");
        var text = await System.IO.File.ReadAllTextAsync(path);
        await System.IO.File.WriteAllTextAsync(path, text.Replace("diameter = 16", "diameter = 12", StringComparison.Ordinal));
        await page.Locator($".solid[data-shown]:not([data-shown='{shown}'])").WaitForAsync();

        var download = await page.RunAndWaitForDownloadAsync(() => page.GetByRole(AriaRole.Link, new() { Name = "Save as STL" }).ClickAsync());
        Assert.Equal("skeleton-hatchet-drilled.stl", download.SuggestedFilename);
        var stl = await System.IO.File.ReadAllBytesAsync(await download.PathAsync());
        Assert.Equal(84 + (50L * BitConverter.ToInt32(stl, 80)), stl.Length);
        Assert.Empty(_complaints);
    }

    [Fact]
    public async Task Without_WebGL_the_rest_of_the_page_works()
    {
        await using var browser = await _playwright.Chromium.LaunchAsync(new() { ExecutablePath = "/usr/bin/chromium", Args = ["--no-sandbox", "--disable-gpu", "--disable-3d-apis"] });
        var page = await Open(browser);
        await page.GotoAsync(new Uri(_desk.Address, "plan/skeleton-hatchet/solid").ToString());
        await page.GetByText("WebGL is missing").WaitForAsync();
        Assert.DoesNotContain(_asked, a => a.Contains("three", StringComparison.Ordinal));
        await page.GetByRole(AriaRole.Combobox, new() { Name = "Stage" }).SelectOptionAsync("profiled");
        await page.Locator("a[href*='solid.3mf?stage=profiled']").WaitForAsync();
        Assert.Empty(_complaints);
    }

    private async Task<IPage> Open(IBrowser browser)
    {
        var page = await browser.NewPageAsync(new() { ViewportSize = new() { Width = 1400, Height = 900 } });
        page.Request += (_, r) => _asked.Add(r.Url);
        page.PageError += (_, e) => _complaints.Add(e);
        page.Console += (_, m) =>
        {
            if (m.Type == "error") _complaints.Add(m.Text);
        };
        return page;
    }

    // it is drawn a frame after it was asked for: two pictures alike are one that has come to rest
    private static async Task<string> Settled(ILocator canvas)
    {
        var last = "";
        for (var i = 0; i < 50; i++)
        {
            await canvas.EvaluateAsync("() => new Promise(r => requestAnimationFrame(() => requestAnimationFrame(r)))");
            var now = "data:image/png;base64," + Convert.ToBase64String(await canvas.ScreenshotAsync());
            if (now == last) return now;
            last = now;
        }

        return last;
    }

    private static Task<int> Dots(IPage page, string picture) => page.EvaluateAsync<int>(CountDots, picture);
}
