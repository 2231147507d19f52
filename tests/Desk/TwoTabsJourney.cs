using Microsoft.Playwright;

namespace Tangwright.Tests;

/// <summary>Two tabs on one plan, and the desk killed and started again.</summary>
public sealed class TwoTabsJourney(Chromium chromium, DeskOnScratch desk) : Journey(chromium, desk)
{
    [Fact]
    public async Task What_one_tab_does_the_other_shows_and_can_undo()
    {
        var stem = Desk.PutExample("skeleton-hatchet");
        var before = TextOf(stem);
        var (a, b) = (await OpenPlan(stem), await OpenPlan(stem));
        var weighed = await Numbers(b);

        // while a holds, b follows and can change nothing
        await Hold(a, "hole:L1", 60, 0);
        await Eventually(async () => await Numbers(a) != weighed && await Numbers(a) == await Numbers(b));
        await Drag(b, "hole:L2", 0, 30);
        await b.GetByText("something of this plan is being moved").First.WaitForAsync();
        Assert.True(await Undo(b).IsDisabledAsync());
        Assert.Equal(before, TextOf(stem));
        await a.Mouse.UpAsync();
        await Eventually(() => TextOf(stem) != before);
        Assert.Single(before.Split('\n').Except(TextOf(stem).Split('\n')));

        // undo in b shows in a
        await Undo(b).ClickAsync();
        await Eventually(async () => TextOf(stem) == before && await Numbers(a) == weighed && await Numbers(b) == weighed);
    }

    [Fact]
    public async Task A_tab_closed_while_it_holds_lets_go()
    {
        var stem = Desk.PutExample("skeleton-hatchet");
        var (a, b) = (await OpenPlan(stem), await OpenPlan(stem));
        var (before, weighed) = (TextOf(stem), await Numbers(b));
        await Hold(a, "hole:L1", 60, 0);
        await Eventually(async () => await Numbers(b) != weighed);
        await a.CloseAsync();
        await Eventually(() => TextOf(stem) != before);
        await Undo(b).ClickAsync();
        await Eventually(() => TextOf(stem) == before);
    }

    [Fact]
    public async Task Escape_takes_a_move_back()
    {
        var stem = Desk.PutExample("skeleton-hatchet");
        var page = await OpenPlan(stem);
        var (before, weighed) = (TextOf(stem), await Numbers(page));
        await Hold(page, "hole:L1", 60, 0);
        await Eventually(async () => await Numbers(page) != weighed);
        await page.Keyboard.PressAsync("Escape");
        await Eventually(async () => await Numbers(page) == weighed);
        await page.Mouse.UpAsync();
        Assert.Equal(before, TextOf(stem));
        Assert.True(await Undo(page).IsDisabledAsync());
    }

    [Fact]
    public async Task Killed_while_dragging_nothing_saved_is_lost_and_the_page_comes_back()
    {
        var stem = Desk.PutExample("skeleton-hatchet");
        var page = await OpenPlan(stem);
        var before = TextOf(stem);
        await Drag(page, "hole:L1", 60, 0);
        await Eventually(() => TextOf(stem) != before);
        var saved = TextOf(stem);
        await Hold(page, "hole:L2", 0, 20);
        await page.EvaluateAsync("window.before = true");
        Desk.Running.Kill();
        var (x, y) = await PlaceOf(page, "hole:L2");
        await page.Mouse.MoveAsync(x + 10, y, new() { Steps = 5 });
        await page.Mouse.UpAsync();
        await page.GetByText("The desk does not answer").WaitForAsync();
        Assert.Equal(saved, TextOf(stem));
        Desk.Running.Started();
        await page.WaitForFunctionAsync("() => !window.before && document.querySelector('svg[data-ready]')", null, new() { Timeout = 40_000 });
        await Eventually(async () => await page.GetByText("The desk does not answer").IsHiddenAsync());
        Assert.Equal(saved, TextOf(stem));

        // and it works again; nothing left in the way of a change
        await Drag(page, "hole:L1", -20, 0);
        await Eventually(() => TextOf(stem) != saved);

        // while the desk was away the page could not reach it, which the browser tells
        var grave = Complaints.Where(c => !c.Contains("WebSocket", StringComparison.Ordinal) && !c.Contains("ERR_", StringComparison.Ordinal) && !c.Contains("negotiat", StringComparison.Ordinal) && !c.Contains("connection", StringComparison.OrdinalIgnoreCase)).ToArray();
        Complaints.Clear();
        Assert.Empty(grave);
    }

    private static ILocator Undo(IPage page) => page.GetByRole(AriaRole.Button, new() { Name = "undo", Exact = true });

    private static async Task<string> Numbers(IPage page) => string.Join('|', await page.Locator(".figures .large dd b").AllInnerTextsAsync());
}
