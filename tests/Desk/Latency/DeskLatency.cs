using System.Diagnostics;
using System.Globalization;
using System.Text;
using Microsoft.Playwright;
using Tangwright.Foundation;
using Tangwright.UseCases;

namespace Tangwright.Tests;

/// <summary>How fast the desk answers, on the plan speed is measured on. Takes a minute and writes its table into docs/performance.md, so it runs only when it is asked for.</summary>
public sealed class DeskLatency(Chromium chromium) : IDisposable
{
    private const int Moves = 240, Rounds = 3;

    private readonly Scratch _scratch = new();
    private readonly StringBuilder _rows = new();

    public void Dispose() => _scratch.Dispose();

    [Fact(Explicit = true)]
    public async Task Measure()
    {
        System.IO.File.Copy(Repository.Path("benchmarks", "reference.plan.toml"), _scratch.Path("reference.plan.toml"));
        await Drags(0, "");
        await Drags(25, ", flooded, every calculation 25 ms longer");
        Row("work of the desk for a step of a drag", Steps(), "p95 5");
        await FirstLoad();
        Write();
    }

    private async Task Drags(int slowerMs, string how)
    {
        using var desk = new RunningDesk(_scratch.Folder) { IsPublished = true, SlowerMs = slowerMs };
        await using var context = await chromium.Browser.NewContextAsync(new() { ViewportSize = new() { Width = 1600, Height = 1000 } });
        var page = await context.NewPageAsync();
        await page.GotoAsync(new Uri(desk.Address, "plan/reference").ToString());
        await page.Locator("svg[data-ready]").WaitForAsync();
        var flooded = slowerMs > 0;
        foreach (var (thing, name, dx, dy) in new[] { ("point:60", "point of the outline", 0f, -30f), ("hole:L20", "hole", 60f, 12f) })
        {
            var best = await Best(page, "pointermove", () => Drag(page, thing, dx, dy, flooded));
            Row($"{name}: move → painted{how}", best.Painted, flooded ? "p95 50" : "p50 17, p95 33");
            Row($"{name}: move → its numbers{how}", best.Numbers, flooded ? "p95 150" : "p50 25, p95 50");
            if (flooded) Row($"{name}: last move → its numbers{how}", [best.AfterLast], "250");
        }

        if (flooded) return;
        var zoom = await Best(page, "wheel", async () =>
        {
            await page.Mouse.MoveAsync(500, 450);
            for (var i = 0; i < 60; i++)
            {
                await page.Mouse.WheelAsync(0, i < 30 ? -60 : 60);
                await Task.Delay(12);
            }
        });
        Row("wheel zoom: turn → painted", zoom.Painted, "p95 33");
    }

    private static async Task Drag(IPage page, string thing, float dx, float dy, bool flooded)
    {
        var box = await page.Locator($"[data-id='{thing}'] .reach").BoundingBoxAsync() ?? throw new InvalidOperationException(thing + " is not on the drawing");
        var (x, y) = (box.X + (box.Width / 2), box.Y + (box.Height / 2));
        await page.Mouse.MoveAsync(x, y);
        await page.Mouse.DownAsync();
        if (flooded)
        {
            await page.Mouse.MoveAsync(x + dx, y + dy, new() { Steps = Moves });
        }
        else
        {
            for (var i = 1; i <= Moves; i++)
            {
                // there and back, so that the piece stays a piece
                var way = (float)Math.Sin(Math.PI * i / Moves);
                await page.Mouse.MoveAsync(x + (dx * way), y + (dy * way));
                await Task.Delay(8);
            }
        }

        await Task.Delay(600);
        await page.Mouse.UpAsync();
        if (flooded) await page.GetByRole(AriaRole.Button, new() { Name = "undo", Exact = true }).ClickAsync();
    }

    private static async Task<Times> Best(IPage page, string kind, Func<Task> act)
    {
        var rounds = new List<Times>();
        for (var i = 0; i < Rounds; i++)
        {
            var recorder = new Recorder(page);
            await recorder.Begin(kind);
            await act();
            rounds.Add(await recorder.End());
            await page.ReloadAsync();
            await page.Locator("svg[data-ready]").WaitForAsync();
        }

        return rounds.MinBy(r => Times.Percentile(r.Painted, 0.95) + (r.Numbers.Length > 0 ? Times.Percentile(r.Numbers, 0.95) : 0))!;
    }

