using Microsoft.Playwright;

namespace Tangwright.Tests;

/// <summary>Times of one drag or zoom as the page itself sees them, ms.</summary>
/// <param name="Painted">From each pointer event to the frame that shows it being painted.</param>
/// <param name="Numbers">From each move to the numbers of that place, or of a later one, standing in the page.</param>
/// <param name="AfterLast">From the last move to its numbers.</param>
internal sealed record Times(double[] Painted, double[] Numbers, double AfterLast)
{
    public static double Percentile(double[] times, double p)
    {
        if (times.Length == 0) return double.NaN;
        var sorted = times.Order().ToArray();
        return sorted[(int)Math.Round(p * (sorted.Length - 1))];
    }
}

/// <summary>Watches a page: when pointer events happened, when their frame was painted, which version answers which move, when the numbers of that version stood there.</summary>
internal sealed class Recorder(IPage page)
{
    private const string Script = """
        kind => {
            const svg = document.querySelector('svg.drawing'), figures = document.querySelector('.figures');
            const r = { at: [], painted: [], answers: [], numbers: [], stop: new AbortController() };
            svg.addEventListener(kind, e => {
                const i = r.at.push(e.timeStamp) - 1;
                requestAnimationFrame(() => {
                    const c = new MessageChannel();
                    c.port1.onmessage = () => { r.painted[i] = performance.now(); };
                    c.port2.postMessage(0);
                });
            }, { signal: r.stop.signal, passive: true });
            const watch = (el, seen) => new MutationObserver(() => seen(+el.dataset.version)).observe(el, { attributes: true, attributeFilter: ['data-version'] });
            watch(svg, v => r.answers.push([v, r.at.length - 1]));
            watch(figures, v => r.numbers.push([v, performance.now()]));
            window.recorded = r;
        }
        """;

    private const string Read = """
        () => {
            const r = window.recorded;
            r.stop.abort();
            const painted = r.at.map((t, i) => r.painted[i] - t).filter(t => t >= 0);
            const numbers = [];
            r.at.forEach((t, i) => {
                const answer = r.answers.find(a => a[1] >= i);
                const shown = answer && r.numbers.find(n => n[0] >= answer[0] && n[1] >= t);
                if (shown) numbers.push(shown[1] - t);
            });
            return [painted, numbers, [numbers.at(-1) ?? -1]];
        }
        """;

    public Task Begin(string kind) => page.EvaluateAsync(Script, kind);

    public async Task<Times> End()
    {
        await Task.Delay(700);
        var got = await page.EvaluateAsync<double[][]>(Read);
        return new Times(got[0], got[1], got[2][0]);
    }
}
