using System.Collections.Concurrent;
using System.Diagnostics;
using Microsoft.Playwright;

namespace Tangwright.Tests;

/// <summary>A class of whole journeys in a real browser: one browser a run, one desk a class, one browser context a test. At its end neither page nor desk may have complained.</summary>
/// <example><code>
/// public sealed class HoleJourney(Chromium chromium, DeskOnScratch desk) : Journey(chromium, desk)
/// {
///     [Fact]
///     public async Task A_hole_goes_where_it_is_dragged()
///     {
///         var stem = Desk.PutExample("skeleton-hatchet");
///         var page = await OpenPlan(stem);
///         await Drag(page, "hole:L1", 60, 0);
///         await Eventually(() => TextOf(stem).Contains("at = [120", StringComparison.Ordinal));
///     }
/// }
/// </code></example>
public abstract class Journey(Chromium chromium, DeskOnScratch desk) : IClassFixture<DeskOnScratch>, IAsyncLifetime
{
    private readonly List<IBrowserContext> _contexts = [];

    /// <summary>The desk and its folder.</summary>
    protected DeskOnScratch Desk { get; } = desk;

    /// <summary>What pages complained about so far; clear it where a complaint is expected.</summary>
    protected ConcurrentQueue<string> Complaints { get; } = new();

    public ValueTask InitializeAsync() => ValueTask.CompletedTask;

    public async ValueTask DisposeAsync()
    {
        foreach (var c in _contexts) await c.DisposeAsync();
        GC.SuppressFinalize(this);
        Assert.Empty(Complaints);
        Assert.DoesNotContain(Desk.Running.Said, line => line.Contains("fail:", StringComparison.Ordinal) || line.Contains("crit:", StringComparison.Ordinal));
    }

    /// <summary>An empty page of its own browser context.</summary>
    protected async Task<IPage> NewPage(int width = 1400, int height = 900, ColorScheme scheme = ColorScheme.Light)
    {
        var context = await chromium.Browser.NewContextAsync(new() { ViewportSize = new() { Width = width, Height = height }, ColorScheme = scheme, BaseURL = Desk.Running.Address.ToString() });
        context.SetDefaultTimeout(60_000);
        lock (_contexts) _contexts.Add(context);
        var page = await context.NewPageAsync();
        page.PageError += (_, e) => Complaints.Enqueue(e);
        page.Console += (_, m) =>
        {
            if (m.Type == "error") Complaints.Enqueue(m.Text);
        };
        return page;
    }

    /// <summary>A page of the desk.</summary>
    /// <param name="address">After the desk's own address: "", "shop", "plan/NAME/sheets".</param>
    protected async Task<IPage> Open(string address, int width = 1400, int height = 900, ColorScheme scheme = ColorScheme.Light)
    {
        var page = await NewPage(width, height, scheme);
        await page.GotoAsync("/" + address.TrimStart('/'), new() { Timeout = 60_000 });
        return page;
    }

    /// <summary>The drawing of a plan, ready to be moved.</summary>
    protected async Task<IPage> OpenPlan(string stem, int width = 1400, int height = 900, ColorScheme scheme = ColorScheme.Light)
    {
        var page = await Open("plan/" + stem, width, height, scheme);
        await Ready(page);
        return page;
    }

    /// <summary>Waits until the drawing answers.</summary>
    protected static Task Ready(IPage page) => page.Locator("svg[data-ready]").WaitForAsync();

    /// <summary>Waits until the page is at an address with this path; looked at again and again, because an event of the browser can come before anyone listens.</summary>
    protected static Task Arrived(IPage page, string path) => Eventually(() => new Uri(page.Url).AbsolutePath == path, seconds: 60);

    /// <summary>The text of a plan as it lies on the disk.</summary>
    protected string TextOf(string stem) => System.IO.File.ReadAllText(PathOf(stem));

    /// <summary>Where a plan lies.</summary>
    protected string PathOf(string stem) => Desk.Scratch.Path(stem + ".plan.toml");

    /// <summary>Middle of a thing of the drawing, screen.</summary>
    /// <param name="thing">Its name: hole:L1, point:4.</param>
    protected static async Task<(float X, float Y)> PlaceOf(IPage page, string thing)
    {
        var box = await page.Locator($"[data-id='{thing}'] .reach").BoundingBoxAsync() ?? throw new InvalidOperationException(thing + " is not on the drawing");
        return (box.X + (box.Width / 2), box.Y + (box.Height / 2));
    }

    /// <summary>Takes hold of a thing and moves it; it stays held.</summary>
    protected static async Task Hold(IPage page, string thing, float dx, float dy, int steps = 10)
    {
        var (x, y) = await PlaceOf(page, thing);
        await page.Mouse.MoveAsync(x, y);
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync(x + dx, y + dy, new() { Steps = steps });
    }

    /// <summary>Drags a thing and lets go.</summary>
    protected static async Task Drag(IPage page, string thing, float dx, float dy, int steps = 10)
    {
        await Hold(page, thing, dx, dy, steps);
        await page.Mouse.UpAsync();
    }

    /// <summary>Waits until something holds.</summary>
    protected static async Task Eventually(Func<Task<bool>> holds, int seconds = 15)
    {
        var clock = Stopwatch.StartNew();
        while (clock.Elapsed.TotalSeconds < seconds)
        {
            if (await holds()) return;
            await Task.Delay(40);
        }

        Assert.Fail($"did not come about within {seconds} s");
    }

    /// <summary>Waits until something holds.</summary>
    protected static Task Eventually(Func<bool> holds, int seconds = 15) => Eventually(() => Task.FromResult(holds()), seconds);
}
