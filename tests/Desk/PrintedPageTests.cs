using System.Globalization;
using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace Tangwright.Tests;

/// <summary>Sheets printed from the browser (Chromium's own PDF of the plain page) and the PDFs the desk gives, measured as poppler rasterises them at 600 dots to the inch.</summary>
public sealed partial class PrintedPageTests(Chromium chromium, DeskOnScratch desk) : Journey(chromium, desk)
{
    private const double BrowserMm = 0.2;
    private const double PdfMm = 0.05;

    /// <summary>What both rasters of a sheet must share: 99 % of the ink of either has ink of the other within 1 dot of 1/200 in (0.13 mm); what is left is greys at the rims of thin lines and letters.</summary>
    private const double SharedInk = 0.99;

    [Theory]
    [InlineData("plan/skeleton-hatchet/print/template?", "plan/skeleton-hatchet/sheets.pdf?sheets=template")]
    [InlineData("plan/kitchen-knife/print/template?paper=letter&mirror=yes", "plan/kitchen-knife/sheets.pdf?sheets=template&paper=letter&mirror=yes")]
    [InlineData("printer/bars?shop=skeleton-hatchet.shop.toml&printer=A4%20printer", "printer/bars.pdf?shop=skeleton-hatchet.shop.toml&printer=A4%20printer")]
    public async Task Bars_are_100_mm_both_ways(string pageAddress, string pdfAddress)
    {
        PutExamples();
        var (html, fromBrowser, pdf) = await Print(pageAddress, pdfAddress);
        var sheets = html.Split("<svg xmlns")[1..];
        for (var i = 0; i < sheets.Length; i++)
        {
            var bars = Bars(sheets[i]);
            Assert.Equal(2, bars.Count);
            Assert.Single(bars, b => b.IsLevel);
            var (printed, product) = (Raster.Page(fromBrowser, i + 1), Raster.Page(pdf, i + 1));
            Assert.All(bars, b => Assert.Equal(100, b.On(printed), BrowserMm));
            Assert.All(bars, b => Assert.Equal(100, b.On(product), PdfMm));
        }
    }

    [Fact]
    public async Task A_page_printed_from_the_browser_looks_as_the_pdf_does()
    {
        PutExamples();
        const string kinds = "cover,order,findings,holes,template,drill-only,layout,cautions";
        var (html, fromBrowser, pdf) = await Print("plan/skeleton-hatchet/print/" + kinds + "?", "plan/skeleton-hatchet/sheets.pdf?sheets=" + kinds);
        var count = html.Split("<svg xmlns").Length - 1;
        Assert.Equal(13, count);
        for (var i = 1; i <= count; i++)
        {
            var (a, b) = (Raster.Page(fromBrowser, i, 200), Raster.Page(pdf, i, 200));
            var (there, back) = (a.InkAlsoOn(b, 1), b.InkAlsoOn(a, 1));
            Assert.True(Math.Min(there, back) >= SharedInk, $"sheet {i}: {there:P2} and {back:P2}");
        }
    }

    [Fact]
    public async Task Gives_out_only_the_files_of_the_packet()
    {
        PutExamples();
        using var client = new HttpClient { BaseAddress = Desk.Running.Address };
        Assert.Equal(System.Net.HttpStatusCode.NotFound, (await client.GetAsync("plan/skeleton-hatchet/packet/packet.pdf")).StatusCode);
        var folder = System.IO.Directory.CreateDirectory(Desk.Scratch.Path("skeleton-hatchet-packet")).FullName;
        await System.IO.File.WriteAllTextAsync(System.IO.Path.Combine(folder, "holes.csv"), "name");
        await System.IO.File.WriteAllTextAsync(System.IO.Path.Combine(folder, "mine.txt"), "mine");
        System.IO.File.CreateSymbolicLink(System.IO.Path.Combine(folder, "figures.json"), Desk.Scratch.Path("skeleton-hatchet.shop.toml"));
        Assert.Equal("name", await client.GetStringAsync("plan/skeleton-hatchet/packet/holes.csv"));
        foreach (var file in new[] { "mine.txt", "figures.json", "..%2fskeleton-hatchet.plan.toml", "%2e%2e%2fskeleton-hatchet.plan.toml", "packet.pdf" })
            Assert.Equal(System.Net.HttpStatusCode.NotFound, (await client.GetAsync("plan/skeleton-hatchet/packet/" + file)).StatusCode);
    }

    private void PutExamples()
    {
        foreach (var example in new[] { "skeleton-hatchet", "kitchen-knife" })
        {
            if (!System.IO.File.Exists(PathOf(example))) Desk.PutExample(example);
        }
    }

    private async Task<(string Html, byte[] FromBrowser, byte[] Pdf)> Print(string pageAddress, string pdfAddress)
    {
        using var client = new HttpClient { BaseAddress = Desk.Running.Address };
        var page = await NewPage();
        await page.GotoAsync(new Uri(Desk.Running.Address, pageAddress).ToString(), new() { WaitUntil = WaitUntilState.NetworkIdle });
        await page.EvaluateAsync("document.fonts.ready.then(() => 0)");
        return (await client.GetStringAsync(pageAddress), await page.PdfAsync(new() { PreferCSSPageSize = true, PrintBackground = true }), await client.GetByteArrayAsync(pdfAddress));
    }

    /// <summary>The level and upright lines of 100 mm, from the drawing itself.</summary>
    private static List<Bar> Bars(string svg)
    {
        return
        [
            .. BarLine().Matches(svg)
                .Select(m => new Bar(N(m, "x0"), N(m, "y0"), N(m, "x1"), N(m, "y1")))
                .Where(b => (b.X0 == b.X1 || b.Y0 == b.Y1) && Math.Abs(Math.Abs(b.X1 - b.X0 + b.Y1 - b.Y0) - 100) < 1e-3),
        ];

        static double N(Match m, string group) => double.Parse(m.Groups[group].Value, CultureInfo.InvariantCulture);
    }

    [GeneratedRegex(@"<path d=""M(?<x0>[\d.]+) (?<y0>[\d.]+)L(?<x1>[\d.]+) (?<y1>[\d.]+)"" stroke=""#000"" stroke-width=""0.25""/>", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 5000)]
    private static partial Regex BarLine();

    /// <summary>A bar: mm from the upper left of the sheet.</summary>
    private sealed record Bar(double X0, double Y0, double X1, double Y1)
    {
        public bool IsLevel => Y0 == Y1;

        /// <summary>Distance between the ticks at its ends on paper, mm.</summary>
        public double On(Raster page)
        {
            double At(double x, double y)
            {
                var up = page.HeightMm - y;
                return IsLevel
                    ? 0.5 * (page.LineX(x, up + 0.5, up + 1.8) + page.LineX(x, up - 1.8, up - 0.5))
                    : 0.5 * (page.LineY(up, x + 0.5, x + 1.8) + page.LineY(up, x - 1.8, x - 0.5));
            }

            return Math.Abs(At(X1, Y1) - At(X0, Y0));
        }
    }
}