    private double[] Steps()
    {
        using var folder = DeskFolder.Of(_scratch.Folder).Value;
        var plan = folder.Plan("reference").Value;
        var times = new List<double>();
        plan.Begin();
        for (var i = 0; i < 2 * Moves; i++)
        {
            var clock = Stopwatch.StartNew();
            Assert.Empty(plan.Step(new PutAt(new Thing(ThingKind.Hole, "H"), new Point(80 + (i * 0.01), 30), Rounded: false)));
            DrawnPlan.Marks(plan.Now, "", "", null);
            times.Add(clock.Elapsed.TotalMilliseconds);
        }

        plan.Cancel();
        return [.. times.Skip(Moves)];
    }

    private async Task FirstLoad()
    {
        var (answers, interactive) = (new List<double>(), new List<double>());
        var (bytes, requests) = (0, 0);
        for (var i = 0; i < 5; i++)
        {
            var clock = Stopwatch.StartNew();
            using var desk = new RunningDesk(_scratch.Folder) { IsPublished = true }.Started();
            (await desk.Client.GetAsync("/plan/reference")).EnsureSuccessStatusCode();
            answers.Add(clock.Elapsed.TotalMilliseconds);
            await using var context = await chromium.Browser.NewContextAsync();
            var page = await context.NewPageAsync();
            var all = new List<IResponse>();
            page.Response += (_, r) => all.Add(r);
            clock.Restart();
            await page.GotoAsync(new Uri(desk.Address, "plan/reference").ToString());
            await page.Locator("svg[data-ready]").WaitForAsync();
            interactive.Add(clock.Elapsed.TotalMilliseconds);
            await Task.Delay(300);
            (bytes, requests) = (0, all.Count(r => r.Url.StartsWith("http", StringComparison.Ordinal)));
            foreach (var r in all)
            {
                var sizes = await r.Request.SizesAsync();
                bytes += sizes.ResponseBodySize + sizes.ResponseHeadersSize;
            }
        }

        Row("process started → the page answers", [.. answers], "2000");
        Row("page asked for → the drawing can be moved", [.. interactive], "1500");
        _rows.Append(CultureInfo.InvariantCulture, $"| first load | {bytes / 1000} KB | {requests} requests | 150 KB, 8 requests |\n");
    }

    private void Row(string what, double[] times, string target)
        => _rows.Append(CultureInfo.InvariantCulture, $"| {what} | {Times.Percentile(times, 0.5):F0} ms | {Times.Percentile(times, 0.95):F0} ms | {target}{(target.Contains("KB", StringComparison.Ordinal) ? "" : " ms")} |\n");

    private void Write()
    {
        const string Title = "## The desk\n";
        var file = Repository.Path("docs", "performance.md");
        var text = System.IO.File.ReadAllText(file);
        var at = text.IndexOf(Title, StringComparison.Ordinal);
        var before = at < 0 ? text.TrimEnd() + "\n\n" : text[..at];
        var next = at < 0 ? -1 : text.IndexOf("\n## ", at + Title.Length, StringComparison.Ordinal);
        var commit = ProgramRun.Other("git", Repository.Root, "rev-parse", "--short", "HEAD").Out.Trim();
        var section = $"""
            {Title}
            Measured on {DateTime.UtcNow:yyyy-MM-dd} at commit {commit}, 2 cores of a shared server on which other work was running (browser, desk and measuring program all on these two), Chromium without a window or graphics card, the desk as published. The same reference plan; {Moves} moves a drag, best of {Rounds} drags; the page itself notes when the pointer moved, when the frame was painted and when the numbers of that very place, or of a later one, stood beside it. Run it again, from the project's folder, after `./tangwright desk --help` has built the desk: `dotnet build tests/Desk -c Release && tests/Desk/bin/Release/net10.0/Tangwright.DeskTests -explicit only -class '*DeskLatency'`.

            | what | middle (p50) | p95 | target |
            | --- | --- | --- | --- |
            {_rows.ToString().TrimEnd()}

            That the numbers are those of the last place, whatever the load, is a test of its own and runs with all others.

            """.ReplaceLineEndings("\n");
        System.IO.File.WriteAllText(file, before + section + (next < 0 ? "" : text[next..]));
    }
}
